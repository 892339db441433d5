import { invented, type Provenance } from '../sources/provenance';
import type { Text } from '../text';
import type { Dimension, Si } from '../units/dimension';

/** Where a number was picked up or made. */
export type TraceOrigin =
	| { readonly kind: 'job'; readonly path: string }
	| { readonly kind: 'sheet'; readonly sheet: string; readonly path: string }
	| { readonly kind: 'shop-value'; readonly id: string }
	| { readonly kind: 'substrate'; readonly id: string; readonly path: string }
	| { readonly kind: 'formula'; readonly id: string }
	| { readonly kind: 'rule'; readonly id: string }
	| { readonly kind: 'example' }
	| { readonly kind: 'answer'; readonly field: string }
	| { readonly kind: 'teaching-model' };

/**
 * A number that remembers what it came from: the whole tree of a plan's derivation is made of these.
 * `value` is in SI of `dimension`.
 */
export type Traced<D extends Dimension = Dimension> = {
	readonly value: Si<D>;
	readonly dimension: D;
	readonly label: Text;
	readonly origin: TraceOrigin;
	readonly provenance: Provenance;
	readonly inputs: Readonly<Record<string, Traced>>;
};

/** A number that the job ticket states. */
export const fromJob = <D extends Dimension>(
	path: string,
	dimension: D,
	value: Si<D>,
	label: Text
): Traced<D> => ({
	value,
	dimension,
	label,
	origin: { kind: 'job', path },
	provenance: { origin: 'customer', verification: { read: 'job ticket' } },
	inputs: {}
});

/** A number that a rule holds itself, such as a legal limit nobody may edit. */
export const constant = <D extends Dimension>(
	rule: string,
	dimension: D,
	value: Si<D>,
	provenance: Provenance,
	label: Text
): Traced<D> => ({ value, dimension, label, origin: { kind: 'rule', id: rule }, provenance, inputs: {} });

/**
 * A number given for a worked sum: invented for it, or a fact with its source.
 * @param label what it is, and the letter it has in the equation
 */
export const given = <D extends Dimension>(
	dimension: D,
	value: Si<NoInfer<D>>,
	label: Text,
	provenance: Provenance = invented
): Traced<D> => ({ value, dimension, label, origin: { kind: 'example' }, provenance, inputs: {} });

/** A number worked out inside a rule by plain arithmetic from others it names. */
export const workedOut = <D extends Dimension>(
	rule: string,
	dimension: D,
	value: number,
	label: Text,
	inputs: Readonly<Record<string, Traced>>
): Traced<D> => ({
	value: value as Si<D>,
	dimension,
	label,
	origin: { kind: 'rule', id: rule },
	provenance: { origin: 'arithmetic', verification: 'memory' },
	inputs
});
