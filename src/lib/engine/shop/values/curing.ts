import { celsius, degrees, fraction, ratio } from '../../units/construct';
import { defaultNumber } from '../define';

/** W/(m²·K). Moving air alone gives a part 10 to 30, walls as hot as the air some 5 to 10 more. */
const FAN_OVEN = 25;

/** Shop values the rules of this station lean on. */
export const curingValues = {
	'cure.cool-to': defaultNumber(
		'temperature',
		celsius(40),
		'Handle and measure parts when cooled to',
		'Manipular y medir las piezas cuando enfríen a'
	),
	'cure.unlike-walls': defaultNumber(
		'ratio',
		ratio(3),
		'Parts heat up unlike when one wall is thicker than the other by this ratio',
		'Las piezas calientan distinto cuando una pared es más gruesa que la otra en esta relación'
	),
	'cure.air-above-middle': defaultNumber(
		'temperature-difference',
		degrees(5),
		'Oven air is set above the middle of the cure window by',
		'El aire del horno se ajusta por encima del centro de la ventana de curado en'
	),
	'cure.heat-transfer': defaultNumber(
		'heat-transfer',
		FAN_OVEN,
		'Heat that air and walls of the oven give a part',
		'Calor que el aire y las paredes del horno dan a una pieza'
	),
	'cure.heat-up-tolerance': defaultNumber(
		'fraction',
		fraction(0.4),
		'An estimated heat-up time may be off by',
		'Un tiempo de calentamiento estimado puede desviarse en'
	)
} as const;
