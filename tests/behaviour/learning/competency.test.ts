import { describe, expect, it } from 'vitest';
import { competencies, holdsSafetySkill, safety, skills } from '$lib/learning';

const areaOf = (id: string) => skills.find((skill) => skill.id === id)?.area;

describe('the six competencies', () => {
	it('stand in the order of the line', () =>
		expect(competencies.map(({ id }) => id)).toEqual([
			'intake',
			'preparation',
			'mixing',
			'spraying',
			'curing',
			'inspection'
		]));

	it('each hold at least one skill', () => {
		for (const { id } of competencies) expect(skills.filter(({ area }) => area === id)).not.toHaveLength(0);
	});

	it('say something different in each language', () => {
		for (const { holds } of [...competencies, safety]) {
			expect(holds.es).not.toBe('');
			expect(holds.es).not.toBe(holds.en);
		}
	});
});

describe('the fourteen skills', () => {
	it('are C1 to C14, once each', () =>
		expect(skills.map(({ id }) => id)).toEqual(Array.from({ length: 14 }, (_, i) => `C${i + 1}`)));

	it.each([
		['C1', 'safety'],
		['C2', 'safety'],
		['C3', 'safety'],
		['C4', 'intake'],
		['C5', 'preparation'],
		['C6', 'intake'],
		['C7', 'preparation'],
		['C8', 'mixing'],
		['C9', 'spraying'],
		['C10', 'spraying'],
		['C11', 'curing'],
		['C12', 'inspection'],
		['C13', 'inspection'],
		['C14', 'inspection']
	])('%s belongs to %s', (id, area) => expect(areaOf(id)).toBe(area));

	it('name the danger wherever only a part is critical', () => {
		for (const skill of skills) expect(skill.danger !== undefined).toBe(skill.critical === 'part');
	});

	it('are critical as a whole where they belong to safety', () => {
		for (const skill of skills) if (skill.area === 'safety') expect(skill.critical).toBe('whole');
	});
});

describe('a competency holds for less long', () => {
	it.each(['C1', 'C2', 'C3'] as const)('with a rule of %s', (id) =>
		expect(holdsSafetySkill(['C8', id])).toBe(true)
	);
	it('and not for a skill that is critical otherwise', () => {
		expect(holdsSafetySkill(['C4', 'C11'])).toBe(false);
		expect(holdsSafetySkill([])).toBe(false);
	});
});
