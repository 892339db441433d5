import { celsius, degrees, percent } from '../../units/construct';
import { defaultNumber } from '../define';

const tape = (degreesCelsius: number, en: string, es: string) =>
	defaultNumber(
		'temperature',
		celsius(degreesCelsius),
		`Masking tape stands: ${en}`,
		`La cinta resiste: ${es}`
	);

/** Shop values the rules of this station lean on. */
export const intakeValues = {
	'part-cap.rounding': defaultNumber(
		'temperature-difference',
		degrees(5),
		'Part limit: how far below the true limit still names that limit',
		'Límite de la pieza: cuánto por debajo del límite real aún cuenta como ese límite'
	),
	'growth.tolerance': defaultNumber(
		'fraction',
		percent(5),
		'Diameter growth: rounding that is still right',
		'Aumento del diámetro: redondeo que aún es correcto'
	),
	'tape.paper': tape(120, 'paper', 'papel'),
	'tape.polyester': tape(200, 'polyester', 'poliéster'),
	'tape.polyimide': tape(260, 'polyimide', 'poliimida')
} as const;
