import { describe, expect, test } from 'vitest';
import { METRIC } from '$lib/engine';
import { readConditions } from '$lib/server/incidents/conditions';
import { readReport } from '$lib/server/incidents/report-draft';
import { reportProblems } from '$lib/server/incidents/report-problems';
import { reportView } from '$lib/server/incidents/report-view';
import { formOf, incidentShop, TODAY } from './incident-shop';

const reader = { lang: 'en', units: METRIC } as const;
const good = { job: 'WO-88', on: TODAY, person: 'trn', air: '72 °F', 'flash-time': '4 min' };
const read = (values: Record<string, string | string[]>) =>
	readReport('solvent-pop', formOf(values), reader)!;

describe('a report', () => {
	test('is entered with its readings in SI, and what nobody knows as not known', async () => {
		const { app, report } = await incidentShop();
		const draft = read(good);
		expect(reportProblems(app, draft, reader)).toEqual({});
		const incident = await report(draft);
		const known = readConditions(incident.conditions);
		expect(known.air).toBeCloseTo(295.372, 3);
		expect(known).toMatchObject({ on: TODAY, humidity: null, part: null, coating: null, material: null });
		expect(known.written['flash-time']).toMatchObject({ kind: 'quantity', value: 240, typed: '4 min' });
		expect(incident.note).toBeNull();
	});

	test.each([
		['job', { job: 'two words' }],
		['job', { job: '' }],
		['on', { on: '2026-03-03' }],
		['on', { on: '2026-02-30' }],
		['person', { person: 'ghost' }],
		['coating', { coating: 'constructor' }],
		['material', { material: 'toString' }],
		['air', { air: '20' }],
		['air', { air: '300 °C' }],
		['humidity', { humidity: '20 °C' }],
		['flash-time', { 'flash-time': '-3 min' }],
		['note', { note: 'x'.repeat(2001) }]
	])('with a wrong %s is sent back with what was typed', async (name, wrong) => {
		const { app } = await incidentShop();
		const draft = read({ ...good, ...wrong });
		const problems = reportProblems(app, draft, reader);
		expect(Object.keys(problems)).toEqual([name]);
		const view = reportView(app, draft, problems, reader);
		const all = [view.job, view.on, view.person, view.coating, view.material, view.note, ...view.readings];
		const field = [...all, ...view.stations.flatMap(({ fields }) => fields)].find((one) => one.name === name);
		expect(field?.error).toBe(problems[name]);
		expect(field?.value).toBe(Object.values(wrong)[0]);
	});

	test('that no form of ours can have sent is not read', () => {
		const form = formOf(good);
		form.append('flash-time', new File(['x'], 'x'));
		expect(readReport('solvent-pop', form, reader)).toBeUndefined();
	});

	test('does not offer whoever only audits, or whose data was erased', async () => {
		const { app } = await incidentShop();
		const people = () => reportView(app, read(good), {}, reader).person.options.map(({ id }) => id);
		expect(people().toSorted()).toEqual(['lead', 'sup', 'trn']);
	});
});
