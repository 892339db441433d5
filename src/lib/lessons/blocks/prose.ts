import type { Component } from 'svelte';
import type { Lang } from '$lib/i18n';

const files = import.meta.glob<Component>('/content/*/*.md', { import: 'default' });

/**
 * The text of a lesson, fetched when it is read.
 * @param folder name of its folder in content/, with the number
 */
export async function prose(folder: string, lang: Lang): Promise<Component> {
	const load = files[`/content/${folder}/${lang}.md`];
	if (!load) throw new RangeError(`content/${folder} has no ${lang}.md`);
	return load();
}
