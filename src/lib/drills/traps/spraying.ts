import { celsius, metresPerSecond, percent } from '$lib/engine';
import type { Trap } from '../trap';
import { chose } from './answers';

const go = () => ({ 'spray-go': chose('go') });

export const sprayingTraps: readonly Trap[] = [
	{
		id: 'cold-truck',
		rule: 'surface-above-dew-point',
		from: 1,
		title: { en: 'Parts from a cold truck', es: 'Piezas de un camión frío' },
		weave: (job, random) => ({
			...job,
			weather: {
				...job.weather,
				air: celsius(random.between(21, 24, 1)),
				humidity: percent(random.between(55, 62, 1)),
				part: celsius(random.between(6, 12, 1))
			}
		}),
		overlooked: go
	},
	{
		id: 'wet-weather',
		rule: 'humidity-in-window',
		from: 1,
		title: { en: 'A wet morning', es: 'Una mañana húmeda' },
		weave: (job, random) => ({
			...job,
			weather: { ...job.weather, humidity: percent(random.between(76, 90, 1)) }
		}),
		overlooked: go
	},
	{
		id: 'oil-on-the-blotter',
		rule: 'clean-dry-air',
		from: 1,
		title: { en: 'A faint oil ring on the blotter', es: 'Un anillo tenue de aceite en el papel' },
		weave: (job, random) => ({
			...job,
			bench: { ...job.bench, blotter: random.pick(['oil-ring', 'wet', 'not-done'] as const) }
		}),
		overlooked: go
	},
	{
		id: 'handle-gauge',
		rule: 'pressure-at-the-cap',
		from: 2,
		title: { en: 'The gauge on the handle', es: 'El manómetro del mango' },
		weave: (job) => job,
		overlooked: () => ({ 'pressure-read-at': chose('handle') })
	},
	{
		id: 'quick-filter-mask',
		rule: 'air-fed-for-isocyanate',
		from: 1,
		title: {
			en: 'An isocyanate and a filter mask at hand',
			es: 'Un isocianato y una mascarilla con filtro a mano'
		},
		weave: (job, _random, shop) =>
			shop.sheets[job.coating]?.hazards.includes('isocyanate') ? job : undefined,
		overlooked: () => ({ 'spray-breathing': chose('half-mask') })
	},
	{
		id: 'lapsed-fit-test',
		rule: 'may-wear-it',
		from: 1,
		title: { en: 'A beard or a lapsed paper', es: 'Una barba o un papel vencido' },
		weave: (job, random) =>
			random.onceIn(2)
				? { ...job, wearer: { ...job.wearer, medicalClearanceValid: false } }
				: {
						...job,
						wearer: { ...job.wearer, beard: true, fitTestValid: false },
						bench: { ...job.bench, breathing: ['half-mask', 'dust-mask'] }
					},
		overlooked: () => ({ 'wearer-action': chose('spray') })
	},
	{
		id: 'weak-booth',
		rule: 'booth-air-speed',
		from: 1,
		title: { en: 'The booth filters are loaded', es: 'Los filtros de la cabina están cargados' },
		weave: (job, random) => ({
			...job,
			bench: { ...job.bench, boothSpeed: metresPerSecond(random.between(0.25, 0.45, 0.01)) }
		}),
		overlooked: () => ({ 'booth-action': chose('spray') })
	}
];
