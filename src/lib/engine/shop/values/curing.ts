import { celsius, ratio } from '../../units/construct';
import { defaultNumber } from '../define';

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
	)
} as const;
