import type { DrillKind } from './kind';

export default {
	id: 'rack-the-oven',
	title: { en: 'Rack the oven', es: 'Cargar el horno' },
	about: {
		en: 'solvent in the load, unlike parts, probes, the way to temperature',
		es: 'solvente en la carga, piezas distintas, termopares y el camino a la temperatura'
	},
	skill: 'C11',
	asks: ['oven-wet-volume', 'oven-start', 'mixed-rack', 'probe-places', 'cure-temperature', 'heat-up'],
	needs: ['oven-start', 'probe-places', 'cure-temperature']
} as const satisfies DrillKind;
