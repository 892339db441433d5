import type { DrillKind } from './kind';

export default {
	id: 'mix-the-batch',
	title: { en: 'Mix the batch', es: 'Mezclar el lote' },
	about: {
		en: 'how much for this rack, by weight or by volume, and until when',
		es: 'cuánto para este bastidor, por peso o por volumen, y hasta cuándo'
	},
	skill: 'C8',
	asks: [
		'ppe-mix',
		'mix-breathing',
		'lot-action',
		'mix-basis',
		'batch-volume',
		'hardener-volume',
		'hardener-mass',
		'thinner-kind',
		'thinner-share',
		'stir-time',
		'use-within'
	],
	needs: ['mix-basis', 'batch-volume', 'use-within']
} as const satisfies DrillKind;
