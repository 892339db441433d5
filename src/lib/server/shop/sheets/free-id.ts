const LONGEST = 40;

const plain = (title: string): string =>
	title
		.normalize('NFD')
		.replace(/\p{M}/gu, '')
		.toLowerCase()
		.replace(/[^a-z0-9]+/g, '-')
		.slice(0, LONGEST)
		.replace(/^-+|-+$/g, '');

/** An id for a new sheet, made from its title, that no sheet of the shop has yet. */
export const freeId = (title: string, taken: { has(id: string): boolean }): string => {
	const base = plain(title) || 'sheet';
	let id = base;
	for (let next = 2; taken.has(id); next += 1) id = `${base}-${next}`;
	return id;
};
