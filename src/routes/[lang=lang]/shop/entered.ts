type SentBack = {
	readonly kept: Readonly<Record<string, string | readonly string[]>>;
	readonly problems: Readonly<Record<string, string>>;
};

/** What a form that was sent back holds: the entries as typed, and the problem of each. */
export const entered = (form: SentBack | null | undefined) => ({
	text(name: string, before = ''): string {
		const kept = form?.kept[name];
		return typeof kept === 'string' ? kept : before;
	},
	list(name: string, before: readonly string[] = []): readonly string[] {
		const kept = form?.kept[name];
		return Array.isArray(kept) ? kept : before;
	},
	error: (name: string): string | undefined => form?.problems[name]
});
