/**
 * Every publication the engine leans on. `read` says what was looked at; whoever adds a value from one says in its
 * provenance whether that very value was read or is from memory.
 */
export const SOURCES = {
	'astm-f22': {
		title: 'ASTM F22, Hydrophobic surface films by the water-break test',
		read: 'text of F22-02(07)'
	},
	'astm-d4285': {
		title: 'ASTM D4285, Indicating oil or water in compressed air',
		read: 'text of D4285-83(99)'
	},
	'astm-d3359': { title: 'ASTM D3359, Adhesion by tape test', read: 'summary and class table of D3359-23' },
	'astm-d4212': { title: 'ASTM D4212, Viscosity by dip-type viscosity cups', read: 'text' },
	'astm-d5402': { title: 'ASTM D5402, Solvent resistance by solvent rubs', read: 'text of D5402-93(99)' },
	'astm-b244': {
		title:
			'ASTM B244, Thickness of anodic coatings and other nonconductive films by eddy-current instruments',
		read: 'text of B244-09(14)'
	},
	'astm-e11': {
		title: 'ASTM E11, Woven wire test sieve cloth',
		read: 'table as held in an open-source library'
	},
	'iso-2409': { title: 'ISO 2409, Cross-cut test', read: 'stored extract of the 2020 edition' },
	'iso-8502-4': { title: 'ISO 8502-4, Probability of condensation', read: 'scope only' },
	'iso-12944-7': { title: 'ISO 12944-7, Execution and supervision of paint work', read: 'scope only' },
	'sspc-pa-2': { title: 'SSPC-PA 2, Dry coating thickness requirements', read: 'stored text of 2012/2015' },
	'osha-1910-94': {
		title: '29 CFR 1910.94, Ventilation',
		read: 'summary sheet, letter 1985-03-28, state twins'
	},
	'osha-1910-106': { title: '29 CFR 1910.106, Flammable liquids', read: 'quotations' },
	'osha-1910-107': { title: '29 CFR 1910.107, Spray finishing', read: 'state twins of (b), (g), (j)' },
	'osha-1910-134': { title: '29 CFR 1910.134, Respiratory protection', read: 'text in parts' },
	'osha-1910-242': { title: '29 CFR 1910.242(b), Compressed air used for cleaning', read: 'text' },
	'osha-1910-95': { title: '29 CFR 1910.95, Occupational noise exposure', read: 'Table G-16 and Appendix A' },
	'osha-1910-1053': { title: '29 CFR 1910.1053, Respirable crystalline silica', read: 'text in parts' },
	'osha-1910-132': { title: '29 CFR 1910.132, Personal protective equipment', read: 'state twin' },
	'osha-1910-138': { title: '29 CFR 1910.138, Hand protection', read: 'nothing' },
	'hse-isocyanate': { title: 'UK HSE guidance on isocyanate spraying', read: 'stored pages' },
	'niosh-isocyanate': { title: 'NIOSH evaluation 2004-0349-2970', read: 'stored pages' },
	'nfpa-86': { title: 'NFPA 86, Ovens and furnaces', read: 'quotations in trade articles' },
	'oven-cure-article': {
		title: 'Finishing trade journal: cure ovens and part temperature',
		read: 'article'
	},
	'uscg-6260-30a': {
		title: 'US Coast Guard COMDTINST 6260.30A, respiratory protection for isocyanate coatings',
		read: 'stored text'
	},
	'niosh-silica-abrasive': {
		title: 'NIOSH criteria document on crystalline silica, advice on abrasives, 1974',
		read: 'nothing'
	},
	'nist-sp-811': { title: 'NIST SP 811, Guide for the use of the SI', read: 'printed factors' },
	'astm-d1200': {
		title: 'ASTM D1200, Viscosity by Ford viscosity cup',
		read: 'clause 11 of D1200-94; flow times of standard oils on a viscosity laboratory’s page'
	},
	'astm-d4414': { title: 'ASTM D4414, Wet film thickness by notch gages', read: 'significance clause' },
	'iso-2431': { title: 'ISO 2431, Flow time by use of flow cups', read: 'nothing' },
	'ansi-b74-12': { title: 'ANSI B74.12, Size of abrasive grain', read: 'sieve row of grit 80, 2001 edition' },
	'niosh-98-126': {
		title: 'NIOSH 98-126, Criteria for occupational noise exposure',
		read: 'formula as quoted and the table of a NIOSH topic page'
	},
	'niosh-npg': { title: 'NIOSH Pocket Guide to Chemical Hazards', read: 'pages of the solvents used here' },
	'ufgs-09-97-10': { title: 'UFGS 09 97 10, Interior coating of welded steel water tanks', read: '§3.7.1' },
	'nist-strd': {
		title: 'NIST Statistical Reference Datasets, univariate',
		read: 'data and certified values as held in open-source test suites'
	},
	'coverage-q-and-a': {
		title: 'Finishing trade question-and-answer archive, October 2003: coverage, dry to wet film',
		read: 'both pages'
	},
	'spreading-rate-bulletin': {
		title: 'Technical bulletin on theoretical spreading rate, with worked examples',
		read: 'stored page'
	},
	'estimating-guide': {
		title: 'Technical bulletin on wet and dry film, with a spreading-rate table by volume solids',
		read: 'stored page'
	},
	'thinned-solids': {
		title: 'Trade article on volume solids of a coating after thinning, with a worked question',
		read: 'page'
	},
	'wet-film-formulae': {
		title: 'Formula page on wet film, dry film and coverage of a US gallon',
		read: 'page'
	},
	'uniform-gun-velocity': {
		title: 'Coating uniformity with a uniform robotic spray gun velocity (journal abstract)',
		read: 'abstract'
	},
	'incropera-heat': {
		title: 'Incropera and DeWitt, Fundamentals of Heat and Mass Transfer',
		read: 'examples 1.9, 5.2 to 5.4 as worked in an open textbook-companion project'
	},
	'holman-heat': {
		title: 'Holman, Heat Transfer (SI)',
		read: 'example 4-1 as worked in an open textbook-companion project'
	},
	'cengel-heat': {
		title: 'Çengel, Heat and Mass Transfer',
		read: 'example 4-1 as worked in an open textbook-companion project'
	},
	'atkins-elements': {
		title: 'Atkins, The Elements of Physical Chemistry',
		read: 'illustration of chapter 10 as worked in an open textbook-companion project'
	},
	'chang-chemistry': {
		title: 'Chang, Chemistry',
		read: 'example 13.9 as worked in an open textbook-companion project'
	},
	'wmo-8': {
		title: 'WMO-No. 8, Guide to instruments and methods of observation',
		read: 'the equation as quoted in a weather-station manual (Annex 4.B)'
	},
	'dguv-209-090': {
		title: 'DGUV Information 209-090, Working with magnesium',
		read: '§1.2 and §1.5'
	},
	'hse-oven-explosion': {
		title: 'UK HSE report of an oven explosion with a solvent-wet load, March 2013',
		read: 'stored page'
	},
	'blasting-lead-cadmium': {
		title:
			'Archives of Environmental Health 1996;51:95, exposure while blasting off lead and cadmium coatings',
		read: 'abstract'
	},
	'reheated-6061': {
		title: 'Reheating of aluminium 6061-T6, student thesis 2015',
		read: 'results as stored'
	},
	'anodise-heat': {
		title: 'Finishing trade pages on heat crazing of anodised aluminium',
		read: 'pages of trade and blog quality'
	},
	'stress-cracking': {
		title: 'Encyclopaedia page on environmental stress cracking, citing ASTM D883',
		read: 'page'
	},
	'casting-outgassing': {
		title: 'Finishing trade questions and answers on outgassing castings',
		read: 'stored pages'
	},
	'ashrae-fundamentals-2017': {
		title: 'ASHRAE Handbook Fundamentals 2017, chapter 1',
		read: 'tables as quoted in the test suite of an open-source psychrometrics library'
	},
	'ufc-3-190-06': {
		title: 'UFC 3-190-06, Protective coatings and paints (also as MIL-HDBK-1110)',
		read: 'stored pages'
	},
	'navair-01-1a-509-2': {
		title: 'NAVAIR 01-1A-509-2 / TM 1-1500-344-23-2, Cleaning and corrosion control: aircraft',
		read: 'stored appendix A-8'
	},
	'p2-handbook': {
		title: 'Joint Service Pollution Prevention Opportunity Handbook, high-volume low-pressure spray guns',
		read: 'stored page'
	},
	'cfr-40-63': { title: '40 CFR 63, definition of HVLP spray equipment', read: 'nothing' }
} as const satisfies Record<string, { readonly title: string; readonly read: string }>;

export type SourceId = keyof typeof SOURCES;
