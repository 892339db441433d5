import { coldestPart } from '../../plan/coldest-part';
import { workedOut, type Traced } from '../../plan/trace';
import { shopValue } from '../../shop/shop';
import { cite } from '../../sources/provenance';
import { celsius } from '../../units/construct';
import type { Rule } from '../rule';

const ID = 'lowest-surface-temperature';

/** A probe shows tenths of a degree, so the tenth below the limit is the limit as anybody can read it. */
function asRead(limit: Traced<'temperature'>) {
	const tenths = Math.floor((limit.value - celsius(0)) * 10) / 10;
	const label = { en: 'Limit, to a tenth of a degree', es: 'Límite, a la décima de grado' };
	return workedOut(ID, 'temperature', celsius(tenths), label, { limit });
}

export default {
	id: 'lowest-surface-temperature',
	station: 'spraying',
	competency: 'spraying',
	skill: 'C9',
	title: {
		en: 'Lowest part temperature for today’s air',
		es: 'Temperatura mínima de la pieza para el aire de hoy'
	},
	why: {
		en: 'Dew point plus margin is the coldest a part may be in this air. Whoever has worked it out sees at one touch of the probe whether to wait.',
		es: 'El punto de rocío más el margen es lo más fría que puede estar la pieza en este aire. Quien lo calculó ve con un toque de la sonda si hay que esperar.'
	},
	severity: 'quality',
	authority: 'shop',
	provenance: cite('iso-8502-4', 'margin above the dew point'),
	lesson: 'air-and-dew-point#lowest-surface-temperature',
	breaks: { low: ['blushing', 'flaking', 'flash-rust'] },
	outcome: {
		en: 'Set too low: coating on condensed water. Set too high: waiting for nothing.',
		es: 'Muy baja: recubrimiento sobre agua condensada. Muy alta: espera inútil.'
	},
	evidence: {
		en: 'Work it out again from the air temperature and humidity in the log.',
		es: 'Calcúlela otra vez con la temperatura y humedad del registro.'
	},
	field: 'surface-minimum',
	applies: () => true,
	expects(seen) {
		const limit = coldestPart(seen);
		const rounding = shopValue(seen.shop, 'spray.dew-point-rounding');
		const label = { en: 'Limit, rounded up', es: 'Límite, redondeado hacia arriba' };
		const max = workedOut(ID, 'temperature', limit.value + rounding.value, label, { limit, rounding });
		return { kind: 'range', min: asRead(limit), max, amber: 0.5 };
	}
} satisfies Rule;
