import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { makeTicket } from '$lib/drills';
import { field, grade, parseQuantity, solve, US, type Answer, type FieldId } from '$lib/engine';
import { say } from '$lib/i18n';
import { expectationText, sheetView, ticketView, type Reader, type TicketView } from '$lib/paper';
import { demoShop } from '../behaviour/drills/shop';

/**
 * Random tickets for somebody who has read the lessons and nothing else, and the grading of what they answered.
 *   tickets.ts write <folder>   writes ten tickets as text, with the fields to answer
 *   tickets.ts grade <folder>   reads <folder>/answers.json and prints each answer that is outside its window
 * Answers: { "1": { "<field>": "text of a number with its unit" | "option" | ["options"] } }
 */
const TICKETS = 10;
const FIRST_SEED = 20261125;
const reader: Reader = { lang: 'en', units: US };
const shop = demoShop();

const tickets = Array.from({ length: TICKETS }, (_, at) => {
	const ticket = makeTicket({ seed: FIRST_SEED + at, breadth: 1, shop });
	if (!ticket) throw new Error('no ticket');
	return { ...ticket, plan: solve(ticket.job, shop) };
});

function asked(id: FieldId): string {
	const spec = field(id);
	const label = `- ${id}: ${say(spec.label, 'en')}`;
	if (spec.kind === 'quantity') return `${label} (a number with its unit)`;
	const options = Object.entries(spec.options).map(([option, text]) => `${option} = ${say(text, 'en')}`);
	const how = { choice: 'one of', choices: 'any of, as a list', order: 'all in order, as a list' }[spec.kind];
	return `${label} (${how}: ${options.join('; ')})`;
}

const rows = (list: readonly { readonly label: string; readonly value: string }[]) =>
	list.map(({ label, value }) => `${label}: ${value}`).join('\n');

const ticketText = ({ number, head, sections }: TicketView) =>
	[number, rows(head), ...sections.map((section) => `${section.title}\n${rows(section.rows)}`)].join('\n\n');

function write(folder: string) {
	mkdirSync(folder, { recursive: true });
	for (const [at, { job, plan }] of tickets.entries()) {
		const sheet = shop.sheets[job.coating]!;
		const text = [
			`# Ticket ${at + 1}`,
			ticketText(ticketView(job, shop, reader)),
			'## Data sheet',
			rows(sheetView(sheet, job.on, reader).rows),
			'## Fields',
			...plan.fields.map((planned) => asked(planned.field))
		];
		writeFileSync(join(folder, `ticket-${at + 1}.md`), text.join('\n\n'));
	}
}

type Given = Readonly<Record<string, string | readonly string[]>>;

function answerOf(id: FieldId, given: string | readonly string[] | undefined): Answer | undefined {
	const spec = field(id);
	if (given === undefined) return undefined;
	if (spec.kind === 'choice') return { kind: 'choice', option: String(given) };
	if (spec.kind !== 'quantity') return { kind: spec.kind, options: [given].flat() as string[] };
	const read = parseQuantity(String(given), spec.dimension, { lang: 'en' });
	return read.ok ? { kind: 'quantity', value: read.value, typed: String(given) } : undefined;
}

function judge(folder: string) {
	const answers = JSON.parse(readFileSync(join(folder, 'answers.json'), 'utf8')) as Record<string, Given>;
	let [kept, of] = [0, 0];
	for (const [at, { plan }] of tickets.entries()) {
		const given = answers[at + 1] ?? {};
		const put = Object.fromEntries(
			plan.fields.flatMap(({ field: id }) => {
				const answer = answerOf(id, given[id]);
				return answer ? [[id, answer]] : [];
			})
		);
		const { breaches } = grade(plan, put);
		const wrong = [...new Set(breaches.map((breach) => breach.field))];
		kept += plan.fields.length - wrong.length;
		of += plan.fields.length;
		for (const breach of breaches)
			console.log(
				`${at + 1} ${breach.field} (${breach.rule}): ${JSON.stringify(given[breach.field] ?? null)}, right: ${expectationText(breach.field, breach.expected, reader)}`
			);
	}
	console.log(`${kept} of ${of} fields right`);
}

const [, , task, folder] = process.argv;
if (task === 'write' && folder) write(folder);
else if (task === 'grade' && folder) judge(folder);
else throw new Error('tickets.ts write|grade <folder>');
