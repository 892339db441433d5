import { jStat } from 'jstat';
import { coverageFactor } from '../../src/lib/engine/physics/readings/coverage-factor';
import { strokeFilm } from '../../src/lib/engine/physics/spray/stroke-film';
import { count, millimetres, percent, squareMetres } from '../../src/lib/engine/units/construct';
import { published } from './published';

const read = 'library jstat 1.9.6, run in this test';

/** 10 mm² of film in a stroke, so that a density per millimetre reads as a film in hundredths of a millimetre. */
const deposit = squareMetres(1e-5);
const FAN = 200;

export default [
	published('jstat', 'two-sided quantiles of Student’s t', {
		of: ['coverage-factor'],
		unit: '',
		read,
		within: { relative: 1e-7, because: 'the library stops its search at eight digits' },
		rows: (
			[
				[50, 1],
				[90, 2],
				[95, 9],
				[99, 14],
				[99.9, 119]
			] as const
		).map(([share, degrees]) => ({
			where: `${share} %, ${degrees} degrees of freedom`,
			expected: jStat.studentt.inv(0.5 + share / 200, degrees),
			actual: () => coverageFactor.at({ confidence: percent(share), degrees: count(degrees) })
		}))
	}),
	published('jstat', 'beta distribution with equal exponents, laid across a fan of 200 mm', {
		of: ['stroke-film-beta', 'stroke-film-parabola'],
		unit: '1/mm',
		read,
		within: { relative: 1e-8, because: 'the gamma function of the library has some nine digits' },
		rows: [
			...(
				[
					[2.5, 0],
					[2.5, 60],
					[4, -30],
					[1.5, 90]
				] as const
			).map(([beta, x]) => ({
				where: `β = ${beta} at ${x} mm`,
				expected: jStat.beta.pdf(x / FAN + 0.5, beta, beta) / FAN,
				actual: () =>
					strokeFilm.beta.at({
						deposit,
						x: millimetres(x),
						width: millimetres(FAN),
						beta: count(beta)
					}) * 100
			})),
			{
				where: 'parabola at 50 mm',
				expected: jStat.beta.pdf(0.75, 2, 2) / FAN,
				actual: () => strokeFilm.parabola.at({ deposit, x: millimetres(50), width: millimetres(FAN) }) * 100
			}
		]
	}),
	published('jstat', 'normal density with a deviation of 40 mm', {
		of: ['stroke-film-bell'],
		unit: '1/mm',
		read,
		within: { relative: 1e-12, because: 'double precision' },
		rows: [0, -25, 100].map((x) => ({
			where: `at ${x} mm`,
			expected: jStat.normal.pdf(x, 0, 40),
			actual: () => strokeFilm.bell.at({ deposit, x: millimetres(x), sigma: millimetres(40) }) * 100
		}))
	})
];
