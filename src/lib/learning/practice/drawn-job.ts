import { assertSeed } from './assert-seed';
import { expectedAt, type JobOffer, type PracticeState } from './estimate';
import { BLOCKED, type NextJob } from './next-job';

/**
 * A job drawn from all on offer, each as likely as another; after the first three no skill follows itself where another
 * is offered.
 * @param seed whole number of 0 or more; the same one gives the same job
 * @returns undefined where nothing is offered
 */
export function drawnJob(
	state: PracticeState,
	offers: readonly JobOffer[],
	seed: number
): NextJob | undefined {
	assertSeed(seed);
	const others = state.jobs < BLOCKED ? offers : offers.filter(({ skill }) => skill !== state.lastSkill);
	const open = others.length ? others : offers;
	const offer = open[seed % open.length];
	return offer && { ...offer, expected: expectedAt(state, offer), because: 'drawn' };
}
