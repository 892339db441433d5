import type { PictureId } from '../defects';
import { adhesionLooks } from './adhesion';
import { cureLooks } from './cure';
import { flowLooks } from './flow';
import { holeLooks } from './holes';
import { inclusionLooks } from './inclusions';
import type { Look } from './look';
import { maskingLooks } from './masking';
import { partLooks } from './part-damage';

/** Every defect told as it looks. */
export const LOOKS: Record<PictureId, Look> = {
	...flowLooks,
	...holeLooks,
	...inclusionLooks,
	...adhesionLooks,
	...cureLooks,
	...maskingLooks,
	...partLooks
};
