import type { RequestEvent } from '@sveltejs/kit';
import { addMonths, isIsoDate, type CompetencyId } from '$lib/learning';
import {
	certification,
	confirmContinuity,
	dayOf,
	isId,
	schemeAt,
	signOffOf,
	type Acting,
	type Outcome,
	type Refusal
} from '$lib/records';
import { act } from '../act';
import type { App } from '../app';
import { typed } from '../typed';
import { momentOf } from './moment';
import { onSignOffOf } from './own-of';

/** Lines on the form: one job is enough, and more say more. */
const LINES = [0, 1, 2, 3] as const;

export type JobProblem = 'job' | 'day' | 'none';
type JobLine = { readonly job: string; readonly on: string; readonly problem: JobProblem | null };

function readLine(form: FormData, at: number): JobLine {
	const job = typed(form, `job-${at}`).trim().slice(0, 130);
	const on = typed(form, `on-${at}`).trim().slice(0, 20);
	if (!job && !on) return { job, on, problem: null };
	return { job, on, problem: !isId(job) ? 'job' : !isIsoDate(on) ? 'day' : null };
}

/** The jobs as typed, with what is wrong with a line, and at the first line where none was filled in. */
export function readJobs(form: FormData) {
	const lines = LINES.map((at) => readLine(form, at));
	const filled = lines.filter(({ job, on }) => job || on);
	if (filled.length === 0) lines[0] = { ...lines[0]!, problem: 'none' };
	return {
		lines,
		jobs: filled.map(({ job, on }) => ({ job, on })),
		ok: lines.every(({ problem }) => problem === null)
	};
}

/** What a confirmation would cover, and why the record would refuse this supervisor one today, if it would. */
export function continuityPage(app: App, person: string, competency: CompetencyId, actor: string) {
	const { state } = app.journal;
	const acting: Acting = { ...momentOf(app), actor };
	const today = dayOf(state, acting.now);
	const signOff = signOffOf(state, person, competency)?.signOff ?? '';
	const months = schemeAt(state, acting.now)?.limits.continuity.months ?? 0;
	const asked = confirmContinuity(state, { signOff, jobs: [{ job: 'asked', on: today }] }, acting);
	return {
		signOff,
		today,
		from: addMonths(today, -months),
		confirmBy: certification(state, person, competency, acting).validity?.continuityDue ?? null,
		next: addMonths(today, months),
		against: (asked.ok ? null : asked.refusal) as Refusal | null,
		lines: LINES.map(() => ({ job: '', on: '', problem: null }) as JobLine)
	};
}

/** Confirms that a signed person still does this work. */
export const confirm = (
	event: RequestEvent,
	person: string,
	wish: { signOff: string; jobs: { job: string; on: string }[] }
): Promise<Outcome> =>
	act(event, onSignOffOf(person, confirmContinuity), wish, { what: 'confirm-continuity', person });
