import { describe, expect, it } from 'vitest';
import { DEMO_SHEETS, EXAMPLE_JOBS, FIELDS, jobSchema, type FieldId } from '$lib/engine';
import { NOT_IN_ORDER } from '$lib/server/bench-card/cautions';
import { readForm } from '$lib/server/bench-card/entries';
import { jobFromEntries } from '$lib/server/bench-card/job-from-entries';
import { factsFor } from '$lib/server/bench-card/rooms';
import { shopInForce } from '$lib/server/shop-in-force';
import { readerOf } from '$lib/server/reader';
import { LEAD, workedShop } from '../standing/worked-shop';
import { testEvent } from '../test-event';
import { errorsIn, exampleJob, jobForm, post } from './job-form';

type Schema = { entries?: Record<string, Schema>; item?: Schema; wrapped?: Schema; options?: unknown };

/** The paths of everything a job states, `*` for each of a list; a list of plain things is one statement. */
function pathsIn(schema: Schema, path = ''): string[] {
	const inner = schema.wrapped ?? schema;
	if (inner.entries)
		return Object.entries(inner.entries).flatMap(([key, one]) => pathsIn(one, path ? `${path}.${key}` : key));
	if (inner.item?.entries) return pathsIn(inner.item, `${path}.*`);
	return [path];
}

it('the form asks for every fact a job has, the day aside', () => {
	const asked = [...factsFor(1).keys()].map((name) =>
		name.replace('parts.0.', 'parts.*.').replace(/\.\d$/, '')
	);
	const paths = pathsIn(jobSchema as unknown as Schema)
		.filter((path) => path !== 'on')
		.map((path) => path.replace(/\.name\.(en|es)$/, '.name'));
	expect(paths.length).toBeGreaterThan(40);
	expect([...new Set(asked)].toSorted()).toEqual([...new Set(paths)].toSorted());
});

it('what counts as not in order are answers there are', () => {
	for (const [id, options] of Object.entries(NOT_IN_ORDER)) {
		const spec = FIELDS[id as FieldId];
		expect(spec.kind, id).toBe('choice');
		for (const option of options ?? [])
			expect('options' in spec && spec.options, id).toHaveProperty([option]);
	}
});

describe('a job typed in', () => {
	it.each(EXAMPLE_JOBS.map(({ id }) => id))('is read back as it is: %s', async (id) => {
		const { app } = await workedShop();
		const coating = DEMO_SHEETS.find(({ parts }) => parts === 2)!.id;
		const job = exampleJob(app, id, coating);
		const read = readForm(jobForm(app, job))!;
		const event = testEvent(app, { person: LEAD });
		const back = jobFromEntries(read.entries, shopInForce(app).shop, readerOf(event));
		if (!back.ok) throw new Error(JSON.stringify(back.problems));
		const rounded = (value: unknown) =>
			JSON.parse(
				JSON.stringify(value, (_, one: unknown) =>
					typeof one === 'number' ? Number(one.toPrecision(9)) : one
				)
			) as unknown;
		const named = {
			...job,
			parts: job.parts.map((part) => ({ ...part, name: { en: part.name.en, es: part.name.en } }))
		};
		expect(rounded(back.job)).toEqual(rounded(named));
	});

	const wrong: [name: string, typed: string, says: RegExp][] = [
		['ticket', ' ', /filled in/],
		['customer', 'x'.repeat(61), /at most 60/],
		['coating', 'demo-nothing', /in force today/],
		['film.basis', '', /Choose one/],
		['film.min', '20 µm', /leave this empty/],
		['writtenCap', '150', /Add the unit/],
		['writtenCap', '2000 °C', /At most/],
		['parts.0.count', '0', /At least 1/],
		['parts.0.count', '2.5', /not a whole number/],
		['parts.0.length', '9 m', /At most/],
		['parts.0.length', '5 kg', /measures/],
		['parts.0.material', 'kryptonite', /Choose one/],
		['parts.0.masked', 'datum', /not among the faces/],
		['parts.0.fitted', 'gold', /from the list only/],
		['weather.humidity', '2 %', /At least 5/],
		['weather.air', '80 °C', /At most/],
		['residueLoops', '7', /At most 6/],
		['readings.1', '21; 22 µm', /Exactly 3/],
		['readings.1', '21; 22; 9000 µm', /At most/],
		['shelf.expires', '2026-02-30', /calendar/],
		['shelf.hardenerExpires', '', /two parts/],
		['bench.strainers', '75; 125', /Add the unit/],
		['bench.gauge', 'furlong', /Choose one/],
		['wearer.beard', 'maybe', /Choose one/]
	];
	it.each(wrong)('is sent back with the fault at %s, everything kept: %s', async (name, typed, says) => {
		const { app } = await workedShop();
		const answer = await post(app, LEAD, jobForm(app, exampleJob(app, 'steel-plates'), { [name]: typed }));
		expect(answer.status).toBe(400);
		expect(Object.keys(errorsIn(answer))).toEqual([name]);
		expect(errorsIn(answer)[name]).toMatch(says);
		const facts = answer.job!.rooms.flatMap((room) => room.facts);
		expect(facts.find(({ id }) => id === name)?.chosen).toEqual([typed]);
		if (name !== 'ticket') expect(facts.find(({ id }) => id === 'ticket')?.text).toBe('T-4711');
	});

	it('is sent back with all its faults at once', async () => {
		const { app } = await workedShop();
		const form = new FormData();
		form.set('lines', '2');
		const answer = await post(app, LEAD, form);
		expect(Object.keys(errorsIn(answer)).length).toBeGreaterThan(50);
	});

	it('may name no hardener with a one-part coating, and has to with a two-part one', async () => {
		const { app } = await workedShop();
		const onePart = DEMO_SHEETS.find(({ parts }) => parts === 1)!.id;
		const job = exampleJob(app, 'steel-plates', onePart);
		expect((await post(app, LEAD, jobForm(app, job))).status).toBe(200);
		const answer = await post(app, LEAD, jobForm(app, job, { 'shelf.hardenerState': 'clear' }));
		expect(Object.keys(errorsIn(answer))).toEqual(['shelf.hardenerState']);
	});

	it('keeps everything when a part line is added or taken away', async () => {
		const { app } = await workedShop();
		const job = exampleJob(app, 'steel-plates');
		const more = await post(app, LEAD, jobForm(app, job, { wish: 'add' }));
		expect([more.status, more.job?.lines, more.card]).toEqual([200, 2, undefined]);
		const text = (id: string) =>
			more.job!.rooms.flatMap(({ facts }) => facts).find((fact) => fact.id === id)?.text;
		expect([text('parts.0.name'), text('weather.air'), text('parts.1.name')]).toEqual([
			'hinge plate',
			'22 °C',
			''
		]);
		expect((await post(app, LEAD, jobForm(app, job, { wish: 'add', lines: '3' }))).job?.lines).toBe(3);
		expect((await post(app, LEAD, jobForm(app, job, { wish: 'drop', lines: '2' }))).job?.lines).toBe(1);
		expect((await post(app, LEAD, jobForm(app, job, { wish: 'drop' }))).job?.lines).toBe(1);
	});

	it('is worked out in the units asked for', async () => {
		const { app } = await workedShop();
		const job = exampleJob(app, 'steel-plates');
		const setIn = async (units: string) => {
			const { card } = await post(app, LEAD, jobForm(app, job, { units }));
			const { lines } = card!.stations.find(({ station }) => station === 'spraying')!;
			return lines.find(({ id }) => id === 'gun-distance')?.set;
		};
		expect(await setIn('metric')).toMatch(/mm$/);
		expect(await setIn('us')).toMatch(/in$/);
	});

	it.each([
		['lines', '4'],
		['lines', '-1'],
		['lines', 'two'],
		['wish', 'print'],
		['units', 'imperial']
	])('is not taken with %s %s: no form of ours says that', async (name, value) => {
		const { app } = await workedShop();
		const answer = await post(app, LEAD, jobForm(app, exampleJob(app, 'steel-plates'), { [name]: value }));
		expect([answer.status, answer.job]).toEqual([400, undefined]);
	});
});
