import type { Medium } from '../../job/bench';
import type { ShopValueId } from '../../shop/values';
import type { SubstrateId } from '../../substrates/substrates';

type Ids<Start extends string> = Extract<ShopValueId, `${Start}${string}`>;

type Blasting = {
	/** Media that suit it, the usual one first. */
	readonly media: readonly Medium[];
	/** Where the trade gives only an upper end, the shop value is a `-most`. */
	readonly pressure: Ids<'blast.pressure'>;
	readonly clock: Ids<'blast-to-coat.'>;
	/** Scuffing by hand gives enough key as well. */
	readonly scuffWill?: true;
	/** Only where the customer agrees in writing. */
	readonly ifAgreed?: true;
};

const steel = {
	media: ['aluminium-oxide-fine', 'garnet'],
	pressure: 'blast.pressure.steel',
	clock: 'blast-to-coat.steel'
} as const;
const aluminium = {
	media: ['aluminium-oxide-fine'],
	pressure: 'blast.pressure.aluminium',
	clock: 'blast-to-coat.aluminium'
} as const;
const toughPolymer = {
	media: ['aluminium-oxide-fine', 'plastic-media'],
	pressure: 'blast.pressure-most.polymer',
	clock: 'blast-to-coat.other',
	scuffWill: true
} as const;

/** How each material is blasted under a thin film; null for what is only scuffed by hand. */
export const BLASTING: Record<SubstrateId, Blasting | null> = {
	'carbon-steel': steel,
	'spring-steel': steel,
	'stainless-steel': {
		media: ['aluminium-oxide-fine', 'glass-bead'],
		pressure: 'blast.pressure.stainless',
		clock: 'blast-to-coat.steel'
	},
	'aluminium-6061': aluminium,
	'aluminium-7075': aluminium,
	'aluminium-casting': aluminium,
	'anodised-aluminium': { ...aluminium, pressure: 'blast.pressure-most.anodised', ifAgreed: true },
	magnesium: null,
	titanium: {
		media: ['aluminium-oxide-fine'],
		pressure: 'blast.pressure.titanium',
		clock: 'blast-to-coat.other'
	},
	brass: {
		media: ['aluminium-oxide-fine', 'glass-bead'],
		pressure: 'blast.pressure.brass',
		clock: 'blast-to-coat.copper'
	},
	'zinc-die-cast': {
		media: ['aluminium-oxide-fine', 'glass-bead'],
		pressure: 'blast.pressure-most.zinc',
		clock: 'blast-to-coat.other'
	},
	abs: null,
	polycarbonate: null,
	polyamide: toughPolymer,
	polypropylene: null,
	peek: toughPolymer,
	'carbon-laminate': null,
	'glass-laminate': null
};
