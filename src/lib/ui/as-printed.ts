import { browser } from '$app/environment';

/**
 * A value the server prints into a form. In the browser it stays as it is, printed or typed over since: setting it once
 * more when the page's script arrives would wipe out what somebody has typed by then.
 */
export const asPrinted = <T>(value: T): T | undefined => (browser ? undefined : value);
