import { describe, expect, test } from 'vitest';
import { makeProvingDrill } from '$lib/drills';
import {
	grade,
	METRIC,
	parseQuantity,
	halfStep,
	rightAnswers,
	US,
	type Answer,
	type Answers,
	type FieldId,
	field,
	solve,
	type Job
} from '$lib/engine';
import { answerText, ticketView, type Reader } from '$lib/paper';
import { readTicket } from '../../browser/journey/read-ticket';
import { demoShop } from './shop';

const shop = demoShop();
const AREAS = ['intake', 'preparation', 'mixing', 'spraying', 'curing', 'inspection'] as const;

/** The plan's own answers as somebody reading these units would type them. */
const typedIn = (answers: Answers, reader: Reader): Answers =>
	Object.fromEntries(
		Object.entries(answers).map(([id, answer]) => {
			const spec = field(id as FieldId);
			if (answer.kind !== 'quantity' || spec.kind !== 'quantity') return [id, answer];
			const typed = answerText(id as FieldId, answer, reader);
			const read = parseQuantity(typed, spec.dimension, { lang: reader.lang });
			if (!read.ok) throw new Error(`${id}: "${typed}" cannot be read back`);
			const rounding = halfStep(read.value, spec.dimension, read.unit);
			return [id, { kind: 'quantity', value: read.value, typed, rounding } satisfies Answer];
		})
	);

/** The job as somebody reads it off the ticket: numbers rounded to what is printed. */
const asRead = (job: Job, reader: Reader) => {
	const view = ticketView(job, shop, reader);
	const rows = (from: typeof view.head) =>
		new Map(from.map(({ label, value }) => [label, value.replaceAll('\u00a0', ' ')]));
	const sections = new Map(view.sections.map((section) => [section.title, rows(section.rows)]));
	return readTicket({ number: view.number, head: rows(view.head), sections }, reader.lang);
};

/*
 * Numbers are rounded where they are printed and again where they are typed. Neither may turn a right answer wrong.
 */
describe('what follows from the ticket as printed is right when typed as shown', () => {
	test.each([
		['en, US units', { lang: 'en' as const, units: US }],
		['es, metric', { lang: 'es' as const, units: METRIC }]
	])('%s', { timeout: 240_000 }, (_name, reader) => {
		for (const competency of AREAS)
			for (let seed = 0; seed < 40; seed += 1) {
				const { job, plan } = makeProvingDrill({ seed, competency, shop })!;
				const { breaches } = grade(plan, typedIn(rightAnswers(solve(asRead(job, reader), shop)), reader));
				expect(breaches.map(({ rule }) => `${competency} ${seed}: ${rule}`)).toEqual([]);
			}
	});
});
