import type { SubstrateId } from '$lib/engine';

/** Handbook densities in kg/m³, from memory; they only make the mass on a ticket fit its sizes. */
export const DENSITIES: Record<SubstrateId, number> = {
	'carbon-steel': 7830,
	'spring-steel': 7830,
	'stainless-steel': 7900,
	'aluminium-6061': 2700,
	'aluminium-7075': 2810,
	'aluminium-casting': 2680,
	'anodised-aluminium': 2700,
	magnesium: 1770,
	titanium: 4420,
	brass: 8400,
	'zinc-die-cast': 6700,
	abs: 1050,
	polycarbonate: 1200,
	polyamide: 1150,
	polypropylene: 905,
	peek: 1300,
	'carbon-laminate': 1550,
	'glass-laminate': 1850
};
