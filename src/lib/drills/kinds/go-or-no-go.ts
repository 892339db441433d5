import type { DrillKind } from './kind';

export default {
	id: 'go-or-no-go',
	title: { en: 'Go or no-go', es: 'Se aplica o no' },
	about: {
		en: 'this morning’s air, the coldest part, the booth and the person at the gun',
		es: 'el aire de esta mañana, la pieza más fría, la cabina y la persona en la pistola'
	},
	skill: 'C9',
	asks: ['spray-go', 'surface-minimum', 'booth-action', 'wearer-action'],
	needs: ['spray-go', 'surface-minimum']
} as const satisfies DrillKind;
