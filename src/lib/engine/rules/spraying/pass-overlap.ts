import { shopWindow } from '../../shop/shop';
import { cite } from '../../sources/provenance';
import type { Rule } from '../rule';

export default {
	id: 'pass-overlap',
	station: 'spraying',
	competency: 'spraying',
	skill: 'C10',
	title: { en: 'Passes overlap', es: 'Las pasadas se traslapan' },
	why: {
		en: 'A fan is heavy in the middle and thin at its ends. Half overlap lays the thin end of one pass on the middle of the next.',
		es: 'El abanico carga en el centro y adelgaza en los extremos. Con medio traslape el extremo de una pasada cae en el centro de la siguiente.'
	},
	severity: 'quality',
	authority: 'shop',
	provenance: cite('navair-01-1a-509-2', 'A-8', { read: '50 % overlap of strokes' }, 'handbook'),
	lesson: 'passes#pass-overlap',
	breaks: { low: ['banding', 'holiday'], high: ['over-thick', 'runs'] },
	outcome: {
		en: 'Too little: stripes and missed bands. Too much: heavy film and runs.',
		es: 'Muy poco: franjas y bandas sin cubrir. Demasiado: película pesada y escurridos.'
	},
	evidence: {
		en: 'Spray a foil at the same setting and weigh or measure it in strips.',
		es: 'Aplique una lámina con el mismo ajuste y pésela o mídala por franjas.'
	},
	field: 'overlap',
	applies: () => true,
	expects({ shop }) {
		const { min, max } = shopWindow(shop, 'gun.overlap');
		return { kind: 'range', min, max, amber: 0.05 };
	}
} satisfies Rule;
