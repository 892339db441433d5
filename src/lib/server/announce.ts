import type { App } from './app';
import { demoPeople, isDemo } from './demo-people';

/** Says on the console what only whoever started the program should learn. */
export const announce = (app: App): void => {
	const { journal, setupCode } = app;
	const { fault } = journal;
	if (fault)
		console.error(
			`Line ${fault.line} of the journal does not belong (${fault.why} ${fault.detail}). ` +
				'The record can be read up to there; nothing more is entered until it is put right.'
		);
	if (isDemo(journal.state))
		console.log(
			`Demo shop. Sign in as:\n${demoPeople
				.map(({ name, roles, secret }) => `  ${name} (${roles.join(', ')}): ${secret}\n`)
				.join('')}`
		);
	if (!journal.state.shop.founded && !fault)
		console.log(`No shop yet. Open the program in a browser and set it up with this code: ${setupCode}\n`);
};
