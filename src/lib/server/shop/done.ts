/** What a form on this page has just done, as the address it led to says; null for anything the page has no words for. */
export const doneOf = <Name extends string>({ searchParams }: URL, names: readonly Name[]): Name | null =>
	names.find((name) => name === searchParams.get('done')) ?? null;
