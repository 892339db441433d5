import { cureTemperature } from '../../plan/cure-window';
import { sheetValue, type Situation } from '../../plan/situation';
import { constant, fromJob, workedOut, type Traced } from '../../plan/trace';
import { arithmetic, cite } from '../../sources/provenance';
import { fraction } from '../../units/construct';
import type { Rule } from '../rule';
import { has } from './hazards';

const RULE = 'oven-solvent-load';

/** What the sheet says is left at the oven door; where it is silent the whole wet film counts as solvent. */
const solventShare = (seen: Situation): Traced<'fraction'> =>
	sheetValue(seen, 'solvent-share') ??
	constant(RULE, 'fraction', fraction(1), arithmetic('a film holds no more solvent than its own volume'), {
		en: 'The sheet is silent: all of it counts as solvent',
		es: 'La hoja no lo dice: todo cuenta como solvente'
	});

function mostWet(seen: Situation): Traced<'volume'> {
	const plate = fromJob('bench.ovenSolventLimit', 'volume', seen.job.bench.ovenSolventLimit, {
		en: 'Most solvent per load, plate of the oven',
		es: 'Máximo de solvente por carga, placa del horno'
	});
	const share = solventShare(seen);
	const label = { en: 'Most wet coating per load', es: 'Máximo de recubrimiento húmedo por carga' };
	return workedOut(RULE, 'volume', plate.value / share.value, label, { plate, share });
}

export default {
	id: 'oven-solvent-load',
	station: 'curing',
	competency: 'safety',
	skill: 'C3',
	title: {
		en: 'No more wet film than the oven plate allows',
		es: 'No más película húmeda de la que permite la placa del horno'
	},
	why: {
		en: 'Solvent left in the film turns to vapour in minutes. The oven keeps it far below what burns for one stated amount per load; twice the racks, twice the vapour.',
		es: 'El solvente de la película se vuelve vapor en minutos. El horno lo mantiene lejos de lo que arde con una cantidad dada por carga; doble de bastidores, doble de vapor.'
	},
	severity: 'safety-stop',
	authority: 'safety-data-sheet',
	provenance: cite('nfpa-86', 'batch ovens: vapour held to a quarter of the lower flammable limit', {
		read: 'quotations in trade articles'
	}),
	lesson: 'loading-the-oven#oven-solvent-load',
	breaks: { high: ['soft-film', 'solvent-pop'] },
	outcome: {
		en: 'The oven can explode; an overfull load stays cold inside.',
		es: 'El horno puede explotar; la carga excesiva queda fría dentro.'
	},
	evidence: {
		en: 'From the batch record and the number of racks work out the wet volume per load, and read the plate.',
		es: 'Con el registro de mezcla y los bastidores calcule el volumen húmedo por carga, y lea la placa.'
	},
	field: 'oven-wet-volume',
	applies: (seen) =>
		cureTemperature(seen) !== undefined && has(seen, 'flammable') && solventShare(seen).value > 0,
	expects(seen) {
		return { kind: 'at-most', max: mostWet(seen), amber: 0 };
	}
} satisfies Rule;
