import { bar, cubicMetresPerHour, days, hours, minutes } from '$lib/engine';
import type { Trap } from '../trap';
import { chose, materialOf, typed, withMaterial, withPart } from './answers';

const aluminium = ['aluminium-6061', 'aluminium-7075'];

export const preparationTraps: readonly Trap[] = [
	{
		id: 'dyed-anodised',
		rule: 'scuff-instead-of-blasting',
		from: 2,
		title: { en: 'A dyed anodised housing', es: 'Una carcasa anodizada y teñida' },
		weave: (job) =>
			aluminium.includes(materialOf(job)) ? withMaterial(job, 'anodised-aluminium') : undefined,
		overlooked: () => ({ 'blast-media': chose('aluminium-oxide-fine') })
	},
	{
		id: 'glossy-laminate',
		rule: 'scuff-instead-of-blasting',
		from: 1,
		title: { en: 'A glossy laminate panel', es: 'Un panel laminado brillante' },
		weave: (job) => (materialOf(job).endsWith('laminate') ? job : undefined),
		overlooked: () => ({ 'blast-media': chose('glass-bead') })
	},
	{
		id: 'smudged-polycarbonate',
		rule: 'cleaner-suits-material',
		from: 1,
		title: {
			en: 'Smudges on a new polycarbonate cover',
			es: 'Manchas en una cubierta nueva de policarbonato'
		},
		weave: (job) =>
			['polycarbonate', 'abs'].includes(materialOf(job)) ? withPart(job, { surface: 'oily' }) : undefined,
		overlooked: () => ({ 'clean-method': chose('ketone-wipe') })
	},
	{
		id: 'humid-nylon',
		rule: 'wet-polymer-dried',
		from: 1,
		title: { en: 'Nylon straight from a humid shelf', es: 'Nailon recién sacado de un estante húmedo' },
		weave: (job) => (materialOf(job) === 'polyamide' ? withPart(job, { humidStore: true }) : undefined),
		overlooked: () => ({ 'drying-time': typed(minutes(10)) })
	},
	{
		id: 'sand-on-the-shelf',
		rule: 'no-silica-sand',
		from: 1,
		title: { en: 'An old can of blasting sand', es: 'Una lata vieja de arena para granallar' },
		weave: (job) => ({ ...job, bench: { ...job.bench, media: [...job.bench.media, 'silica-sand'] } }),
		overlooked: () => ({ 'blast-media': chose('silica-sand') })
	},
	{
		id: 'steel-grit-loaded',
		rule: 'iron-free-media',
		from: 2,
		title: { en: 'Steel grit in the cabinet', es: 'Granalla de acero en la cabina' },
		weave: (job) =>
			['stainless-steel', 'titanium', 'brass', ...aluminium].includes(materialOf(job))
				? { ...job, bench: { ...job.bench, media: [...job.bench.media, 'steel-grit'] } }
				: undefined,
		overlooked: () => ({ 'blast-media': chose('steel-grit') })
	},
	{
		id: 'wide-nozzle-small-compressor',
		rule: 'nozzle-compressor-carries',
		from: 1,
		title: { en: 'A wide nozzle on a small compressor', es: 'Una boquilla ancha en un compresor chico' },
		weave: (job) => ({
			...job,
			bench: {
				...job.bench,
				compressor: cubicMetresPerHour(32),
				nozzles: ['bore-3-2', 'bore-6-4', 'bore-9-5']
			}
		}),
		overlooked: () => ({ 'blast-nozzle': chose('bore-9-5') })
	},
	{
		id: 'no-nozzle-narrow-enough',
		rule: 'nozzle-compressor-carries',
		from: 2,
		title: { en: 'Only wide nozzles on the shelf', es: 'Solo boquillas anchas en el estante' },
		weave: (job) => ({
			...job,
			bench: { ...job.bench, compressor: cubicMetresPerHour(32), nozzles: ['bore-7-9', 'bore-9-5'] }
		}),
		overlooked: () => ({ 'blast-nozzle': chose('bore-7-9') })
	},
	{
		id: 'torn-cabinet-seal',
		rule: 'cabinet-sound-before-blasting',
		from: 1,
		title: {
			en: 'The cabinet seal is torn and the job is late',
			es: 'El sello de la cabina está roto y el trabajo va tarde'
		},
		weave: (job) => ({ ...job, bench: { ...job.bench, cabinet: 'torn-seal' } }),
		overlooked: () => ({ 'cabinet-action': chose('dust-mask') })
	},
	{
		id: 'thirty-psi-on-a-bar-gauge',
		rule: 'blow-off-below-30-psi',
		from: 1,
		title: { en: 'A psi limit on a gauge marked in bar', es: 'Un límite en psi con un manómetro en bar' },
		weave: (job) => ({ ...job, bench: { ...job.bench, gauge: 'bar' } }),
		overlooked: () => ({ 'blow-off-pressure': typed(bar(3)) })
	},
	{
		id: 'blasted-last-week',
		rule: 'overdue-starts-again',
		from: 1,
		title: { en: 'Blasted before the weekend', es: 'Granalladas antes del fin de semana' },
		weave: (job, random) => ({ ...job, blastedAgo: random.pick([hours(20), hours(62), days(4)]) }),
		overlooked: () => ({ 'overdue-action': chose('wipe') })
	},
	{
		id: 'cast-pores',
		rule: 'bake-out-time',
		from: 2,
		title: { en: 'A casting with pores and no time', es: 'Una fundición con poros y sin tiempo' },
		weave: (job) => (materialOf(job) === 'aluminium-casting' ? withPart(job, { porous: true }) : undefined),
		overlooked: () => ({ 'bake-out-time': typed(minutes(5)) })
	},
	{
		id: 'residue-once-more',
		rule: 'residue-repeats-loop',
		from: 2,
		title: { en: 'Oil bleeds out after the bake-out', es: 'Sale aceite después del desgasificado' },
		weave: (job, random) =>
			job.parts[0]!.porous ? { ...job, residueLoops: random.integer(1, 5) } : undefined,
		overlooked: () => ({ 'residue-action': chose('coat') })
	},
	{
		id: 'blind-hole-up',
		rule: 'blind-hole-down',
		from: 1,
		title: { en: 'A blind hole on the rack', es: 'Un agujero ciego en el bastidor' },
		weave: (job) => withPart(job, { blindHole: true }),
		overlooked: () => ({ 'rack-hole': chose('any') })
	}
];
