import type { Situation } from '../../plan/situation';
import { cite } from '../../sources/provenance';
import type { Rule } from '../rule';
import { gaugeFor } from './gauge-for';

/** The one gauge all parts of the ticket need; undefined where they need different ones. */
function oneGauge({ job }: Situation) {
	const [first, ...others] = job.parts.map(({ material }) => gaugeFor(material));
	return others.every((gauge) => gauge === first) ? first : undefined;
}

export default {
	id: 'gauge-suits-substrate',
	station: 'inspection',
	competency: 'inspection',
	skill: 'C12',
	title: {
		en: 'The gauge suits the metal and is zeroed on it',
		es: 'El medidor corresponde al metal y se pone en cero sobre él'
	},
	why: {
		en: 'A magnetic gauge reads nothing true on aluminium, an eddy gauge adds the oxide of anodising, fibre laminate upsets both. Zero on the same prepared metal, or weigh a witness.',
		es: 'El magnético lee mal sobre aluminio, el de corrientes de Foucault suma el óxido del anodizado, el laminado engaña a ambos. Ponga en cero sobre el mismo metal preparado, o pese un testigo.'
	},
	severity: 'quality',
	authority: 'shop',
	provenance: cite('astm-b244', 'scope: eddy gauges read anodic film and coating together', {
		read: 'text of B244-09(14)'
	}),
	lesson: 'film-thickness#gauge-suits-substrate',
	breaks: { wrong: ['over-thick', 'pinpoint-rust'] },
	outcome: {
		en: 'Thin or thick parts go out as good.',
		es: 'Piezas delgadas o gruesas salen como buenas.'
	},
	evidence: {
		en: 'Take the same gauge to a bare piece with the same preparation: it must read zero there.',
		es: 'Lleve el mismo medidor a una pieza desnuda con la misma preparación: ahí debe leer cero.'
	},
	field: 'gauge',
	applies: (seen) => oneGauge(seen) !== undefined,
	expects(seen) {
		return { kind: 'one-of', options: [oneGauge(seen)!] };
	}
} satisfies Rule;
