import type { LessonCheck } from '$lib/lessons';

export default [
	{
		id: 'missing-chart',
		rule: 'release-by-another',
		kind: 'reason',
		question: {
			en: 'Rack, readings and panel are fine. The oven chart is not with the ticket. What does the person who should sign do?',
			es: 'Bastidor, lecturas y panel están bien. El registro del horno no viene con la orden. ¿Qué hace quien debe firmar?'
		},
		options: {
			hold: {
				en: 'Hold the load until the chart is found, and tell the lead if it is not.',
				es: 'Retiene la carga hasta que aparezca el registro, y avisa al responsable si no aparece.'
			},
			sign: {
				en: 'Sign: the panel passed, so the oven must have been right.',
				es: 'Firma: el panel pasó, así que el horno tuvo que estar bien.'
			},
			copy: {
				en: 'Put in the chart of the last load, which was the same.',
				es: 'Pone el registro de la carga anterior, que fue igual.'
			}
		},
		right: 'hold',
		because: {
			en: 'The chart shows what the slowest and the most heat-limited part went through; one panel does not. Another load’s chart under this ticket is a false record.',
			es: 'El registro muestra el calor que recibieron la pieza más lenta y la que menos calor aguanta; un panel no. El registro de otra carga en esta orden es un registro falso.'
		}
	},
	{
		id: 'struck-out',
		rule: 'release-by-another',
		kind: 'reason',
		question: {
			en: 'You wrote a reading wrong. How do you put it right, so that the next person can trust the row?',
			es: 'Anotó mal una lectura. ¿Cómo la corrige para que quien sigue pueda confiar en la fila?'
		},
		options: {
			over: {
				en: 'Write the right digits over the wrong ones, thick enough to cover them.',
				es: 'Escribo las cifras correctas encima, bien gruesas para que tapen.'
			},
			line: {
				en: 'One line through it, the right number beside it, initials and date.',
				es: 'Una línea encima, el número correcto al lado, iniciales y fecha.'
			},
			fresh: {
				en: 'Copy the whole ticket onto a clean sheet and throw the old one away.',
				es: 'Paso toda la orden a una hoja limpia y tiro la vieja.'
			}
		},
		right: 'line',
		because: {
			en: 'A mistake that can still be read is only a mistake. What is covered or thrown away could have been anything.',
			es: 'Un error que todavía se lee es solo un error. Lo tapado o tirado pudo ser cualquier cosa.'
		}
	},
	{ id: 'who-signs', rule: 'release-by-another', kind: 'field', example: 'steel-plates' },
	{ id: 'lead-sprayed', rule: 'release-by-another', kind: 'field', example: 'aluminium-brackets' },
	{
		id: 'blind-signature',
		rule: 'release-by-another',
		kind: 'reason',
		question: {
			en: 'The parts are already packed. A colleague you trust says they are fine and asks for your signature. Why do you not give it?',
			es: 'Las piezas ya están empacadas. Un compañero de confianza dice que están bien y le pide la firma. ¿Por qué no se la da?'
		},
		options: {
			trust: {
				en: 'Because colleagues are not to be trusted.',
				es: 'Porque en los compañeros no se confía.'
			},
			box: {
				en: 'Because packed parts may not be released before the next day.',
				es: 'Porque lo empacado no se puede liberar hasta el día siguiente.'
			},
			eyes: {
				en: 'Because a second look that nobody took is no second look; I open the box or I do not sign.',
				es: 'Porque una segunda mirada que nadie hizo no es una segunda mirada; abro la caja o no firmo.'
			}
		},
		right: 'eyes',
		because: {
			en: 'It has nothing to do with trust. Whoever sprayed sees what was meant. The signature says that other eyes saw what is there.',
			es: 'No es cuestión de confianza. Quien aplicó ve lo que quiso hacer. La firma dice que otros ojos vieron lo que hay.'
		}
	}
] satisfies readonly LessonCheck[];
