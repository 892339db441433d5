import { potLifeAt } from '../physics/mixing/pot-life-at';
import { remembered } from './remembered';
import { sheetValue, type Situation } from './situation';
import { fromJob, type Traced } from './trace';

/**
 * Pot life at the temperature of today's paint. Undefined for a coating that is not mixed, and where the paint is colder
 * or hotter than the rule of thumb holds for.
 */
export const potLifeToday = remembered((seen: Situation): Traced<'duration'> | undefined => {
	const { paint } = seen.job.weather;
	const [stated, statedAt] = [sheetValue(seen, 'pot-life'), sheetValue(seen, 'pot-life-at')];
	const [coldest, hottest] = potLifeAt.validFor.mix;
	if (seen.sheet.parts !== 2 || !stated || !statedAt || paint < coldest || paint > hottest) return undefined;
	const mix = fromJob('weather.paint', 'temperature', paint, {
		en: 'Paint temperature today',
		es: 'Temperatura de la pintura hoy'
	});
	return potLifeAt.of({ stated, statedAt, mix });
});
