import { describe, expect, test } from 'vitest';
import { makeTicket } from '$lib/drills';
import {
	field,
	grade,
	ovenOutcome,
	rightAnswers,
	ruleById,
	shopValue,
	si,
	solve,
	windowOf,
	type Answer,
	type FieldId,
	type Plan
} from '$lib/engine';
import type { OvenChart } from '../../../../src/lib/drills/figures/oven-chart';
import kind from '../../../../src/lib/drills/kinds/read-the-oven-chart';
import { drawsOf, heating } from '../../../../src/lib/drills/kinds/read-the-oven-chart/heating';
import { loadOf, type Wall } from '../../../../src/lib/drills/kinds/read-the-oven-chart/load';
import { STORIES } from '../../../../src/lib/drills/kinds/read-the-oven-chart/stories';
import { recordersFor, told } from '../../../../src/lib/drills/kinds/read-the-oven-chart/told';
import { seeded } from '../../../../src/lib/drills/random';
import { breaking } from '../breaking';
import { demoShop } from '../shop';

const shop = demoShop();
const fieldIn = ({ fields }: Pick<Plan, 'fields'>, id: FieldId) => fields.find((one) => one.field === id);

const tickets = Array.from({ length: 160 }, (_, seed) => {
	const ticket = makeTicket({ seed, breadth: ((seed % 3) + 1) as 1 | 2 | 3, shop })!;
	return { seed, job: ticket.job, plan: solve(ticket.job, shop), shop };
}).filter(({ plan }) => plan.decision === 'accept' && kind.needs.every((id) => fieldIn(plan, id)));

const drills = tickets.flatMap((ticket) => {
	const made = kind.make(ticket, seeded(ticket.seed));
	if (!made) return [];
	const [figure] = made.steps[0]!.figures;
	if (figure?.kind !== 'oven-chart') throw new Error('no chart');
	return [{ ...ticket, made, figure, drill: { ...ticket.plan, fields: made.fields } as Plan }];
});

/** Every story that can be told of every load. */
const stories = tickets.flatMap((ticket) => {
	const random = seeded(ticket.seed);
	const load = loadOf(ticket, random);
	if (!load) return [];
	const [draws, recorders] = [drawsOf(random), recordersFor(load)];
	return STORIES.flatMap((story) => {
		const found = told(recorders, draws, story, ticket.job.bench.ovenUnit);
		return found ? [{ ...ticket, load, story, ...found }] : [];
	});
});

const value = (answer: Answer | undefined) => (answer?.kind === 'quantity' ? answer.value : undefined);
const option = (answer: Answer | undefined) => (answer?.kind === 'choice' ? answer.option : undefined);
const window = (plan: Plan, id: FieldId) => windowOf(fieldIn(plan, id)!.demands);

/** The chart gone through a second at a time, along straight lines: nothing of the engine's is used. */
function walked(chart: OvenChart, low: number, high: number) {
	const at = (line: readonly number[], time: number) => {
		const before = Math.min(Math.floor(time / chart.every), line.length - 2);
		const share = time / chart.every - before;
		return line[before]! * (1 - share) + line[before + 1]! * share;
	};
	const unloaded = chart.doorOpen.at(-1)!.from;
	let [first, last, inside, hottest] = [-1, -1, 0, 0];
	for (let time = 0; time <= (chart.air.length - 1) * chart.every; time += 1) {
		const places = [at(chart.heaviest, time), at(chart.thinnest, time)];
		hottest = Math.max(hottest, ...places);
		if (time > unloaded || Math.min(...places) < low) continue;
		if (first < 0 && Math.max(...places) <= high) first = time;
		last = time;
		inside += 1;
	}
	return { first, last, inside, hottest };
}

/** A wall in slices, a second at a time, by implicit finite differences; the air runs straight between samples. */
function sliced(wall: Wall, start: number, air: readonly number[], every: number, place: 'core' | 'face') {
	const slices = 16;
	const thick = wall.depth / slices;
	const capacity = wall.density * wall.heat * thick;
	const between = wall.conductivity / thick;
	const skin = 1 / (1 / wall.heatTransfer + thick / 2 / wall.conductivity);
	const diagonal = Array.from(
		{ length: slices },
		(_, at) => capacity + (at > 0 ? between : 0) + (at < slices - 1 ? between : skin)
	);
	const now = new Float64Array(slices).fill(start);
	const seen = [start];
	for (let second = 1; second <= (air.length - 1) * every; second += 1) {
		const sample = Math.ceil(second / every);
		const share = (second - 0.5) / every - (sample - 1);
		const around = air[sample - 1]! * (1 - share) + air[sample]! * share;
		const [pivot, right] = [[...diagonal], Array.from(now, (one) => one * capacity)];
		right[slices - 1]! += skin * around;
		for (let at = 1; at < slices; at += 1) {
			pivot[at]! -= between ** 2 / pivot[at - 1]!;
			right[at]! += (between * right[at - 1]!) / pivot[at - 1]!;
		}
		for (let at = slices - 1; at >= 0; at -= 1)
			now[at] = (right[at]! + (at < slices - 1 ? between * now[at + 1]! : 0)) / pivot[at]!;
		if (second % every) continue;
		const inward = skin * (around - now[slices - 1]!);
		seen.push(place === 'core' ? now[0]! : now[slices - 1]! + (inward * thick) / 2 / wall.conductivity);
	}
	return seen;
}

describe('the traces', () => {
	test('are what heat conduction makes of the air on the chart', () => {
		// in a cold spot the heaviest place does not see the air of the display
		const seen = stories.filter(({ story, figure }) => story.id !== 'cold-spot' && figure.every <= 60);
		const some = seen.filter((_, at) => at % 7 === 0);
		expect(some.length).toBeGreaterThan(15);
		expect(new Set(some.map(({ story }) => story.id)).size).toBeGreaterThan(6);
		for (const { load, figure } of some)
			for (const [line, wall, place] of [
				[figure.heaviest, load.heaviest, 'core'],
				[figure.thinnest, load.thinnest, 'face']
			] as const) {
				const own = sliced(wall, load.start, figure.air, figure.every, place);
				const off = line.map((one, at) => Math.abs(one - own[at]!));
				// a jump of the air at the door is drawn out over a sample here, and its mean taken there
				expect(Math.max(...off)).toBeLessThan(1.5);
				expect(off.reduce((sum, one) => sum + one, 0) / off.length).toBeLessThan(0.25);
			}
	});

	test('start at the part of the ticket, with the walls and the heat transfer of its shop', () => {
		for (const { job, load, figure } of stories) {
			expect(figure.heaviest[0]).toBeCloseTo(job.weather.part, 2);
			expect(figure.thinnest[0]).toBeCloseTo(job.weather.part, 2);
			expect(load.heaviest.heatTransfer).toBe(shopValue(shop, 'cure.heat-transfer').value);
			const deepest = Math.max(
				...job.parts.map(({ thickness, shape }) => thickness / (shape === 'bar' ? 4 : 2))
			);
			if (job.parts.length === 1) expect(load.heaviest.depth).toBeCloseTo(deepest, 9);
		}
	});

	test('have 50 to 121 samples each, and a display that is in the window long before the parts', () => {
		for (const { figure, load, fields } of stories) {
			expect(new Set([figure.air.length, figure.heaviest.length, figure.thinnest.length]).size).toBe(1);
			expect(figure.air.length).toBeGreaterThanOrEqual(50);
			expect(figure.air.length).toBeLessThanOrEqual(121);
			const starts = value(fields.find((one) => one.field === 'soak-starts')?.answer);
			const air = figure.air.findIndex((one) => one >= load.cure.low.value) * figure.every;
			const allowed = Math.max(figure.division, 120);
			if (starts !== undefined && load) expect(starts - air).toBeGreaterThan(allowed);
		}
	});
});

describe('what is right', () => {
	test('agrees with a walk along the chart', () => {
		expect(stories.length).toBeGreaterThan(200);
		for (const { plan, figure, fields, story } of stories) {
			const cure = window(plan, 'cure-temperature');
			const hold = window(plan, 'cure-hold');
			const { first, last, inside, hottest } = walked(figure, cure.min, cure.max);
			const answers = rightAnswers({ ...plan, fields });
			const [starts, ends] = [value(answers['soak-starts']), value(answers['soak-ends'])];
			if (starts !== undefined) expect(Math.abs(starts - first)).toBeLessThanOrEqual(1.5);
			if (ends !== undefined) {
				expect(Math.abs(ends - last)).toBeLessThanOrEqual(1.5);
				expect(starts).toBeLessThan(ends);
			}
			const over = hottest > cure.max || inside > hold.max + 2;
			const verdict = over ? 'long-hot' : inside < hold.min ? 'short-cold' : 'accept';
			expect([story.id, option(answers['chart-verdict'])]).toEqual([story.id, verdict]);
		}
	});

	test('leaves room for what a reading may be off', () => {
		for (const { plan, figure, fields } of stories)
			for (const id of ['soak-starts', 'soak-ends'] as const) {
				const planned = fields.find((one) => one.field === id);
				if (!planned) continue;
				const { min, max } = windowOf(planned.demands);
				const allowed = Math.max(figure.division, 120);
				expect((max - min) / 2).toBeCloseTo(allowed, 6);
				const zoneOf = (by: number) => {
					const answer: Answer = { kind: 'quantity', value: si(value(planned.answer)! + by), typed: '' };
					return grade({ ...plan, fields: [planned] }, { [id]: answer }).all[0]!.zone;
				};
				expect([zoneOf(allowed * 0.99), zoneOf(-allowed * 0.99)]).toEqual(['green', 'green']);
				expect([zoneOf(allowed * 1.2), zoneOf(-allowed * 2.2)]).toEqual(['amber', 'red']);
			}
	});

	test('asks times only where the chart has one of each', () => {
		const ids = (id: string) =>
			new Set(
				stories
					.filter(({ story }) => story.id === id)
					.map(({ fields }) => fields.map((one) => one.field).join())
			);
		expect(ids('cold-spot')).toEqual(new Set(['chart-verdict']));
		expect(ids('door-between')).toEqual(new Set(['soak-starts,chart-verdict']));
		for (const id of ['sound', 'air-over', 'heat-lost', 'held-too-long'])
			expect(ids(id)).toEqual(new Set(['soak-starts,soak-ends,chart-verdict']));
		for (const { plan, figure, fields, story } of stories) {
			const cure = window(plan, 'cure-temperature');
			const { inside } = walked(figure, cure.min, cure.max);
			if (inside === 0) expect(fields.map((one) => one.field)).toEqual(['chart-verdict']);
			else if (story.id.startsWith('clock')) expect(fields).toHaveLength(3);
		}
	});
});

describe('each story', () => {
	const of = (id: string) => stories.filter(({ story }) => story.id === id);

	test('can be told, and shows what it is about', () => {
		for (const { id } of STORIES) expect([id, of(id).length > 5]).toEqual([id, true]);
		for (const { figure, load } of of('air-over')) {
			expect(Math.max(...figure.air)).toBeGreaterThan(load.cure.high.value + 3);
			expect(Math.max(...figure.thinnest, ...figure.heaviest)).toBeLessThan(load.cure.high.value);
		}
		for (const { figure, load } of of('part-over')) {
			expect(Math.max(...figure.thinnest)).toBeGreaterThan(load.sheetTop.value + 3);
			expect(Math.max(...figure.heaviest)).toBeLessThan(load.cure.high.value);
		}
		for (const { figure, load } of of('cold-spot')) {
			expect(Math.max(...figure.heaviest)).toBeLessThan(load.cure.low.value - 1.5);
			expect(Math.max(...figure.thinnest)).toBeGreaterThan(load.cure.low.value);
		}
		for (const { figure, load } of of('door-between')) {
			expect(figure.doorOpen).toHaveLength(2);
			const [first] = figure.doorOpen;
			const soaking = figure.heaviest.slice(
				first!.from / figure.every,
				figure.doorOpen[1]!.from / figure.every
			);
			expect(Math.min(...soaking)).toBeLessThan(load.cure.low.value - 3);
			expect(soaking.at(-1)).toBeGreaterThanOrEqual(load.cure.low.value);
		}
		for (const { figure, fields } of of('heat-lost'))
			expect(value(fields[1]!.answer)).toBeLessThan(
				figure.doorOpen[0]!.from - 2 * Math.max(figure.division, 120)
			);
		for (const { figure, plan } of of('clock-from-door')) {
			const { min, max } = window(plan, 'cure-hold');
			expect(figure.doorOpen[0]!.from).toBeGreaterThanOrEqual(min);
			expect(figure.doorOpen[0]!.from).toBeLessThanOrEqual(max);
		}
	});

	test('comes up among the drills that are issued, and every verdict often', () => {
		const among = drills.map(({ figure, seed, job, plan }) => {
			const random = seeded(seed);
			const load = loadOf({ job, plan, shop }, random)!;
			const [draws, recorders] = [drawsOf(random), recordersFor(load)];
			return STORIES.find((story) => {
				const same = told(recorders, draws, story, job.bench.ovenUnit);
				return same && JSON.stringify(same.figure) === JSON.stringify(figure);
			})?.id;
		});
		expect(STORIES.map(({ id }) => id).filter((id) => !among.includes(id))).toEqual([]);
		for (const verdict of ['accept', 'short-cold', 'long-hot']) {
			const often = drills.filter(({ made }) => option(made.fields.at(-1)!.answer) === verdict).length;
			expect(often).toBeGreaterThan(drills.length / 6);
		}
	});

	test('is not told of a load that heats as fast as its oven', () => {
		const fast = tickets.filter(({ plan }) => value(fieldIn(plan, 'heat-up')!.answer)! < 150);
		expect(fast.length).toBeGreaterThan(3);
		for (const ticket of fast) expect(kind.make(ticket, seeded(1))).toBeUndefined();
	});

	test('leaves the oven enough time to be seen before the parts', () => {
		const { load } = of('sound')[0]!;
		const [recorder] = recordersFor(load);
		const way = heating(recorder!, drawsOf(seeded(3)), 121)!;
		expect(way.airIn).toBeLessThan(way.thinnestIn);
		expect(way.thinnestIn).toBeLessThan(way.bothIn);
	});
});

describe('the drill', () => {
	test('is the same from the same seed, survives being kept, and is one page at the oven', () => {
		expect(drills.length).toBeGreaterThan(25);
		for (const { made, ...ticket } of drills) {
			expect(kind.make(ticket, seeded(ticket.seed))).toEqual(made);
			expect(JSON.parse(JSON.stringify(made))).toEqual(made);
			expect(made.steps).toHaveLength(1);
			expect(made.steps[0]!.fields).toEqual(made.fields.map((one) => one.field));
			for (const id of made.steps[0]!.fields) expect(field(id).station).toBe('curing');
		}
	});

	test('writes in the unit of the oven', () => {
		for (const { figure, job } of drills) expect(figure.unit).toBe(job.bench.ovenUnit);
		expect(new Set(drills.map(({ figure }) => figure.unit))).toEqual(new Set(['°C', '°F']));
	});

	test('is clear with its own answers, and finds each breach at its rule', () => {
		for (const { drill, plan } of drills) {
			expect(grade(drill, rightAnswers(drill)).result).toBe('clear');
			for (const planned of drill.fields)
				for (const demand of planned.demands) {
					const own = plan.fields.flatMap(({ demands }) => demands).find(({ rule }) => rule === demand.rule)!;
					expect({ ...demand, expectation: own.expectation }).toEqual(own);
					const { breaches } = grade(
						{ ...drill, fields: [planned] },
						{ [planned.field]: breaking(planned, demand)! }
					);
					expect(breaches.map(({ rule }) => rule)).toEqual([demand.rule]);
				}
		}
	});

	const cameOut = ({ plan, fields, job }: (typeof stories)[number], verdict: string) => {
		const drill = { ...plan, fields };
		const answers = { ...rightAnswers(drill), 'chart-verdict': { kind: 'choice' as const, option: verdict } };
		return ovenOutcome(drill, answers, job, shop).defects.map(({ defect }) => defect);
	};

	test('lets out what its load is when it is accepted', () => {
		for (const one of stories) {
			const out = cameOut(one, 'accept');
			const { verdict } = one.story;
			expect(out.includes('soft-film')).toBe(verdict === 'short-cold');
			expect(out.includes('over-cure')).toBe(verdict === 'long-hot');
			if (verdict === 'accept') expect(out).toEqual([]);
		}
	});

	test('overbakes a good load that is held for too short, and only wastes one that is held for too hot', () => {
		const sound = stories.filter(({ story }) => story.verdict === 'accept');
		for (const one of sound) {
			expect(cameOut(one, 'short-cold')).toContain('over-cure');
			expect(cameOut(one, 'short-cold')).not.toContain('soft-film');
			expect(cameOut(one, 'long-hot')).toEqual([]);
		}
	});

	test('makes no defect of a time that is only misread', () => {
		for (const { drill, job, made } of drills) {
			const first = made.fields[0]!;
			if (first.field !== 'soak-starts') continue;
			const answers = {
				...rightAnswers(drill),
				'soak-starts': { kind: 'quantity' as const, value: si(1), typed: '' }
			};
			expect(grade(drill, answers).result).toBe('findings');
			expect(ovenOutcome(drill, answers, job, shop).defects).toEqual([]);
		}
	});

	test('says why: the rule that a wrong verdict breaks belongs to curing', () => {
		for (const { story } of stories) expect(ruleById(story.rule).station).toBe('curing');
	});
});
