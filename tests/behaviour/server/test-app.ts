import { Memory } from 'lowdb';
import { openApp, type App } from '$lib/server/app';
import { readSettings } from '$lib/server/settings';
import { CHEAP } from './cheap-scrypt';
import { tempFolder } from './temp-folder';

/** An app with its journal in memory and a clock that stands still until it is moved. */
export const testApp = async (env: Record<string, string> = {}) => {
	const clock = { at: Date.parse('2026-03-02T14:00:00.000Z') };
	const settings = readSettings({ DATA_DIR: await tempFolder(), ...env });
	const app: App = await openApp(settings, {
		journal: new Memory<string[]>(),
		now: () => new Date(clock.at),
		seed: () => 7,
		scryptCost: CHEAP
	});
	const wait = (ms: number) => void (clock.at += ms);
	return { app, wait };
};
