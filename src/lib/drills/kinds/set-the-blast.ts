import type { DrillKind } from './kind';

export default {
	id: 'set-the-blast',
	title: { en: 'Set the blast', es: 'Ajustar el granallado' },
	about: {
		en: 'grain, pressure, nozzle, distance and profile for these parts',
		es: 'grano, presión, boquilla, distancia y perfil para estas piezas'
	},
	skill: 'C7',
	asks: [
		'ppe-blast',
		'cabinet-action',
		'blast-media',
		'blast-pressure',
		'blast-nozzle',
		'blast-standoff',
		'profile-limit'
	],
	needs: ['blast-media', 'blast-pressure']
} as const satisfies DrillKind;
