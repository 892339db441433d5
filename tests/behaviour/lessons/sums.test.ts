import { describe, expect, test } from 'vitest';
import {
	celsius,
	coldestIn,
	cubicMetres,
	degrees,
	fitGrowth,
	given,
	gramsPerMillilitre,
	gramsPerMole,
	hotExplosiveLimit,
	METRIC,
	micrometres,
	ovenSolventLoad,
	percent,
	SHOP_VALUES,
	shopValue,
	shopWindow,
	US,
	valueBounds,
	type Shop,
	type ShopValueId,
	type Traced
} from '$lib/engine';
import { LANGS } from '$lib/i18n';
import { LESSONS, lessonView, type LessonSum } from '$lib/lessons';
import { sumView } from '../../../src/lib/lessons/sum-view';
import { demoShop } from './demo-shop';

const metric = { lang: 'en', units: METRIC } as const;
const every = LESSONS.flatMap(({ slug, sums }) => sums.map((sum) => [`${slug}: ${sum.id}`, sum] as const));

const air = given('temperature', celsius(20), { en: 'Air', es: 'Aire' });
const humidity = given('fraction', percent(60), { en: 'Humidity', es: 'Humedad' });
const asks = { en: 'How cold may it be?', es: '¿Qué tan fría puede estar?' };
const morning: LessonSum = { id: 'morning', asks, work: (shop) => coldestIn(air, humidity, shop) };

const leaves = (one: Traced): Traced[] => {
	const inputs = Object.values(one.inputs);
	return inputs.length ? inputs.flatMap(leaves) : [one];
};
/** A number with everything it was made from. */
const all = (one: Traced): Traced[] => [one, ...Object.values(one.inputs).flatMap(all)];
const leavesOf = ({ work }: LessonSum, shop: Shop) => [work(shop)].flat().flatMap(leaves);

describe('a sum', () => {
	const [dew, limit] = sumView(morning, demoShop, metric).steps;

	test('is worked in the order of its steps, each with what comes in there', () => {
		// 20 °C and 60 % give 12.0 °C in the psychrometric tables
		expect(dew).toMatchObject({ result: { value: '12\u00a0°C' }, asAbove: false });
		expect(dew!.given.map(({ label }) => label)).toEqual(['Air', 'Humidity']);
		expect(limit).toMatchObject({ result: { value: '15\u00a0°C' }, asAbove: true });
		expect(limit!.given.map(({ value }) => value)).toEqual(['3\u00a0°C']);
	});

	test('says where a number comes from, unless it was invented for it', () => {
		expect(dew!.given.map(({ provenance }) => provenance)).toEqual([undefined, undefined]);
		expect(dew!.result.provenance).toMatchObject({ cite: expect.stringContaining('WMO-No. 8') });
		expect(limit!.given[0]!.provenance).toMatchObject({ verification: 'memory' });
	});

	test('offers the lead a shop value to change, and no other number of common practice', () => {
		const practice = { origin: 'common-practice', verification: 'memory' } as const;
		const dry = given('length', micrometres(25), { en: 'Film', es: 'Película' }, practice);
		const { steps } = sumView(
			{ id: 'pin', asks, work: () => fitGrowth.thread.of({ dry }) },
			demoShop,
			metric
		);
		expect(steps[0]!.given[0]!.provenance).toMatchObject({ origin: 'common-practice', editable: false });
		const { steps: mixed } = sumView(
			{ id: 'age', asks, work: (shop) => shopWindow(shop, 'mix.pot-life-share').max },
			demoShop,
			metric
		);
		expect(mixed[0]!.result.provenance).toMatchObject({ origin: 'common-practice', editable: true });
	});

	test('tells within what its formula holds, and claims no such range for a plain addition', () => {
		expect(dew!.equation).toContain('17.62');
		expect(limit).not.toHaveProperty('equation');
		expect(sumView(morning, demoShop, metric).holds).toEqual([
			{ label: 'Air', window: '-45\u00a0to\u00a060\u00a0°C' },
			{ label: 'Humidity', window: '1–100\u00a0%' }
		]);
	});

	test('holds within the tightest limits of the formulas a number goes through', () => {
		const gas = given('temperature', celsius(150), { en: 'Oven', es: 'Horno' });
		const cold = given('fraction', percent(1), { en: 'Limit', es: 'Límite' });
		const share = given('fraction', percent(25), { en: 'Share', es: 'Parte' });
		const load: LessonSum = {
			...{ id: 'load', asks },
			work: () =>
				ovenSolventLoad.of({
					...{ gas, share, limit: hotExplosiveLimit.of({ limit: cold, gas }) },
					oven: given('volume', cubicMetres(2), { en: 'Chamber', es: 'Cámara' }),
					density: given('density', gramsPerMillilitre(0.9), { en: 'Density', es: 'Densidad' }),
					molarMass: given('molar-mass', gramsPerMole(90), { en: 'Molar mass', es: 'Masa molar' })
				})
		};
		// the load alone would be taken up to 500 °C
		expect(sumView(load, demoShop, metric).holds).toContainEqual({
			label: 'Oven',
			window: '-20\u00a0to\u00a0260\u00a0°C'
		});
	});

	test('shows thin vapour in parts per million only where it says so, and a sum of shares in percent', () => {
		const thin = given('fraction', percent(0.02), { en: 'In the air', es: 'En el aire' });
		const thick = given('fraction', percent(105), { en: 'Together', es: 'Juntos' });
		const air: LessonSum = { id: 'air', asks, work: () => [thin, thick] };
		const values = (sum: LessonSum) => sumView(sum, demoShop, metric).steps.map(({ result }) => result.value);
		expect(values(air)).toEqual(['0.02\u00a0%', '105\u00a0%']);
		expect(values({ ...air, inAir: true })).toEqual(['200\u00a0ppm', '105\u00a0%']);
	});

	test('speaks the language and the units of its reader', () => {
		const view = sumView(morning, demoShop, { lang: 'es', units: US });
		expect(view.asks).toBe(asks.es);
		expect(view.steps[0]).toMatchObject({ given: [{ label: 'Aire', value: '68\u00a0°F' }, {}] });
		expect(view.steps[1]!.result.value).toBe('59\u00a0°F');
	});

	test('follows the shop’s own value and says that the shop set it', () => {
		const settings = { 'spray.dew-point-margin': { from: '2026-01-01', value: degrees(5) } } as const;
		const [, later] = sumView(morning, { ...demoShop, settings }, metric).steps;
		expect(later).toMatchObject({
			given: [{ value: '5\u00a0°C', provenance: { origin: 'shop', editable: true } }],
			result: { value: '17\u00a0°C' }
		});
	});

	test('lists what two answers share once', () => {
		const dry = given('length', micrometres(25), { en: 'Film', es: 'Película' });
		const both = () => [fitGrowth.diameter.of({ dry }), fitGrowth.thread.of({ dry })];
		const { steps } = sumView({ id: 'pin', asks, work: both }, demoShop, metric);
		expect(steps).toMatchObject([
			{ given: [{ label: 'Film' }], asAbove: false, result: { value: '50\u00a0µm' } },
			{ given: [], asAbove: true, result: { value: '100\u00a0µm' } }
		]);
	});
});

describe.each(every)('%s', (_name, sum) => {
	test('has an answer from a formula of the engine', () => {
		const results = [sum.work(demoShop)].flat();
		const formulas = (one: Traced): string[] => [
			...(one.origin.kind === 'formula' ? [one.origin.id] : []),
			...Object.values(one.inputs).flatMap(formulas)
		];
		expect(results.length).toBeGreaterThan(0);
		for (const one of results) expect(formulas(one)).not.toEqual([]);
	});

	test('is written out in words in both languages, Spanish not left in English', () => {
		const labels = (lang: 'en' | 'es') =>
			sumView(sum, demoShop, { lang, units: METRIC }).steps.flatMap(({ given, result }) =>
				[...given, result].map(({ label }) => label)
			);
		const [en, es] = [labels('en'), labels('es')];
		expect(es).toHaveLength(en.length);
		expect(es.filter((label, at) => label === en[at])).toEqual([]);
	});

	test('shows no number that its unit rounds away', () => {
		for (const units of [METRIC, US]) {
			const { steps } = sumView(sum, demoShop, { lang: 'en', units });
			const shown = steps.flatMap(({ given, result }) => [...given, result]);
			const zero = [sum.work(demoShop)]
				.flat()
				.flatMap(all)
				.filter(({ value }) => value === 0);
			expect(shown.filter(({ value }) => /(^|, )-?0\u00a0/.test(value)).map(({ label }) => label)).toEqual(
				zero.map(({ label }) => label.en)
			);
		}
	});

	test('works with any value the shop may set', () => {
		const used = leavesOf(sum, demoShop).flatMap(({ origin }) =>
			origin.kind === 'shop-value' ? [origin.id as ShopValueId] : []
		);
		for (const id of new Set(used))
			for (const value of valueBounds(id)) {
				const set = SHOP_VALUES[id].shape === 'value' ? { value } : { min: value, max: value };
				const shop = { ...demoShop, settings: { [id]: { from: '2026-01-01', ...set } } };
				const found = leavesOf(sum, shop).find(
					({ origin }) => origin.kind === 'shop-value' && origin.id === id
				);
				expect(found?.value).toBe(value);
			}
	});
});

test.each(LANGS)('a page in %s is sent text and no function', (lang) => {
	for (const lesson of LESSONS) {
		const { sums } = lessonView(lesson, demoShop, { lang, units: METRIC });
		expect(Object.keys(sums)).toEqual(lesson.sums.map(({ id }) => id));
		expect(JSON.parse(JSON.stringify(sums))).toEqual(sums);
	}
});

test('the lesson on air leans on the shop’s own margin', () => {
	const { sums } = LESSONS.find(({ slug }) => slug === 'air-and-dew-point')!;
	const margin = shopValue(demoShop, 'spray.dew-point-margin');
	expect(sums.flatMap((sum) => leavesOf(sum, demoShop)).map(({ origin }) => origin)).toContainEqual(
		margin.origin
	);
});
