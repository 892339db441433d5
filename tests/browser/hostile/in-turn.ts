/** Does something with every item, a few at a time. */
export async function inTurn<T>(items: readonly T[], atOnce: number, todo: (item: T) => Promise<void>): Promise<void> {
	const left = items[Symbol.iterator]();
	const worker = async () => {
		for (const item of left) await todo(item);
	};
	await Promise.all(Array.from({ length: atOnce }, worker));
}
