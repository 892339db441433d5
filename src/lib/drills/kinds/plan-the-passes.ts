import type { DrillKind } from './kind';

export default {
	id: 'plan-the-passes',
	title: { en: 'Plan the passes', es: 'Planear las pasadas' },
	about: {
		en: 'distance, fan, overlap, speed and wet film, in numbers',
		es: 'distancia, abanico, traslape, velocidad y película húmeda, en números'
	},
	skill: 'C10',
	asks: ['cap-pressure', 'gun-distance', 'fan-width', 'overlap', 'gun-speed', 'coats', 'wet-film'],
	needs: ['gun-distance', 'fan-width', 'wet-film']
} as const satisfies DrillKind;
