import type { Text } from '../text';

export type SubstrateClass = 'metal' | 'polymer' | 'laminate';

type Substrate = {
	readonly name: Text;
	readonly class: SubstrateClass;
	/** Iron-free media only, kept apart from media used on steel. */
	readonly ironFree?: true;
	/** Amorphous or otherwise attacked by ketones, aromatics and chlorinated solvents. */
	readonly crazes?: true;
	/** Takes up water from the air and blisters in the oven unless dried. */
	readonly takesWater?: true;
	/** Nothing keys to it without a surface treatment this shop does not do. */
	readonly lowSurfaceEnergy?: true;
	/** Dust burns or explodes; never in the shared cabinet. */
	readonly burningDust?: true;
	readonly magnetic?: true;
};

/** What parts are made of. Temperature limits and blast windows are shop values, keyed by these ids. */
export const SUBSTRATES = {
	'carbon-steel': {
		name: { en: 'carbon or alloy steel', es: 'acero al carbono o aleado' },
		class: 'metal',
		magnetic: true
	},
	'spring-steel': {
		name: { en: 'hardened spring steel', es: 'acero de resorte templado' },
		class: 'metal',
		magnetic: true
	},
	'stainless-steel': {
		name: { en: 'stainless steel', es: 'acero inoxidable' },
		class: 'metal',
		ironFree: true
	},
	'aluminium-6061': {
		name: { en: 'aluminium 6061-T6', es: 'aluminio 6061-T6' },
		class: 'metal',
		ironFree: true
	},
	'aluminium-7075': {
		name: { en: 'aluminium 7075-T6', es: 'aluminio 7075-T6' },
		class: 'metal',
		ironFree: true
	},
	'aluminium-casting': {
		name: { en: 'aluminium casting', es: 'aluminio fundido' },
		class: 'metal',
		ironFree: true
	},
	'anodised-aluminium': {
		name: { en: 'anodised aluminium', es: 'aluminio anodizado' },
		class: 'metal',
		ironFree: true
	},
	magnesium: { name: { en: 'magnesium', es: 'magnesio' }, class: 'metal', ironFree: true, burningDust: true },
	titanium: { name: { en: 'titanium', es: 'titanio' }, class: 'metal', ironFree: true },
	brass: {
		name: { en: 'copper, brass or bronze', es: 'cobre, latón o bronce' },
		class: 'metal',
		ironFree: true
	},
	'zinc-die-cast': {
		name: { en: 'zinc die casting', es: 'zinc fundido a presión' },
		class: 'metal',
		ironFree: true
	},
	abs: { name: { en: 'ABS', es: 'ABS' }, class: 'polymer', crazes: true },
	polycarbonate: {
		name: { en: 'polycarbonate (PC)', es: 'policarbonato (PC)' },
		class: 'polymer',
		crazes: true
	},
	polyamide: {
		name: { en: 'polyamide (PA, nylon)', es: 'poliamida (PA, nailon)' },
		class: 'polymer',
		takesWater: true
	},
	polypropylene: {
		name: { en: 'polypropylene (PP)', es: 'polipropileno (PP)' },
		class: 'polymer',
		lowSurfaceEnergy: true
	},
	peek: { name: { en: 'PEEK', es: 'PEEK' }, class: 'polymer' },
	'carbon-laminate': {
		name: { en: 'carbon-fibre laminate', es: 'laminado de fibra de carbono' },
		class: 'laminate'
	},
	'glass-laminate': {
		name: { en: 'glass-fibre laminate', es: 'laminado de fibra de vidrio' },
		class: 'laminate'
	}
} as const satisfies Record<string, Substrate>;

export type SubstrateId = keyof typeof SUBSTRATES;

/** The entry of one substrate, with every trait readable whether it has it or not. */
export const substrate = (id: SubstrateId): Substrate => SUBSTRATES[id];
