import { policyLimit } from './scheme-limit';

/** How long a sign-off is kept, and by what. */
export const keepingLimits = {
	validity: {
		months: policyLimit('months', 24, [1, 60, 1], {
			label: { en: 'A sign-off holds for', es: 'Una firma vale por' },
			because: {
				en: 'Long enough to be kept up, short enough to notice drift.',
				es: 'Lo bastante largo para cumplirse y corto para ver desvíos.'
			}
		}),
		monthsWithSafety: policyLimit('months', 12, [1, 60, 1], {
			label: {
				en: 'A sign-off with safety skills holds for',
				es: 'Una firma con habilidades de seguridad vale por'
			},
			because: {
				en: 'Safety training is refreshed every year.',
				es: 'La formación de seguridad se renueva cada año.'
			}
		}),
		reevaluationMonths: policyLimit('months', 36, [1, 120, 1], {
			label: { en: 'All parts are taken anew within', es: 'Todas las partes se repiten dentro de' },
			because: {
				en: 'Renewals alone would let the first full evaluation grow old.',
				es: 'Solo con renovaciones, la primera evaluación completa envejecería.'
			}
		})
	},
	continuity: {
		months: policyLimit('months', 6, [1, 24, 1], {
			label: {
				en: 'Work in the competency is confirmed every',
				es: 'El trabajo en la competencia se confirma cada'
			},
			because: {
				en: 'A skill not used fades within months.',
				es: 'Una habilidad que no se usa se pierde en meses.'
			}
		}),
		lateDays: policyLimit('days', 30, [0, 90, 1], {
			label: { en: 'A late confirmation is accepted for', es: 'Se acepta una confirmación tardía durante' },
			because: {
				en: 'With evidence of work; after that a short requalification is needed.',
				es: 'Con evidencia de trabajo; después hace falta una nueva comprobación corta.'
			}
		})
	},
	renewal: {
		recertifyWithinMonths: policyLimit('months', 12, [0, 36, 1], {
			label: {
				en: 'After expiry, lessons still count for',
				es: 'Tras el vencimiento, las lecciones cuentan aún durante'
			},
			because: {
				en: 'Later than this, everything starts over.',
				es: 'Pasado ese plazo se empieza de nuevo.'
			}
		})
	},
	notice: {
		firstDays: policyLimit('days', 60, [1, 180, 1], {
			label: { en: 'First notice before a date', es: 'Primer aviso antes de una fecha' },
			because: { en: 'Time to plan a practical.', es: 'Tiempo para planear una práctica.' }
		}),
		secondDays: policyLimit('days', 30, [1, 180, 1], {
			label: { en: 'Second notice', es: 'Segundo aviso' },
			because: { en: 'Time to fit it between jobs.', es: 'Tiempo para hacerla entre trabajos.' }
		}),
		lastDays: policyLimit('days', 7, [1, 180, 1], {
			label: { en: 'Last notice', es: 'Último aviso' },
			because: { en: 'The week it has to happen.', es: 'La semana en que debe hacerse.' }
		})
	}
} as const;
