import { describe, expect, it } from 'vitest';
import {
	chanceOfClearing,
	defaultScheme,
	meaningOfFail,
	meaningOfPass,
	meaningOfRun,
	meaningOfSafetyGate,
	operatingCharacteristic
} from '$lib/learning';

const strict = {
	...defaultScheme,
	sequential: { p0: 0.8, p1: 0.95, alpha: 0.05, beta: 0.1, truncateAt: 60, passAtTruncation: 54 },
	safety: { ...defaultScheme.safety, cleanRun: 40, oneMissRun: 60, restarts: 0 },
	retest: { ...defaultScheme.retest, most: 0 }
};
const both = (texts: readonly { en: string; es: string }[]) =>
	texts.flatMap(({ en, es }) => [en, es]).join('\n');
const people = (chance: number) => Math.round(chance * 100);

describe('what a verdict means', () => {
	it('says in both languages that a pass at 80 % is a third, not nothing', () => {
		expect(both(meaningOfPass(defaultScheme))).toContain('80 of 100 right, about 35 in 100 pass');
		expect(both(meaningOfPass(defaultScheme))).toContain('80 de cada 100, aprueban cerca de 35 de cada 100');
	});

	it('says what the retests do to the risk', () =>
		expect(both(meaningOfPass(defaultScheme))).toContain('about 14 in 100 when they use all 3 tries'));

	it('says how many fit people fail', () =>
		expect(both(meaningOfFail(defaultScheme))).toContain('about 9 in 100 fail by chance'));

	it('reckons anew for another scheme', () => {
		const said = both(meaningOfPass(strict));
		const middle = people(operatingCharacteristic(strict.sequential, 0.88).pass);
		expect(said).toContain(`88 of 100 right, about ${middle} in 100 pass`);
		expect(said).not.toContain('tries');
		expect(said).not.toContain('intentos');
	});

	it('gives the run its own interval', () => {
		expect(meaningOfRun(21, 23).en).toContain('between 73 and 98 of 100');
		expect(meaningOfRun(21, 23).es).toContain('entre 73 y 98 de cada 100');
	});
});

describe('what the safety gate means', () => {
	it('says the chance that a safe person fails', () => {
		const said = both(meaningOfSafetyGate(defaultScheme));
		expect(said).toContain('about 8 in 100 fail the first try by chance, and fewer than 1 in 100 fail all 3');
		expect(said).toContain('cerca de 8 de cada 100 fallan');
	});

	it('says what it would take to prove it', () =>
		expect(both(meaningOfSafetyGate(defaultScheme))).toContain('299 drills'));

	it('reckons anew for another scheme', () => {
		const said = both(meaningOfSafetyGate(strict));
		expect(said).toContain('40 drills');
		expect(said).toContain(
			`about ${people(1 - chanceOfClearing(strict.safety, 0.99))} in 100 fail the first try`
		);
		expect(said).not.toContain('all 1');
	});
});
