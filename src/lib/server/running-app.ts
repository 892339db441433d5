import { openApp, type App } from './app';
import { fillDemoShop } from './demo';
import { isDemo } from './demo-people';
import { readSettings } from './settings';
import { StartRefused } from './start-refused';

/** Fills a fresh folder, leaves the demo shop of an earlier start alone, and never touches a real one. */
const startDemo = async (app: App): Promise<void> => {
	const { state } = app.journal;
	if (!state.shop.founded) return fillDemoShop(app);
	if (isDemo(state)) return;
	throw new StartRefused(
		`The data folder ${app.settings.dataFolder} holds a real shop. Start without the demo, or with another DATA_DIR.`
	);
};

const start = async (): Promise<App> => {
	const app = await openApp(readSettings(process.env));
	try {
		if (app.settings.demo) await startDemo(app);
		return app;
	} catch (error) {
		await app.close();
		throw error;
	}
};

let running: Promise<App> | null = null;

/** The app of this process, opened at the first call with the settings of the environment. */
export const getApp = (): Promise<App> => (running ??= start());
