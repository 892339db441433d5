import type { Term } from '../term';

export const inspectionTerms = [
	{
		id: 'dry-film-thickness',
		term: { en: 'dry film thickness', es: 'espesor seco' },
		meaning: {
			en: 'How thick the film is once the solvent is gone and it is cured.',
			es: 'Qué tan gruesa queda la película ya sin solvente y curada.'
		},
		lesson: 'film-thickness'
	},
	{
		id: 'gauge',
		term: { en: 'thickness gauge', es: 'medidor de espesor' },
		meaning: {
			en: 'The instrument for dry film. One kind reads on steel, another on other metals.',
			es: 'El instrumento para película seca. Un tipo lee sobre acero; otro, sobre otros metales.'
		},
		lesson: 'film-thickness'
	},
	{
		id: 'zeroing',
		term: { en: 'zeroing', es: 'puesta en cero' },
		meaning: {
			en: 'Setting the gauge on bare metal prepared like the part, so that only film is counted.',
			es: 'Ajustar el medidor sobre metal desnudo preparado como la pieza, para que cuente solo película.'
		},
		lesson: 'film-thickness'
	},
	{
		id: 'spot',
		term: { en: 'spot', es: 'sitio' },
		meaning: {
			en: 'A small place where several readings are taken and averaged.',
			es: 'Un lugar pequeño donde se toman varias lecturas y se promedian.'
		},
		lesson: 'film-thickness'
	},
	{
		id: 'witness-panel',
		term: { en: 'witness panel', es: 'panel testigo' },
		meaning: {
			en: 'A plate that goes through every step with the parts, so that it may be cut and rubbed.',
			es: 'Placa que pasa por todo junto con las piezas, para poder cortarla y frotarla.'
		},
		lesson: 'cure-and-adhesion'
	},
	{
		id: 'adhesion',
		term: { en: 'adhesion', es: 'adhesión' },
		meaning: {
			en: 'How firmly the film holds to what is below it.',
			es: 'Qué tan firme se agarra la película a lo de abajo.'
		},
		lesson: 'cure-and-adhesion'
	},
	{
		id: 'cross-cut',
		term: { en: 'cross-cut check', es: 'prueba de corte cruzado' },
		meaning: {
			en: 'A lattice cut through the film and pulled with tape. What comes off shows adhesion.',
			es: 'Rejilla cortada en la película y jalada con cinta. Lo que se suelta muestra la adhesión.'
		},
		lesson: 'cure-and-adhesion'
	},
	{
		id: 'solvent-rub',
		term: { en: 'solvent-rub check', es: 'prueba de frote con solvente' },
		meaning: {
			en: 'Rubbing the film with a wet cloth as often as the data sheet says. Colour on the cloth says not cured.',
			es: 'Frotar con un trapo mojado las veces que dice la hoja. Color en el trapo: no curó.'
		},
		lesson: 'cure-and-adhesion'
	},
	{
		id: 'gloss',
		term: { en: 'gloss', es: 'brillo' },
		meaning: {
			en: 'How sharply a surface mirrors a lamp.',
			es: 'Con qué nitidez refleja una superficie la lámpara.'
		},
		lesson: 'defects'
	},
	{
		id: 'master',
		term: { en: 'master', es: 'patrón' },
		meaning: {
			en: 'The approved piece every other one is held against.',
			es: 'La pieza aprobada contra la que se compara cualquier otra.'
		},
		lesson: 'defects'
	},
	{
		id: 'raking-light',
		term: { en: 'raking light', es: 'luz rasante' },
		meaning: {
			en: 'Light from the side, almost along the surface. It makes small bumps throw shadows.',
			es: 'Luz de lado, casi pegada a la superficie. Hace que los bultos pequeños den sombra.'
		},
		lesson: 'defects'
	},
	{
		id: 'loupe',
		term: { en: 'loupe', es: 'lupa' },
		meaning: {
			en: 'A small lens held close to the surface.',
			es: 'Lente pequeña que se acerca a la superficie.'
		},
		lesson: 'defects'
	},
	{
		id: 'section',
		term: { en: 'section', es: 'corte' },
		meaning: {
			en: 'A film seen from its cut edge: what is on top, inside and below.',
			es: 'La película vista por el canto cortado: qué hay arriba, adentro y abajo.'
		},
		lesson: 'defects'
	}
] as const satisfies readonly Term[];
