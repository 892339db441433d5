import { given, type Traced } from '../../plan/trace';
import { commonPractice } from '../../sources/provenance';
import type { Text } from '../../text';
import { count, fraction, millilitresPerMinute, millimetres } from '../../units/construct';
import type { Dimension, Si } from '../../units/dimension';

const teaching = <D extends Dimension>(dimension: D, value: Si<NoInfer<D>>, label: Text): Traced<D> => ({
	...given(dimension, value, label, commonPractice),
	origin: { kind: 'teaching-model' }
});

/** Numbers of the gun bench's teaching model. They decide no answer, no plan and no release. */
export const TEACHING_GUN = {
	/** A witness panel; the strokes step along its long side. */
	across: teaching('length', millimetres(150), {
		en: 'Witness panel, side the strokes step along',
		es: 'Panel testigo, lado por el que avanzan las pasadas'
	}),
	along: teaching('length', millimetres(100), {
		en: 'Witness panel, side the strokes run along',
		es: 'Panel testigo, lado a lo largo de las pasadas'
	}),
	/** More pointed than the parabola of the literature: with it half overlap comes out even, as shops find. */
	shape: teaching('count', count(3), {
		en: 'Teaching model: shape of the fan, β',
		es: 'Modelo didáctico: forma del abanico, β'
	}),
	/** Past these shares of a distance the sheet allows, the law of the opening fan is not carried on. */
	nearest: teaching('fraction', fraction(0.5), {
		en: 'Teaching model: the fan closes to no less than this part',
		es: 'Modelo didáctico: el abanico no se cierra a menos de esta parte'
	}),
	farthest: teaching('fraction', fraction(2), {
		en: 'Teaching model: the fan opens to no more than this part',
		es: 'Modelo didáctico: el abanico no se abre a más de esta parte'
	}),
	/** What a small gravity gun gives with a middling tip; the right flow for a job is another. */
	flow: teaching('flow', millilitresPerMinute(100), {
		en: 'Fluid flow the bench starts from',
		es: 'Caudal de pintura con que empieza el banco'
	})
} as const;
