import type { Job } from '../job/job';
import type { Part } from '../job/part';
import { partArea } from '../physics/film/part-area';
import { arithmetic } from '../sources/provenance';
import type { Text } from '../text';
import { count, squareMetres } from '../units/construct';
import { constant, fromJob, workedOut, type Traced } from './trace';

/** The rule that asks for the area; it is named as the origin of the sums. */
const RULE = 'batch-covers-the-job';

/** Larger than any ticket of this shop, and the most the formula of a batch takes. */
const LARGEST = squareMetres(1e4);

const sides = (number: 1 | 2) =>
	constant(
		RULE,
		'count',
		count(number),
		arithmetic('sheet, boxes and rings on both sides, bars with their ends, tubes outside only'),
		{ en: 'Sides coated', es: 'Caras recubiertas' }
	);

function sizes(part: Part, at: number) {
	const size = (key: 'length' | 'width' | 'height' | 'thickness', en: string, es: string) =>
		fromJob(`parts.${at}.${key}`, 'length', part[key], { en, es });
	const outer = size('width', 'Outer diameter', 'Diámetro exterior');
	const wall = size('thickness', 'Wall', 'Pared');
	return {
		length: size('length', 'Length', 'Largo'),
		width: size('width', 'Width', 'Ancho'),
		height: size('height', 'Height', 'Alto'),
		outer,
		wall,
		inner: workedOut(
			RULE,
			'length',
			Math.max(outer.value - 2 * wall.value, 0),
			{ en: 'Inner diameter', es: 'Diámetro interior' },
			{ outer, wall }
		)
	};
}

function onePart(part: Part, at: number): Traced<'area'> {
	const { length, width, height, outer, inner, wall } = sizes(part, at);
	switch (part.shape) {
		case 'plate':
			return partArea.plate.of({ length, width, sides: sides(2) });
		case 'bracket':
			return partArea.bracket.of({ leg: width, otherLeg: height, width: length, sides: sides(2) });
		case 'box':
			return partArea.box.of({ length, width, height, wall, sides: sides(2) });
		case 'bar':
			return partArea.bar.of({ diameter: outer, length, sides: sides(2) });
		case 'ring':
			return partArea.ring.of({ outer, inner, thickness: length, sides: sides(2) });
		case 'tube':
			return partArea.tube.of({ outer, inner, length, sides: sides(1) });
	}
}

/** Area of so many alike. */
export const areaOfPieces = (one: Traced<'area'>, pieces: Traced<'count'>, label: Text): Traced<'area'> =>
	workedOut(RULE, 'area', one.value * pieces.value, label, { one, pieces });

const allOf = (part: Part, at: number): Traced<'area'> =>
	areaOfPieces(
		onePart(part, at),
		fromJob(`parts.${at}.count`, 'count', count(part.count), { en: 'Pieces', es: 'Piezas' }),
		{ en: `Area of ${part.name.en}`, es: `Área de ${part.name.es}` }
	);

/**
 * Area to coat of all parts on the ticket: sheet, boxes and rings on both sides, bars with their ends, tubes outside
 * only. Undefined where it is larger than any shop's ticket.
 */
export function coatedArea(job: Job): Traced<'area'> | undefined {
	const parts = job.parts.map(allOf);
	const total = parts.reduce((area, { value }) => area + value, 0);
	if (total > LARGEST) return undefined;
	const label = { en: 'Area to coat, all parts', es: 'Área por recubrir, todas las piezas' };
	return workedOut(
		RULE,
		'area',
		total,
		label,
		Object.fromEntries(parts.map((part, at) => [`part-${at + 1}`, part]))
	);
}
