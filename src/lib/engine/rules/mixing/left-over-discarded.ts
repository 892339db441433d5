import { potLifeToday } from '../../plan/pot-life-today';
import { shopWindow } from '../../shop/shop';
import { cite } from '../../sources/provenance';
import type { Rule } from '../rule';

/** Fresh enough left-over may be used or discarded; it is never thinned to rescue it. */
export default {
	id: 'left-over-discarded',
	station: 'mixing',
	competency: 'mixing',
	skill: 'C8',
	title: { en: 'Left-over mix past its time is discarded', es: 'El sobrante pasado de tiempo se desecha' },
	why: {
		en: 'A two-part mix goes on reacting in the cup. Thinner makes it runny again but does not undo the reaction.',
		es: 'Una mezcla de dos partes sigue reaccionando en el vaso. El diluyente la vuelve fluida, pero no deshace la reacción.'
	},
	severity: 'quality',
	authority: 'data-sheet',
	provenance: cite('ufgs-09-97-10', '§3.7.1', { read: 'thinner does not restore pot life' }),
	lesson: 'pot-life#left-over-discarded',
	breaks: { wrong: ['gel-bits', 'flaking', 'orange-peel'] },
	outcome: {
		en: 'Gel bits, poor flow, and a film that lets go.',
		es: 'Grumos de gel, mala nivelación y una película que se suelta.'
	},
	evidence: {
		en: 'Compare the mix time on the cup with the pot life at the paint’s temperature.',
		es: 'Compare la hora de mezcla del vaso con la vida de la mezcla a la temperatura de la pintura.'
	},
	field: 'left-over-action',
	applies: ({ job, sheet }) => sheet.parts === 2 && job.shelf.leftOverAge !== null,
	expects(seen) {
		const life = potLifeToday(seen);
		const latest = life && life.value * shopWindow(seen.shop, 'mix.pot-life-share').max.value;
		// a pot life nobody can tell for today's temperature is not trusted with old mix
		const fresh = latest !== undefined && seen.job.shelf.leftOverAge! <= latest;
		return { kind: 'one-of', options: fresh ? ['use', 'discard'] : ['discard'] };
	}
} satisfies Rule;
