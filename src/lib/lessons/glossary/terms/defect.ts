import type { Term } from '../term';

export const defectTerms = [
	{
		id: 'defect',
		term: { en: 'defect', es: 'defecto' },
		meaning: {
			en: 'Anything about the film that the job did not ask for.',
			es: 'Cualquier cosa de la película que el trabajo no pidió.'
		},
		lesson: 'defects'
	},
	{
		id: 'look-alike',
		term: { en: 'look-alike', es: 'parecido engañoso' },
		meaning: {
			en: 'A defect taken for another. One test tells the two apart.',
			es: 'Defecto que se confunde con otro. Una prueba los distingue.'
		},
		lesson: 'defects'
	},
	{
		id: 'run',
		term: { en: 'run', es: 'escurrido' },
		meaning: {
			en: 'Film that flowed downward and hardened as a tongue with a thick lip.',
			es: 'Película que corrió hacia abajo y endureció como lengua con labio grueso.'
		},
		lesson: 'defects'
	},
	{
		id: 'orange-peel',
		term: { en: 'orange peel', es: 'piel de naranja' },
		meaning: {
			en: 'A skin of soft smooth bumps: the drops never flowed into one.',
			es: 'Piel de bultos suaves y lisos: las gotas no llegaron a unirse.'
		},
		lesson: 'defects'
	},
	{
		id: 'dry-spray',
		term: { en: 'dry spray', es: 'aplicación seca' },
		meaning: {
			en: 'Drops that landed half dry and stayed as rough grain.',
			es: 'Gotas que llegaron medio secas y quedaron como grano áspero.'
		},
		lesson: 'defects'
	},
	{
		id: 'fisheye',
		term: { en: 'fisheye', es: 'ojo de pez' },
		meaning: {
			en: 'A round pit with a raised rim, where oil or silicone pushed the film away.',
			es: 'Hoyo redondo con borde levantado, donde aceite o silicona apartó la película.'
		},
		lesson: 'defects'
	},
	{
		id: 'pinhole',
		term: { en: 'pinhole', es: 'poro de aguja' },
		meaning: {
			en: 'A fine deep hole through the film, without a rim.',
			es: 'Agujero fino y hondo que atraviesa la película, sin borde.'
		},
		lesson: 'defects'
	},
	{
		id: 'solvent-pop',
		term: { en: 'solvent pop', es: 'hervido de solvente' },
		meaning: {
			en: 'A small burst dome where solvent boiled out of thick film.',
			es: 'Domo pequeño reventado donde el solvente hirvió en película gruesa.'
		},
		lesson: 'loading-the-oven'
	},
	{
		id: 'blister',
		term: { en: 'blister', es: 'ampolla' },
		meaning: {
			en: 'A dome with gas or liquid under the film.',
			es: 'Domo con gas o líquido bajo la película.'
		},
		lesson: 'bake-out'
	},
	{
		id: 'blushing',
		term: { en: 'blushing', es: 'velado' },
		meaning: {
			en: 'A milky haze in the film, left by water out of damp air.',
			es: 'Nube lechosa en la película, que deja el agua del aire húmedo.'
		},
		lesson: 'air-and-dew-point'
	},
	{
		id: 'flash-rust',
		term: { en: 'flash rust', es: 'oxidación instantánea' },
		meaning: {
			en: 'Rust that comes on bare steel within hours of cleaning or blasting.',
			es: 'Óxido que sale en acero desnudo a las pocas horas de limpiar o granallar.'
		},
		lesson: 'clock-to-coat'
	},
	{
		id: 'holiday',
		term: { en: 'holiday', es: 'zona sin cubrir' },
		meaning: {
			en: 'A place the spray missed.',
			es: 'Un lugar donde no llegó la aplicación.'
		},
		lesson: 'passes'
	},
	{
		id: 'under-cure',
		term: { en: 'under-cure', es: 'falta de curado' },
		meaning: {
			en: 'A film that had too little heat or time and stays soft.',
			es: 'Película que recibió poco calor o tiempo y queda blanda.'
		},
		lesson: 'soak'
	}
] as const satisfies readonly Term[];
