import { afterEach, describe, expect, it, vi } from 'vitest';
import { reportFault } from '$lib/server/request/report-fault';
import { testApp } from '../test-app';
import { testEvent } from '../test-event';

afterEach(() => vi.restoreAllMocks());

describe('a fault', () => {
	it('of ours is logged with a number, and only the number is shown', async () => {
		const log = vi.spyOn(console, 'error').mockImplementation(() => {});
		const { app } = await testApp();
		const error = new Error('journal of /srv/panel: disk full');
		const shown = await reportFault({ error, event: testEvent(app), status: 500, message: 'Internal Error' });
		const number = /\(([0-9a-f]{8})\)$/.exec(shown?.message ?? '')?.[1];
		expect(JSON.stringify(shown)).not.toContain('disk');
		expect(log).toHaveBeenCalledWith(`[${number}] GET /en`, error);
	});

	it('of the asker is worded and not logged', async () => {
		const log = vi.spyOn(console, 'error').mockImplementation(() => {});
		const { app } = await testApp();
		const event = testEvent(app);
		event.locals.lang = 'es';
		const shown = await reportFault({ error: new Error('x'), event, status: 404, message: 'Not Found' });
		expect(shown).toEqual({ message: 'Aquí no hay nada' });
		expect(log).not.toHaveBeenCalled();
	});
});
