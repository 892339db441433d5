import { describe, expect, test } from 'vitest';
import { makeProvingDrill, type Conditions } from '$lib/drills';
import { celsius, percent } from '$lib/engine';
import { demoShop } from './shop';

const shop = demoShop();
const rules = ['wet-film-for-dry-film'];
const like: Conditions = {
	material: 'brass',
	coating: null,
	weather: { air: celsius(24), humidity: percent(61) }
};
const drills = (conditions: Conditions) =>
	Array.from({ length: 60 }, (_, seed) =>
		makeProvingDrill({ seed, competency: 'spraying', shop, rules, like: conditions })
	);
const coating = Object.keys(shop.sheets).find((id) => id.startsWith('demo-b'))!;

describe('drills of a refresher', () => {
	const made = drills({ ...like, coating });

	test('always hold the rule that slipped, and ask about it', () => {
		for (const drill of made) {
			const about = drill!.plan.fields.filter(({ demands }) =>
				demands.some(({ rule }) => rules.includes(rule))
			);
			expect(about.some(({ field }) => drill!.asked.includes(field))).toBe(true);
		}
	});

	test('meet the conditions of the job about every other time, and vary them the rest', () => {
		const again = made.filter(
			(drill) => drill!.job.coating === coating && drill!.job.parts[0]!.material === 'brass'
		);
		expect(again.length).toBeGreaterThan(15);
		expect(again.length).toBeLessThan(45);
		// a trap of the weather may be woven in on top
		expect(again.filter((drill) => drill!.job.weather.air === celsius(24)).length).toBeGreaterThan(
			again.length / 2
		);
	});

	test('are still made where the job’s conditions cannot come up in this shop', () => {
		const impossible = drills({ ...like, material: 'magnesium', coating: 'gone' });
		expect(impossible.every((drill) => drill !== undefined)).toBe(true);
	});
});
