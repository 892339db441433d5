type Memory<Key, Fact> = {
	get(about: Key): { readonly fact: Fact } | undefined;
	set(about: Key, found: { readonly fact: Fact }): unknown;
};

/**
 * Works something out once for each thing it is asked about, however many rules ask. Only for work that looks at
 * nothing but that thing, and for things that never change. Objects are let go of with the memory of them; for names
 * hand in a `Map`.
 */
export function remembered<Key, Fact>(
	work: (about: Key) => Fact,
	memory: Memory<Key, Fact> = new WeakMap() as Memory<Key, Fact>
): (about: Key) => Fact {
	return (about) => {
		const before = memory.get(about);
		if (before) return before.fact;
		const fact = work(about);
		memory.set(about, { fact });
		return fact;
	};
}
