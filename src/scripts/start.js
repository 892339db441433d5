#!/usr/bin/env node
// Starts the built program on one port, at localhost and for the other PCs of the shop's network.
import { existsSync } from 'node:fs';
import { createServer } from 'node:http';
import { resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { lanAddresses } from '../lib/server/own-hosts.js';

const DATA_FOLDER = fileURLToPath(new URL('../../data', import.meta.url));
const HANDLER = new URL('../../build/handler.js', import.meta.url);
const PROTOCOL_HEADER = 'x-witness-protocol';
const PATIENCE_AT_STOP = 5000;

/**
 * @param {string} message
 * @returns {never}
 */
const giveUp = (message) => {
	console.error(message);
	process.exit(1);
};

const readOptions = () => {
	try {
		return parseArgs({ options: { demo: { type: 'boolean', default: false } } }).values;
	} catch (error) {
		return giveUp(`${error instanceof Error ? error.message : error}\nThe only option is --demo.`);
	}
};

const readPort = () => {
	const port = Number(process.env.PORT || 3000);
	return Number.isInteger(port) && port > 0 && port < 65536
		? port
		: giveUp(`PORT must be a whole number from 1 to 65535, not "${process.env.PORT}".`);
};

/** What the browser's address begins with: https only when a proxy in front of this program does the encryption. */
const readProtocol = () => {
	const protocol = process.env.WITNESS_PROTOCOL || 'http';
	return protocol === 'http' || protocol === 'https'
		? protocol
		: giveUp(`WITNESS_PROTOCOL must be http or https, not "${protocol}".`);
};

/** @returns {Promise<import('node:http').RequestListener>} */
const loadHandler = async () => {
	if (!existsSync(HANDLER)) return giveUp('The program is not built yet. Run: npm run build');
	try {
		return (await import(HANDLER.href)).handler;
	} catch (error) {
		if (error instanceof Error && error.name === 'StartRefused') return giveUp(error.message);
		throw error;
	}
};

/**
 * @param {string} host
 * @param {number} port
 */
const addresses = (host, port) => {
	const everywhere = host === '0.0.0.0' || host === '::';
	return (everywhere ? ['localhost', ...lanAddresses()] : [host]).map((name) => `http://${name}:${port}/`);
};

const options = readOptions();
const port = readPort();
const host = process.env.HOST || '0.0.0.0';
const protocol = readProtocol();

process.env.DATA_DIR = process.env.DATA_DIR ? resolve(process.env.DATA_DIR) : DATA_FOLDER;
if (options.demo) process.env.WITNESS_DEMO = '1';
// adapter-node takes every request for https unless a header says otherwise; ours is set below, so that no sender can
process.env.PROTOCOL_HEADER = PROTOCOL_HEADER;
delete process.env.ORIGIN;
delete process.env.HOST_HEADER;
delete process.env.PORT_HEADER;

const handler = await loadHandler();
const server = createServer((request, response) => {
	request.headers[PROTOCOL_HEADER] = protocol;
	handler(request, response);
});

const closeApp = () => process.emit(/** @type {any} */ ('sveltekit:shutdown'));

server.on('error', (error) => {
	console.error(
		'code' in error && error.code === 'EADDRINUSE'
			? `Port ${port} is taken by another program. Stop it, or start with another PORT.`
			: `Cannot listen on ${host}:${port}: ${error.message}`
	);
	process.exitCode = 1;
	closeApp();
});
server.listen(port, host, () =>
	console.log(
		`\nWitness Panel is open at\n${addresses(host, port)
			.map((url) => `  ${url}\n`)
			.join('')}`
	)
);

const stop = () => {
	process.once('SIGINT', () => process.exit(1));
	server.closeIdleConnections();
	server.close(closeApp);
	setTimeout(() => server.closeAllConnections(), PATIENCE_AT_STOP).unref();
};
process.once('SIGINT', stop);
process.once('SIGTERM', stop);
