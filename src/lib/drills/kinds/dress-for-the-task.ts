import type { DrillKind } from './kind';

export default {
	id: 'dress-for-the-task',
	title: { en: 'Dress for the task', es: 'Equiparse para la tarea' },
	about: {
		en: 'what to put on at each station, and what to breathe through',
		es: 'qué ponerse en cada estación y con qué respirar'
	},
	skill: 'C2',
	asks: [
		'ppe-degrease',
		'ppe-blast',
		'ppe-mix',
		'mix-breathing',
		'ppe-spray',
		'spray-breathing',
		'wearer-action',
		'clearance-wait',
		'ppe-oven'
	],
	needs: ['ppe-mix', 'ppe-spray', 'spray-breathing']
} as const satisfies DrillKind;
