import type { Moment } from '$lib/records';
import type { App } from '../app';
import { requirements } from '../requirements';

/** Now, by the one clock, with what the rules ask of people. */
export const momentOf = ({ now }: Pick<App, 'now'>): Moment => ({ now: now().toISOString(), requirements });
