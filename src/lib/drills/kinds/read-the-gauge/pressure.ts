import { plannedField, type FieldId } from '$lib/engine';
import type { DialGauge, Scale } from '../../figures/gauge-panel';
import type { MakeInstrument } from './instrument';
import { limitsOf } from '../limits-of';
import { inSi, onDial } from './readable';
import { reads, stands } from './reading';
import { LINE_REGULATORS, TEST_CAPS } from './scales';
import { draw, suits } from './stands';

type Place = {
	readonly field: FieldId;
	readonly shows: DialGauge['shows'];
	readonly scales: Readonly<Record<'psi' | 'bar', readonly Scale[]>>;
	readonly reads: FieldId;
	readonly stands: FieldId;
};

/** A dial, in the unit the ticket says the shop's regulators are marked in. */
const pressureGauge =
	({ field, shows, scales, ...asks }: Place): MakeInstrument =>
	({ job, plan }, random) => {
		const limits = limitsOf(plannedField(plan, field)?.demands ?? []);
		const unit = job.bench.gauge;
		const fit = scales[unit].filter((scale) => suits(onDial('pressure', { ...scale, unit }), limits));
		if (!fit.length) return undefined;
		const scale = random.pick(fit);
		const dial = onDial('pressure', { ...scale, unit });
		const drawn = draw(dial, limits, random);
		return {
			instruments: [{ kind: 'dial', shows, dimension: 'pressure', scale, value: inSi(dial, drawn.shown) }],
			fields: [reads(asks.reads, dial, limits, drawn), stands(asks.stands, dial, limits, drawn, true)]
		};
	};

export const blastGauge = pressureGauge({
	field: 'blast-pressure',
	shows: 'blast-pressure',
	scales: LINE_REGULATORS,
	reads: 'blast-gauge-reads',
	stands: 'blast-gauge-stands'
});

export const capGauge = pressureGauge({
	field: 'cap-pressure',
	shows: 'cap-pressure',
	scales: TEST_CAPS,
	reads: 'cap-gauge-reads',
	stands: 'cap-gauge-stands'
});
