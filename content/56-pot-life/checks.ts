import type { LessonCheck } from '$lib/lessons';

export default [
	{ id: 'wait', rule: 'induction-kept', kind: 'field', example: 'steel-plates' },
	{
		id: 'part-of-it',
		rule: 'induction-kept',
		kind: 'reason',
		question: {
			en: 'Another sheet asks for a wait after stirring. The cup has stood for it. From when does its pot life count?',
			es: 'Otra hoja pide una espera después de agitar. El vaso ya la cumplió. ¿Desde cuándo cuenta la vida de la mezcla?'
		},
		options: {
			mixed: {
				en: 'From the moment base and hardener met: the wait is part of it.',
				es: 'Desde que se juntaron base y endurecedor: la espera es parte de ella.'
			},
			waited: {
				en: 'From the end of the wait: before that the mix was not ready.',
				es: 'Desde que terminó la espera: antes la mezcla no estaba lista.'
			},
			gun: {
				en: 'From the first pass: in the cup nothing happens.',
				es: 'Desde la primera pasada: en el vaso no pasa nada.'
			}
		},
		right: 'mixed',
		because: {
			en: 'The wait exists because the mix reacts in the cup. So its clock has been running all along, and the time at the gun is shorter by the wait.',
			es: 'La espera existe porque la mezcla reacciona en el vaso. Su reloj corrió todo ese rato, y el tiempo en la pistola es más corto por esa espera.'
		}
	},
	{ id: 'hot-day', rule: 'use-within-pot-life', kind: 'field', example: 'hot-day' },
	{ id: 'old-mix', rule: 'left-over-discarded', kind: 'field', example: 'left-over-mix' },
	{
		id: 'left-over',
		rule: 'left-over-discarded',
		kind: 'reason',
		question: {
			en: 'A two-part mix has thickened in the cup. A splash of thinner makes it flow like new. Why is it still wrong?',
			es: 'Una mezcla de dos partes espesó en el vaso. Un chorrito de diluyente la deja fluida como nueva. ¿Por qué sigue mal?'
		},
		options: {
			colour: {
				en: 'The thinner makes the colour paler.',
				es: 'El diluyente aclara el color.'
			},
			reacted: {
				en: 'It has already reacted in the cup; on the part it can no longer link up and hold.',
				es: 'Ya reaccionó en el vaso; en la pieza ya no puede unirse ni agarrarse.'
			},
			share: {
				en: 'It is right as long as the thinner stays under the sheet’s limit.',
				es: 'Está bien mientras el diluyente no pase del límite de la hoja.'
			}
		},
		right: 'reacted',
		because: {
			en: 'Getting thick is the reaction itself. Thinner only spreads the reacted resin out; the gel bits and the poor hold stay.',
			es: 'Espesar es la reacción misma. El diluyente solo reparte la resina que ya reaccionó; los grumos y la mala adhesión se quedan.'
		}
	}
] satisfies readonly LessonCheck[];
