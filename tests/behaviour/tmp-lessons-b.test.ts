import { render } from 'svelte/server';
import { expect, it } from 'vitest';
import { writeFileSync } from 'node:fs';
import { METRIC } from '$lib/engine';
import { answerCheck, exampleOf, lessonView } from '$lib/lessons';
import Probe from './TmpProbe.svelte';
import { shop } from './engine/rules/bench';

const mods = import.meta.glob('/content/*/*.md', { eager: true }) as any;
const checks = import.meta.glob('/content/*/checks.ts', { eager: true, import: 'default' }) as any;
const mine = Object.keys(mods).filter((k) => /\/(50|60|70|80|90)-/.test(k));
for (const k of mine)
	it(k, () => {
		const folder = k.split('/')[2]!;
		const lang = k.endsWith('es.md') ? 'es' : 'en';
		const head = mods[k].metadata;
		const lesson: any = { slug: folder.slice(3), folder, station: head.station, version: 1, head: {}, checks: checks[`/content/${folder}/checks.ts`] };
		const v = lessonView(lesson, shop, { lang, units: METRIC } as any);
		const out = render(Probe as any, { props: { view: v, prose: mods[k].default } });
		writeFileSync(`/tmp/lx/${folder}-${lang}.html`, out.body);
		expect(out.body).not.toContain('undefined');
		for (const c of lesson.checks) console.log(folder, c.id, c.kind, exampleOf(c, shop)?.id, exampleOf(c, shop)?.sheet.id, JSON.stringify((exampleOf(c, shop)?.expectation as any)?.kind));
	});
