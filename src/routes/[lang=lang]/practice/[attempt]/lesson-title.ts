/** The title of the lesson an address leads to. */
export const lessonTitle = (titles: Readonly<Record<string, string>>, href: string): string | undefined =>
	titles[href.replace(/.*\/lessons\/|#.*/g, '')];
