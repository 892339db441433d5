import type { DrillKind } from './kind';

export default {
	id: 'steps-in-order',
	title: { en: 'Put the steps in order', es: 'Poner los pasos en orden' },
	about: { en: 'preparing, spraying and starting the oven', es: 'preparar, aplicar y arrancar el horno' },
	skill: 'C5',
	asks: ['preparation-order', 'spray-order', 'oven-start'],
	needs: ['preparation-order', 'spray-order', 'oven-start']
} as const satisfies DrillKind;
