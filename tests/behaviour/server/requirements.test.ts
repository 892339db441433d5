import { describe, expect, it } from 'vitest';
import { RULES } from '$lib/engine';
import { competencies, safety } from '$lib/learning';
import { requirements } from '$lib/server/requirements';

describe('what the rules ask of a person', () => {
	it('is at least one lesson for each area, each once', () => {
		for (const { id } of [...competencies, safety]) {
			const lessons = requirements.lessonsOf(id);
			expect(lessons.length, id).toBeGreaterThan(0);
			expect(new Set(lessons).size, id).toBe(lessons.length);
		}
	});

	it('is the lesson of every rule of the area, whole', () => {
		for (const { competency, lesson } of RULES)
			expect(requirements.lessonsOf(competency)).toContain(lesson.split('#')[0]);
	});
});
