import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

const css = readFileSync('src/lib/ui/css/tokens.css', 'utf8');
const [light = '', dark = ''] = css.split('@media screen');
const tokens = (part: string) =>
	new Map([...part.matchAll(/--([\w-]+): (#[0-9a-f]{6});/g)].map((m) => [m[1], m[2]]));
const schemes = { light: tokens(light), dark: new Map([...tokens(light), ...tokens(dark)]) };

/** Relative luminance and contrast as WCAG 2.2 defines them. */
function luminance(hex: string): number {
	const [r = 0, g = 0, b = 0] = [1, 3, 5].map((at) => {
		const channel = parseInt(hex.slice(at, at + 2), 16) / 255;
		return channel <= 0.04045 ? channel / 12.92 : ((channel + 0.055) / 1.055) ** 2.4;
	});
	return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}
function contrast(one: string, other: string): number {
	const [darker = 0, lighter = 0] = [luminance(one), luminance(other)].sort((a, b) => a - b);
	return (lighter + 0.05) / (darker + 0.05);
}

const READ = 4.5; // WCAG 2.2, 1.4.3
const SEEN = 3; // WCAG 2.2, 1.4.11
const grounds = ['ground', 'sheet', 'wash', 'crayon-wash'];
const pairs: [string, string, number][] = [
	...grounds.flatMap((ground): [string, string, number][] => [
		['ink', ground, READ],
		['ink-soft', ground, READ],
		['petrol', ground, READ],
		['crayon', ground, READ],
		['edge', ground, SEEN]
	]),
	['on-petrol', 'petrol', READ],
	['safety-white', 'safety-red', READ],
	['safety-black', 'safety-orange', READ],
	['safety-black', 'safety-yellow', READ],
	['safety-white', 'safety-blue', READ]
];

it('computes the published extremes', () => {
	expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 10);
	expect(contrast('#777777', '#ffffff')).toBeLessThan(READ);
	expect(contrast('#767676', '#ffffff')).toBeGreaterThan(READ);
});

describe.each(Object.entries(schemes))('%s scheme', (_, colours) => {
	it.each(pairs)('%s on %s reaches %d', (front, back, least) => {
		const [a, b] = [colours.get(front), colours.get(back)];
		if (!a || !b) throw new Error(`no colour --${a ? back : front}`);
		expect(contrast(a, b)).toBeGreaterThanOrEqual(least);
	});
});
