import { describe, expect, test } from 'vitest';
import { causesOf } from '../../../../src/lib/engine/defects/causes';
import type { Circumstances } from '../../../../src/lib/engine/defects/circumstances';
import type { DefectId } from '../../../../src/lib/engine/defects/defects';
import { diagnose } from '../../../../src/lib/engine/defects/diagnose';
import { FITS } from '../../../../src/lib/engine/defects/fit';
import { RULES, ruleById } from '../../../../src/lib/engine/rules';
import { celsius, minutes, percent } from '../../../../src/lib/engine/units/construct';
import { choice, choices, job, part, quantity, shop } from '../rules/bench';

const cause = (defect: DefectId, rule: string, direction: string, circumstances?: Circumstances) => {
	const found = diagnose(defect, circumstances).find(
		(one) => one.rule === rule && one.direction === direction
	);
	if (!found) throw new Error(`${rule} ${direction} is no cause of ${defect}`);
	return found;
};
const first = (defect: DefectId, circumstances: Circumstances) => {
	const [{ rule, direction, fit } = { rule: '', direction: '', fit: '' }] = diagnose(defect, circumstances);
	return { rule, direction, fit };
};
const ran = { job: job(), shop };

describe('diagnose', () => {
	test('with nothing known names every cause, in working order', () => {
		const causes = diagnose('soft-film');
		const order = RULES.map(({ id }) => id);
		const places = causes.map(({ rule }) => order.indexOf(rule));
		expect(causes.map(({ fit }) => fit)).toEqual(causes.map(() => 'unknown'));
		expect(causes).toHaveLength(causesOf('soft-film').length);
		expect(places).toEqual(places.toSorted((one, other) => one - other));
	});

	test('carries the rule’s own test, station, skill and lesson', () => {
		const { evidence, station, skill, competency, lesson } = ruleById('flash-time');
		expect(cause('solvent-pop', 'flash-time', 'low')).toMatchObject({
			test: evidence,
			station,
			skill,
			competency,
			lesson
		});
	});

	test('puts the answer that broke a rule first, with what was expected', () => {
		const circumstances = { ran, recorded: { 'flash-time': quantity(minutes(3)) } };
		expect(first('solvent-pop', circumstances)).toEqual({
			rule: 'flash-time',
			direction: 'low',
			fit: 'recorded'
		});
		expect(cause('solvent-pop', 'flash-time', 'low', circumstances).recorded).toMatchObject({
			answer: quantity(minutes(3)),
			expected: { kind: 'range', min: { value: minutes(15) } }
		});
	});

	test('a record of the other direction speaks against the cause', () => {
		const recorded = { 'flash-time': quantity(minutes(60)) };
		expect(cause('solvent-pop', 'flash-time', 'low', { ran, recorded }).fit).toBe('kept');
		expect(cause('dirt', 'flash-time', 'high', { ran, recorded }).fit).toBe('recorded');
	});

	test('a record inside the window speaks against the cause but does not remove it', () => {
		const causes = diagnose('soft-film', { ran, recorded: { 'cure-temperature': quantity(celsius(150)) } });
		const at = (rule: string) => causes.findIndex((one) => one.rule === rule);
		expect(causes[at('cure-part-temperature')]!.fit).toBe('kept');
		expect(at('hold-time')).toBeLessThan(at('cure-part-temperature'));
	});

	test('a cause by options is met by the breach itself', () => {
		expect(first('soft-film', { ran, recorded: { 'clock-starts': choice('air') } })).toEqual({
			rule: 'clock-starts-on-part',
			direction: 'wrong',
			fit: 'recorded'
		});
		const recorded = { 'probe-places': choices('thinnest') };
		expect(cause('soft-film', 'probe-heaviest-and-thinnest', 'low', { ran, recorded }).fit).toBe('recorded');
		expect(cause('soft-film', 'probe-heaviest-and-thinnest', 'high', { ran, recorded }).fit).toBe('kept');
	});

	test('a part that carries a film was sprayed: the job’s own readings speak', () => {
		const damp = { job: job({ weather: { humidity: percent(88) } }), shop };
		expect(first('blushing', { ran: damp })).toMatchObject({ fit: 'recorded' });
		expect(cause('blushing', 'humidity-in-window', 'wrong', { ran: damp }).fit).toBe('recorded');
		expect(cause('blushing', 'humidity-in-window', 'wrong', { ran }).fit).toBe('silent');
		const oily = { job: job({ bench: { blotter: 'oil-ring' } }), shop };
		expect(first('fisheyes', { ran: oily })).toEqual({
			rule: 'clean-dry-air',
			direction: 'wrong',
			fit: 'recorded'
		});
	});

	test('a written answer outranks what the part implies', () => {
		const damp = { job: job({ weather: { humidity: percent(88) } }), shop };
		const recorded = { 'spray-go': choice('no-go') };
		expect(cause('blushing', 'humidity-in-window', 'wrong', { ran: damp, recorded }).fit).toBe('kept');
	});

	test('a rule that had nothing to say of the job comes after those that had', () => {
		const causes = diagnose('soft-film', { ran });
		const at = (rule: string) => causes.findIndex((one) => one.rule === rule);
		expect(causes[at('unlike-parts-split')]!.fit).toBe('silent');
		expect(causes[at('hold-time')]!.fit).toBe('unchecked');
		expect(at('hold-time')).toBeLessThan(at('unlike-parts-split'));
	});

	test('a job that should have been asked about leads back to intake', () => {
		const unasked = { job: job({ parts: [part({ material: 'unknown', magnetSticks: null })] }), shop };
		expect(first('distorted-part', { ran: unasked })).toEqual({
			rule: 'material-known',
			direction: 'wrong',
			fit: 'recorded'
		});
		expect(cause('distorted-part', 'unlike-parts-split', 'wrong', { ran: unasked }).fit).toBe('unknown');
	});

	test('a cause’s own test decides over any record', () => {
		const recorded = { 'flash-time': quantity(minutes(20)) };
		const tests = { 'flash-time': 'low', 'coat-interval': 'kept' } as const;
		const causes = diagnose('solvent-pop', { ran, recorded, tests });
		expect(causes[0]).toMatchObject({ rule: 'flash-time', fit: 'shown' });
		expect(causes.at(-1)).toMatchObject({ rule: 'coat-interval', fit: 'excluded' });
		expect(cause('dirt', 'flash-time', 'high', { ran, tests }).fit).toBe('excluded');
	});

	test.each(['soft-film', 'flaking', 'over-thick', 'solvent-pop'] as const)(
		'%s: fits stand in their order',
		(defect) => {
			const recorded = {
				'cure-hold': quantity(minutes(20)),
				'coat-interval': quantity(0),
				'blast-to-coat': quantity(1e6)
			};
			const places = diagnose(defect, { ran, recorded }).map(({ fit }) => FITS.indexOf(fit));
			expect(new Set(places).size).toBeGreaterThan(1);
			expect(places).toEqual(places.toSorted((one, other) => one - other));
		}
	);
});
