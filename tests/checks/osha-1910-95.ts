import { noiseExposure } from '../../src/lib/engine/physics/exposure/noise-exposure';
import { hours, percent } from '../../src/lib/engine/units/construct';
import type { SoundLevel } from '../../src/lib/engine/units/dimension';
import { published } from './published';

const { duration, average, dose } = noiseExposure.osha;

/**
 * Hours from 80 dB on, as printed. 83 dB is printed 21.1 on the older page and 21.2 on the newer; the formula of the
 * table's footnote gives 21.11.
 */
const TABLE =
	'32 27.9 24.3 21.1 18.4 16 13.9 12.1 10.6 9.2 8 7.0 6.1 5.3 4.6 4 3.5 3.0 2.6 2.3 2 1.7 1.5 1.3 1.1 1 0.87 0.76 0.66 ' +
	'0.57 0.5 0.44 0.38 0.33 0.29 0.25 0.22 0.19 0.16 0.14 0.125 0.11 0.095 0.082 0.072 0.063 0.054 0.047 0.041 0.036 0.031';

/** The whole hours among them are exact, so they get the half digit of their neighbours. */
const halfDigit = (printed: string) => 0.5001 * 10 ** -(printed.split('.')[1]?.length ?? 1);

const read = 'Appendix A on the regulator’s page';

export default [
	published('osha-1910-95', 'Appendix A, Table G-16a: reference duration', {
		of: ['noise-duration-osha'],
		unit: 'h',
		read,
		within: { absolute: 0.05, because: 'half of the last digit printed' },
		rows: TABLE.split(' ').map((printed, row) => ({
			where: `${80 + row} dB`,
			expected: Number(printed),
			within: halfDigit(printed),
			actual: () => duration.at({ level: (80 + row) as SoundLevel }) / 3600
		}))
	}),
	published('osha-1910-95', 'Appendix A, Table A-1: average from dose', {
		of: ['noise-average-osha'],
		unit: 'dB(A)',
		read,
		within: { absolute: 0.05, because: 'printed to one decimal' },
		rows: (
			[
				[10, 73.4],
				[25, 80],
				[50, 85],
				[91, 89.3],
				[100, 90],
				[200, 95],
				[500, 101.6]
			] as const
		).map(([share, level]) => ({
			where: `dose ${share} %`,
			expected: level,
			actual: () => average.at({ dose: percent(share) })
		}))
	}),
	published('osha-1910-95', 'a day of three noise levels, worked in a printed guide', {
		of: ['noise-dose-osha'],
		unit: '%',
		read: 'worked example of a guide to Appendix A',
		within: { absolute: 0.05, because: 'printed to one decimal' },
		rows: [
			{
				where: '4 h at 90, 2 h at 95, 2 h at 85 dB(A)',
				expected: 112.5,
				actual: () =>
					100 *
					dose.at({
						levels: [90, 95, 85] as SoundLevel[],
						durations: [hours(4), hours(2), hours(2)]
					})
			}
		]
	})
];
