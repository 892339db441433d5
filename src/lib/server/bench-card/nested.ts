type Branch = { [key: string]: unknown };

/** A branch whose keys are 0, 1, 2 … is a list. */
const settled = (branch: unknown): unknown => {
	if (typeof branch !== 'object' || branch === null || Array.isArray(branch)) return branch;
	const entries = Object.entries(branch).map(([key, value]) => [key, settled(value)] as const);
	return entries.length > 0 && entries.every(([key]) => /^\d+$/.test(key))
		? entries.map(([, value]) => value)
		: Object.fromEntries(entries);
};

/** A tree from values by dotted path: `parts.0.count` is the count of the first part. What is undefined is left out. */
export function nested(values: Readonly<Record<string, unknown>>): Branch {
	const root: Branch = {};
	for (const [path, value] of Object.entries(values)) {
		if (value === undefined) continue;
		const keys = path.split('.');
		const last = keys.pop()!;
		let branch = root;
		for (const key of keys) branch = (branch[key] ??= {}) as Branch;
		branch[last] = value;
	}
	return settled(root) as Branch;
}
