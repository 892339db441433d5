import type { LessonCheck } from '$lib/lessons';

export default [
	{ id: 'rubs', rule: 'rub-count-from-sheet', kind: 'field', example: 'steel-plates' },
	{ id: 'cut-place', rule: 'cross-cut-on-witness', kind: 'field', example: 'steel-plates' },
	{ id: 'worst-class', rule: 'cross-cut-class', kind: 'field', example: 'aluminium-brackets' },
	{
		id: 'scale',
		rule: 'cross-cut-class',
		kind: 'reason',
		question: {
			en: 'The log says “cross-cut: 1”. Why can nobody release on that?',
			es: 'El registro dice «corte cruzado: 1». ¿Por qué nadie puede liberar con eso?'
		},
		options: {
			scale: {
				en: 'Without the method nobody knows whether that is near the best or near the worst.',
				es: 'Sin el método nadie sabe si eso está cerca de lo mejor o de lo peor.'
			},
			force: {
				en: 'The force in newtons is missing.',
				es: 'Falta la fuerza en newtons.'
			},
			colour: {
				en: 'The colour of the tape is missing.',
				es: 'Falta el color de la cinta.'
			}
		},
		right: 'scale',
		because: {
			en: 'ISO 2409 counts upward from 0 as the best, ASTM D3359 downward from 5B: 1 is good on one scale and 1B is bad on the other. Neither scale is a force. Method and class belong together.',
			es: 'ISO 2409 cuenta hacia arriba desde 0, lo mejor; ASTM D3359 hacia abajo desde 5B: 1 es bueno en una y 1B es malo en la otra. Ninguna es una fuerza. Método y clase van juntos.'
		}
	},
	{ id: 'what-now', rule: 'failed-witness-holds-load', kind: 'field', example: 'steel-plates' },
	{
		id: 'failed-panel',
		rule: 'failed-witness-holds-load',
		kind: 'reason',
		question: {
			en: 'The panel fails the rub test; every part on the rack is hard to the nail and shines. Why does the whole load stay?',
			es: 'El panel falla en el frote; todas las piezas del bastidor están duras a la uña y brillan. ¿Por qué se queda toda la carga?'
		},
		options: {
			count: {
				en: 'Because a panel has to be replaced before parts may leave.',
				es: 'Porque hay que reponer el panel antes de que salgan las piezas.'
			},
			bake: {
				en: 'Because everything is to be baked a second time, to be safe.',
				es: 'Porque todo se hornea otra vez, por seguridad.'
			},
			same: {
				en: 'Because the parts had the same cup and the same oven, and a film that is not cured can shine.',
				es: 'Porque las piezas tuvieron el mismo vaso y el mismo horno, y una película sin curar puede brillar.'
			}
		},
		right: 'same',
		because: {
			en: 'Shine and a hard touch do not show cure; the rub does, and it was done on the piece made for it. A second bake is a decision for the data sheet and the lead, after the cause is known.',
			es: 'El brillo y la dureza al tacto no muestran el curado; el frote sí, y se hizo en la pieza hecha para eso. Un segundo horneado lo deciden la hoja técnica y el responsable, cuando se conozca la causa.'
		}
	}
] satisfies readonly LessonCheck[];
