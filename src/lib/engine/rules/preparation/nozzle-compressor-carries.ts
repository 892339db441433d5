import { fromJob } from '../../plan/trace';
import { commonPractice } from '../../sources/provenance';
import type { Rule } from '../rule';
import { toBlast } from './blasting';
import { nozzleNeeds } from './nozzle-needs';

/** The widest that the compressor carries is quickest, but any narrower one blasts as well. */
export default {
	id: 'nozzle-compressor-carries',
	station: 'preparation',
	competency: 'preparation',
	skill: 'C7',
	title: { en: 'A nozzle the compressor carries', es: 'Una boquilla que el compresor alcanza a alimentar' },
	why: {
		en: 'A nozzle takes air by the square of its bore. One that takes more than the compressor delivers loses pressure, and the face stays shiny however long you blast.',
		es: 'La boquilla toma aire según su diámetro al cuadrado. Si toma más de lo que da el compresor, la presión cae y la cara queda brillante aunque insista.'
	},
	severity: 'quality',
	authority: 'shop',
	provenance: commonPractice,
	lesson: 'blast-settings#nozzle-compressor-carries',
	breaks: { wrong: ['flaking'] },
	outcome: {
		en: 'Parts after the first are under-blasted and the film lets go.',
		es: 'El resto queda mal granallado y la película se suelta.'
	},
	evidence: {
		en: 'Read the gauge at the nozzle after a minute of steady blasting, and try the bore with a drill shank.',
		es: 'Lea el manómetro en la boquilla tras un minuto de granallar seguido, y mida el diámetro con una broca.'
	},
	field: 'blast-nozzle',
	applies: (seen) =>
		seen.job.bench.compressor !== undefined && !!seen.job.bench.nozzles?.length && toBlast(seen),
	expects(seen) {
		const delivery = fromJob('bench.compressor', 'flow', seen.job.bench.compressor!, {
			en: 'Free air the compressor delivers',
			es: 'Aire libre que entrega el compresor'
		});
		const all = nozzleNeeds(seen);
		const carried = all.filter(({ needs }) => needs.value <= delivery.value);
		// the widest that is carried and the next one up show where the line runs
		const beside = [all.filter((one) => !carried.includes(one)).at(-1), carried[0]];
		return {
			kind: 'one-of',
			options: carried.length ? carried.map(({ nozzle }) => nozzle) : ['none'],
			because: [delivery, ...beside.flatMap((one) => one?.needs ?? [])]
		};
	}
} satisfies Rule;
