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
	'iso-2431': {
		title: 'ISO 2431, Flow time by use of flow cups',
		read: 'cup equations and ranges as held in an open-source library'
	},
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
	'booth-air-q-and-a': {
		title: 'Finishing trade question-and-answer archive, June 2004: air of a down-draught booth',
		read: 'question and answer'
	},
	'mechanical-code-502': {
		title: 'Model mechanical code, section 502.7.3.3, air velocity of spray booths',
		read: 'sections 502.7.3.3.1 and 502.7.3.3.2 as printed on a code page'
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
	'astm-d5286': {
		title:
			'ASTM D5286, Transfer efficiency under general production conditions for spray application of paints',
		read: 'definitions'
	},
	'iso-19840': {
		title: 'ISO 19840, Measurement of dry films on rough surfaces, and acceptance criteria',
		read: 'scope; the criteria as quoted in trade and association texts'
	},
	'ilac-g8': {
		title: 'ILAC-G8:09/2019, Guidelines on decision rules and statements of conformity',
		read: 'pages 8 and 10'
	},
	'jcgm-100': {
		title: 'JCGM 100:2008, Guide to the expression of uncertainty in measurement (GUM)',
		read: 'example H.1 as worked in the manual of an open-source library'
	},
	'abramowitz-stegun': {
		title: 'Abramowitz and Stegun, Handbook of mathematical functions',
		read: 'nothing'
	},
	'nist-handbook': {
		title: 'NIST/SEMATECH e-Handbook of Statistical Methods',
		read: 'example of 6.3.2.2 as held in open-source test suites'
	},
	'astm-e2587': {
		title: 'ASTM E2587, Use of control charts in statistical process control',
		read: 'table of factors as held in open-source libraries'
	},
	'deposition-models': {
		title: 'Review of spray deposition models for robots, DOI 10.1155/2016/9369047',
		read: 'names and shapes of the models'
	},
	'kreith-heat': {
		title: 'Kreith, Manglik and Bohn, Principles of Heat Transfer, 7th edition',
		read: 'examples 2.10 and 2.13 as worked in an open textbook-companion project'
	},
	'janna-heat': {
		title: 'Janna, Engineering Heat Transfer',
		read: 'examples 4.2 and 4.3 as worked in an open textbook-companion project'
	},
	'som-heat': {
		title: 'Som, Introduction to Heat Transfer',
		read: 'examples 4.1, 4.2, 4.4, 4.5, 4.9 and 4.10 as worked in an open textbook-companion project'
	},
	'openstax-chemistry': {
		title: 'OpenStax, Chemistry 2e',
		read: '§12.5 with its exercises and answers'
	},
	'en-12524': {
		title: 'EN 12524 (now ISO 10456), Building materials and products, tabulated design values',
		read: 'table as held in an open-source heat-transfer library'
	},
	'nist-cryogenic': {
		title: 'NIST cryogenic material properties, fits up to 300 K',
		read: 'coefficients as held in open-source engineering codes'
	},
	'crawford-plastics': {
		title: 'Crawford, Plastics Engineering, Table 1.8',
		read: 'stored page'
	},
	'jnm-2019-cfrp': {
		title: 'Journal of Nanomaterials 2019, 8928917, Table 2: through-thickness conductivity of laminates',
		read: 'table'
	},
	'nist-tn-1297': {
		title: 'NIST Technical Note 1297, Expressing the uncertainty of measurement results',
		read: 'Table B.1'
	},
	'cfr-10-429': {
		title: '10 CFR 429, Subpart B, Appendix A, Student’s t for certification testing',
		read: 'table'
	},
	'soong-statistics': {
		title: 'Soong, Fundamentals of Probability and Statistics for Engineers',
		read: 'Table A.4 as stored'
	},
	'pyzdek-quality': {
		title: 'Pyzdek and Keller, The Handbook for Quality Management',
		read: 'table of control chart factors as stored'
	},
	'foster-quality': {
		title: 'Foster, Managing Quality: Integrating the Supply Chain',
		read: 'data of figure 11-8 and what it shows, as worked in an open-source library'
	},
	'mean-range-answer': {
		title: 'Homework answer on mean and range charts of 25 samples of five',
		read: 'answer with its sums'
	},
	'concrete-batching': {
		title: 'Trade article on volumetric batching of concrete',
		read: 'article with its figures'
	},
	'film-80-20-question': {
		title: 'Question-and-answer page on the 80–20 rule of dry film thickness',
		read: 'page with its example'
	},
	'pre-plate-threads': {
		title: 'Trade article on pre-plate threads, quality magazine 2024',
		read: 'opening of the article, with its formula'
	},
	'plated-thread-gauges': {
		title: 'Gauge maker’s page on threads before plating, after ASME B1.1 §7',
		read: 'page with its example'
	},
	'plating-thread-fit': {
		title: 'Fastener trade transcript on plating and thread fit, 2017',
		read: 'opening of the transcript'
	},
	'ncert-chemistry': {
		title: 'NCERT, Chemistry class 12, chemical kinetics',
		read: 'worked problem as reproduced on a study page'
	},
	'paint-mixing-chart': {
		title: 'Chart of hardener to 32 oz of paint by mixing ratio, do-it-yourself calculator page',
		read: 'chart'
	},
	'two-stroke-mix': { title: 'Answer page on oil for two-stroke fuel by mixing ratio', read: 'page' },
	'farm-sprayer': {
		title: 'Newspaper farm page on sprayer nozzle output and application rate, 2011',
		read: 'page with its example'
	},
	'ifas-wg013': {
		title: 'University of Florida IFAS, WG013, Calibration of herbicide applicators',
		read: 'equation 1'
	},
	'planar-spray-thesis': {
		title: 'Path generation for planar spray painting (thesis abstract)',
		read: 'abstract'
	},
	'chen-trajectory': {
		title: 'Chen, Sheng, Xi and others, Automated robot trajectory planning for spray painting',
		read: 'nothing'
	},
	'coverage-q-and-a-2004': {
		title: 'Finishing trade question-and-answer archive, May 2004: coverage',
		read: 'page with its worked example'
	},
	'zinc-coating-article': {
		title: 'Trade article on coating weights of galvanised sheet, December 2019',
		read: 'page 43'
	},
	'galvanizers-conversion': {
		title: 'Galvanizers’ association page on coating weight and thickness after ASTM A123',
		read: 'page with its examples'
	},
	'astm-a653': {
		title: 'ASTM A653/A653M, Steel sheet, zinc-coated by the hot-dip process',
		read: 'relation of weight and thickness as quoted on a trade page'
	},
	'hollow-cylinder-problem': {
		title: 'Solved problem on the surface of a hollow cylinder, collection of maths problems',
		read: 'problem and solution'
	},
	'school-mensuration': {
		title: 'Tamil Nadu school mathematics, mensuration: paint for a tunnel',
		read: 'worked example as reproduced on a study page'
	},
	'tube-area-question': {
		title: 'Tutor’s answer on the total surface of a tube, 2019',
		read: 'answer with its sums'
	},
	'open-box-question': { title: 'Homework answer on the inner surface of an open box', read: 'answer' },
	'transfer-efficiency-note': {
		title: 'Pollution prevention centre, note on calculating transfer efficiency, 2012',
		read: 'note'
	},
	'incropera-heat': {
		title: 'Incropera and DeWitt, Fundamentals of Heat and Mass Transfer',
		read: 'examples 1.9, 5.1 to 5.4 as worked in an open textbook-companion project, Table 5.1 as quoted in an open-source test suite'
	},
	'holman-heat': {
		title: 'Holman, Heat Transfer (SI)',
		read: 'examples 4-1, 4-6 and 4-9 as worked in open textbook-companion projects'
	},
	'cengel-heat': {
		title: 'Çengel, Heat and Mass Transfer',
		read: 'example 4-1 as worked in an open textbook-companion project, text of examples 4-4 and 4-5'
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
	'osha-1910-1000': {
		title: '29 CFR 1910.1000, Air contaminants',
		read: 'paragraph (d) with both worked examples'
	},
	'osha-technical-manual': {
		title: 'OSHA Technical Manual, section III, chapter 5, Noise',
		read: 'halving of the rating as quoted on public pages'
	},
	'occupational-health-consultancy': {
		title: 'Questions and answers of an occupational-health consultancy on hearing protectors',
		read: 'page with worked examples'
	},
	'hearing-forum': {
		title: 'Discussion of the noise reduction rating in a hearing forum, citing the OSHA field manual',
		read: 'page with worked examples'
	},
	'nfpa-497': {
		title: 'NFPA 497, Classification of flammable liquids, gases and vapors, 2008',
		read: 'table as held in an open chemical-properties library'
	},
	'iec-60079-20-1': {
		title: 'IEC 60079-20-1, Material characteristics for gas and vapour classification, 2010',
		read: 'table as held in an open chemical-properties library'
	},
	'iso-10156': {
		title: 'ISO 10156, Fire potential and oxidizing ability of gases, 2017',
		read: 'examples as held in the test suite of an open chemical-properties library'
	},
	'perry-handbook': {
		title: 'Perry’s Chemical Engineers’ Handbook and the VDI Heat Atlas, densities of liquids',
		read: 'coefficients as held in an open chemical-properties library'
	},
	'niosh-idlh': {
		title: 'NIOSH, Documentation for immediately dangerous to life or health concentrations, 1994',
		read: 'pages of toluene, n-butyl acetate, ethyl acetate and hexone'
	},
	'crowl-safety': {
		title: 'Crowl and Louvar, Chemical Process Safety',
		read: 'examples and problems as worked in an open library and in university tutorials'
	},
	'abulencia-flow': {
		title: 'Abulencia and Theodore, Fluid Flow for the Practicing Chemical Engineer',
		read: 'example 20.2 as worked in an open textbook-companion project'
	},
	'narayanan-stoichiometry': {
		title: 'Narayanan and Lakshmikutty, Stoichiometry and Process Calculations',
		read: 'example 8.1 as worked in an open textbook-companion project'
	},
	'nag-thermodynamics': {
		title: 'Nag, Engineering Thermodynamics',
		read: 'examples 15.1 and 15.2 as worked in an open textbook-companion project'
	},
	'rajput-thermodynamics': {
		title: 'Rajput, Engineering Thermodynamics',
		read: 'three psychrometric examples as worked in an open textbook-companion project'
	},
	'granet-thermodynamics': {
		title: 'Granet and Bluestein, Thermodynamics and Heat Power',
		read: 'problems 7.13 and 7.17 as worked in an open textbook-companion project'
	},
	'cengel-thermodynamics': {
		title: 'Çengel and Boles, Thermodynamics: An Engineering Approach',
		read: 'example 14-2 as worked in an open textbook-companion project'
	},
	'openstax-physics': {
		title: 'OpenStax, College Physics',
		read: 'example 13.13 with the table values it uses, as worked in an open textbook-companion project'
	},
	'mmwr-1994-tb': {
		title: 'CDC, MMWR 43 (RR-13), 1994, Table S3-1: air changes and time to remove airborne contaminants',
		read: 'the table page'
	},
	'tb-ventilation-glossary': {
		title: 'Health guideline on tuberculosis, glossary: air changes per hour',
		read: 'the entry'
	},
	'usbr-hvac-guide': {
		title: 'US Bureau of Reclamation, Design guide for heating, ventilating and air conditioning, 2006',
		read: 'page 106, combustible gas in a room'
	},
	'process-forum': {
		title: 'Engineering forum on purging a storage tank',
		read: 'thread'
	},
	'class-a-oven-article': {
		title: 'Process heating trade journal: Class A ovens, on the 1999 edition of NFPA 86',
		read: 'article'
	},
	'wyoming-drilling-rules': {
		title:
			'State of Wyoming occupational safety rules for well drilling, definition of the lower explosive limit',
		read: 'the definition as quoted in a trade lexicon'
	},
	'hygiene-mixture-article': {
		title: 'Occupational hygiene article on mixtures of air contaminants',
		read: 'article with its worked example'
	},
	'noise-encyclopaedia': {
		title: 'Encyclopaedia of environmental science and engineering, article Noise, p. 772',
		read: 'the page'
	},
	'bcit-mathematics': {
		title: 'BCIT, mathematics examples for occupational health: noise of three machines',
		read: 'page'
	},
	'sound-level-answer': {
		title: 'Question-and-answer page: how do sound levels add?',
		read: 'page'
	},
	'cfr-40-63': { title: '40 CFR 63, definition of HVLP spray equipment', read: 'nothing' },
	'moran-thermal-systems': {
		title: 'Moran, Shapiro, Munson and DeWitt, Introduction to Thermal Systems Engineering',
		read: 'example 12.8 as worked in an open textbook-companion project'
	},
	'vennard-fluid-mechanics': {
		title: 'Vennard, Elementary Fluid Mechanics',
		read: 'example 5.4 as worked in an open textbook-companion project'
	},
	'murugaperumal-gas-dynamics': {
		title: 'Murugaperumal, Gas Dynamics and Jet Propulsion',
		read: 'examples 2.1, 2.3 and 2.5 as worked in an open textbook-companion project'
	},
	'cengel-fluid-mechanics': {
		title: 'Çengel and Cimbala, Fluid Mechanics: Fundamentals and Applications',
		read: 'problem of example 12-5 as set out in an open textbook-companion project'
	},
	'esposito-fluid-power': {
		title: 'Esposito, Fluid Power with Applications',
		read: 'examples 13-6, 13-8 and 14-1 as worked in an open textbook-companion project'
	},
	'naca-1135': {
		title: 'NACA Report 1135, Equations, tables and charts for compressible flow',
		read: 'values as quoted in the test suite of an open-source gas-dynamics library'
	},
	'choked-flow-tutorial': {
		title: 'Tutorial of an orifice catalogue on the choked flow of gases',
		read: 'stored page'
	},
	'choked-flow-faq': {
		title: 'Engineers’ forum, frequent question on choked mass flow of gases',
		read: 'stored page'
	},
	'orifice-air-table': {
		title: 'Discharge of air through an orifice, table of compressed-air handbooks',
		read: 'stored copies of the table and its notes'
	},
	'blast-nozzle-chart': {
		title: 'Trade chart of compressed air and abrasive consumption by blast nozzle, metered while blasting',
		read: 'stored page'
	},
	'blast-air-table': {
		title: 'Equipment guide: air consumption of suction and pressure blast systems',
		read: 'stored page'
	},
	'compressor-sizing-guide': {
		title: 'Workshop guide to sizing a compressor by duty cycles, with a worked example',
		read: 'stored page'
	},
	'harris-formula': {
		title: 'Engineering reference page on the Harris formula for compressed-air pipe',
		read: 'stored page'
	},
	'pressure-dew-point-chart': {
		title: 'Look-up chart of pressure dew points by the Sonntag equation, from a humidity laboratory',
		read: 'stored page'
	},
	'frost-point-table': {
		title: 'Table of water content in parts per million by frost point at 1013 mbar',
		read: 'stored page'
	},
	'flow-cup-library': {
		title: 'Open-source library of flow-cup equations after ASTM D4212, ASTM D1200, ISO 2431 and DIN 53211',
		read: 'its documentation and examples'
	},
	'din-53211': { title: 'DIN 53211, Flow time by the 4 mm DIN cup (withdrawn)', read: 'nothing' },
	'iso-6344': {
		title: 'ISO 6344, Coated abrasives, grain size analysis (FEPA P)',
		read: 'mean sizes in two comparison tables'
	},
	'iso-8486-1': {
		title: 'ISO 8486-1, Bonded abrasives, macrogrits F4 to F220 (FEPA F)',
		read: 'sieve limits of F180 as quoted'
	},
	'ansi-b74-18': {
		title: 'ANSI B74.18, Grading of abrasive grain on coated abrasive material',
		read: 'average sizes in two comparison tables'
	},
	'iso-8503': {
		title: 'ISO 8503-1 and -2, Surface profile comparators for blast-cleaned steel',
		read: 'data sheet and instructions of a comparator'
	},
	'wire-cloth-guide': {
		title: 'Guide to wire-mesh terms with the opening of a cloth worked out',
		read: 'stored page'
	},
	'fever-noisy-or': {
		title: 'Lecture slides on Bayesian networks, after Russell and Norvig: noisy-OR of three causes of fever',
		read: 'slide with the table'
	},
	'mitchell-machine-learning': {
		title: 'Mitchell, Machine Learning, chapter 3: information gain of two attributes',
		read: 'figure and sums in lecture slides'
	},
	'rice-statistics': {
		title: 'Rice, Mathematical Statistics and Data Analysis, 3rd edition',
		read: 'example on mammography as quoted in a question'
	},
	'mackay-itila': {
		title: 'MacKay, Information Theory, Inference, and Learning Algorithms, chapter 21',
		read: 'rates of example 21.1 on page 294'
	}
} as const satisfies Record<string, { readonly title: string; readonly read: string }>;

export type SourceId = keyof typeof SOURCES;
