import { describe, expect, test } from 'vitest';
import { ratioByMass } from '../../../src/lib/engine/physics/mixing/ratio-by-mass';
import * as u from '../../../src/lib/engine/units/construct';

const texts = import.meta.glob<string>('/content/*/*.md', { eager: true, query: '?raw', import: 'default' });

const examplesIn = (folder: string, lang: string) =>
	[...texts[`/content/${folder}/${lang}.md`]!.matchAll(/<WorkedExample>([\s\S]*?)<\/WorkedExample>/g)]
		.map(([, prose]) => prose)
		.join('\n');

const byMass = ratioByMass.at({
	byVolume: u.ratio(4),
	densityA: u.gramsPerMillilitre(1.25),
	densityB: u.gramsPerMillilitre(1.05)
});

/** What a worked example has to say if the engine worked it. */
describe.each([
	['50-mixing', [byMass.toFixed(2), `${((byMass / 4 - 1) * 100).toFixed(0)} %`]],
	[
		'60-spraying',
		[`${(u.psi(30) / 1e5).toFixed(2)} bar`, `${((u.bar(3) / u.psi(30) - 1) * 100).toFixed(0)} %`]
	],
	['70-curing', [`${(u.millilitres(60) / 0.12 / u.millilitres(1)).toFixed(0)} mL`]],
	['70-curing', [`${(u.fahrenheit(300) - 273.15).toFixed(0)} °C`, `${(300 * 1.8 + 32).toFixed(0)} °F`]]
] as const)('%s', (folder, said) => {
	test.each(['en', 'es'])(`says ${said.join(' and ')} in %s`, (lang) => {
		for (const number of said) expect(examplesIn(folder, lang)).toContain(number);
	});
});
