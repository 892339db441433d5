import { dayOf } from '$lib/records';
import type { App } from '../app';

/** The shop's calendar day now. */
export const today = ({ journal, now }: Pick<App, 'journal' | 'now'>): string =>
	dayOf(journal.state, now().toISOString());
