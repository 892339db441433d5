import type { DataSheet, LineId } from '../../src/lib/engine/index';

/** From what is printed to SI, by the definitions of the units and not by the engine's own table. */
const TO_SI: Readonly<Record<string, (printed: number) => number>> = {
	'°C': (t) => t + 273.15,
	'°F': (t) => (t + 459.67) / 1.8,
	K: (t) => t,
	s: (t) => t,
	min: (t) => t * 60,
	h: (t) => t * 3600,
	d: (t) => t * 86_400,
	'%': (share) => share / 100,
	fraction: (share) => share,
	ppm: (share) => share / 1e6,
	':1': (ratio) => ratio,
	'': (count) => count,
	µm: (l) => l / 1e6,
	mm: (l) => l / 1e3,
	cm: (l) => l / 100,
	m: (l) => l,
	mil: (l) => l * 2.54e-5,
	in: (l) => l * 0.0254,
	ft: (l) => l * 0.3048,
	'g/mL': (d) => d * 1e3,
	'kg/m³': (d) => d,
	'g/L': (d) => d,
	'lb/US gal': (d) => (d * 0.45359237) / (231 * 0.0254 ** 3),
	'mg/m³': (d) => d / 1e6,
	'µg/m³': (d) => d / 1e9,
	bar: (p) => p * 1e5,
	psi: (p) => (p * 0.45359237 * 9.80665) / 0.0254 ** 2,
	kPa: (p) => p * 1e3,
	MPa: (p) => p * 1e6,
	Pa: (p) => p
};

export type Printed = { readonly min: number; readonly max: number };

/** What the sheet prints in a line on a day, SI; a single number is a window of no width. */
export function printed(sheet: DataSheet, line: LineId, on: string): Printed | undefined {
	const [entry] = [...(sheet.lines[line] ?? [])]
		.filter(({ from }) => from <= on)
		.sort((a, b) => (a.from < b.from ? 1 : -1));
	if (!entry) return undefined;
	const si = TO_SI[entry.unit];
	if (!si) throw new Error(`printed: no unit ${entry.unit}`);
	return 'min' in entry
		? { min: si(entry.min), max: si(entry.max) }
		: { min: si(entry.value), max: si(entry.value) };
}
