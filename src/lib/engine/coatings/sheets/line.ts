import type { Provenance } from '../../sources/provenance';
import type { SheetLine } from '../sheet';

const invented: Provenance = { origin: 'data-sheet', verification: { read: 'invented demo data sheet' } };

/** Lines of the invented demo sheets, all from one day on. */
export const value = (amount: number, unit: string): readonly SheetLine[] => [
	{ from: '2026-01-01', unit, value: amount, provenance: invented }
];
export const window = (min: number, max: number, unit: string): readonly SheetLine[] => [
	{ from: '2026-01-01', unit, min, max, provenance: invented }
];
