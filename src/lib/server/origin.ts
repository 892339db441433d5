import { ownHosts } from './own-hosts.js';

const READING = new Set(['GET', 'HEAD', 'OPTIONS']);

/**
 * Whether a request names a host this program answers to. A page elsewhere that points its own name at this PC
 * (DNS rebinding) is stopped here. The port is left to the sender, since a forwarded port is still this PC.
 * @param configured names without port, or null for this PC's own names and addresses
 */
export const isKnownHost = (url: URL, configured: readonly string[] | null): boolean =>
	(configured ?? ownHosts()).includes(url.hostname.toLowerCase().replace(/\.$/, ''));

/**
 * Whether a request that may change something comes from one of our own pages. The Origin header decides; where
 * a browser leaves it out, the Referer does; a request with neither is refused.
 */
export const isFromOwnPage = (request: Request, url: URL): boolean => {
	if (READING.has(request.method)) return true;
	const claimed = request.headers.get('origin') ?? request.headers.get('referer');
	return claimed !== null && URL.canParse(claimed) && new URL(claimed).origin === url.origin;
};
