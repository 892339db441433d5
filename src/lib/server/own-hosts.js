import { hostname, networkInterfaces } from 'node:os';

/**
 * The addresses by which another PC on the network reaches this one. Link-local and loopback ones are left out.
 * @returns {string[]} IPv4 addresses as they are, IPv6 addresses in brackets as a URL wants them
 */
export const lanAddresses = () =>
	Object.values(networkInterfaces())
		.flatMap((entries) => entries ?? [])
		.filter((entry) => !entry.internal && !/^(169\.254\.|fe80:)/i.test(entry.address))
		.map((entry) => (entry.family === 'IPv6' ? `[${entry.address}]` : entry.address));

/**
 * Every name and address by which a browser may ask for this program when nothing else was configured.
 * @returns {string[]} in lower case, without port
 */
export const ownHosts = () => {
	const name = hostname().toLowerCase();
	const names = name ? [name, `${name.split('.')[0]}.local`] : [];
	return ['localhost', '127.0.0.1', '[::1]', ...names, ...lanAddresses()];
};
