import { BENCH_FIELDS, field, FIELD_IDS, rightAnswers, type FieldId } from '$lib/engine';
import { slip } from '../slip';
import { stepsOf } from '../steps';
import type { DrillKind } from './kind';

/** Stations whose lines are audited, and how many of their lines are wrong. */
const STATIONS = 2;
const FEWEST_LINES = 4;
const SLIPS = [2, 4] as const;

/** Intake is settled before a set-up sheet is filled in. */
const AUDITED: readonly FieldId[] = FIELD_IDS.filter(
	(id) => !Object.hasOwn(BENCH_FIELDS, id) && field(id).station !== 'intake'
);

export default {
	id: 'audit-the-ticket',
	title: { en: 'Audit the ticket', es: 'Auditar la orden' },
	about: {
		en: 'find the wrong lines in a set-up sheet that somebody filled in, and put them right',
		es: 'hallar las líneas malas de una hoja de ajuste que alguien llenó, y corregirlas'
	},
	skill: 'C14',
	asks: AUDITED,
	needs: [],
	tells: 'count',
	make({ plan }, random) {
		const ways = stepsOf(plan).filter(
			({ station, fields }) => station !== 'intake' && fields.length >= FEWEST_LINES
		);
		if (ways.length < STATIONS) return undefined;
		const from = random.integer(0, ways.length - STATIONS);
		const steps = ways.slice(from, from + STATIONS);
		const fields = plan.fields.filter(({ field }) => steps.some((step) => step.fields.includes(field)));
		const wrong = random
			.some(fields, random.integer(...SLIPS))
			.map((planned) => [planned.field, slip(plan, planned, random)] as const)
			.filter(([, answer]) => answer !== undefined);
		if (!wrong.length) return undefined;
		return { fields, steps, filled: { ...rightAnswers({ ...plan, fields }), ...Object.fromEntries(wrong) } };
	}
} as const satisfies DrillKind;
