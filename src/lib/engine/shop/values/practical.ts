import { millimetres } from '../../units/construct';
import { defaultNumber } from '../define';

/** Limits that only a practical on witness panels holds readings against. */
export const practicalValues = {
	'practical.mask-line': defaultNumber(
		'length',
		millimetres(0.5),
		'Practical: edge of the masked area off its line by, at most',
		'Práctica supervisada: borde de la zona enmascarada fuera de su línea, como máximo'
	)
} as const;
