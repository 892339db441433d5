import { commonPractice } from '../../sources/provenance';
import { substrate } from '../../substrates/substrates';
import type { Rule } from '../rule';
import { askOr } from './dangers';

export default {
	id: 'low-energy-plastic-asked',
	station: 'intake',
	competency: 'intake',
	skill: 'C4',
	title: {
		en: 'Plastics nothing sticks to are asked',
		es: 'Los plásticos a los que nada se adhiere se preguntan'
	},
	why: {
		en: 'Polypropylene and its like give a film nothing to hold to, however clean they are. Without a flame, plasma or primer step that somebody agreed to, it flakes.',
		es: 'El polipropileno y similares no dan de qué agarrarse a la película, por limpios que estén. Sin un paso de flama, plasma o imprimación acordado, se desprende.'
	},
	severity: 'quality',
	authority: 'shop',
	provenance: commonPractice,
	lesson: 'materials#low-energy-plastic-asked',
	breaks: { wrong: ['flaking'] },
	outcome: { en: 'The film comes off in sheets.', es: 'La película se desprende en láminas.' },
	evidence: {
		en: 'Cut a cross-cut on a coupon of the same plastic.',
		es: 'Haga un corte cruzado en una probeta del mismo plástico.'
	},
	field: 'decision',
	applies: ({ job }) =>
		job.parts.some(({ material }) => material !== 'unknown' && substrate(material).lowSurfaceEnergy === true),
	expects: (seen) => ({ kind: 'one-of', options: askOr(seen) })
} satisfies Rule;
