import { workedOut, type Traced } from './trace';

/** How old a mix may get: the shop's share of its pot life. */
export const latestAge = (life: Traced<'duration'>, part: Traced<'fraction'>): Traced<'duration'> =>
	workedOut(
		'use-within-pot-life',
		'duration',
		life.value * part.value,
		{ en: 'Latest age of the mix', es: 'Edad máxima de la mezcla' },
		{ life, part }
	);
