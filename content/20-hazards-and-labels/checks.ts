import type { LessonCheck } from '$lib/lessons';

export default [
	{
		id: 'no-label',
		rule: 'gear-for-degreasing',
		kind: 'reason',
		question: {
			en: 'A can without a label stands at the wash bench. Somebody says it is the usual cleaner. What do you do?',
			es: 'En el banco de lavado hay una lata sin etiqueta. Alguien dice que es el limpiador de siempre. ¿Qué hace usted?'
		},
		options: {
			aside: {
				en: 'put it aside unused and tell the lead',
				es: 'apartarla sin usarla y avisar al responsable'
			},
			smell: { en: 'smell at it, then write the label', es: 'olerla y luego escribir la etiqueta' },
			back: { en: 'pour it back into the cleaner drum', es: 'regresarla al tambor de limpiador' }
		},
		right: 'aside',
		because: {
			en: 'Nobody can choose a glove for a liquid without a name. Smelling at it is breathing it, and poured back it may spoil a whole drum.',
			es: 'Nadie puede elegir guante para un líquido sin nombre. Olerlo es respirarlo, y de vuelta al tambor puede echarlo a perder entero.'
		}
	},
	{ id: 'degreasing-gear', rule: 'gear-for-degreasing', kind: 'field', example: 'steel-plates' },
	{ id: 'mixing-gear', rule: 'gear-for-mixing', kind: 'field', example: 'steel-plates' },
	{ id: 'pouring', rule: 'bonded-pouring', kind: 'field', example: 'steel-plates' },
	{
		id: 'which-glove',
		rule: 'gear-for-mixing',
		kind: 'reason',
		question: {
			en: 'A new hardener came in. Where do you find out which glove holds it off?',
			es: 'Llegó un endurecedor nuevo. ¿Dónde averigua qué guante lo detiene?'
		},
		options: {
			last: { en: 'the glove of the last hardener will do', es: 'sirve el guante del endurecedor anterior' },
			thick: { en: 'whichever glove feels thickest', es: 'el guante que se sienta más grueso' },
			section: {
				en: 'section 8 of its own safety data sheet',
				es: 'en la sección 8 de su propia hoja de datos de seguridad'
			}
		},
		right: 'section',
		because: {
			en: 'Each liquid goes through each glove stuff at its own speed. Thickness does not show it, and neither does the last can.',
			es: 'Cada líquido atraviesa cada material de guante a su ritmo. El grosor no lo dice, y la lata anterior tampoco.'
		}
	}
] as const satisfies readonly LessonCheck[];
