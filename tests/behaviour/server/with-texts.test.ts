import { describe, expect, it } from 'vitest';
import { accept, refuse, type TextRef } from '$lib/records';
import { withTexts } from '$lib/server/with-texts';
import { testApp } from './test-app';

describe('texts kept for an act', () => {
	it('stay when it is done; an empty one is none', async () => {
		const { app } = await testApp();
		let kept: TextRef | null = null;
		const outcome = await withTexts(app, { note: ' wet edge ', other: '  ' }, 'en', (refs) => {
			expect(refs.other).toBeNull();
			kept = refs.note;
			return app.journal.act(() => accept(), 'p1');
		});
		expect(outcome.ok).toBe(true);
		expect(app.texts.read(kept!)).toMatchObject({ state: 'kept', text: 'wet edge' });
	});

	it('go when it is refused or fails', async () => {
		const { app } = await testApp();
		const seen: TextRef[] = [];
		await withTexts(app, { note: 'wet edge' }, 'en', (refs) => {
			seen.push(refs.note!);
			return app.journal.act(() => refuse('not-allowed'), 'p1');
		});
		const failing = withTexts(app, { note: 'wet edge' }, 'en', (refs) => {
			seen.push(refs.note!);
			return Promise.reject(new Error('disk full'));
		});
		await expect(failing).rejects.toThrow('disk full');
		expect(seen.map((ref) => app.texts.read(ref).state)).toEqual(['missing', 'missing']);
	});
});
