import { render } from 'svelte/server';
import { describe, expect, test } from 'vitest';
import { METRIC, RULES, US, type Shop } from '$lib/engine';
import { LANGS, lessons as words, type Lang } from '$lib/i18n';
import { LESSONS, lessonView, type Lesson } from '$lib/lessons';
import { limitOf, prose } from '$lib/lessons/blocks';
import type { Reader } from '$lib/paper';
import { demoShop, emptyShop } from './demo-shop';
import Shown from './Shown.svelte';

const shown = async (lesson: Lesson, reader: Reader, shop: Shop = demoShop, settled: string[] = []) =>
	render(Shown, {
		props: {
			Prose: await prose(lesson.folder, reader.lang),
			view: lessonView(lesson, shop, reader, settled)
		}
	}).body;

const every = LESSONS.flatMap((lesson) =>
	LANGS.map((lang) => [`${lesson.folder}/${lang}`, lesson, lang] as const)
);

describe.each(every)('%s', (_name, lesson: Lesson, lang: Lang) => {
	test('shows every rule it teaches with what this shop expects, and every check as a form', async () => {
		const body = await shown(lesson, { lang, units: METRIC });
		const { rules } = lessonView(lesson, demoShop, { lang, units: METRIC });
		for (const { id } of RULES.filter((rule) => rule.lesson.startsWith(`${lesson.slug}#`))) {
			const [, section = ''] = body.split(`<section id="${id}"`);
			expect([id, section.includes(`/${lang}/rules/${id}"`)]).toEqual([id, true]);
			for (const line of rules[id]!.lines) expect(section).toContain(line.value.replaceAll('"', '&quot;'));
		}
		for (const { id } of lesson.checks)
			expect(body).toContain(`<form method="POST" action="?/check#check-${id}"`);
	});

	test('leaves nothing unsaid and gives each thing an id of its own', async () => {
		const body = await shown(lesson, { lang, units: US });
		expect(body).not.toMatch(/undefined|NaN|\[object|Infinity/);
		const ids = [...body.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id);
		expect(ids.filter((id, at) => ids.indexOf(id) !== at)).toEqual([]);
		expect(body.match(/<figure/g)?.length ?? 0).toBeGreaterThanOrEqual(1);
	});

	test('is readable in a shop without data sheets, and says that it has no numbers', async () => {
		const body = await shown(lesson, { lang, units: METRIC }, emptyShop);
		const teaches = RULES.some((rule) => rule.lesson.startsWith(`${lesson.slug}#`));
		expect(body).toContain(teaches ? words[lang].notCalledFor : words[lang].notAsked);
		const left = lesson.checks.filter(({ kind }) => kind === 'reason');
		expect(body.match(/<form /g)?.length ?? 0).toBe(left.length);
	});
});

test('a number named for one job is never that of another', async () => {
	const viewOf = (slug: string) =>
		lessonView(
			LESSONS.find((lesson) => lesson.slug === slug)!,
			demoShop,
			{ lang: 'en', units: METRIC }
		);
	const heat = viewOf('heat-limits');
	// a bonded ABS knob lowers the limit of a steel lever
	expect(limitOf(heat, 'part-limit-lowest', 'knob-levers')).not.toBe(
		limitOf(heat, 'part-limit-lowest', 'steel-plates')
	);
	expect(limitOf(viewOf('taking-apart'), 'growth-on-diameter', 'steel-plates')).toBe(
		words.en.notCalledForShort
	);
});

test('every drawing finds the numbers of the jobs it names', async () => {
	for (const [, lesson, lang] of every)
		expect(await shown(lesson, { lang, units: METRIC })).not.toContain(words[lang].notCalledForShort);
});

test('a check answered right before says so', async () => {
	const [lesson] = LESSONS;
	const reader = { lang: 'en', units: METRIC } as const;
	const { id } = lesson!.checks[0]!;
	expect(await shown(lesson!, reader)).not.toContain(words.en.answered);
	expect(await shown(lesson!, reader, demoShop, [id])).toContain(words.en.answered);
});

test('a reader of US units sees none of the metric limits of blasting', async () => {
	const lesson = LESSONS.find(({ slug }) => slug === 'blast-settings')!;
	const [, section = ''] = (await shown(lesson, { lang: 'en', units: US })).split(
		'<section id="blast-pressure"'
	);
	expect(section.split('</section>')[0]).toMatch(/psi/);
	expect(section.split('</section>')[0]).not.toMatch(/\d bar/);
});
