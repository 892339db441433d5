/** Throws a RangeError unless two lists are as long as each other: readings and the times they held for. */
export function refuseUnpaired(
	procedure: string,
	lists: { readonly [name: string]: readonly number[] }
): void {
	const [[one, first], [other, second]] = Object.entries(lists) as [
		[string, readonly number[]],
		[string, readonly number[]]
	];
	if (first.length !== second.length)
		throw new RangeError(`${procedure}: ${first.length} ${one} do not pair with ${second.length} ${other}`);
}
