import {
	fraction,
	workedOut,
	type Demand,
	type FieldId,
	type PlannedField,
	type Text,
	type Traced
} from '$lib/engine';

type Asked = {
	readonly field: FieldId;
	/** The demand of the plan that the reading serves. */
	readonly demand: Demand;
	/** What an instrument or a chart shows. */
	readonly value: Traced;
	/** How far off it may be read. */
	readonly off: Traced;
	/** What that is called as a share of the value. */
	readonly share: Text;
	/** How much farther off still earns part of the credit, SI. */
	readonly amber: number;
};

/** A field that asks what is read: a misread sets nothing too low or too high by itself. */
export function askedReading({ field, demand, value, off, share, amber }: Asked): PlannedField {
	const tolerance = workedOut(demand.rule, 'fraction', fraction(off.value / value.value), share, {
		off,
		reading: value
	});
	return {
		field,
		demands: [{ ...demand, expectation: { kind: 'computed', value, tolerance, amber, reading: true } }],
		superseded: [],
		answer: { kind: 'quantity', value: value.value, typed: '' }
	};
}
