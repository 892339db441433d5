import type { Actor } from './actors';
import type { Attempt } from './attempts';
import { dueIn, type Judge } from './judge';
import { recordWatch } from './record-watch';
import { sender } from './send';

const AT_ONCE = 4;

/** Sends attempts, judges each answer, and looks into the record after each batch. */
export function campaign(baseURL: string, dataFolder: string) {
	const { send, close } = sender(baseURL);
	const watch = recordWatch(dataFolder);
	const complaints: string[] = [];
	let sent = 0;

	async function one({ what, asked }: Attempt, actor: Actor, judge: Judge) {
		sent += 1;
		const wrong = await send(asked).then(
			(answer) => judge(answer, dueIn(asked.path, actor.lang)),
			(error: Error) => `no answer: ${error.message}`
		);
		if (wrong)
			complaints.push(`${actor.name}, ${asked.method} ${asked.path.slice(0, 120)}, ${what}: ${wrong}`);
	}

	return {
		complaints,
		watch,
		sent: () => sent,
		close,
		async batch(attempts: readonly Attempt[], actor: Actor, judge: Judge): Promise<void> {
			const left = attempts[Symbol.iterator]();
			const worker = async () => {
				for (const attempt of left) await one(attempt, actor, judge);
			};
			await Promise.all(Array.from({ length: AT_ONCE }, worker));
			for (const line of watch.intruders())
				complaints.push(`${actor.name}, ${attempts[0]?.asked.path}, entered ${line.slice(0, 300)}`);
		}
	};
}
