import { judgeArea } from '../../physics/readings/judge-area';
import type { Situation } from '../../plan/situation';
import { wantedFilm } from '../../plan/wanted-film';
import { cite } from '../../sources/provenance';
import type { Metre } from '../../units/dimension';
import type { Rule } from '../rule';

const measured = ({ job }: Situation) =>
	job.readings.length > 0 && job.readings.every((spot) => spot.length > 0);

export default {
	id: 'film-readings-judged',
	station: 'inspection',
	competency: 'inspection',
	skill: 'C12',
	title: { en: 'The readings decide: accept or hold', es: 'Las lecturas deciden: aceptar o retener' },
	why: {
		en: 'A good mean can hide a bare spot, and good spots a thin mean, so both have to hold. Fewer than five spots of three readings release nothing.',
		es: 'Un buen promedio puede tapar un sitio casi desnudo, y buenos sitios un promedio delgado; deben cumplir ambos. Con menos de cinco sitios de tres lecturas no se libera.'
	},
	severity: 'quality',
	authority: 'tool',
	provenance: cite('sspc-pa-2', '§§3, 8, 9', { read: 'stored text of 2012/2015' }),
	lesson: 'film-thickness#film-readings-judged',
	breaks: { wrong: ['over-thick', 'pinpoint-rust', 'holiday'] },
	outcome: {
		en: 'A film outside its window goes out, or sound work is stripped.',
		es: 'Sale una película fuera de ventana, o se decapa trabajo bueno.'
	},
	evidence: {
		en: 'Work out the spot means and their mean again from the raw readings on the ticket.',
		es: 'Vuelva a sacar los promedios por sitio y el general con las lecturas crudas de la orden.'
	},
	field: 'film-verdict',
	applies: (seen) => measured(seen) && wantedFilm(seen) !== undefined,
	expects(seen) {
		const { min, max } = wantedFilm(seen)!;
		const { accepted } = judgeArea.at({
			readings: seen.job.readings as Metre[][],
			min: min.value,
			max: max.value
		});
		return { kind: 'one-of', options: [accepted ? 'accept' : 'hold'] };
	}
} satisfies Rule;
