import { describe, expect, test } from 'vitest';
import {
	cutSection,
	PICTURE_IDS,
	sectionPaths,
	sectionSvg,
	SEVERITIES,
	type PictureId,
	type Severity
} from '../../../src/lib/pictures';

const cut = (defect: PictureId | 'sound', severity: Severity = 2, seed = 6) =>
	cutSection({ defect, severity, seed });
const thickness = ({ top, ground }: ReturnType<typeof cut>) => [...top].map((at, k) => at - ground[k]!);
const kinds = (defect: PictureId) => cut(defect).bodies.map(({ kind }) => kind);

describe.each(PICTURE_IDS)('%s in section', (defect) => {
	test.each(SEVERITIES)('severity %s: film lies on substrate, and every outline closes', (severity) => {
		const section = cut(defect, severity);
		expect(Math.min(...thickness(section))).toBeGreaterThanOrEqual(0);
		for (const { d } of sectionPaths(section).paths) {
			expect(d).toMatch(/^M-?[\d.]+ [\d.]+(L-?[\d.]+ [\d.]+)+Z$/);
		}
		expect(cut(defect, severity)).toEqual(section);
	});
});

test('sound film is even', () => {
	const film = thickness(cut('sound'));
	expect(Math.max(...film) - Math.min(...film)).toBeLessThan(20);
	expect(Math.min(...film)).toBeGreaterThan(20);
});

/* What cutting through tells apart: stated by the looks of the trade, not by the pictures. */
test('needle holes and flat pits reach the substrate, a pit wider', () => {
	const open = (defect: PictureId) => thickness(cut(defect)).filter((film) => film < 5).length;
	expect(open('pinholes')).toBeGreaterThan(0);
	expect(open('fisheyes')).toBeGreaterThan(open('pinholes'));
});

test('what peels from the part leaves metal, what peels between coats leaves a coat', () => {
	expect(Math.min(...thickness(cut('flaking')))).toBeLessThan(5);
	expect(Math.min(...thickness(cut('intercoat-peel')))).toBeGreaterThan(5);
	expect(cut('intercoat-peel').coat).toBeDefined();
});

test.each([
	['blushing', 'haze'],
	['amine-bloom', 'grease'],
	['gel-bits', 'gel'],
	['dirt', 'particle'],
	['solvent-pop', 'void'],
	['flash-rust', 'rust'],
	['cross-contamination', 'foreign']
] as const)('%s shows %s', (defect, kind) => {
	expect(kinds(defect)).toContain(kind);
});

test('a film cracks above the substrate, a crazed plastic below the film', () => {
	const heights = (defect: PictureId) =>
		cut(defect).bodies.flatMap(({ kind, outline }) => (kind === 'crack' ? outline.map(([, y]) => y) : []));
	expect(Math.min(...heights('over-cure'))).toBeGreaterThan(0);
	expect(Math.max(...heights('solvent-crazing'))).toBeLessThan(0);
});

test('the file is one drawing with a path for each outline', () => {
	const paths = sectionPaths(cut('solvent-pop'));
	expect(sectionSvg(paths).match(/<path /g)).toHaveLength(paths.paths.length);
});
