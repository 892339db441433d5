import * as v from 'valibot';
import { jobSchema, type DataSheet, type Job, type Shop } from '$lib/engine';
import { benchCard } from '$lib/i18n';
import type { Reader } from '$lib/paper';
import { disagreements } from './agreement';
import type { Entries } from './entries';
import { AS_THE_SHEET } from './facts/ticket';
import { nested } from './nested';
import { readFact } from './read-fact';
import { factsFor } from './rooms';
import { schemaProblems } from './schema-problems';

export type JobRead =
	| { readonly ok: true; readonly job: Job; readonly sheet: DataSheet }
	/** Words by field. */
	| { readonly ok: false; readonly problems: Readonly<Record<string, string>> };

type Tree = { film?: { basis?: unknown }; parts?: { name: unknown }[] };

/** The facts as the engine takes them: no film where the data sheet's holds, a part's name for both languages. */
function candidate(values: Readonly<Record<string, unknown>>, on: string): unknown {
	const { film, parts, ...rest } = nested(values) as Tree;
	return {
		...rest,
		on,
		film: film?.basis === undefined || film.basis === AS_THE_SHEET ? null : film,
		parts: parts?.map(({ name, ...part }) => ({ ...part, name: { en: name, es: name } }))
	};
}

/** Reads a job of the shop's day from what was entered: every fault at once. */
export function jobFromEntries(entries: Entries, shop: Shop, reader: Reader): JobRead {
	const facts = factsFor(entries.lines);
	const values: Record<string, unknown> = {};
	const unread: Record<string, string> = {};
	for (const [name, fact] of facts) {
		const read = readFact(fact, entries.values[name] ?? [], shop.sheets, reader);
		if ('problem' in read) unread[name] = read.problem;
		else values[name] = read.value;
	}
	const sheet = shop.sheets[String(values.coating)];
	const checked = v.safeParse(jobSchema, candidate(values, shop.on));
	const problems = {
		...(checked.success ? {} : schemaProblems(checked.issues, facts, reader)),
		...disagreements(entries, sheet, shop.on, reader),
		...unread
	};
	if (!checked.success || !sheet || Object.keys(problems).length > 0) return { ok: false, problems };

	const job = { ...checked.output, readings: checked.output.readings.filter((spot) => spot.length > 0) };
	if (job.film && job.film.min > job.film.max)
		return { ok: false, problems: { 'film.max': benchCard[reader.lang].problem.filmOrder } };
	return { ok: true, job, sheet };
}
