import { EXAMPLE_JOBS, type Job } from '$lib/engine';
import type { App } from '$lib/server/app';
import { workOut } from '$lib/server/bench-card/bench-card';
import { shopInForce } from '$lib/server/shop-in-force';
import { testEvent } from '../test-event';
import { entriesOfJob } from './entries-of-job';

type Change = Readonly<Record<string, string | readonly string[]>>;

const COATING = 'demo-a-isocyanate';

/** The example job of that name, on the shop's day and with one of its coatings. */
export function exampleJob(app: App, id: string, coating = COATING): Job {
	const example = EXAMPLE_JOBS.find((one) => one.id === id);
	if (!example) throw new Error(`no example job ${id}`);
	return { ...example.on(shopInForce(app).shop.on), ticket: 'T-4711', coating } as Job;
}

/** The form of a job as posted, with some entries changed. */
export function jobForm(app: App, job: Job, change: Change = {}): FormData {
	const parts = shopInForce(app).shop.sheets[job.coating]?.parts ?? 2;
	const form = new FormData();
	for (const [name, typed] of Object.entries({ ...entriesOfJob(job, parts), ...change }))
		for (const one of [typed].flat()) form.append(name, one);
	return form;
}

/** The posted form worked out for somebody, as the page gets it: its status, and what it shows. */
export async function post(app: App, person: string, form: FormData) {
	const event = testEvent(app, { path: '/en/bench-card', method: 'POST', person });
	Object.defineProperty(event, 'request', {
		value: new Request(event.url, { method: 'POST', body: form })
	});
	const answer = await workOut(event);
	const { status, data } = 'status' in answer ? answer : { status: 200, data: answer };
	return {
		status: Number(status),
		problem: 'problem' in data ? data.problem : undefined,
		job: 'job' in data ? data.job : undefined,
		card: 'card' in data ? data.card : undefined,
		refusal: 'refusal' in data ? data.refusal : undefined
	};
}

type Answer = Awaited<ReturnType<typeof post>>;

/** Words by field of a form that came back. */
export const errorsIn = ({ job }: Answer): Record<string, string> =>
	Object.fromEntries(
		(job?.rooms ?? []).flatMap(({ facts }) => facts.flatMap(({ id, error }) => (error ? [[id, error]] : [])))
	);

/** Every field a card says something about. */
export const fieldsOn = ({ card }: Answer): string[] =>
	(card?.stations ?? []).flatMap(({ safety, lines }) => [...safety, ...lines].map(({ id }) => id));
