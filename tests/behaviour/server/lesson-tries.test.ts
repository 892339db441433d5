import { describe, expect, it } from 'vitest';
import { fillDemoShop } from '$lib/server/demo';
import { learner, lessonDone, lessonTries, noteTry } from '$lib/server/lesson-tries';
import { testApp } from './test-app';
import { testEvent } from './test-event';

const lesson = { slug: 'handling', version: 1 };
const asked = ['gloves', 'phone'];

const shop = async () => {
	const { app } = await testApp();
	await fillDemoShop(app);
	const event = testEvent(app, { form: {}, person: 'demo-trainee' });
	const answer = (check: string, right: boolean, of = lesson) => noteTry(event, of, asked, check, right);
	const tries = () => lessonTries(app, 'demo-trainee', lesson).checks;
	return { app, answer, tries, done: () => lessonDone(app, 'demo-trainee', lesson.slug) };
};

describe('tries at a lesson', () => {
	it('are counted until right, and a check once right stays right', async () => {
		const { answer, tries, done } = await shop();
		expect(await answer('gloves', false)).toBe('open');
		expect(await answer('gloves', false)).toBe('open');
		expect(await answer('gloves', true)).toBe('open');
		expect(await answer('gloves', false)).toBe('open');
		expect(tries()).toEqual({ gloves: { tries: 3, right: true } });
		expect(done()).toBeUndefined();
	});

	it('enter the lesson in the record when every check is right, with version, language and tries', async () => {
		const { answer, tries, done } = await shop();
		await answer('phone', false);
		await answer('phone', true);
		expect(await answer('gloves', true)).toBe('recorded');
		expect(done()).toMatchObject({ version: '1', lang: 'en', tries: { gloves: 1, phone: 2 } });
		expect(tries()).toEqual({});
	});

	it('start anew when the meaning of the lesson has changed', async () => {
		const { answer, tries, done } = await shop();
		await answer('gloves', true);
		expect(await answer('phone', true, { ...lesson, version: 2 })).toBe('open');
		expect(tries()).toEqual({});
		expect(done()).toBeUndefined();
	});

	it('belong to one person', async () => {
		const { app, answer } = await shop();
		await answer('gloves', true);
		expect(lessonTries(app, 'demo-aprendiz', lesson).checks).toEqual({});
	});

	it('stay where the record refuses, so that nothing is answered for nothing', async () => {
		const { app, tries } = await shop();
		const stranger = testEvent(app, { form: {} });
		stranger.locals.who = { id: 'nobody', roles: ['trainee'] };
		const [only] = asked;
		expect(await noteTry(stranger, lesson, [only!], only!, true)).toBe('refused');
		expect(lessonTries(app, 'nobody', lesson).checks).toEqual({ gloves: { tries: 1, right: true } });
		expect(tries()).toEqual({});
	});

	it('are nobody’s without a sign-in, and an auditor only reads', async () => {
		const { app } = await shop();
		expect(learner(testEvent(app, {}))).toBeNull();
		expect(learner(testEvent(app, { person: 'demo-auditor' }))).toBeNull();
		expect(learner(testEvent(app, { person: 'demo-trainee' }))).toBe('demo-trainee');
		await expect(noteTry(testEvent(app, { form: {} }), lesson, asked, 'gloves', true)).rejects.toMatchObject({
			status: 401
		});
	});
});
