import { describe, expect, it } from 'vitest';
import { defaultScheme, retest } from '$lib/learning';

const ask = (failedOn: string[], lessonsRedoneOn: string[], today: string) =>
	retest(defaultScheme.retest, { failedOn, lessonsRedoneOn }, today);

describe('a proving run may begin', () => {
	it('at once the first time', () => expect(ask([], [], '2026-11-02')).toEqual({ may: true, sitting: 1 }));

	it('7 days after a failed one with the lessons done again', () =>
		expect(ask(['2026-11-02'], ['2026-11-03'], '2026-11-09')).toEqual({ may: true, sitting: 2 }));

	it('not a day earlier', () =>
		expect(ask(['2026-11-02'], ['2026-11-03'], '2026-11-08')).toEqual({
			may: false,
			waitsFor: ['days'],
			from: '2026-11-09'
		}));

	it('not without the lessons, nor with those from before the failed run', () => {
		expect(ask(['2026-11-02'], [], '2026-12-24')).toMatchObject({ may: false, waitsFor: ['lessons'] });
		expect(ask(['2026-11-02'], ['2026-11-01'], '2026-12-24')).toMatchObject({ waitsFor: ['lessons'] });
	});

	it('says both when both are open', () =>
		expect(ask(['2026-11-02'], [], '2026-11-04')).toMatchObject({ waitsFor: ['days', 'lessons'] }));

	it('a third time, with the lessons done between the second and the third', () => {
		const failed = ['2026-11-02', '2026-11-10'];
		expect(ask(failed, ['2026-11-05'], '2026-11-17')).toMatchObject({ may: false, waitsFor: ['lessons'] });
		expect(ask(failed, ['2026-11-05', '2026-11-12'], '2026-11-17')).toEqual({ may: true, sitting: 3 });
	});

	it('not a fourth time: a new application is due, 30 days on', () =>
		expect(ask(['2026-11-02', '2026-11-10', '2026-11-20'], ['2026-11-21'], '2027-06-01')).toEqual({
			may: false,
			waitsFor: ['new-application'],
			from: '2026-12-20'
		}));

	it('as the scheme says', () => {
		const strict = { most: 0, daysApart: 14, newApplicationDays: 60 };
		expect(retest(strict, { failedOn: ['2026-11-02'], lessonsRedoneOn: [] }, '2026-11-03')).toEqual({
			may: false,
			waitsFor: ['new-application'],
			from: '2027-01-01'
		});
	});
});
