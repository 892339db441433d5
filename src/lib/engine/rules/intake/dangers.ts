import type { Situation } from '../../plan/situation';
import { substrate } from '../../substrates/substrates';

type Part = Situation['job']['parts'][number];
const some = (test: (part: Part) => boolean) => (seen: Situation) => seen.job.parts.some(test);

export const hasUnknownMaterial = some(({ material }) => material === 'unknown');
export const hasBurningDust = some(
	({ material }) => material !== 'unknown' && substrate(material).burningDust === true
);
export const hasSealedCavity = some(({ cavity }) => cavity === 'sealed');
export const hasOldCoating = some(({ surface }) => surface === 'old-coating');
export const hasYellowPlating = some(({ surface }) => surface === 'yellow-plating');

const DANGERS = [hasUnknownMaterial, hasBurningDust, hasSealedCavity, hasOldCoating, hasYellowPlating];

/** What a question about quality leaves open: asking, and refusing too where a danger is reason enough for that. */
export const askOr = (seen: Situation): readonly ('ask' | 'refuse')[] =>
	DANGERS.some((danger) => danger(seen)) ? ['ask', 'refuse'] : ['ask'];
