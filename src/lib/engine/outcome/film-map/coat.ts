import { faceFilm } from '../../physics/spray/face-film';
import { strokeDeposit } from '../../physics/spray/stroke-deposit';
import { strokes } from '../../physics/spray/strokes';
import { oneNumber } from '../../plan/one-number';
import { workedOut, type Traced } from '../../plan/trace';
import type { Metre } from '../../units/dimension';
import { TEACHING_GUN } from './teaching-gun';

/** What is sprayed and how the gun moves. */
export type Stroking = {
	/** Fan as it was set: the strokes are aimed by it. */
	readonly fan: Traced<'length'>;
	/** Fan as it reaches the panel. */
	readonly laid: Traced<'length'>;
	readonly overlap: Traced<'fraction'>;
	readonly speed: Traced<'speed'>;
	readonly flow: Traced<'flow'>;
	readonly solids: Traced<'fraction'>;
	readonly transfer: Traced<'fraction'>;
};

/** One coat over the witness panel. */
export type Coat = {
	/** Dry film at even distances from one edge to the other. */
	readonly film: readonly Metre[];
	readonly mean: Traced<'length'>;
	/** From one stroke to the next. */
	readonly index: Traced<'length'>;
	readonly strokes: Traced<'count'>;
};

/** Strokes that take the middle of the fan to both edges: as many as cover a face that is wider by one fan. */
function strokesOver({ fan, overlap }: Stroking): Traced<'count'> {
	const { across } = TEACHING_GUN;
	const label = {
		en: 'Panel, and half a fan past either edge',
		es: 'Panel y medio abanico más allá de cada borde'
	};
	const width = workedOut('pass-overlap', 'length', across.value + fan.value, label, { across, fan });
	return strokes.of({ width, fan, overlap });
}

/** One coat: parallel strokes at an even speed, square to the panel. Throws a RangeError outside what its formulas hold for. */
export function layCoat(stroking: Stroking): Coat {
	const { fan, laid, overlap, speed, flow, solids, transfer } = stroking;
	const aim = { en: 'From one stroke to the next', es: 'De una pasada a la siguiente' };
	const index = workedOut('pass-overlap', 'length', fan.value * (1 - overlap.value), aim, { fan, overlap });
	const count = strokesOver(stroking);
	const coat = {
		face: TEACHING_GUN.across,
		fan: laid,
		index,
		strokes: count,
		deposit: strokeDeposit.of({ flow, solids, transfer, speed }),
		beta: TEACHING_GUN.shape
	};
	const mean = { en: 'Mean dry film of one coat', es: 'Película seca media de una mano' };
	const { film } = faceFilm.at({
		face: coat.face.value,
		fan: laid.value,
		index: index.value,
		strokes: count.value,
		deposit: coat.deposit.value,
		beta: coat.beta.value
	});
	return {
		film,
		mean: oneNumber(faceFilm, coat, 'length', mean, (laid) => laid.mean),
		index,
		strokes: count
	};
}
