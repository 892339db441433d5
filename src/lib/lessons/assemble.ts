import { LANGS } from '$lib/i18n';
import type { LessonCheck } from './check';
import { readFrontMatter, type FrontMatter } from './front-matter';
import type { Lesson } from './lesson';
import { namedIn } from './named-in';

/** What lies in content/, by path: front matter of the texts, checks of the lessons, and the files themselves. */
export type ContentFiles = {
	readonly texts: Readonly<Record<string, unknown>>;
	readonly checks: Readonly<Record<string, readonly LessonCheck[]>>;
	/** Texts and drawings as they are written. */
	readonly sources: Readonly<Record<string, string>>;
};

const NAMED = /^\/content\/((\d+)-([a-z]+(?:-[a-z]+)*))\/(\w+)\.md$/;

function twice(values: readonly string[]): string | undefined {
	return values.find((value, at) => values.indexOf(value) !== at);
}

function lessonIn(folder: string, slug: string, { texts, checks: allChecks, sources }: ContentFiles): Lesson {
	const [en, es] = LANGS.map((lang) => {
		const path = `/content/${folder}/${lang}.md`;
		return readFrontMatter(path, texts[path]);
	});
	const checks = allChecks[`/content/${folder}/checks.ts`];
	if (!en || !es || !checks?.length) throw new TypeError(`content/${folder} has no checks`);
	if (en.station !== es.station || en.version !== es.version)
		throw new TypeError(`content/${folder}: station and version differ between the languages`);
	const repeated = twice(checks.map(({ id }) => id));
	if (repeated) throw new TypeError(`content/${folder}/checks.ts: two checks called '${repeated}'`);
	const written = Object.entries(sources).flatMap(([path, text]) =>
		path.startsWith(`/content/${folder}/`) ? [text] : []
	);
	const head = ({ title, aim }: FrontMatter) => ({ title, aim });
	return {
		...{ slug, folder, station: en.station, version: en.version, checks },
		head: { en: head(en), es: head(es) },
		names: namedIn(written)
	};
}

/**
 * Puts the lessons together in their order. Throws, naming the file, for a text that is badly named, has bad front
 * matter, lacks its other language or its checks, or shares its address with another lesson.
 */
export function assemble(files: ContentFiles): readonly Lesson[] {
	const slugs = new Map<string, string>();
	for (const path of Object.keys(files.texts).sort()) {
		const [, folder, , slug, lang] = NAMED.exec(path) ?? [];
		if (!folder || !slug || !LANGS.some((one) => one === lang))
			throw new TypeError(`${path} is not named NN-slug/<language>.md`);
		slugs.set(folder, slug);
	}
	const repeated = twice([...slugs.values()]);
	if (repeated) throw new TypeError(`two lessons have the address '${repeated}'`);
	return [...slugs].map(([folder, slug]) => lessonIn(folder, slug, files));
}
