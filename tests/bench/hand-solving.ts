import { DEMO_SHEETS, limits, type Job, type LineId } from '../../src/lib/engine/index';
import { situation } from '../../src/lib/engine/plan/situation';
import { ruleById, SHOP_VALUES } from '../../src/lib/engine/index';
import { printed } from '../property/printed';
import { shop } from './bench-jobs';

/*
 * Nine rules whose limits are arithmetic from end to end, once as the engine works them out (where they apply, with
 * every derivation) and once written out by hand on numbers taken out of sheet, shop and ticket beforehand. They are
 * compared for accepted jobs of two-part coatings without a film of the customer's, as all nine speak there, but for
 * the growth of round parts.
 */
const RULES_BY_HAND = [
	'lowest-surface-temperature',
	'wet-film-for-dry-film',
	'batch-covers-the-job',
	'hardener-by-volume',
	'hardener-by-weight',
	'use-within-pot-life',
	'growth-on-diameter',
	'spot-minimum',
	'spot-maximum'
].map(ruleById);

/** Lowest and highest of each rule, as the engine says; empty windows where a rule is silent. */
export function limitsByRules(job: Job): number[] {
	const seen = situation(job, shop)!;
	const found: number[] = [];
	for (const rule of RULES_BY_HAND) {
		const window = rule.applies(seen) ? limits(rule.expects(seen)) : undefined;
		found.push(window?.min ?? NaN, window?.max ?? NaN);
	}
	return found;
}

const SHAPES = ['plate', 'bracket', 'box', 'bar', 'ring', 'tube'] as const;
const number = (id: keyof typeof SHOP_VALUES, end: 'value' | 'min' | 'max' = 'value') =>
	(SHOP_VALUES[id] as { readonly value?: number; readonly min?: number; readonly max?: number })[end]!;

/** Everything the nine rules look at, as plain numbers. */
export type Numbers = {
	readonly parts: readonly (readonly number[])[];
	readonly weather: readonly [air: number, humidity: number, paint: number];
	readonly sheet: Readonly<Record<string, number>>;
	readonly round: boolean;
};

export function numbersOf(job: Job): Numbers {
	const sheet = DEMO_SHEETS.find(({ id }) => id === job.coating)!;
	const line = (id: LineId, end: 'min' | 'max') => printed(sheet, id, job.on)![end];
	return {
		parts: job.parts.map(({ shape, count, length, width, height, thickness }) => [
			SHAPES.indexOf(shape),
			count,
			length,
			width,
			height,
			thickness
		]),
		weather: [job.weather.air, job.weather.humidity, job.weather.paint],
		sheet: {
			filmLeast: line('dry-film', 'min'),
			filmMost: line('dry-film', 'max'),
			solids: line('volume-solids', 'max'),
			coats: line('coats', 'min'),
			ratio: line('mix-ratio', 'max'),
			bandLeast: line('mix-ratio-band', 'min'),
			bandMost: line('mix-ratio-band', 'max'),
			base: line('density-base', 'max'),
			hardener: line('density-hardener', 'max'),
			byWeight: sheet.basis === 'weight' ? 1 : 0,
			potLife: line('pot-life', 'max'),
			potLifeAt: line('pot-life-at', 'max')
		},
		round: job.parts.some(({ shape }) => shape === 'tube' || shape === 'bar' || shape === 'ring')
	};
}

const MARGIN = number('spray.dew-point-margin');
const DEW_ROUNDING = number('spray.dew-point-rounding');
const WET_TOLERANCE = number('film.wet-tolerance');
const TRANSFER = number('spray.transfer');
const RESERVE = number('mix.batch-reserve');
const HARDENER = number('mix.hardener-tolerance');
const [AGE_LEAST, AGE_MOST] = [number('mix.pot-life-share', 'min'), number('mix.pot-life-share', 'max')];
const GROWTH = number('growth.tolerance');
const SPOT = number('inspection.spot.rounding');

function area([shape, count, length, width, height, thickness]: readonly number[]): number {
	const [l, w, h, t] = [length!, width!, height!, thickness!];
	const inner = Math.max(w - 2 * t, 0);
	switch (shape) {
		case 0:
			return 2 * l * w * count!;
		case 1:
			return 2 * (w + h) * l * count!;
		case 2: {
			const [il, iw, ih] = [Math.max(l - 2 * t, 0), inner, Math.max(h - t, 0)];
			return (l * w + 2 * h * (l + w) + il * iw + 2 * ih * (il + iw)) * count!;
		}
		case 3:
			return (Math.PI * w * l + (Math.PI * w * w) / 2) * count!;
		case 4:
			return ((Math.PI * (w * w - inner * inner)) / 2 + Math.PI * l * (w + inner)) * count!;
		default:
			return Math.PI * l * w * count!;
	}
}

/** The same limits, written out. */
export function limitsByHand({ parts, weather, sheet, round }: Numbers): number[] {
	const [air, humidity, paint] = weather;
	const t = air - 273.15;
	const gamma = Math.log(humidity) + (17.62 * t) / (243.12 + t);
	const coldest = (243.12 * gamma) / (17.62 - gamma) + 273.15 + MARGIN;
	const { filmLeast, filmMost, solids, coats, ratio, base, hardener } = sheet as Record<string, number> & {
		[key in 'filmLeast' | 'filmMost' | 'solids' | 'coats' | 'ratio' | 'base' | 'hardener']: number;
	};
	const film = (filmLeast + filmMost) / 2;
	const wet = film / coats / solids;
	let total = 0;
	for (const part of parts) total += area(part);
	const batch = (total * film) / solids / TRANSFER;
	const byVolume = sheet.byWeight ? (ratio * hardener) / base : ratio;
	const byMass = sheet.byWeight ? ratio : (ratio * base) / hardener;
	const off = Math.min(HARDENER, 1 - ratio / sheet.bandMost!, ratio / sheet.bandLeast! - 1);
	const [volume, mass] = [500e-6 / byVolume, 0.5 / byMass];
	const life = sheet.potLife! * 2 ** ((sheet.potLifeAt! - paint) / 10);
	const growth = 2 * filmMost;
	return [
		Math.floor((coldest - 273.15) * 10) / 10 + 273.15,
		coldest + DEW_ROUNDING,
		wet * (1 - WET_TOLERANCE),
		wet * (1 + WET_TOLERANCE),
		batch,
		batch * (1 + RESERVE),
		volume * (1 - off),
		volume * (1 + off),
		mass * (1 - off),
		mass * (1 + off),
		life * AGE_LEAST,
		life * AGE_MOST,
		round ? growth * (1 - GROWTH) : NaN,
		round ? growth * (1 + GROWTH) : NaN,
		0.8 * filmLeast * (1 - SPOT),
		0.8 * filmLeast * (1 + SPOT),
		1.2 * filmMost * (1 - SPOT),
		1.2 * filmMost * (1 + SPOT)
	];
}
