import { fraction } from '../../units/construct';
import { defaultNumber } from '../define';

/** Shop values the rules of this station lean on. */
export const inspectionValues = {
	'inspection.spot.rounding': defaultNumber(
		'fraction',
		fraction(0.03),
		'How far a spot limit may be rounded',
		'Cuánto se puede redondear el límite de un sitio'
	)
} as const;
