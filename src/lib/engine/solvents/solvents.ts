import { cite } from '../sources/provenance';
import type { Text } from '../text';
import { celsius, gramsPerMillilitre, gramsPerMole, percent } from '../units/construct';
import type { Fraction, Kelvin, KilogramPerCubicMetre, MolarMass } from '../units/dimension';

/** Flash point and lower explosive limit at room temperature by one list; the lists differ and are kept apart. */
export type FireData = { readonly flash: Kelvin; readonly limit: Fraction };

export type Solvent = {
	readonly name: Text;
	readonly cas: string;
	readonly molarMass: MolarMass;
	/** At 20 °C. */
	readonly density: KilogramPerCubicMetre;
	readonly nfpa?: FireData;
	readonly iec: FireData;
	/** Permitted by law: eight-hour average, ceiling, and a peak of at most ten minutes. */
	readonly osha: { readonly average: Fraction; readonly ceiling?: Fraction; readonly peak?: Fraction };
	/** Recommended: average of up to ten hours, 15 minutes, and the level immediately dangerous to life or health. */
	readonly niosh: { readonly average: Fraction; readonly short?: Fraction; readonly dangerous: Fraction };
};

const HELD = 'as held in an open chemical-properties library';

/** Where each part of a solvent's entry comes from. */
export const SOLVENT_SOURCES = {
	density: cite(
		'perry-handbook',
		'density of saturated liquids',
		{ read: `coefficients ${HELD}` },
		'handbook'
	),
	nfpa: cite('nfpa-497', 'Table 4.4.2, edition of 2008', { read: `values ${HELD}` }),
	iec: cite('iec-60079-20-1', 'Annex B, edition of 2010', { read: `values ${HELD}` }),
	osha: cite('osha-1910-1000', 'Tables Z-1 and Z-2', { read: 'limits as printed on NIOSH pages' }),
	niosh: cite('niosh-npg', 'pages of these solvents', {
		read: 'pocket-guide pages, or the IDLH documentation, of each'
	})
} as const;

const ppm = (value: number) => (value / 1e6) as Fraction;
const fire = (degrees: number, limit: number): FireData => ({
	flash: celsius(degrees),
	limit: percent(limit)
});
const body = (grams: number, density: number) => ({
	molarMass: gramsPerMole(grams),
	density: gramsPerMillilitre(density)
});

/**
 * The solvents of thinners and cleaners. A blend is judged by the SDS of that very blend; these are for learning, for
 * checking an SDS against, and for working out what a spill of one of them does.
 */
export const SOLVENTS = {
	acetone: {
		name: { en: 'acetone', es: 'acetona' },
		cas: '67-64-1',
		...body(58.08, 0.791),
		nfpa: fire(-20, 2.5),
		iec: fire(-20, 2.5),
		osha: { average: ppm(1000) },
		niosh: { average: ppm(250), dangerous: ppm(2500) }
	},
	mek: {
		name: { en: 'methyl ethyl ketone (MEK)', es: 'metiletilcetona (MEK)' },
		cas: '78-93-3',
		...body(72.11, 0.805),
		nfpa: fire(-6, 1.4),
		iec: fire(-10, 1.5),
		osha: { average: ppm(200) },
		niosh: { average: ppm(200), short: ppm(300), dangerous: ppm(3000) }
	},
	toluene: {
		name: { en: 'toluene', es: 'tolueno' },
		cas: '108-88-3',
		...body(92.14, 0.867),
		nfpa: fire(4, 1.1),
		iec: fire(4, 1.0),
		osha: { average: ppm(200), ceiling: ppm(300), peak: ppm(500) },
		niosh: { average: ppm(100), short: ppm(150), dangerous: ppm(500) }
	},
	/** Density of the meta isomer, which mixed xylenes hold most of; of the IEC isomers the lowest value each. */
	xylenes: {
		name: { en: 'xylenes', es: 'xilenos' },
		cas: '1330-20-7',
		...body(106.17, 0.864),
		nfpa: fire(25, 0.9),
		iec: fire(25, 0.9),
		osha: { average: ppm(100) },
		niosh: { average: ppm(100), short: ppm(150), dangerous: ppm(900) }
	},
	'butyl-acetate': {
		name: { en: 'n-butyl acetate', es: 'acetato de n-butilo' },
		cas: '123-86-4',
		...body(116.16, 0.881),
		nfpa: fire(22, 1.7),
		iec: fire(22, 1.2),
		osha: { average: ppm(150) },
		niosh: { average: ppm(150), short: ppm(200), dangerous: ppm(1700) }
	},
	isopropanol: {
		name: { en: '2-propanol (isopropyl alcohol)', es: '2-propanol (alcohol isopropílico)' },
		cas: '67-63-0',
		...body(60.1, 0.786),
		nfpa: fire(12, 2.0),
		iec: fire(12, 2.0),
		osha: { average: ppm(400) },
		niosh: { average: ppm(400), short: ppm(500), dangerous: ppm(2000) }
	},
	'ethyl-acetate': {
		name: { en: 'ethyl acetate', es: 'acetato de etilo' },
		cas: '141-78-6',
		...body(88.11, 0.9),
		nfpa: fire(-4, 2.0),
		iec: fire(-4, 2.0),
		osha: { average: ppm(400) },
		niosh: { average: ppm(400), dangerous: ppm(2000) }
	},
	mibk: {
		name: { en: 'methyl isobutyl ketone (MIBK)', es: 'metilisobutilcetona (MIBK)' },
		cas: '108-10-1',
		...body(100.16, 0.801),
		iec: fire(16, 1.2),
		osha: { average: ppm(100) },
		niosh: { average: ppm(50), short: ppm(75), dangerous: ppm(500) }
	}
} as const satisfies Record<string, Solvent>;

export type SolventId = keyof typeof SOLVENTS;
