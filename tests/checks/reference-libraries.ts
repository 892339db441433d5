/** What expected values are taken from beside publications: open libraries and manuals that are no source of the engine. */
export const REFERENCE_LIBRARIES: Readonly<Record<string, string>> = {
	'js-quantities': 'js-quantities, unit conversion library',
	mathjs: 'mathjs, mathematics library',
	chemicals: 'chemicals, chemical-properties library',
	psychrolib: 'psychrolib, psychrometrics library',
	pychemengg: 'pychemengg, chemical engineering library, documentation',
	'simple-statistics': 'simple-statistics, statistics library',
	jstat: 'jstat, statistics library',
	'sas-qc': 'SAS/QC user’s guide, SHEWHART and MACONTROL procedures',
	gtc: 'GTC, uncertainty library for Python, manual',
	matgeom: 'MatGeom, geometry library for MATLAB, manual',
	gsdesign: 'gsDesign, group sequential design library for R, vignettes',
	'reliability-library-manual': 'Manual of the Python library reliability',
	'bock-lieberman-1970':
		'Bock and Lieberman, 1970: answers of 1000 persons to five items, a data set of open statistics packages',
	'newcombe-1998': 'Newcombe, Two-sided confidence intervals for the single proportion, 1998',
	'elo-encyclopaedia': 'Encyclopaedia article on the Elo rating system',
	'fips-180-4': 'FIPS 180-4, Secure hash standard',
	'rfc-8785': 'RFC 8785, JSON canonicalization scheme'
};
