const en = {
	family: 'Family',
	basis: 'Mix ratio stated',
	basisOf: { volume: 'by volume', weight: 'by weight' },
	thinner: 'Thinner',
	cup: 'Flow cup',
	filled: 'Filled: settles, needs an open strainer',
	hazards: 'Hazards (see the safety data sheet)',
	none: 'none named',
	yes: 'yes',
	no: 'no'
};

const es = {
	family: 'Familia',
	basis: 'Relación de mezcla dada',
	basisOf: { volume: 'por volumen', weight: 'por peso' },
	thinner: 'Diluyente',
	cup: 'Copa de flujo',
	filled: 'Con carga: se asienta y pide colador abierto',
	hazards: 'Peligros (vea la hoja de datos de seguridad)',
	none: 'ninguno',
	yes: 'sí',
	no: 'no'
} satisfies typeof en;

export const sheets = { en, es };
