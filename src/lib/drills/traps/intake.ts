import { celsius, metres, sheetLimits, shopValue, type Job } from '$lib/engine';
import type { Trap } from '../trap';
import { acceptedBlindly, chose, materialOf, ticked, typed, withMaterial, withPart } from './answers';

const metals = ['aluminium-6061', 'zinc-die-cast', 'aluminium-casting'];
const accept = acceptedBlindly;

export const intakeTraps: readonly Trap[] = [
	{
		id: 'bonded-knob',
		rule: 'fitted-items-out',
		from: 1,
		title: { en: 'A plastic knob is bonded inside', es: 'Trae una perilla de plástico pegada' },
		weave: (job) => withPart(job, { fitted: ['bonded-abs-knob'] }),
		overlooked: accept
	},
	{
		id: 'bearing-left-in',
		rule: 'fitted-items-out',
		from: 2,
		title: { en: 'A greased bearing is still fitted', es: 'Aún trae un rodamiento engrasado' },
		weave: (job) => withPart(job, { fitted: ['bearing'] }),
		overlooked: accept
	},
	{
		id: 'light-grey-metal',
		rule: 'material-known',
		from: 1,
		title: { en: 'A light grey metal nobody can name', es: 'Un metal gris claro que nadie sabe nombrar' },
		weave: (job) =>
			metals.includes(materialOf(job))
				? withPart(job, { material: 'unknown', magnetSticks: false })
				: undefined,
		overlooked: accept
	},
	{
		id: 'magnesium-cover',
		rule: 'magnesium-refused',
		from: 3,
		title: { en: 'The paper says magnesium', es: 'El papel dice magnesio' },
		weave: (job) =>
			metals.includes(materialOf(job)) ? withMaterial(job, 'magnesium', { magnetSticks: false }) : undefined,
		overlooked: accept
	},
	{
		id: 'magnet-sticks',
		rule: 'magnet-agrees-with-paper',
		from: 2,
		title: {
			en: 'Declared stainless, but the magnet sticks',
			es: 'Declarado inoxidable, pero el imán se pega'
		},
		weave: (job) =>
			materialOf(job) === 'stainless-steel' ? withPart(job, { magnetSticks: true }) : undefined,
		overlooked: accept
	},
	{
		id: 'old-coating',
		rule: 'old-coating-questioned',
		from: 1,
		title: { en: 'Somebody else has coated it before', es: 'Alguien más la recubrió antes' },
		weave: (job) => withPart(job, { surface: 'old-coating' }),
		overlooked: accept
	},
	{
		id: 'yellow-plating',
		rule: 'yellow-plating-isolated',
		from: 2,
		title: { en: 'Shiny yellow-gold plating', es: 'Baño amarillo dorado brillante' },
		weave: (job) =>
			materialOf(job) === 'carbon-steel' ? withPart(job, { surface: 'yellow-plating' }) : undefined,
		overlooked: accept
	},
	{
		id: 'weld-pinhole',
		rule: 'sealed-cavity-stops',
		from: 2,
		title: {
			en: 'A closed tube with a pinhole in the weld',
			es: 'Un tubo cerrado con un poro en la soldadura'
		},
		weave: (job) => (job.parts[0]!.shape === 'tube' ? withPart(job, { cavity: 'sealed' }) : undefined),
		overlooked: accept
	},
	{
		id: 'only-aluminium',
		rule: 'cure-within-part-limit',
		from: 2,
		title: { en: 'A tempered aluminium under a hot cure', es: 'Un aluminio templado con un curado caliente' },
		weave: (job, random, shop) =>
			hotterSheet(job, shop, shopValue(shop, 'cap.aluminium-7075').value, (coating) =>
				materialOf(job) === 'aluminium-7075' || materialOf(job) === 'aluminium-6061'
					? { ...withMaterial(job, 'aluminium-7075'), coating: random.pick(coating) }
					: undefined
			),
		overlooked: accept
	},
	{
		id: 'film-basis-unsaid',
		rule: 'film-basis-stated',
		from: 1,
		title: {
			en: 'The drawing does not say per side or in total',
			es: 'El plano no dice por cara o en total'
		},
		weave: (job, _random, shop) => {
			const film = sheetLimits(shop, job.coating, 'dry-film');
			return film && { ...job, film: { min: metres(film.min), max: metres(film.max), basis: 'unstated' } };
		},
		overlooked: accept
	},
	{
		id: 'film-off-the-sheet',
		rule: 'film-within-sheet',
		from: 2,
		title: {
			en: 'The customer wants a film the sheet does not give',
			es: 'El cliente pide una película que la hoja no da'
		},
		weave: (job, _random, shop) => {
			const film = sheetLimits(shop, job.coating, 'dry-film');
			return (
				film && {
					...job,
					film: { min: metres(film.max * 1.5), max: metres(film.max * 2), basis: 'per-side' }
				}
			);
		},
		overlooked: accept
	},
	{
		id: 'polypropylene-shell',
		rule: 'low-energy-plastic-asked',
		from: 2,
		title: { en: 'A plastic that nothing sticks to', es: 'Un plástico al que nada se adhiere' },
		weave: (job) => (materialOf(job) === 'polyamide' ? withMaterial(job, 'polypropylene') : undefined),
		overlooked: accept
	},
	{
		id: 'spring-temper',
		rule: 'temper-margin',
		from: 2,
		title: { en: 'A spring with a low temper', es: 'Un resorte con revenido bajo' },
		weave: (job, random) =>
			materialOf(job) === 'spring-steel'
				? withPart(job, { tempered: celsius(random.between(180, 215, 5)) })
				: undefined,
		overlooked: (_plan, _job, shop) => ({ 'part-cap': typed(shopValue(shop, 'cap.spring-steel').value) })
	},
	{
		id: 'mask-list-too-short',
		rule: 'fit-faces-masked',
		from: 1,
		title: {
			en: 'The masking list leaves out a fit face',
			es: 'La lista de enmascarado omite una cara de ajuste'
		},
		weave: (job) =>
			job.parts[0]!.features.length ? withPart(job, { masked: job.parts[0]!.features.slice(1) }) : undefined,
		overlooked: (_plan, job) => ({ 'mask-features': ticked(...job.parts.flatMap(({ masked }) => masked)) })
	},
	{
		id: 'paper-tape-in-a-hot-oven',
		rule: 'tape-stands-the-oven',
		from: 1,
		title: { en: 'Paper tape for a hot bake', es: 'Cinta de papel para un horneado caliente' },
		weave: (job, _random, shop) => {
			const cure = sheetLimits(shop, job.coating, 'cure-metal-temperature');
			const hot = cure && cure.max > shopValue(shop, 'tape.paper').value;
			return hot && job.parts[0]!.features.length ? job : undefined;
		},
		overlooked: () => ({ 'mask-tape': chose('paper') })
	}
];

/** Sheets whose coolest metal cure is above a limit, handed on where there are any. */
function hotterSheet(
	job: Job,
	shop: Parameters<Trap['weave']>[2],
	limit: number,
	use: (coatings: string[]) => Job | undefined
) {
	const hot = Object.keys(shop.sheets).filter((id) => {
		const cure = sheetLimits(shop, id, 'cure-metal-temperature');
		return cure && cure.min > limit;
	});
	return hot.length ? use(hot) : undefined;
}
