import { cite } from '../../sources/provenance';
import type { Si } from '../../units/dimension';
import { defineFormula } from '../formula';
import { PROTECTION } from './protection-factors';

const use = <D extends 'fraction' | 'density'>(basis: 'share' | 'mass', dimension: D) =>
	defineFormula({
		id: `maximum-use-${basis}`,
		title: {
			en: 'Highest concentration for this respirator',
			es: 'Concentración máxima para este respirador'
		},
		equation: 'MUC = APF · limit, at most IDLH',
		source: cite('osha-1910-134', '(d)(3)(i)(B)', { read: 'the rule as quoted' }),
		inputs: { protection: 'count', limit: dimension, danger: dimension },
		gives: dimension,
		validFor: { protection: PROTECTION, limit: [1e-9, 1], danger: [1e-9, 1] },
		compute(values) {
			const { protection, limit, danger } = values as { [K in keyof typeof values]: Si };
			return Math.min(protection * limit, danger);
		}
	});

/**
 * Highest concentration a respirator may be used in: assigned protection factor times the exposure limit, and never above
 * the level immediately dangerous to life or health. As a share of the air (ppm) or as a mass in it. A cartridge may hold
 * less: the lower of the two counts. Where nobody published a dangerous level, none may be made up for this.
 */
export const maximumUse = { share: use('share', 'fraction'), mass: use('mass', 'density') };
