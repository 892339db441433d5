import { expect, test } from 'vitest';
import { METRIC, rightAnswers, type FieldId } from '$lib/engine';
import type { Reader } from '$lib/paper';
import type { App } from '$lib/server/app';
import { chooseNext } from '$lib/server/practice/choose-next';
import { askedIn, askedNow, practiceDraft, type PracticeDraft } from '$lib/server/practice/draft';
import { handInPracticeDrill } from '$lib/server/practice/hand-in';
import { issuePractice, type PracticeWish } from '$lib/server/practice/issue';
import { stepView } from '$lib/server/practice/step-view';
import { atNext, withCheck } from '$lib/server/practice/work';
import { readWorked, workedSeen } from '$lib/server/practice/worked-seen';
import { TRAINEE, workedShop } from '../standing/worked-shop';
import { testEvent } from '../test-event';

const reader: Reader = { lang: 'en', units: METRIC };
const MIX = { part: 'mix-the-batch', breadth: 1, support: 'full' } as const;

async function issued(app: App, wish: PracticeWish): Promise<PracticeDraft> {
	const attempt = await issuePractice(app, TRAINEE, wish);
	return practiceDraft(app, TRAINEE, attempt!)!;
}

/** The drill with these fields answered as the plan does. */
const filledIn = (draft: PracticeDraft, ids: readonly FieldId[]): PracticeDraft => {
	const right = rightAnswers(draft.plan);
	const entries = Object.fromEntries(ids.map((id) => [id, { answer: right[id]! }]));
	return { ...draft, entries: { ...draft.entries, ...entries } };
};

const practised = (app: App) => app.journal.state.attempts.practice.get(TRAINEE)!.at(-1)!;
const handIn = (app: App, draft: PracticeDraft) =>
	handInPracticeDrill(testEvent(app, { person: TRAINEE }), draft);

test('what the first check found stays, whatever is put right after it', async () => {
	const { app } = await workedShop();
	const empty = await issued(app, MIX);
	const checked = withCheck(empty);
	const put = filledIn(checked, askedNow(empty));
	const again = withCheck(put);
	expect(again.firstFindings).toEqual(checked.firstFindings);
	expect((await handIn(app, again)).ok).toBe(true);
	const { right, findings, first } = practised(app);
	expect([right, findings]).toEqual([true, []]);
	expect(first).toEqual({ part: 'mix-the-batch', support: 'full', findings: checked.firstFindings });
	expect(first!.findings.length).toBeGreaterThan(2);
	await app.close();
});

test('a page handed in unchecked counts as checked then', async () => {
	const { app } = await workedShop();
	const draft = await issued(app, MIX);
	await handIn(app, filledIn(draft, askedNow(draft).slice(1)));
	expect(practised(app).first!.findings).toEqual(practised(app).findings);
	expect(practised(app).findings.length).toBeGreaterThan(0);
	await app.close();
});

test('of a half-solved drill only the other half is asked, and graded', async () => {
	const { app } = await workedShop();
	const draft = await issued(app, { ...MIX, support: 'half' });
	const view = stepView(draft, reader);
	const all = draft.steps.flatMap(({ fields }) => fields);
	expect(view.given.map(({ id }) => id)).toEqual(draft.given);
	expect(draft.given).toEqual(all.slice(0, Math.floor(all.length / 2)));
	expect(askedIn(draft)).toEqual(all.slice(draft.given.length));
	expect(view.fields.map(({ field }) => field.name)).toEqual(askedIn(draft));
	expect(view.given.every(({ value, reasons }) => value !== '' && reasons.length > 0)).toBe(true);
	await handIn(app, filledIn(draft, askedIn(draft)));
	expect(practised(app)).toMatchObject({ right: true, first: { support: 'half' } });
	const asked = draft.plan.fields.filter(({ field }) => askedIn(draft).includes(field));
	const rules = new Set(asked.flatMap(({ demands }) => demands.map(({ rule }) => rule)));
	expect(new Set(practised(app).rules)).toEqual(rules);
	await app.close();
});

test('a worked drill asks nothing, and reading it is noted beside the record', async () => {
	const { app } = await workedShop();
	const draft = await issued(app, { ...MIX, support: 'worked' });
	expect(askedIn(draft)).toEqual([]);
	const before = app.journal.state.attempts.practice.get(TRAINEE)?.length ?? 0;
	await readWorked(app, TRAINEE, draft);
	expect(workedSeen(app, TRAINEE, 'C8')).toBe(1);
	expect(app.journal.state.attempts.practice.get(TRAINEE)?.length ?? 0).toBe(before);
	expect(practiceDraft(app, TRAINEE, draft.attempt)).toBeUndefined();
	await app.close();
});

test('a drill that comes filled in is never done by halves', async () => {
	const { app } = await workedShop();
	const draft = await issued(app, { ...MIX, part: 'audit-the-ticket', support: 'half' });
	expect([draft.support, draft.given]).toEqual(['full', []]);
	expect(Object.keys(draft.entries).sort()).toEqual([...askedIn(draft)].sort());
	const { fields, outside } = stepView(withCheck(draft), reader);
	expect(fields.every(({ field }) => !('finding' in field))).toBe(true);
	expect(outside).toBeGreaterThanOrEqual(0);
	await app.close();
});

test('what comes next: worked, then half-solved, then all of it, and never the same skill twice after the third', async () => {
	const { app } = await workedShop();
	const skills: string[] = [];
	const supports: string[] = [];
	for (let job = 0; job < 8; job += 1) {
		let next = chooseNext(app, TRAINEE);
		while (next.support === 'worked') {
			supports.push('worked');
			await readWorked(app, TRAINEE, await issued(app, next));
			next = chooseNext(app, TRAINEE);
		}
		supports.push(next.support);
		skills.push(next.skill);
		let draft = await issued(app, next);
		for (const step of draft.steps) draft = atNext(withCheck(filledIn(draft, step.fields)));
		expect((await handIn(app, draft)).ok).toBe(true);
	}
	expect(new Set(skills.slice(0, 3)).size).toBe(1);
	for (let job = 3; job < skills.length; job += 1) expect(skills[job]).not.toBe(skills[job - 1]);
	expect(supports.slice(0, 5)).toEqual(['worked', 'worked', 'half', 'half', 'full']);
	await app.close();
});
