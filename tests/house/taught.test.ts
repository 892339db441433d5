import { expect, test } from 'vitest';
import { RULES, taughtIn } from '$lib/engine';
import { LESSONS } from '$lib/lessons';

/** A line of the table: a rule, the section that teaches it, the checks that ask for it there. */
const table = RULES.map((rule) => {
	const { id, lesson } = rule;
	const taught = LESSONS.find(({ slug }) => slug === taughtIn(rule));
	const checks = taught?.checks.filter((check) => check.rule === id).map((check) => check.id) ?? [];
	return { id, lesson, checks };
});

test('every rule has a lesson that checks it where it teaches it', () => {
	console.log(
		table
			.map(({ id, lesson, checks }) => `${id.padEnd(32)} ${lesson.padEnd(52)} ${checks.join(', ')}`)
			.join('\n')
	);
	expect(table.filter(({ checks }) => !checks.length).map(({ id }) => id)).toEqual([]);
});
