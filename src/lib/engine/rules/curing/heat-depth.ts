import type { Part } from '../../job/part';

/**
 * Volume of a part's wall over its heated surface, metres: half the thickness of a wall heated from both faces, a
 * quarter of a bar's diameter. Heat-up time grows with it; the shop's materials differ less from each other in heat
 * capacity per volume than walls do in thickness, so depth alone tells like parts from unlike ones.
 */
export const heatDepth = ({ shape, thickness }: Part): number => thickness / (shape === 'bar' ? 4 : 2);
