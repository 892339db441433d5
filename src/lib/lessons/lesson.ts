import type { Lang } from '$lib/i18n';
import type { LessonCheck } from './check';
import type { FrontMatter } from './front-matter';
import type { Named } from './named-in';
import type { LessonSum } from './sum';

/** One lesson in every language, with its checks and its sums. */
export type Lesson = {
	/** As in the address and in the rules' anchors. */
	readonly slug: string;
	/** Its folder in content/, with the number that orders it. */
	readonly folder: string;
	readonly station: FrontMatter['station'];
	readonly version: number;
	readonly head: Readonly<Record<Lang, Pick<FrontMatter, 'title' | 'aim'>>>;
	readonly checks: readonly LessonCheck[];
	readonly sums: readonly LessonSum[];
	readonly names: Named;
};
