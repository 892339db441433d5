import { CAVITIES, FEATURES, FITTED, SHAPES, substrate, SURFACES, type Part } from '$lib/engine';
import type { Row, TicketWords } from './words';

const magnet = (sticks: boolean | null, words: TicketWords['words']) =>
	sticks === null ? words.notTried : sticks ? words.sticks : words.doesNotStick;

/** What the ticket says of one sort of part. */
export function partRows(part: Part, { words, row, quantity, name, names }: TicketWords): Row[] {
	const material =
		part.material === 'unknown' ? words.unknownMaterial : name({ it: substrate(part.material).name }, 'it');
	return [
		row(words.count, String(part.count)),
		row(words.material, material),
		row(words.magnet, magnet(part.magnetSticks, words)),
		row(words.shape, name(SHAPES, part.shape)),
		row(
			words.size,
			[part.length, part.width, part.height].map((size) => quantity(size, 'length')).join(' × ')
		),
		row(words.thickness, quantity(part.thickness, 'length')),
		row(words.mass, quantity(part.mass, 'mass')),
		row(words.surface, name(SURFACES, part.surface)),
		row(words.cavity, name(CAVITIES, part.cavity)),
		row(words.porous, part.porous ? words.porousYes : words.no),
		row(words.features, names(FEATURES, part.features)),
		row(words.masked, names(FEATURES, part.masked)),
		row(words.fitted, names(FITTED, part.fitted)),
		row(words.blindHole, part.blindHole ? words.yes : words.no),
		...(part.tempered === null ? [] : [row(words.tempered, quantity(part.tempered, 'temperature'))]),
		...(part.humidStore ? [row(words.humidStore, words.humid)] : [])
	];
}
