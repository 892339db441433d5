import type { LessonCheck } from '$lib/lessons';

export default [
	{ id: 'interval', rule: 'coat-interval', kind: 'field', example: 'steel-plates' },
	{
		id: 'finger',
		rule: 'coat-interval',
		kind: 'reason',
		question: {
			en: 'The shortest time is over. You touch the film on the tape and the glove comes away wet. What now?',
			es: 'Ya pasó el tiempo mínimo. Toca la película en la cinta y el guante sale mojado. ¿Y ahora?'
		},
		options: {
			wait: {
				en: 'Wait and touch again, inside the window of the sheet.',
				es: 'Esperar y tocar otra vez, dentro de la ventana de la hoja.'
			},
			spray: {
				en: 'Spray, because the sheet’s time is over.',
				es: 'Aplicar, porque ya pasó el tiempo de la hoja.'
			},
			heat: {
				en: 'Push the rack into the warm oven for a moment.',
				es: 'Meter un momento el bastidor al horno tibio.'
			}
		},
		right: 'wait',
		because: {
			en: 'The shortest time holds for a normal day. Cold parts or a thick coat need longer, and the touch shows it. Heat would close the surface over the solvent.',
			es: 'El tiempo mínimo vale para un día normal. Piezas frías o una mano gruesa piden más, y el tacto lo muestra. El calor cerraría la superficie sobre el solvente.'
		}
	},
	{
		id: 'too-late',
		rule: 'coat-interval',
		kind: 'reason',
		question: {
			en: 'The longest wait between coats was over half an hour ago. The first coat is closed and shiny. What do you do?',
			es: 'La espera máxima entre manos pasó hace media hora. La primera mano está cerrada y brillante. ¿Qué hace?'
		},
		options: {
			heavy: {
				en: 'Spray the second coat wetter, so that it bites.',
				es: 'Aplicar la segunda mano más mojada para que agarre.'
			},
			solvent: {
				en: 'Wipe with solvent to open the film, then spray.',
				es: 'Pasar solvente para abrir la película y luego aplicar.'
			},
			stop: {
				en: 'Not spray; put the rack aside, note the time and ask the lead what the sheet wants.',
				es: 'No aplicar; poner aparte el bastidor, anotar la hora y preguntar al responsable qué pide la hoja.'
			}
		},
		right: 'stop',
		because: {
			en: 'A closed skin gives the next coat no hold. More paint or solvent on top may wrinkle it. Whether scuffing or a cure comes first stands in the data sheet of this coating.',
			es: 'Una piel cerrada no le da agarre a la siguiente mano. Más pintura o solvente encima puede arrugarla. Si primero se lija o se cura, lo dice la hoja técnica de ese recubrimiento.'
		}
	},
	{
		id: 'why-two',
		rule: 'coat-interval',
		kind: 'reason',
		question: {
			en: 'Two coats in quick succession save ten minutes. What does it cost?',
			es: 'Dos manos seguidas ahorran diez minutos. ¿Qué cuesta?'
		},
		options: {
			nothing: {
				en: 'Nothing: the wet coats flow together and get even.',
				es: 'Nada: las manos húmedas se juntan y quedan parejas.'
			},
			trapped: {
				en: 'Runs at once, and solvent shut in that bursts in the oven.',
				es: 'Escurridos enseguida, y solvente encerrado que revienta en el horno.'
			},
			paint: {
				en: 'Paint only, because the film gets thinner.',
				es: 'Solo pintura, porque la película queda más delgada.'
			}
		},
		right: 'trapped',
		because: {
			en: 'Without the pause both coats are one thick wet layer. It is too heavy for an upright face, and its solvent has twice as far to go.',
			es: 'Sin la pausa, las dos manos son una sola capa húmeda gruesa. Pesa demasiado para una cara vertical y su solvente tiene el doble de camino.'
		}
	}
] satisfies readonly LessonCheck[];
