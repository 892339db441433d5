import {
	lineOn,
	SHEET_LINES,
	shopValue,
	shopWindow,
	unitOf,
	type DataSheet,
	type LineId,
	type Provenance,
	type Shop
} from '$lib/engine';

/** Limits of a reading in SI, null where open on that side, and whose word they are. */
export type PracticalLimit = {
	readonly least: number | null;
	readonly most: number | null;
	readonly provenance: Provenance;
};

/** The shop and the data sheet of the coating on the panels. */
export type Bench = { readonly shop: Shop; readonly sheet: DataSheet };

/** Where a limit comes from: silent where neither sheet nor shop says anything. */
export type FindLimit = (bench: Bench) => PracticalLimit | undefined;

/** The same number on both sides of a comparison: what was typed, converted or averaged differs in its last bits. */
export const exact = (value: number): number => Number(value.toPrecision(12));

const arithmetic: Provenance = { origin: 'arithmetic', verification: 'memory' };

const within = (least: number | null, most: number | null, provenance: Provenance): PracticalLimit => ({
	least: least === null ? null : exact(least),
	most: most === null ? null : exact(most),
	provenance
});

/** A line of the sheet as it holds in the shop: a window, or one number for a limit on one side. */
function fromSheet(line: LineId, side?: 'least' | 'most'): FindLimit {
	return ({ shop, sheet }) => {
		const entry = lineOn(sheet, line, shop.on);
		if (!entry) return undefined;
		const si = unitOf(SHEET_LINES[line].dimension, entry.unit).toSi;
		const { provenance } = entry;
		if ('min' in entry) return within(si(entry.min), si(entry.max), provenance);
		return within(
			side === 'least' ? si(entry.value) : null,
			side === 'least' ? null : si(entry.value),
			provenance
		);
	};
}

const eitherOf =
	(...ways: readonly FindLimit[]): FindLimit =>
	(bench) => {
		for (const way of ways) {
			const found = way(bench);
			if (found) return found;
		}
		return undefined;
	};

const fromShop =
	(id: Parameters<typeof shopWindow>[1]): FindLimit =>
	({ shop }) => {
		const { min, max } = shopWindow(shop, id);
		return within(min.value, max.value, max.provenance);
	};

/** The tighter of the sheet's band and what the shop lets the hardener be off by. */
const mixRatio: FindLimit = (bench) => {
	const ratio = fromSheet('mix-ratio')(bench)?.most;
	const band = fromSheet('mix-ratio-band')(bench);
	if (ratio == null || !band) return undefined;
	const { value: off } = shopValue(bench.shop, 'mix.hardener-tolerance');
	// the error of the hardener is target over mixed, less one
	return within(
		Math.max(band.least ?? 0, ratio / (1 + off)),
		Math.min(band.most ?? Infinity, ratio / (1 - off)),
		band.provenance
	);
};

/** Silent under films thinner than the shop value, as the rule on the profile is. */
const profile: FindLimit = (bench) => {
	const thinnest = fromSheet('dry-film')(bench)?.least;
	const { shop } = bench;
	if (thinnest == null || thinnest < shopValue(shop, 'profile.thinnest-film').value) return undefined;
	const [least, most] = (['profile.share-least', 'profile.share-most'] as const).map(
		(id) => thinnest * shopValue(shop, id).value
	);
	return within(least!, most!, arithmetic);
};

const atMost =
	(
		...ids: readonly ('practical.mask-line' | 'blast-to-coat.steel' | 'blast-to-coat.aluminium')[]
	): FindLimit =>
	({ shop }) => {
		const [strictest] = ids.map((id) => shopValue(shop, id)).sort((a, b) => a.value - b.value);
		return within(null, strictest!.value, strictest!.provenance);
	};

const dewMargin: FindLimit = ({ shop }) => {
	const { value, provenance } = shopValue(shop, 'spray.dew-point-margin');
	return within(value, null, provenance);
};

/** Every limit a practical holds a reading against. */
export const practicalLimits = {
	maskLine: atMost('practical.mask-line'),
	profile,
	blastSteel: fromShop('blast.pressure.steel'),
	blastAluminium: fromShop('blast.pressure.aluminium'),
	blastToCoat: atMost('blast-to-coat.steel', 'blast-to-coat.aluminium'),
	agitate: fromSheet('agitate'),
	mixRatio,
	cupTime: fromSheet('viscosity'),
	dewMargin,
	capPressure: eitherOf(fromSheet('cap-pressure'), fromShop('gun.cap-pressure')),
	film: fromSheet('dry-film'),
	flash: fromSheet('flash'),
	holdTemperature: fromSheet('cure-metal-temperature'),
	holdTime: fromSheet('cure-metal-hold'),
	rubs: fromSheet('solvent-rubs', 'least'),
	crossCut: fromSheet('adhesion-class', 'most')
} satisfies Record<string, FindLimit>;
