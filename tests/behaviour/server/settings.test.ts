import { describe, expect, it } from 'vitest';
import { readSettings } from '$lib/server/settings';

describe('settings from outside', () => {
	it('have defaults', () => {
		expect(readSettings({})).toEqual({ dataFolder: './data', hosts: null, idleMinutes: 15, demo: false });
	});

	it('are read', () => {
		const env = {
			DATA_DIR: '/srv/panel',
			WITNESS_HOSTS: 'Panel.shop.example, [fd00::7] ,192.0.2.7',
			WITNESS_IDLE_MINUTES: '5',
			WITNESS_DEMO: '1'
		};
		expect(readSettings(env)).toEqual({
			dataFolder: '/srv/panel',
			hosts: ['panel.shop.example', '[fd00::7]', '192.0.2.7'],
			idleMinutes: 5,
			demo: true
		});
	});

	it('stop the start when they make no sense, naming the variable', () => {
		for (const minutes of ['0', '-1', '241', '1.5', 'soon', 'NaN'])
			expect(() => readSettings({ WITNESS_IDLE_MINUTES: minutes })).toThrow('WITNESS_IDLE_MINUTES');
		for (const hosts of ['http://shop-pc', 'shop-pc:3000', 'shop pc', 'a,b/c'])
			expect(() => readSettings({ WITNESS_HOSTS: hosts })).toThrow('WITNESS_HOSTS');
	});
});
