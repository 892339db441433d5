import { expect, test } from 'vitest';
import { makeTicket, type Breadth } from '$lib/drills';
import { grade, METRIC, solve, US } from '$lib/engine';
import { findings as messages } from '$lib/i18n';
import { findingView, type Reader } from '$lib/paper';
import { breaking } from '../drills/breaking';
import { demoShop } from '../drills/shop';

/** Feedback in small pieces is read; a page of it is not. */
const MOST_WORDS = 60;

const words = (text: string) => text.split(/\s+/).filter((word) => /[\p{L}\p{N}]/u.test(word)).length;

const shop = demoShop();
const READERS: Reader[] = [
	{ lang: 'en', units: US },
	{ lang: 'es', units: METRIC }
];

const plans = Array.from({ length: 400 }, (_, seed) => {
	const ticket = makeTicket({ seed, breadth: ((seed % 3) + 1) as Breadth, shop })!;
	return solve(ticket.job, shop);
});
const found = plans.flatMap((plan) =>
	plan.fields.flatMap((planned) =>
		planned.demands.flatMap((demand) => {
			const answer = breaking(planned, demand);
			if (!answer) return [];
			const { breaches } = grade({ ...plan, fields: [planned] }, { [planned.field]: answer });
			return breaches.filter(({ rule }) => rule === demand.rule);
		})
	)
);

test.each(READERS)(
	'what is said of a wrong answer is at most 60 words in $lang, options to choose from aside',
	(reader) => {
		const seen = new Map<string, number>();
		for (const finding of found) {
			const { why, outcome, next, howFar } = findingView(finding, reader);
			const said = [why, outcome, next, howFar, messages[reader.lang].lesson].join(' ');
			seen.set(finding.rule, Math.max(seen.get(finding.rule) ?? 0, words(said)));
		}
		expect(seen.size).toBeGreaterThan(80);
		expect([...seen].filter(([, count]) => count > MOST_WORDS)).toEqual([]);
	}
);

test('what is next fits what was asked: a number goes up or down, an option or an order is changed', () => {
	const reader = READERS[0]!;
	const { todo } = messages.en;
	const next = new Map<string, Set<string | undefined>>();
	for (const finding of found.filter(({ severity }) => severity !== 'safety-stop')) {
		const said = next.get(finding.expected.kind) ?? new Set();
		next.set(finding.expected.kind, said.add(findingView(finding, reader).next));
	}
	expect(next.get('range')).toEqual(new Set([todo.high]));
	expect(next.get('at-least')).toEqual(new Set([todo.low]));
	expect(next.get('one-of')).toEqual(new Set([todo.wrong]));
	expect(next.get('order')).toEqual(new Set([todo.wrong]));
	expect(next.get('all-of')).toEqual(new Set([todo.missing]));
});
