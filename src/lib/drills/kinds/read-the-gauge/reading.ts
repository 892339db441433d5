import {
	commonPractice,
	given,
	si,
	type Demand,
	type FieldId,
	type PlannedField,
	type Stand,
	type Traced
} from '$lib/engine';
import { askedReading } from '../asked-reading';
import type { Limit, Limits } from '../limits-of';
import { distance, inSi, type Readable } from './readable';
import type { Drawn } from './stands';

/** A rule's demand with another expectation. */
const demandOf = ({ demand }: Limit, expectation: Demand['expectation']): Demand => ({
	...demand,
	expectation
});

/** Limits whose rules a reading falls under: of the side it is off to, and of both where it is inside. */
const spokenOf = ({ low, high }: Limits, stand: Stand): readonly Limit[] =>
	[stand === 'high' ? undefined : low, stand === 'low' ? undefined : high].filter((one) => one !== undefined);

/** The instrument as drawn: a number made up for the drill. */
const asDrawn = (readable: Readable, { shown }: Drawn): Traced =>
	given(readable.dimension, inSi(readable, shown), {
		en: 'The instrument shows',
		es: 'El instrumento marca'
	});

const SHARE = { en: 'As a share of the reading', es: 'Como parte de la lectura' };

const offOf = (readable: Readable): Traced =>
	given(
		readable.dimension,
		// of a temperature this would be a difference; temperatures are not asked as a reading
		si(distance(readable, readable.tolerance)),
		{
			en: 'How far off it may be read: half a division, or the last digit of a display',
			es: 'Cuánto puede desviarse la lectura: media división, o el último dígito de una pantalla'
		},
		commonPractice
	);

/** The field that asks what an instrument reads. */
export function reads(id: FieldId, readable: Readable, limits: Limits, drawn: Drawn): PlannedField {
	const value = asDrawn(readable, drawn);
	const [limit] = spokenOf(limits, drawn.stand);
	if (!limit) throw new Error(`reads: ${id} has no limit on the side of its reading`);
	const { demand } = limit;
	return askedReading({ field: id, demand, value, off: offOf(readable), share: SHARE, amber: 0 });
}

type Leads = Readonly<Record<string, 'low' | 'high'>>;

/**
 * What comes of acting on a wrong verdict, on the side of one limit. A reading beyond it that passes stays as it is; one
 * that is taken for too far the other way, or a good one taken for bad, is put on the wrong side where it can be
 * adjusted at all.
 */
function leadsTo(side: 'low' | 'high', stand: Stand, adjusted: boolean): Leads {
	const other = side === 'low' ? 'high' : 'low';
	const put: Leads = adjusted ? { [other]: side } : {};
	return stand === side ? { inside: side, ...put } : put;
}

/** The field that asks where a reading stands. `adjusted`: whoever finds it off turns it back, and does not set parts aside. */
export function stands(
	id: FieldId,
	readable: Readable,
	limits: Limits,
	drawn: Drawn,
	adjusted: boolean
): PlannedField {
	const { stand } = drawn;
	const limitsAt = [limits.low, limits.high].flatMap((one) => (one ? [one.at] : []));
	const because = [asDrawn(readable, drawn), ...limitsAt];
	const spoken = spokenOf(limits, stand);
	const leadsOf = (rule: string): Leads =>
		Object.assign(
			{},
			...spoken
				.filter(({ demand }) => demand.rule === rule)
				.map((limit) => leadsTo(limit === limits.low ? 'low' : 'high', stand, adjusted))
		);
	// one rule may set both limits, and speaks once
	const speakers = spoken.filter(
		({ demand }, at) => spoken.findIndex((one) => one.demand.rule === demand.rule) === at
	);
	return {
		field: id,
		demands: speakers.map((limit) =>
			demandOf(limit, { kind: 'one-of', options: [stand], because, leads: leadsOf(limit.demand.rule) })
		),
		superseded: [],
		answer: { kind: 'choice', option: stand }
	};
}
