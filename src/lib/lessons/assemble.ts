import { LANGS } from '$lib/i18n';
import type { LessonCheck } from './check';
import { readFrontMatter, type FrontMatter } from './front-matter';
import type { Lesson } from './lesson';
import { namedIn } from './named-in';
import type { LessonSum } from './sum';

/** What lies in content/, by path: front matter of the texts, checks and sums of the lessons, and the files themselves. */
export type ContentFiles = {
	readonly texts: Readonly<Record<string, unknown>>;
	readonly checks: Readonly<Record<string, readonly LessonCheck[]>>;
	/** A lesson may do without. */
	readonly sums: Readonly<Record<string, readonly LessonSum[]>>;
	/** Texts and drawings as they are written. */
	readonly sources: Readonly<Record<string, string>>;
};

const NAMED = /^\/content\/((\d+)-([a-z]+(?:-[a-z]+)*))\/(\w+)\.md$/;

function twice(values: readonly string[]): string | undefined {
	return values.find((value, at) => values.indexOf(value) !== at);
}

function lessonIn(folder: string, slug: string, files: ContentFiles): Lesson {
	const { texts, sources } = files;
	const [en, es] = LANGS.map((lang) => {
		const path = `/content/${folder}/${lang}.md`;
		return readFrontMatter(path, texts[path]);
	});
	const checks = files.checks[`/content/${folder}/checks.ts`];
	const sums = files.sums[`/content/${folder}/sums.ts`] ?? [];
	if (!en || !es || !checks?.length) throw new TypeError(`content/${folder} has no checks`);
	if (en.station !== es.station || en.version !== es.version)
		throw new TypeError(`content/${folder}: station and version differ between the languages`);
	for (const [what, listed] of Object.entries({ checks, sums })) {
		const repeated = twice(listed.map(({ id }) => id));
		if (repeated) throw new TypeError(`content/${folder}/${what}.ts: two ${what} called '${repeated}'`);
	}
	const written = Object.entries(sources).flatMap(([path, text]) =>
		path.startsWith(`/content/${folder}/`) ? [text] : []
	);
	const head = ({ title, aim }: FrontMatter) => ({ title, aim });
	return {
		...{ slug, folder, station: en.station, version: en.version, checks, sums },
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
