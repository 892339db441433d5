/** What can happen to people, by the way it reaches them. */
export const HARMS = ['breathing', 'skin', 'fire', 'pressure'] as const;
export type Harm = (typeof HARMS)[number];

const RULES_BY_HARM: Readonly<Record<Harm, readonly string[]>> = {
	breathing: [
		'old-coating-questioned',
		'yellow-plating-isolated',
		'no-open-chlorinated-dip',
		'no-silica-sand',
		'cabinet-sound-before-blasting',
		'breathing-while-mixing',
		'air-fed-for-isocyanate',
		'breathing-for-solvent-mist',
		'may-wear-it',
		'booth-air-speed',
		'mask-on-until-clear',
		'below-fume-limit'
	],
	/** Eyes too; what is hot, and what soaks in. */
	skin: ['gear-for-degreasing', 'gear-for-mixing', 'gear-for-spraying', 'gear-for-the-oven'],
	/** Explosion too. */
	fire: [
		'magnesium-refused',
		'material-known',
		'sealed-cavity-stops',
		'rags-in-metal-can',
		'bonded-pouring',
		'left-over-reacts-in-open-pan',
		'oven-solvent-load',
		'purge-before-heat'
	],
	/** What compressed air drives into eyes, skin and ears. */
	pressure: ['gear-for-blasting', 'blow-off-below-30-psi']
};

const byRule = new Map(HARMS.flatMap((harm) => RULES_BY_HARM[harm].map((rule) => [rule, harm] as const)));

/** How the breach of a safety-stop rule reaches people. Throws for a rule that has no place here: a new one needs it. */
export function harmOf(rule: string): Harm {
	const harm = byRule.get(rule);
	if (!harm) throw new RangeError(`no harm named for the rule '${rule}'`);
	return harm;
}
