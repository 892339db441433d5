import { StartRefused } from './start-refused';

/** What whoever starts the program may set from outside. None of it touches a limit of the trade or of proving. */
export interface Settings {
	/** Folder that holds the journal, the erasable store, the secrets and the cookie key. */
	dataFolder: string;
	/** Host names (no port) a request may ask for; null = this PC's own names and addresses, looked up as they change. */
	hosts: string[] | null;
	/** Minutes without a request after which a sign-in ends, 1–240. */
	idleMinutes: number;
	/** Fill a fresh data folder with the invented demo shop. */
	demo: boolean;
}

const IDLE_DEFAULT = 15;

const minutes = (text: string | undefined): number => {
	if (text === undefined || text === '') return IDLE_DEFAULT;
	const value = Number(text);
	if (!Number.isInteger(value) || value < 1 || value > 240)
		throw new StartRefused(`WITNESS_IDLE_MINUTES must be a whole number from 1 to 240, not "${text}".`);
	return value;
};

const hostList = (text: string | undefined): string[] | null => {
	const names = (text ?? '')
		.split(',')
		.map((name) => name.trim().toLowerCase())
		.filter(Boolean);
	const wrong = names.find((name) => /[/@\s]/.test(name) || /^[^[].*:/.test(name));
	if (wrong)
		throw new StartRefused(
			`WITNESS_HOSTS takes names without protocol or port, separated by commas, not "${wrong}".`
		);
	return names.length ? names : null;
};

/**
 * Reads DATA_DIR, WITNESS_HOSTS, WITNESS_IDLE_MINUTES and WITNESS_DEMO.
 * @throws StartRefused naming the variable and what it may hold
 */
export const readSettings = (env: Record<string, string | undefined>): Settings => ({
	dataFolder: env.DATA_DIR || './data',
	hosts: hostList(env.WITNESS_HOSTS),
	idleMinutes: minutes(env.WITNESS_IDLE_MINUTES),
	demo: env.WITNESS_DEMO === '1'
});
