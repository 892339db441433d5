import type { Lang } from '$lib/i18n';

const texts = import.meta.glob<string>('/content/*/*.md', { eager: true, query: '?raw', import: 'default' });

const SECTION = /<RuleSection\s+id="([^"]+)">([\s\S]*?)<\/RuleSection>/g;

/** A lesson's Markdown: what stands in the sections of its rules by rule, and the rest. */
export function textOf(folder: string, lang: Lang) {
	const text = texts[`/content/${folder}/${lang}.md`];
	if (text === undefined) throw new RangeError(`content/${folder} has no ${lang}.md`);
	const sections = [...text.matchAll(SECTION)].map(([, rule = '', prose = '']) => ({ rule, prose }));
	return { sections, rest: text.replace(SECTION, '') };
}
