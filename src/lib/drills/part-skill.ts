import type { Skill } from '$lib/engine';
import { drillKind, type PracticePart } from './practice';

/** What a station trains first, where no short drill trains it better. */
const OF_STATIONS: Partial<Record<PracticePart, Skill>> = { intake: 'C4', preparation: 'C5' };

/** The skill that practising this part trains first; undefined for parts that mix many. */
export const partSkill = (part: PracticePart): Skill | undefined =>
	drillKind(part)?.skill ?? OF_STATIONS[part];
