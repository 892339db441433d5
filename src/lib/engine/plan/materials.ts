import type { SubstrateId } from '../substrates/substrates';
import { remembered } from './remembered';
import type { Situation } from './situation';

/** What the parts are made of, each material once; parts nobody could name are left out. */
export const materials = remembered(({ job }: Situation): readonly SubstrateId[] => [
	...new Set(job.parts.flatMap(({ material }) => (material === 'unknown' ? [] : [material])))
]);
