import type { DrillKind } from './kind';

export default {
	id: 'accept-the-panel',
	title: { en: 'Accept the panel', es: 'Aceptar el panel' },
	about: {
		en: 'readings of the witness panel: accept, refuse or measure again',
		es: 'lecturas del panel testigo: aceptar, rechazar o medir otra vez'
	},
	skill: 'C12',
	asks: ['gauge', 'spot-minimum', 'spot-maximum', 'film-verdict', 'adhesion-class', 'rubs', 'failed-witness'],
	needs: ['film-verdict']
} as const satisfies DrillKind;
