import { noiseExposure } from '../../src/lib/engine/physics/exposure/noise-exposure';
import { percent } from '../../src/lib/engine/units/construct';
import type { SoundLevel } from '../../src/lib/engine/units/dimension';
import { published } from './published';

const { duration, average } = noiseExposure.niosh;
const row = (level: number, minutes: number) => ({
	where: `${level} dB(A)`,
	expected: minutes,
	actual: () => duration.at({ level: level as SoundLevel }) / 60
});

export default [
	published('niosh-98-126', 'time to the full daily dose', {
		of: ['noise-duration-niosh'],
		unit: 'min',
		read: 'table of a NIOSH topic page',
		within: { absolute: 1e-9, because: 'each row is an exact halving of the one before' },
		rows: [row(85, 480), row(88, 240), row(91, 120), row(94, 60), row(97, 30), row(100, 15)]
	}),
	published('niosh-98-126', 'average from dose', {
		of: ['noise-average-niosh'],
		unit: 'dB(A)',
		read: 'TWA = 10·log(D/100) + 85 as quoted in the footnotes',
		within: { absolute: 0.01, because: 'three decibels stand for the 3.0103 of a doubling' },
		rows: [
			{
				where: 'dose 200 %',
				expected: 88.01,
				within: 0.0104,
				actual: () => average.at({ dose: percent(200) })
			}
		]
	})
];
