import { shopWindow } from '../../shop/shop';
import { commonPractice } from '../../sources/provenance';
import type { Rule } from '../rule';

export default {
	id: 'gun-speed',
	station: 'spraying',
	competency: 'spraying',
	skill: 'C10',
	title: { en: 'Gun speed', es: 'Velocidad de la pistola' },
	why: {
		en: 'At a set flow the speed of the arm sets the film: half as fast lays twice as much.',
		es: 'A caudal fijo, la velocidad del brazo marca la película: a la mitad de velocidad, el doble de película.'
	},
	severity: 'quality',
	authority: 'shop',
	provenance: commonPractice,
	lesson: 'passes#gun-speed',
	breaks: { low: ['runs', 'over-thick'], high: ['dry-spray', 'orange-peel', 'holiday'] },
	outcome: {
		en: 'Too slow: runs and thick film. Too fast: thin, dry film.',
		es: 'Muy lenta: escurridos y película gruesa. Muy rápida: película delgada y seca.'
	},
	evidence: { en: 'Time a stroke of known length.', es: 'Mida el tiempo de una pasada de largo conocido.' },
	field: 'gun-speed',
	applies: () => true,
	expects({ shop }) {
		const { min, max } = shopWindow(shop, 'gun.speed');
		return { kind: 'range', min, max, amber: 0.05 };
	}
} satisfies Rule;
