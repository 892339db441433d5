import { Agent, request, type IncomingHttpHeaders } from 'node:http';

/** A request exactly as it is to arrive; nothing is tidied, no redirect followed. */
export type Asked = {
	readonly method: string;
	/** Path and query, encoded or wrongly encoded by whoever asks. */
	readonly path: string;
	readonly headers: Readonly<Record<string, string>>;
	readonly body?: string | Buffer;
};

export type Answer = {
	readonly status: number;
	readonly headers: IncomingHttpHeaders;
	readonly text: string;
};

class ClosedWhileIdle extends Error {}

/**
 * Sends as any program could. Not a browser, nor Playwright's requests: both put right what is to arrive wrong
 * (`..` in a path, a missing content type, bytes that are no text).
 */
export const sender = (baseURL: string) => {
	const agent = new Agent({ keepAlive: true, maxSockets: 4 });
	const { hostname, port } = new URL(baseURL);
	const sendOnce = ({ method, path, headers, body }: Asked): Promise<Answer> =>
		new Promise((resolve, reject) => {
			const sent = request({ agent, hostname, port, method, path, headers }, (answer) => {
				const chunks: Buffer[] = [];
				answer.on('data', (chunk: Buffer) => chunks.push(chunk));
				answer.on('error', reject);
				answer.on('end', () =>
					resolve({
						status: answer.statusCode ?? 0,
						headers: answer.headers,
						text: Buffer.concat(chunks).toString()
					})
				);
			});
			sent.on('error', (error) => reject(sent.reusedSocket ? new ClosedWhileIdle(error.message) : error));
			sent.end(body);
		});
	// a kept connection may be closed by the other end just as it is used again
	const send = (asked: Asked): Promise<Answer> =>
		sendOnce(asked).catch((error) => {
			if (error instanceof ClosedWhileIdle) return sendOnce(asked);
			throw error;
		});
	return { send, close: () => agent.destroy() };
};

export type Send = ReturnType<typeof sender>['send'];
