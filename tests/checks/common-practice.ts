import {
	DEMO_SHEETS,
	examplesByRule,
	exampleTickets,
	fahrenheit,
	fraction,
	limits,
	millimetres,
	minutes,
	psi,
	ratio,
	ruleById,
	seconds,
	shopValue,
	shopWindow,
	sheetLimits,
	sheetNumber,
	type Shop
} from '../../src/lib/engine';

/** Lowest and highest in SI; a single number twice. Or options of a field. */
export type Said = readonly [low: number, high: number] | readonly string[];

/**
 * What applicators of thin, oven-cured films do and tell each other. Nobody publishes it, so it proves nothing; it is
 * held beside the defaults to show where they agree and why they do not.
 */
export type CommonPractice = {
	readonly says: string;
	readonly trade: Said;
	readonly ours: () => Said;
	/** Why the defaults say something else, where they do. */
	readonly differs?: string;
};

const inch = (value: number) => millimetres(25.4 * value);
const shop: Shop = {
	on: '2026-01-01',
	sheets: Object.fromEntries(DEMO_SHEETS.map((sheet) => [sheet.id, sheet])),
	settings: {}
};
const examples = examplesByRule(exampleTickets(shop));

/** What a rule expects on an example job with a sheet. */
function expected(rule: string, job: string, sheet = 'demo-f-catalysed'): Said {
	const found = examples.get(rule)?.find((one) => one.id === job && one.sheet.id === sheet);
	if (!found) throw new RangeError(`common-practice: ${rule} is not called for on ${job} with ${sheet}`);
	const window = limits(found.expectation);
	if (window) return [window.min, window.max];
	if (!('options' in found.expectation)) throw new RangeError(`common-practice: ${rule} expects an order`);
	return found.expectation.options;
}

const window = (id: Parameters<typeof shopWindow>[1]) => (): Said => {
	const { min, max } = shopWindow(shop, id);
	return [min.value, max.value];
};
/** What the catalysed demo sheet states. */
const sheet = (line: Parameters<typeof sheetLimits>[2]) => (): Said => {
	const { min, max } = sheetLimits(shop, 'demo-f-catalysed', line)!;
	return [min, max];
};
const one = (value: number): Said => [value, value];
const upTo = (id: Parameters<typeof shopValue>[1]) => (): Said => [0, shopValue(shop, id).value];

export default [
	{
		says: 'Metal is blasted with aluminium oxide of about 100 grit, or with garnet',
		trade: ['aluminium-oxide-fine', 'garnet'],
		ours: () => expected('media-suits-metal', 'steel-plates')
	},
	{
		says: 'Metal is blasted at 80 to 100 psi',
		trade: [psi(80), psi(100)],
		ours: window('blast.pressure.steel'),
		differs:
			'The defaults stop at 5 bar (73 psi): grain of 120 to 180 mesh, a profile that stays under half of a film of 8 to 40 µm, and pressure read with the nozzle open.'
	},
	{
		says: 'Anodised parts are blasted at 30 to 40 psi',
		trade: [psi(30), psi(40)],
		ours: upTo('blast.pressure-most.anodised'),
		differs:
			'Blasting takes the oxide off. The default is to scuff; with the customer’s written yes at most 1.5 bar.'
	},
	{
		says: 'Parts that are not metal are blasted at 30 to 40 psi',
		trade: [psi(30), psi(40)],
		ours: upTo('blast.pressure-most.polymer'),
		differs:
			'A ceiling of 2 bar (29 psi) is kept for the few polymers that may be blasted at all: grain stays stuck in soft plastic. Those that craze, and laminates, are scuffed.'
	},
	{
		says: 'A surface that is still shiny or uneven is under-blasted, and the film lets go of it',
		trade: ['flaking'],
		ours: () => ruleById('blast-pressure').breaks.low ?? []
	},
	{
		says: 'Metal is soaked in solvent degreaser',
		trade: ['solvent-immersion'],
		ours: () => expected('cleaner-suits-material', 'aluminium-brackets')
	},
	{
		says: 'It soaks for 20 to 30 min',
		trade: [minutes(20), minutes(30)],
		ours: () => [],
		differs:
			'No field asks how long it soaks: clean is what keeps a whole water film for the time of the water-break check.'
	},
	{
		says: 'Polymers are wiped only',
		trade: ['mild-detergent'],
		ours: () => expected('cleaner-suits-material', 'abs-shells', 'demo-a-isocyanate')
	},
	{
		says: 'Laminates are wiped only',
		trade: ['mild-detergent', 'ketone-wipe'],
		ours: () => expected('cleaner-suits-material', 'laminate-panels')
	},
	{
		says: 'Metal is baked out for 60 min',
		trade: [minutes(60), minutes(60)],
		ours: window('bake-out.time')
	},
	{
		says: 'Metal is baked out at 300 °F',
		trade: [fahrenheit(300), fahrenheit(300)],
		ours: () => expected('bake-out-temperature', 'castings'),
		differs:
			'A bake-out cooler than the cure that follows leaves the rest to come out under the film. The default is 10 to 20 °C above the hottest cure of the sheet, never above the part’s limit; at 300 °F that fits cures up to 280 °F only.'
	},
	{
		says: 'Clean, blast and bake are repeated while residue shows',
		trade: ['repeat'],
		ours: () => expected('residue-repeats-loop', 'bleeding-castings')
	},
	{
		says: 'Coating is agitated 5 to 15 min',
		trade: [minutes(5), minutes(15)],
		ours: () => expected('agitate-settled-can', 'steel-plates')
	},
	{
		says: 'An example catalysed system is mixed 9:1',
		trade: [ratio(9), ratio(9)],
		ours: () => one(sheetNumber(shop, 'demo-f-catalysed', 'mix-ratio')!)
	},
	{
		says: 'The example system may be mixed from 6:1 to 12:1 to move the gloss',
		trade: [ratio(6), ratio(12)],
		ours: sheet('mix-ratio-band')
	},
	{
		says: 'It is mixed at least 30 s in a sealed vessel',
		trade: [seconds(30), Infinity],
		ours: () => expected('stir-time', 'steel-plates')
	},
	{
		says: 'Gun air is 20 to 30 psi',
		trade: [psi(20), psi(30)],
		ours: window('gun.cap-pressure'),
		differs:
			'20 to 30 psi is read at the handle. The defaults are for the air cap, read with the test cap, where a high-volume low-pressure gun must stay below 10 psi; the handle pressure that gives it is a fact of the gun.'
	},
	{
		says: 'The fan is 2 to 3 in wide',
		trade: [inch(2), inch(3)],
		ours: window('gun.fan')
	},
	{
		says: 'The gun is held 3 to 5 in off',
		trade: [inch(3), inch(5)],
		ours: window('gun.distance')
	},
	{
		says: 'Passes overlap by 50 %',
		trade: [fraction(0.5), fraction(0.5)],
		ours: window('gun.overlap')
	},
	{
		says: 'Recesses are sprayed with a 1 in pattern',
		trade: [inch(1), inch(1)],
		ours: window('gun.fan'),
		differs:
			'The default window is for faces, whose fan follows the width of the part. No field asks for the pattern in a recess; the lesson says to close the fan for it.'
	},
	{
		says: 'The fluid nozzle is 0.8 mm',
		trade: [millimetres(0.8), millimetres(0.8)],
		ours: () => [],
		differs: 'No field asks for the fluid nozzle: it follows from the gun and is not chosen ticket by ticket.'
	},
	{
		says: 'Parts flash at least 15 min at shop temperature',
		trade: [minutes(15), Infinity],
		ours: () => expected('flash-time', 'steel-plates')
	},
	{
		says: 'The cure is counted from the part reaching its temperature',
		trade: ['part'],
		ours: () => expected('clock-starts-on-part', 'steel-plates')
	},
	{
		says: 'Metal cures from 250 °F on the part',
		trade: [fahrenheit(250), fahrenheit(250)],
		ours: () => expected('cure-part-temperature', 'steel-plates'),
		differs: 'The sheet decides. The catalysed demo sheet states 145 to 155 °C (293 to 311 °F) for metal.'
	},
	{
		says: 'Metal cures 15 min',
		trade: [minutes(15), minutes(15)],
		ours: () => expected('hold-time', 'steel-plates'),
		differs: 'The sheet decides. The catalysed demo sheet states 60 to 72 min for metal.'
	},
	{
		says: 'What is not metal cures from 180 °F on the part',
		trade: [fahrenheit(180), fahrenheit(180)],
		ours: sheet('cure-polymer-temperature')
	},
	{
		says: 'What is not metal cures 60 min',
		trade: [minutes(60), minutes(60)],
		ours: sheet('cure-polymer-hold')
	},
	{
		says: 'Clean parts are handled with powder-free gloves only',
		trade: ['powder-free-nitrile'],
		ours: () => expected('clean-handling-gloves', 'steel-plates')
	}
] satisfies readonly CommonPractice[];
