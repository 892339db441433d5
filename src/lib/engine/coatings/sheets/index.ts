import type { DataSheet } from '../sheet';
import isocyanate from './a-isocyanate-topcoat';
import amineEpoxy from './b-amine-epoxy';
import heatCured from './c-heat-cured-lubricant';
import highBake from './d-high-bake';
import airCured from './e-air-cured-film';
import catalysed from './f-catalysed-clear';

/** The invented sheets of the demo shop, one per family. A real shop starts with none of them. */
export const DEMO_SHEETS: readonly DataSheet[] = [
	isocyanate,
	amineEpoxy,
	heatCured,
	highBake,
	airCured,
	catalysed
];
