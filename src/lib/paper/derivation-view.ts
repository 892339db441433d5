import { formulaById, limits, type Expectation, type Traced } from '$lib/engine';
import { say } from '$lib/i18n';
import { provenanceView } from './provenance-view';
import { quantityText } from './quantity-text';
import type { Reader } from './reader';

type View = {
	readonly label: string;
	readonly value: string;
	readonly formula?: string;
	readonly provenance: ReturnType<typeof provenanceView>;
	readonly from?: readonly View[];
};

/** A traced number with everything it was made from. */
export function derivationView(traced: Traced, reader: Reader): View {
	const inputs = Object.values(traced.inputs);
	return {
		label: say(traced.label, reader.lang),
		value: quantityText(traced.value, traced.dimension, reader),
		provenance: provenanceView(traced.provenance, traced.origin.kind === 'shop-value'),
		...(traced.origin.kind === 'formula' ? { formula: formulaById(traced.origin.id).equation } : {}),
		...(inputs.length ? { from: inputs.map((input) => derivationView(input, reader)) } : {})
	};
}

/** The numbers an expectation leans on; none for most choices and for orders. */
export function derivationsOf(expectation: Expectation, reader: Reader): View[] {
	if (expectation.kind === 'one-of')
		return (expectation.because ?? []).map((one) => derivationView(one, reader));
	if (!limits(expectation)) return [];
	const numbers = Object.values(expectation).filter(
		(one): one is Traced => typeof one === 'object' && one !== null && 'dimension' in one
	);
	return numbers.map((one) => derivationView(one, reader));
}
