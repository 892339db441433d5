import type { Scale } from '../../figures/gauge-panel';

type Marked = Readonly<Record<'psi' | 'bar', readonly Scale[]>>;

/** Regulators of a blast line. */
export const LINE_REGULATORS: Marked = {
	psi: [
		{ unit: 'psi', from: 0, to: 60, numbered: 10, division: 1 },
		{ unit: 'psi', from: 0, to: 160, numbered: 20, division: 4 }
	],
	bar: [
		{ unit: 'bar', from: 0, to: 4, numbered: 1, division: 0.1 },
		{ unit: 'bar', from: 0, to: 11, numbered: 1, division: 0.2 }
	]
};

/** Gauges of a test cap, which sees little pressure. */
export const TEST_CAPS: Marked = {
	psi: [
		{ unit: 'psi', from: 0, to: 15, numbered: 5, division: 0.5 },
		{ unit: 'psi', from: 0, to: 60, numbered: 10, division: 1 }
	],
	bar: [
		{ unit: 'bar', from: 0, to: 1, numbered: 0.2, division: 0.02 },
		{ unit: 'bar', from: 0, to: 4, numbered: 1, division: 0.1 }
	]
};

export const THERMOMETERS: readonly Scale[] = [
	{ unit: '°C', from: 0, to: 50, numbered: 10, division: 1 },
	{ unit: '°F', from: 20, to: 120, numbered: 20, division: 2 }
];

export const HYGROMETER: Scale = { unit: '%', from: 0, to: 100, numbered: 20, division: 2 };
