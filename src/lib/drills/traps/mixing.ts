import { celsius, hours, micrometres, sheetNumber, type Job } from '$lib/engine';
import type { Trap } from '../trap';
import { daysAfter } from '../world/day';
import { chose, typed } from './answers';

const twoPart = (job: Job, shop: Parameters<Trap['weave']>[2]) => shop.sheets[job.coating]?.parts === 2;

export const mixingTraps: readonly Trap[] = [
	{
		id: 'past-its-date',
		rule: 'lot-in-date',
		from: 1,
		title: { en: 'The lot is past its date and looks fine', es: 'El lote está vencido y se ve bien' },
		weave: (job, random) => ({
			...job,
			shelf: { ...job.shelf, expires: daysAfter(job.on, -random.integer(3, 90)) }
		}),
		overlooked: () => ({ 'lot-action': chose('use') })
	},
	{
		id: 'hardener-crystals',
		rule: 'hardener-sound',
		from: 1,
		title: { en: 'Crystals on the hardener lid', es: 'Cristales en la tapa del endurecedor' },
		weave: (job, _random, shop) =>
			twoPart(job, shop) ? { ...job, shelf: { ...job.shelf, hardenerState: 'crystals' } } : undefined,
		overlooked: () => ({ 'lot-action': chose('use') })
	},
	{
		id: 'cold-store',
		rule: 'cold-can-warms-up',
		from: 1,
		title: {
			en: 'The can came from a cold store this morning',
			es: 'La lata salió de un almacén frío esta mañana'
		},
		weave: (job, random) => ({
			...job,
			shelf: {
				...job.shelf,
				stored: celsius(random.between(2, 8, 1)),
				warming: hours(random.between(1, 4, 1))
			}
		}),
		overlooked: () => ({ 'lot-action': chose('use') })
	},
	{
		id: 'volume-ratio-on-the-scale',
		rule: 'hardener-by-weight',
		from: 2,
		title: { en: 'A ratio by volume, weighed', es: 'Una relación por volumen, pesada' },
		weave: (job, _random, shop) => (shop.sheets[job.coating]?.basis === 'volume' ? job : undefined),
		overlooked: (_plan, job, shop) => ({
			'hardener-mass': typed(0.5 / (sheetNumber(shop, job.coating, 'mix-ratio') ?? Infinity))
		})
	},
	{
		id: 'hot-afternoon',
		rule: 'use-within-pot-life',
		from: 2,
		title: {
			en: 'A hot day and the pot life of the sheet',
			es: 'Un día caluroso y la vida de mezcla de la hoja'
		},
		weave: (job, random, shop) =>
			twoPart(job, shop)
				? { ...job, weather: { ...job.weather, paint: celsius(random.between(28, 32, 1)) } }
				: undefined,
		overlooked: (_plan, job, shop) => ({
			'use-within': typed(sheetNumber(shop, job.coating, 'pot-life') ?? Infinity)
		})
	},
	{
		id: 'thick-left-over',
		rule: 'left-over-discarded',
		from: 1,
		title: { en: 'Left-over mix has thickened', es: 'El sobrante de mezcla se ha espesado' },
		weave: (job, _random, shop) => {
			const life = sheetNumber(shop, job.coating, 'pot-life');
			return life ? { ...job, shelf: { ...job.shelf, leftOverAge: hours((life * 1.5) / 3600) } } : undefined;
		},
		overlooked: () => ({ 'left-over-action': chose('thin') })
	},
	{
		id: 'fine-cone-on-a-filled-coating',
		rule: 'strainer-opening',
		from: 1,
		title: {
			en: 'The finest strainer for a filled coating',
			es: 'El colador más fino para un recubrimiento con carga'
		},
		weave: (job, _random, shop) => (shop.sheets[job.coating]?.filled ? job : undefined),
		overlooked: () => ({ strainer: typed(micrometres(45)) })
	},
	{
		id: 'lid-on-the-left-over',
		rule: 'left-over-reacts-in-open-pan',
		from: 1,
		title: { en: 'Left-over two-part mix and a lid', es: 'Sobrante de dos partes y una tapa' },
		weave: (job, _random, shop) => (twoPart(job, shop) ? job : undefined),
		overlooked: () => ({ 'left-over-waste': chose('closed-can') })
	}
];
