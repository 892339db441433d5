import { describe, expect, it } from 'vitest';
import { readValues } from '$lib/server/standing/read-values';

const film = (typed: string) => readValues(typed, 'length', { lang: 'en', fallbackUnit: 'µm' });
const inMicrometres = (typed: string) => {
	const read = film(typed);
	return read.ok ? read.values.map((value) => Math.round(value * 1e9) / 1e3) : read.problem.code;
};

describe('several readings in one line', () => {
	it('take the unit printed beside it where none is typed', () =>
		expect(inMicrometres('18; 19; 21')).toEqual([18, 19, 21]));

	it('take the unit typed once for all of them', () =>
		expect(inMicrometres('1; 0.9; 0.8 mil')).toEqual([25.4, 22.86, 20.32]));

	it('keep units typed at each', () => expect(inMicrometres('1 mil; 20 µm')).toEqual([25.4, 20]));

	it('are none in an empty line', () => expect(inMicrometres('  ; ')).toEqual([]));

	it('are refused whole when one cannot be read, naming it', () => {
		expect(film('18; nineteen; 21')).toMatchObject({
			ok: false,
			problem: { code: 'not-a-number', typed: 'nineteen' }
		});
		expect(inMicrometres('18; 20 psi')).toBe('wrong-dimension');
		expect(inMicrometres('18; -3')).toBe('negative');
	});

	it('read a mix ratio in either spelling', () => {
		const ratio = (typed: string) => readValues(typed, 'ratio', { lang: 'en', fallbackUnit: ':1' });
		expect(ratio('4:1; 3.9:1')).toEqual({ ok: true, values: [4, 3.9] });
	});
});
