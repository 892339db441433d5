import { describe, expect, test } from 'vitest';
import { batchVolume } from '../../../src/lib/engine/physics/batch-volume';
import { dewPoint } from '../../../src/lib/engine/physics/dew-point';
import { filmFromMass } from '../../../src/lib/engine/physics/film-from-mass';
import { judgeArea } from '../../../src/lib/engine/physics/judge-area';
import { potLifeAt } from '../../../src/lib/engine/physics/pot-life-at';
import { ratioByMass } from '../../../src/lib/engine/physics/ratio-by-mass';
import { wetFilm } from '../../../src/lib/engine/physics/wet-film';
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
const batch = batchVolume.at({
	area: u.squareMetres(37 * 0.024),
	dry: u.micrometres(20),
	solids: u.percent(32),
	transfer: u.percent(60)
});
const life = potLifeAt.at({ stated: u.hours(3), statedAt: u.celsius(21), mix: u.celsius(31) });
const dew = (air: number) => dewPoint.at({ air: u.celsius(air), humidity: u.percent(60) }) - 273.15;
const wet = (thinner: number) =>
	wetFilm.at({ dry: u.micrometres(25), solids: u.percent(30), thinner: u.percent(thinner) });
const foil = filmFromMass.at({
	gain: u.grams(0.3),
	area: u.squareMetres(0.01),
	density: u.gramsPerMillilitre(1.5)
});
const area = judgeArea(
	[
		[26, 27, 25],
		[25, 25, 25],
		[23, 23, 23],
		[28, 28, 28],
		[14, 15, 13]
	].map((spot) => spot.map(u.micrometres)),
	u.micrometres(20),
	u.micrometres(30)
);
const micrometres = (length: number, digits = 0) => (length * 1e6).toFixed(digits);

/** What a worked example has to say if the engine worked it. */
describe.each([
	['50-mixing', [byMass.toFixed(2), `${((byMass / 4 - 1) * 100).toFixed(0)} %`]],
	['50-mixing', [`${(batch * 1e6).toFixed(1)} mL`, `${(batch * 1.25 * 1e6).toFixed(1)} mL`]],
	['50-mixing', [`${((life / 60) * 0.75).toFixed(1)}, `, `${Math.floor((life / 60) * 0.75)} min`]],
	['60-spraying', [`${dew(22).toFixed(1)} °C`, `${(dew(22) + 3).toFixed(1)} °C`, `${dew(25).toFixed(1)} °C`]],
	[
		'60-spraying',
		[`${(u.psi(30) / 1e5).toFixed(2)} bar`, `${((u.bar(3) / u.psi(30) - 1) * 100).toFixed(0)} %`]
	],
	[
		'60-spraying',
		[`${micrometres(wet(0))} µm`, `${micrometres(wet(0) / 2)} µm`, `${micrometres(wet(10))} µm`]
	],
	['70-curing', [`${(u.millilitres(60) / 0.12 / u.millilitres(1)).toFixed(0)} mL`]],
	['70-curing', [`${(u.fahrenheit(300) - 273.15).toFixed(0)} °C`, `${(300 * 1.8 + 32).toFixed(0)} °F`]],
	['80-inspection', [`${micrometres(foil)} µm`]],
	['80-inspection', [`${micrometres(area.mean, 1)} µm`]]
] as const)('%s', (folder, said) => {
	test.each(['en', 'es'])(`says ${said.join(' and ')} in %s`, (lang) => {
		for (const number of said) expect(examplesIn(folder, lang)).toContain(number);
	});
});

test('the area in the example of readings fails on one spot only', () => {
	expect(area.verdict).toBe('within');
	expect(area.spots.map(({ verdict }) => verdict)).toEqual(['within', 'within', 'within', 'within', 'below']);
	expect(area.accepted).toBe(false);
});
