import { fahrenheit, minutes, millimetres, si, type Part } from '$lib/engine';
import type { Trap } from '../trap';
import { chose, ticked, typed } from './answers';

/** The same sort of part, five times as thick and heavy. */
const thick = (part: Part): Part => ({
	...part,
	name: { en: `thick ${part.name.en}`, es: `${part.name.es} gruesa` },
	thickness: millimetres(Math.min(part.thickness * 1e3 * 8, 60)),
	width: millimetres(Math.max(part.width * 1e3, Math.min(part.thickness * 1e3 * 8, 60) * 2.5)),
	mass: (part.mass * 8) as Part['mass']
});

export const curingTraps: readonly Trap[] = [
	{
		id: 'thin-and-thick',
		rule: 'unlike-parts-split',
		from: 3,
		title: { en: 'Thin and thick parts on one ticket', es: 'Piezas delgadas y gruesas en una orden' },
		weave: (job) => {
			const part = job.parts[0]!;
			return part.shape === 'plate' || part.shape === 'bracket' || part.shape === 'box'
				? { ...job, parts: [part, thick(part)] }
				: undefined;
		},
		overlooked: () => ({ 'mixed-rack': chose('together') })
	},
	{
		id: 'oven-in-fahrenheit',
		rule: 'cure-part-temperature',
		from: 2,
		title: { en: 'A sheet in °C and an oven in °F', es: 'Una hoja en °C y un horno en °F' },
		weave: (job) => ({ ...job, bench: { ...job.bench, ovenUnit: '°F' } }),
		overlooked(plan) {
			const right = plan.fields.find(({ field }) => field === 'cure-temperature')?.answer;
			return right?.kind === 'quantity'
				? { 'cure-temperature': typed(fahrenheit(right.value - 273.15)) }
				: {};
		}
	},
	{
		id: 'late-job',
		rule: 'flash-time',
		from: 1,
		title: { en: 'The job is late', es: 'El trabajo va tarde' },
		weave: (job) => job,
		overlooked: () => ({ 'flash-time': typed(minutes(2)) })
	},
	{
		id: 'display-at-temperature',
		rule: 'clock-starts-on-part',
		from: 1,
		title: { en: 'The display has reached the temperature', es: 'La pantalla llegó a la temperatura' },
		weave: (job) => job,
		overlooked: () => ({ 'clock-starts': chose('air') })
	},
	{
		id: 'probe-on-the-tab',
		rule: 'probe-heaviest-and-thinnest',
		from: 2,
		title: {
			en: 'The thermocouple is easiest to clip to the rack',
			es: 'Lo fácil es sujetar el termopar al bastidor'
		},
		weave: (job) => job,
		overlooked: () => ({ 'probe-places': ticked('rack-wire') })
	},
	{
		id: 'twice-the-racks',
		rule: 'oven-solvent-load',
		from: 2,
		title: { en: 'Twice the usual racks', es: 'El doble de bastidores' },
		weave: (job) => job,
		overlooked(plan) {
			const right = plan.fields.find(({ field }) => field === 'oven-wet-volume')?.answer;
			return right?.kind === 'quantity' ? { 'oven-wet-volume': typed(si(right.value * 2)) } : {};
		}
	}
];
