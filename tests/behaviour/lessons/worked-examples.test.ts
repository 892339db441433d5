import { describe, expect, test } from 'vitest';
import { wetFilm } from '../../../src/lib/engine/physics/film/wet-film';
import { dewPoint } from '../../../src/lib/engine/physics/humidity/dew-point';
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

const dew = dewPoint.at({ air: u.celsius(24), humidity: u.percent(60) }) - u.celsius(0);
const wet = wetFilm.at({ dry: u.micrometres(23 / 2), solids: u.percent(30), thinner: u.fraction(0) });

/** What a worked example has to say if the engine worked it. */
describe.each([
	['52-measuring', [byMass.toFixed(2), `${((byMass / 4 - 1) * 100).toFixed(0)} %`]],
	[
		'96-bench-arithmetic',
		[
			`${(u.psi(60) / 1e5).toFixed(1)} bar`,
			`${(u.bar(3.5) / u.psi(1)).toFixed(0)} psi`,
			`${(u.fahrenheit(356) - 273.15).toFixed(0)} °C`,
			`${(u.mils(0.8) * 1e6).toFixed(1)} µm`,
			`${(u.micrometres(30) / u.mils(1)).toFixed(2)} mil`
		]
	],
	['60-air-and-dew-point', [`${dew.toFixed(1)} °C`, `${(dew + 3).toFixed(1)} °C`]],
	[
		'62-gun-set-up',
		[`${(u.psi(30) / 1e5).toFixed(2)} bar`, `${((u.bar(3) / u.psi(30) - 1) * 100).toFixed(0)} %`]
	],
	['66-wet-film', [`${(wet * 1e6).toFixed(1)}`, `${(wet * 1e6).toFixed(0)} µm`]],
	['70-loading-the-oven', [`${(u.millilitres(60) / 0.12 / u.millilitres(1)).toFixed(0)} mL`]],
	['72-soak', [`${(u.fahrenheit(300) - 273.15).toFixed(0)} °C`, `${(300 * 1.8 + 32).toFixed(0)} °F`]]
] as const)('%s', (folder, said) => {
	test.each(['en', 'es'])(`says ${said.join(' and ')} in %s`, (lang) => {
		for (const number of said) expect(examplesIn(folder, lang)).toContain(number);
	});
});
