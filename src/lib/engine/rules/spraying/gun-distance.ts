import { sheetWindow } from '../../plan/situation';
import { shopWindow } from '../../shop/shop';
import { commonPractice } from '../../sources/provenance';
import type { Rule } from '../rule';

/** As the data sheet says; where it is silent, as the shop does. */
export default {
	id: 'gun-distance',
	station: 'spraying',
	competency: 'spraying',
	skill: 'C10',
	title: { en: 'Gun distance', es: 'Distancia de la pistola' },
	why: {
		en: 'Close up the air ploughs the wet film and piles it up; from afar the drops dry before they land.',
		es: 'De cerca el aire empuja y acumula la película húmeda; de lejos las gotas se secan antes de llegar.'
	},
	severity: 'quality',
	authority: 'data-sheet',
	provenance: commonPractice,
	lesson: 'gun-set-up#gun-distance',
	breaks: { low: ['runs', 'over-thick', 'orange-peel'], high: ['dry-spray', 'orange-peel'] },
	outcome: {
		en: 'Too near: runs and ripple. Too far: dry, sandy spray.',
		es: 'Muy cerca: escurridos y ondas. Muy lejos: aplicación seca y arenosa.'
	},
	evidence: {
		en: 'Hold the spacer stick between cap and part.',
		es: 'Ponga la varilla de distancia entre boquilla y pieza.'
	},
	field: 'gun-distance',
	applies: () => true,
	expects(seen) {
		const { min, max } = sheetWindow(seen, 'distance') ?? shopWindow(seen.shop, 'gun.distance');
		return { kind: 'range', min, max, amber: 0.02 };
	}
} satisfies Rule;
