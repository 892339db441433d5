import { ambiguityOf, dimensionNamed, unitNamed } from './named';
import type { ReadingContext, Refusal } from './reading';
import type { Unit } from './unit';

/** Words for a degree that do not say of which scale. */
const BARE_DEGREE = /^(?:[°º]|deg|degs|degree|degrees|grado|grados)$/i;

/** The unit a person typed after a number, or why it cannot be taken. */
export function readUnit(typed: string, { dimension, fallbackUnit }: ReadingContext): Unit | Refusal {
	const unit = typed.trim();
	const isTemperature = dimension === 'temperature' || dimension === 'temperature-difference';
	if (!unit || (isTemperature && BARE_DEGREE.test(unit))) return fallbackUnit ?? { code: 'missing-unit' };

	const known = unitNamed(dimension, unit);
	if (known) return known;
	const ambiguity = ambiguityOf(unit);
	if (ambiguity && (dimension === 'volume' || dimension === 'mass'))
		return { code: ambiguity.code, unit, choices: ambiguity.choices };
	const found = dimensionNamed(unit);
	if (found) return { code: 'wrong-dimension', unit, found };
	if (ambiguity) return { code: 'wrong-dimension', unit, found: 'volume' };
	return /\d/.test(unit) ? { code: 'more-than-one-number' } : { code: 'unknown-unit', unit };
}
