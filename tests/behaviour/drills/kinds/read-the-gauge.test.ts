import { describe, expect, test } from 'vitest';
import { makeTicket } from '$lib/drills';
import {
	bar,
	field,
	grade,
	mils,
	ovenOutcome,
	parseQuantity,
	psi,
	rightAnswers,
	ruleById,
	si,
	solve,
	US,
	windowOf,
	type Answer,
	type FieldId,
	type Plan,
	type PlannedField,
	type Traced
} from '$lib/engine';
import type { Instrument } from '../../../../src/lib/drills/figures/gauge-panel';
import type { MadeDrill } from '../../../../src/lib/drills/kinds/kind';
import kind from '../../../../src/lib/drills/kinds/read-the-gauge';
import { seeded } from '../../../../src/lib/drills/random';
import { findingView } from '$lib/paper';
import { breaking } from '../breaking';
import { demoShop } from '../shop';

const shop = demoShop();
const tickets = Array.from({ length: 150 }, (_, seed) => {
	const ticket = makeTicket({ seed, breadth: 2, shop })!;
	return { seed, job: ticket.job, plan: solve(ticket.job, shop), shop };
}).filter(({ plan }) => plan.decision === 'accept');

const make = (ticket: (typeof tickets)[number]) => kind.make(ticket, seeded(ticket.seed));
const drills = tickets.flatMap((ticket) => {
	const made = make(ticket);
	return made ? [{ ...ticket, made, drill: { ...ticket.plan, fields: made.fields } as Plan }] : [];
});

const PLACES = [
	['blast-pressure', 'blast-gauge-reads', 'blast-gauge-stands'],
	['cup-time', 'cup-watch-reads', 'cup-watch-stands'],
	['cap-pressure', 'cap-gauge-reads', 'cap-gauge-stands'],
	['spot', 'film-gauge-reads', 'film-gauge-stands']
] as const;

const fieldIn = ({ fields }: Pick<Plan, 'fields'>, id: FieldId) => fields.find((one) => one.field === id);
const instrumentsOf = ({ steps }: MadeDrill): readonly Instrument[] =>
	steps.flatMap(({ figures }) =>
		figures.flatMap((one) => (one.kind === 'gauge-panel' ? one.instruments : []))
	);
const quantity = (value: number): Answer => ({ kind: 'quantity', value: si(value), typed: '' });
const chosen = (planned: PlannedField) => (planned.answer.kind === 'choice' ? planned.answer.option : '');

/** Every drawn reading beside the window that the ticket's own plan leaves. */
const readings = drills.flatMap(({ job, plan, made, drill }) =>
	PLACES.flatMap(([shows, reads, stands]) => {
		const [asked, verdict] = [fieldIn(drill, reads), fieldIn(drill, stands)];
		if (!asked || !verdict) return [];
		const instrument = instrumentsOf(made).find((one) => one.shows === shows)!;
		const windows =
			shows === 'spot' ? (['spot-minimum', 'spot-maximum'] as const) : ([shows] as readonly FieldId[]);
		const own = windows.map((id) => fieldIn(plan, id)!);
		const { min, max } =
			shows === 'spot'
				? { min: centre(own[0]!), max: centre(own[1]!) }
				: windowOf(own.flatMap(({ demands }) => demands));
		return [{ job, drill, shows, asked, verdict, instrument, own, min, max, value: instrument.value }];
	})
);

function centre({ demands }: PlannedField): number {
	const { min, max } = windowOf(demands);
	return (min + max) / 2;
}

/** Half a division of the face, or the last digit of the display, in SI. */
function mayBeOff(instrument: Instrument): number {
	if (instrument.kind === 'stopwatch') return 0.5;
	if (instrument.kind === 'dial') {
		const half = instrument.scale.division / 2;
		return instrument.scale.unit === 'psi' ? psi(half) : bar(half);
	}
	const digit = 10 ** -instrument.decimals;
	return instrument.unit === 'mil' ? mils(digit) : instrument.unit === 'µm' ? digit * 1e-6 : digit;
}

describe('reading the gauge', () => {
	test('is made on most tickets, the same from the same seed, three instruments at a time', () => {
		expect(drills.length).toBeGreaterThan(tickets.length / 2);
		for (const { made, ...ticket } of drills) {
			expect(make(ticket)).toEqual(made);
			expect(made.fields.filter(({ field: id }) => !id.endsWith('-stands'))).toHaveLength(3);
			expect(JSON.parse(JSON.stringify(made))).toEqual(made);
		}
	});

	test('asks each of its fields sooner or later, on the page of its station', () => {
		const asked = new Set(drills.flatMap(({ made }) => made.fields.map((one) => one.field)));
		expect(kind.asks.filter((id) => !asked.has(id))).toEqual([]);
		for (const { made } of drills) {
			expect(made.steps.flatMap(({ fields }) => fields)).toEqual(made.fields.map((one) => one.field));
			for (const { station, fields, figures } of made.steps) {
				expect(new Set(fields.map((id) => field(id).station))).toEqual(new Set([station]));
				expect(figures).toHaveLength(1);
			}
		}
	});

	test('is clear with its own answers, and finds each breach at its rule', () => {
		for (const { drill } of drills) {
			expect(grade(drill, rightAnswers(drill)).result).toBe('clear');
			for (const planned of drill.fields)
				for (const demand of planned.demands) {
					const answer = breaking(planned, demand)!;
					const { breaches } = grade({ ...drill, fields: [planned] }, { [planned.field]: answer });
					expect(breaches.map(({ rule }) => rule)).toContain(demand.rule);
				}
		}
	});

	test('asks for what is drawn, and takes half a division but no more', () => {
		for (const { asked, instrument, value } of readings) {
			expect(asked.answer).toMatchObject({ value });
			const off = mayBeOff(instrument);
			const graded = (read: number) =>
				grade({ ...drills[0]!.plan, fields: [asked] }, { [asked.field]: quantity(read) }).result;
			expect([graded(value + off * 0.99), graded(value - off * 0.99)]).toEqual(['clear', 'clear']);
			expect([graded(value + off * 1.1), graded(value - off * 1.1)]).toEqual(['findings', 'findings']);
		}
	});

	test('finds the right number in the wrong unit, and reads none without a unit', () => {
		const dials = readings.flatMap((one) =>
			one.instrument.kind === 'dial' ? [{ ...one, dial: one.instrument }] : []
		);
		expect(dials.length).toBeGreaterThan(20);
		for (const { asked, dial, value } of dials) {
			const inPsi = dial.scale.unit === 'psi';
			const number = inPsi ? value / psi(1) : value / bar(1);
			const other = inPsi ? bar(number) : psi(number);
			const { result } = grade({ ...drills[0]!.plan, fields: [asked] }, { [asked.field]: quantity(other) });
			expect(result).toBe('findings');
		}
		expect(parseQuantity('40', 'pressure')).toMatchObject({ ok: false });
	});

	test('stands where the window of the plan puts it, never so near a limit that the reading decides', () => {
		for (const { verdict, instrument, min, max, value } of readings) {
			expect(chosen(verdict)).toBe(value < min ? 'low' : value > max ? 'high' : 'inside');
			const nearest = Math.min(Math.abs(value - min), Math.abs(value - max));
			expect(nearest).toBeGreaterThan(mayBeOff(instrument));
		}
	});

	test('is inside, just outside, and outside by a mixed-up unit, each often enough', () => {
		for (const [shows] of PLACES) {
			const own = readings.filter((one) => one.shows === shows);
			const inside = own.filter(({ verdict }) => chosen(verdict) === 'inside').length;
			expect(inside / own.length).toBeGreaterThan(0.15);
			expect(inside / own.length).toBeLessThan(0.55);
			for (const stand of ['low', 'high'])
				expect(own.filter(({ verdict }) => chosen(verdict) === stand).length).toBeGreaterThan(0);
		}
		const takenForBar = readings.filter(({ instrument, min, max, value, verdict }) => {
			if (instrument.kind !== 'dial' || instrument.scale.unit !== 'psi') return false;
			const mistaken = bar(value / psi(1) / 10);
			return chosen(verdict) !== 'inside' && mistaken > min && mistaken < max;
		});
		expect(takenForBar.length).toBeGreaterThan(3);
		const minuteOverlooked = readings.filter(
			({ shows, value, min, max }) =>
				shows === 'cup-time' && value > 60 && value - 60 > min && value - 60 < max
		);
		expect(minuteOverlooked.length).toBeGreaterThan(3);
	});

	test('shows both units of each quantity, dials in the one that the ticket names', () => {
		const units = (shows: string) =>
			new Set(
				drills.flatMap(({ made }) =>
					instrumentsOf(made).flatMap((one) =>
						one.shows !== shows
							? []
							: one.kind === 'dial'
								? [one.scale.unit]
								: one.kind === 'digital'
									? [one.unit]
									: ['hands']
					)
				)
			);
		expect(units('blast-pressure')).toEqual(new Set(['psi', 'bar']));
		expect(units('cap-pressure')).toEqual(new Set(['psi', 'bar']));
		expect(units('spot')).toEqual(new Set(['mil', 'µm']));
		expect(units('air')).toEqual(new Set(['°C', '°F']));
		expect(units('cup-time')).toEqual(new Set(['hands', 's', 'min:s']));
		for (const { job, instrument } of readings)
			if (instrument.kind === 'dial') expect(instrument.scale.unit).toBe(job.bench.gauge);
	});

	test('draws no pointer off its scale and no gauge where film is weighed', () => {
		for (const { instrument } of readings)
			if (instrument.kind === 'dial') {
				const { unit, from, to } = instrument.scale;
				const shown = instrument.value / (unit === 'psi' ? psi(1) : bar(1));
				expect(shown).toBeGreaterThan(from);
				expect(shown).toBeLessThan(to);
			}
		const weighed = drills.filter(({ plan }) => {
			const gauge = fieldIn(plan, 'gauge')?.answer;
			return gauge?.kind === 'choice' && gauge.option === 'foil-mass';
		});
		expect(weighed.length).toBeGreaterThan(0);
		expect(weighed.filter(({ drill }) => fieldIn(drill, 'film-gauge-reads'))).toEqual([]);
	});
});

describe('a wrong verdict', () => {
	const verdicts = readings.flatMap((one) =>
		['low', 'inside', 'high']
			.filter((option) => option !== chosen(one.verdict))
			.map((option) => ({ ...one, option, stand: chosen(one.verdict) }))
	);
	const cameOut = ({ drill, job, verdict, option }: (typeof verdicts)[number]) => {
		const answers = { ...rightAnswers(drill), [verdict.field]: { kind: 'choice', option } as const };
		return ovenOutcome(
			drill,
			answers,
			job,
			shop,
			drill.fields.map((one) => one.field)
		).defects;
	};

	test('is found under a rule that the plan itself puts on that quantity', () => {
		for (const { verdict, option, own, stand } of verdicts) {
			const rules = own.flatMap(({ demands }) => demands.map(({ rule }) => rule));
			const { breaches } = grade(
				{ ...drills[0]!.plan, fields: [verdict] },
				{ [verdict.field]: { kind: 'choice', option } }
			);
			expect(breaches.length).toBeGreaterThan(0);
			for (const { rule } of breaches) expect(rules).toContain(rule);
			if (stand !== 'inside') expect(breaches).toHaveLength(1);
		}
	});

	test('that lets a bad reading pass brings the defects of that side, and of no other', () => {
		const passed = verdicts.filter(({ option }) => option === 'inside');
		expect(passed.length).toBeGreaterThan(30);
		for (const one of passed) {
			const side = one.stand as 'low' | 'high';
			const rule = ruleById(one.verdict.demands[0]!.rule);
			const defects = cameOut(one);
			expect(defects.map(({ defect }) => defect).toSorted()).toEqual([...rule.breaks[side]!].toSorted());
			for (const { from } of defects) expect(from).toEqual([{ rule: rule.id, direction: side }]);
		}
	});

	test('that turns a good pressure or thins a good mix brings the defects of where it is turned to', () => {
		const turned = verdicts.filter(({ stand, shows }) => stand === 'inside' && shows !== 'spot');
		expect(turned.length).toBeGreaterThan(20);
		for (const one of turned) {
			const to = one.option === 'low' ? 'high' : 'low';
			const limited = to === 'high' ? Number.isFinite(one.max) : Number.isFinite(one.min);
			const directions = cameOut(one).flatMap(({ from }) => from.map(({ direction }) => direction));
			expect(new Set(directions)).toEqual(new Set(limited ? [to] : []));
		}
	});

	test('that sets good parts aside costs time and makes no defect', () => {
		const held = verdicts.filter(({ stand, shows }) => stand === 'inside' && shows === 'spot');
		expect(held.length).toBeGreaterThan(0);
		for (const one of held) expect(cameOut(one)).toEqual([]);
	});

	test('is what makes a defect: a gauge misread alone makes none', () => {
		for (const { drill, job, asked, value } of readings.slice(0, 40)) {
			const answers = { ...rightAnswers(drill), [asked.field]: quantity(value * 2) };
			expect(grade(drill, answers).result).toBe('findings');
			expect(ovenOutcome(drill, answers, job, shop, [asked.field]).defects).toEqual([]);
		}
	});
});

describe('what is said of it', () => {
	const reader = { lang: 'en', units: US } as const;
	const said = (planned: PlannedField, answer: Answer) =>
		grade({ ...drills[0]!.plan, fields: [planned] }, { [planned.field]: answer }).breaches.map((one) =>
			findingView(one, reader)
		);

	test('a misread gauge is off by so much, and nobody is told to turn it', () => {
		for (const { asked, value } of readings.slice(0, 20)) {
			const [told] = said(asked, quantity(value * 2));
			expect(told!.howFar).toMatch(/^[\d.]+\s\S+ off$/);
			expect(JSON.stringify([told!.howFar, told!.next])).not.toMatch(/too (low|high)|Bring it/);
		}
	});

	test('a wrong verdict is to be changed, with the reading and the limits it was made from', () => {
		const [one] = readings.filter(({ verdict }) => chosen(verdict) === 'low');
		const [told] = said(one!.verdict, { kind: 'choice', option: 'inside' });
		expect(told).toMatchObject({
			howFar: 'not what the rule allows',
			next: 'Change it to what the window says.',
			expected: 'below the window'
		});
		expect(told!.derivation).toMatchObject({ label: 'The instrument shows' });
		expect(told!.derivation!.from!.length).toBeGreaterThan(0);
	});
});

describe('air read now', () => {
	const aired = drills.filter(({ drill }) => fieldIn(drill, 'surface-minimum'));
	const origins = (traced: Traced): string[] => [
		traced.origin.kind,
		...Object.values(traced.inputs).flatMap(origins)
	];

	test('is what the lowest part temperature is asked for, and no longer the air of the ticket', () => {
		expect(aired.length).toBeGreaterThan(10);
		for (const { drill, plan, job, made } of aired) {
			const [air, humidity] = (['air', 'humidity'] as const).map(
				(shows) => instrumentsOf(made).find((one) => one.shows === shows)!.value
			);
			const now = solve(
				{ ...job, weather: { ...job.weather, air: air as never, humidity: humidity as never } },
				shop
			);
			const right = fieldIn(now, 'surface-minimum')!.answer;
			expect(fieldIn(drill, 'surface-minimum')!.answer).toEqual(right);
			const morning = fieldIn(plan, 'surface-minimum')!.answer;
			const { breaches } = grade(drill, { ...rightAnswers(drill), 'surface-minimum': morning });
			expect(breaches.map(({ rule }) => rule)).toEqual(['lowest-surface-temperature']);
		}
	});

	test('stands on a division, and its derivation does not call it the ticket’s', () => {
		for (const { drill, made } of aired) {
			for (const one of instrumentsOf(made))
				if (one.kind === 'dial' && one.shows === 'humidity') {
					const divisions = (one.value * 100) / one.scale.division;
					expect(divisions).toBeCloseTo(Math.round(divisions), 6);
				}
			const { expectation } = fieldIn(drill, 'surface-minimum')!.demands[0]!;
			if (expectation.kind !== 'range') throw new Error('no range');
			expect(origins(expectation.min)).not.toContain('job');
			expect(origins(expectation.min)).toContain('example');
		}
	});
});
