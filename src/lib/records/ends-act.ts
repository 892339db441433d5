/**
 * Whether a line can be the last of a whole act, for whoever reads a journal whose end was torn off.
 * A line that cannot be read is left for `verify` to name: only an act known to be cut short is cut off.
 */
export function endsAct(line: string): boolean {
	try {
		const entry: unknown = JSON.parse(line);
		return !(typeof entry === 'object' && entry !== null && 'more' in entry && Number(entry.more) > 0);
	} catch {
		return true;
	}
}
