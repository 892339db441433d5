import { fieldsOf } from '../field';

const { choice, order } = fieldsOf({ station: 'inspection', competency: 'inspection' });

/** A defect traced back to what caused it. Tests and causes differ from case to case: each question offers its own. */
export const causeFindingFields = {
	'next-test': choice({}, 'Which one test tells you most now?', '¿Cuál prueba, una sola, le dice más ahora?'),
	'cause-order': order(
		{},
		'Put the causes in order, the likeliest first',
		'Ordene las causas, primero la más probable'
	)
} as const;
