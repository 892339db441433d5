import { describe, expect, test } from 'vitest';
import { DRILL_KINDS, makePracticeDrill, type Breadth, type PracticeDrill } from '$lib/drills';
import { field, grade, rightAnswers } from '$lib/engine';
import { breaking } from './breaking';
import { demoShop } from './shop';

const shop = demoShop();
const SEEDS = 60;

describe.each(DRILL_KINDS.map((kind) => [kind.id, kind] as const))('%s', (part, kind) => {
	const make = (seed: number) =>
		makePracticeDrill({ seed, breadth: ((seed % 3) + 1) as Breadth, shop, part });
	const drills: PracticeDrill[] = [];
	for (let seed = 0; seed < SEEDS; seed += 1) {
		const drill = make(seed);
		if (drill) drills.push(drill);
	}

	test('is found for every seed, and the same for the same seed', () => {
		expect(drills).toHaveLength(SEEDS);
		for (let seed = 0; seed < 5; seed += 1) expect(make(seed)).toEqual(drills[seed]);
		expect(new Set(drills.map(({ job }) => JSON.stringify(job))).size).toBeGreaterThan(SEEDS * 0.9);
	});

	test('asks what it is about and nothing else, at stations that have something to fill in', () => {
		for (const { plan, stations } of drills) {
			const asked = plan.fields.map((planned) => planned.field);
			expect(asked.filter((id) => !(kind.asks as readonly string[]).includes(id))).toEqual([]);
			expect(asked).toEqual(expect.arrayContaining([...kind.needs]));
			expect([...new Set(asked.map((id) => field(id).station))].sort()).toEqual([...stations].sort());
		}
	});

	test('passes with the plan’s own answers, and shows each breach at its rule', () => {
		for (const { plan } of drills) {
			expect(grade(plan, rightAnswers(plan)).result).toBe('clear');
			for (const planned of plan.fields)
				for (const demand of planned.demands) {
					const answer = breaking(planned.field, demand)!;
					const { breaches } = grade({ ...plan, fields: [planned] }, { [planned.field]: answer });
					expect(breaches.map(({ rule }) => rule)).toContain(demand.rule);
				}
		}
	});

	test('comes to ask every one of its fields, so that none is listed in vain', () => {
		const asked = new Set(drills.flatMap(({ plan }) => plan.fields.map((planned) => planned.field)));
		expect(kind.asks.filter((id) => !asked.has(id))).toEqual([]);
	});
});
