import { commonPractice } from '../../sources/provenance';
import type { DefectId } from '../defects';
import type { DefectSheet } from '../sheet';
import { adhesionDefects } from './adhesion';
import { cureDefects } from './cure';
import { flowDefects } from './flow';
import { holeDefects } from './holes';
import { inclusionDefects } from './inclusions';
import { maskingDefects } from './masking';
import { partDamage } from './part-damage';

/** The sheet of every defect; one that is missing does not compile. */
export const DEFECT_SHEETS: Readonly<Record<DefectId, DefectSheet>> = {
	...flowDefects,
	...holeDefects,
	...adhesionDefects,
	...inclusionDefects,
	...cureDefects,
	...maskingDefects,
	...partDamage
};

/** Sizes, first checks and actions of the sheets: practice of the trade, published by nobody and confirmed by the shop. */
export const DEFECT_SHEETS_PROVENANCE = commonPractice;
