import { cite } from '../../sources/provenance';
import { feetPerMinute } from '../../units/construct';
import type { Rule } from '../rule';

const LAW = cite('osha-1910-107', '(b)(5)(i)', { read: 'state twin: 100 ft/min over the open face' });
const LOWEST = feetPerMinute(100);

export default {
	id: 'booth-air-speed',
	station: 'spraying',
	competency: 'safety',
	skill: 'C3',
	title: {
		en: 'The booth draws 100 ft/min or nobody sprays',
		es: 'La cabina jala 100 pies/min o no se aplica'
	},
	why: {
		en: 'Below 100 ft/min (0.51 m/s) across the open face the booth no longer carries vapour and mist away: they build up toward what burns and hang where people breathe.',
		es: 'Por debajo de 100 pies/min (0.51 m/s) en la cara abierta la cabina no se lleva vapor y neblina: se acumulan hacia lo que arde y quedan donde se respira.'
	},
	severity: 'safety-stop',
	authority: 'law',
	provenance: LAW,
	lesson: 'fire-and-booth#booth-air-speed',
	breaks: { wrong: ['dirt'] },
	outcome: {
		en: 'Vapour builds up to a fire; overspray settles on wet film.',
		es: 'Incendio por vapor, y neblina sobre la película húmeda.'
	},
	evidence: {
		en: 'Read the booth gauge or anemometer and the date of the filters.',
		es: 'Lea el manómetro o anemómetro de la cabina y la fecha de los filtros.'
	},
	field: 'booth-action',
	applies: () => true,
	expects({ job }) {
		return { kind: 'one-of', options: [job.bench.boothSpeed >= LOWEST ? 'spray' : 'stop'] };
	}
} satisfies Rule;
