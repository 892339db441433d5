import { policyLimit } from './scheme-limit';

/** How people are proven. */
export const provingLimits = {
	sequential: {
		p0: policyLimit('share', 0.7, [0.5, 0.95, 0.01], {
			label: {
				en: 'Share of right tickets that must not pass',
				es: 'Proporción de órdenes bien resueltas que no debe pasar'
			},
			because: {
				en: 'Three wrong set-ups in ten is not fit to work alone.',
				es: 'Quien prepara mal tres de diez trabajos no puede trabajar solo.'
			}
		}),
		p1: policyLimit('share', 0.9, [0.55, 0.99, 0.01], {
			label: {
				en: 'Share of right tickets that should pass',
				es: 'Proporción de órdenes bien resueltas que debe pasar'
			},
			because: {
				en: 'What the shop expects of an applicator who works alone.',
				es: 'Lo que el taller espera de quien trabaja solo.'
			}
		}),
		alpha: policyLimit('share', 0.05, [0.001, 0.2, 0.001], {
			label: {
				en: 'Accepted chance of passing someone unfit',
				es: 'Riesgo aceptado de aprobar a quien no está listo'
			},
			because: {
				en: 'A wrong pass reaches customers, so it is the smaller of the two.',
				es: 'Aprobar por error llega al cliente; por eso es el menor de los dos riesgos.'
			}
		}),
		beta: policyLimit('share', 0.1, [0.001, 0.3, 0.001], {
			label: {
				en: 'Accepted chance of failing someone fit',
				es: 'Riesgo aceptado de rechazar a quien sí está listo'
			},
			because: {
				en: 'A wrong fail costs a repeat, not a part.',
				es: 'Rechazar por error cuesta repetir, no una pieza.'
			}
		}),
		truncateAt: policyLimit('drills', 45, [5, 150, 1], {
			label: { en: 'Last drill of a proving run', es: 'Último ejercicio de una prueba' },
			because: {
				en: 'The shortest end at which the exact risks still keep to both limits.',
				es: 'El final más corto con el que los riesgos exactos respetan ambos límites.'
			}
		}),
		passAtTruncation: policyLimit('drills', 38, [1, 150, 1], {
			label: {
				en: 'Right drills that pass at the last one',
				es: 'Ejercicios correctos que bastan en el último'
			},
			because: {
				en: 'Belongs to the last drill: both come from the same search.',
				es: 'Va con el último ejercicio: ambos salen de la misma búsqueda.'
			}
		})
	},
	safety: {
		unsafeRate: policyLimit('share', 0.9, [0.8, 0.99, 0.01], {
			label: {
				en: 'Share of drills without a safety stop that must not clear',
				es: 'Proporción de ejercicios sin paro de seguridad que no debe pasar'
			},
			because: {
				en: 'A danger in one job of ten is too much.',
				es: 'Un peligro en uno de cada diez trabajos es demasiado.'
			}
		}),
		risk: policyLimit('share', 0.05, [0.001, 0.1, 0.001], {
			label: {
				en: 'Accepted chance of clearing such a person',
				es: 'Riesgo aceptado de dejar pasar a esa persona'
			},
			because: {
				en: 'The same risk as for a wrong pass in a competency.',
				es: 'El mismo riesgo que para aprobar por error una competencia.'
			}
		}),
		cleanRun: policyLimit('drills', 32, [10, 500, 1], {
			label: {
				en: 'Drills without a miss that clear the gate',
				es: 'Ejercicios sin falta que pasan el filtro de seguridad'
			},
			because: {
				en: 'With the longer run after one miss it keeps to the risk above.',
				es: 'Junto con la serie más larga tras una falta, respeta el riesgo indicado.'
			}
		}),
		oneMissRun: policyLimit('drills', 52, [11, 800, 1], {
			label: {
				en: 'Drills with exactly one miss that clear the gate',
				es: 'Ejercicios con una sola falta que pasan el filtro de seguridad'
			},
			because: {
				en: 'One slip is made good by many clean drills; without this a safe person would fail too often.',
				es: 'Un descuido se compensa con muchos ejercicios limpios; sin esto fallaría demasiada gente segura.'
			}
		}),
		restarts: policyLimit('times', 2, [0, 5, 1], {
			label: {
				en: 'New tries at the gate after the safety lessons',
				es: 'Nuevos intentos tras las lecciones de seguridad'
			},
			because: {
				en: 'Every new try raises the chance of clearing by luck.',
				es: 'Cada intento nuevo aumenta la posibilidad de pasar por suerte.'
			}
		})
	},
	retest: {
		most: policyLimit('times', 2, [0, 5, 1], {
			label: { en: 'Retests after a failed proving run', es: 'Repeticiones tras una prueba no superada' },
			because: {
				en: 'Every retest raises the chance of passing by luck.',
				es: 'Cada repetición aumenta la posibilidad de pasar por suerte.'
			}
		}),
		daysApart: policyLimit('days', 7, [1, 90, 1], {
			label: {
				en: 'Days between a failed run and the next',
				es: 'Días entre una prueba no superada y la siguiente'
			},
			because: { en: 'Time to learn what was missing.', es: 'Tiempo para aprender lo que faltaba.' }
		}),
		newApplicationDays: policyLimit('days', 30, [7, 365, 1], {
			label: { en: 'Days before a new application', es: 'Días antes de una nueva solicitud' },
			because: {
				en: 'After the last retest the training is planned anew.',
				es: 'Tras la última repetición se planea de nuevo la formación.'
			}
		})
	},
	drill: {
		openHours: policyLimit('hours', 24, [1, 72, 1], {
			label: { en: 'A proving drill stays open for', es: 'Un ejercicio de prueba queda abierto' },
			because: {
				en: 'Work comes between; a drill left longer counts as wrong.',
				es: 'El trabajo interrumpe; un ejercicio dejado más tiempo cuenta como incorrecto.'
			}
		})
	}
} as const;
