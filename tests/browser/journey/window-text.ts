/**
 * Something a person could type that lies inside a window as it is printed: `15–25 µm`, `at most 10 psi`,
 * `como mínimo 0.5 m/s`, `293 – 311 °F`, a single number.
 */
export function insideOf(printed: string): string {
	const text = printed.replaceAll('\u00a0', ' ');
	const range = /(\d[\d.]*)\s?(?:–|a|to)\s?(\d[\d.]*)\s?([^\s,;.]*)/.exec(text);
	if (range) {
		const [, low, high, unit] = range;
		const decimals = Math.max(...[low, high].map((one) => (one!.split('.')[1] ?? '').length));
		const middle = (Number(low) + Number(high)) / 2;
		return `${unit === '' && decimals === 0 ? Math.round(middle) : middle.toFixed(decimals + 1)} ${unit}`.trim();
	}
	const single = /(\d[\d.]*)\s?([^\s,;]*)/.exec(text);
	if (!single) throw new Error(`no number in "${printed}"`);
	return `${single[1]} ${single[2]}`.trim();
}
