import { assemble } from './assemble';
import type { LessonCheck } from './check';
import type { LessonSum } from './sum';

/** Every lesson, in the order of the work. */
export const LESSONS = assemble({
	texts: import.meta.glob('/content/*/*.md', { eager: true, import: 'metadata' }),
	sources: import.meta.glob<string>('/content/*/*.{md,svelte}', {
		eager: true,
		query: '?raw',
		import: 'default'
	}),
	checks: import.meta.glob<readonly LessonCheck[]>('/content/*/checks.ts', {
		eager: true,
		import: 'default'
	}),
	sums: import.meta.glob<readonly LessonSum[]>('/content/*/sums.ts', { eager: true, import: 'default' })
});

/** The lesson at that address, if there is one. */
export const lessonAt = (slug: string) => LESSONS.find((lesson) => lesson.slug === slug);

/** The lessons before and after one in the line. */
export function neighbours(slug: string) {
	const at = LESSONS.findIndex((lesson) => lesson.slug === slug);
	return { before: at > 0 ? LESSONS[at - 1] : undefined, after: at >= 0 ? LESSONS[at + 1] : undefined };
}
