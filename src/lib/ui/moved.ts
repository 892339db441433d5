/** The list with one entry taken out and put in at another place; places beyond the ends are the ends. */
export function moved(order: readonly string[], id: string, to: number): string[] {
	if (!order.includes(id)) return [...order];
	const rest = order.filter((other) => other !== id);
	rest.splice(Math.max(0, Math.min(to, rest.length)), 0, id);
	return rest;
}
