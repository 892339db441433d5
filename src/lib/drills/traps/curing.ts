import { fahrenheit, millimetres, minutes, plannedField, si, type Part } from '$lib/engine';
import type { Trap } from '../trap';
import { massOf } from '../world/part';
import { chose, ticked, typed } from './answers';

const TIMES = 8;
const THICKEST = 60;

/** The same sort of part with a wall many times as thick. */
function thick(part: Part): Part {
	const thickness = Math.min(part.thickness * 1e3 * TIMES, THICKEST);
	const width = Math.max(part.width * 1e3, thickness * 2.5);
	const length = Math.max(part.length * 1e3, thickness * 2.5);
	const height = part.shape === 'plate' ? thickness : Math.max(part.height * 1e3, thickness * 1.2);
	const material = part.material === 'unknown' ? 'carbon-steel' : part.material;
	return {
		...part,
		name: { en: `thick ${part.name.en}`, es: `${part.name.es} gruesa` },
		length: millimetres(length),
		width: millimetres(width),
		height: millimetres(height),
		thickness: millimetres(thickness),
		mass: massOf(part.shape, material, [length, width, height, thickness])
	};
}

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
		id: 'wall-like-a-block',
		rule: 'heat-up-before-soak',
		from: 2,
		title: {
			en: 'A wall many times as thick as usual',
			es: 'Una pared varias veces más gruesa de lo usual'
		},
		weave: (job) => {
			const part = job.parts[0]!;
			return job.parts.length === 1 && part.shape === 'plate' ? { ...job, parts: [thick(part)] } : undefined;
		},
		overlooked(plan) {
			const right = plannedField(plan, 'heat-up')?.answer;
			return right?.kind === 'quantity' ? { 'heat-up': typed(si(right.value / TIMES)) } : {};
		}
	},
	{
		id: 'oven-in-fahrenheit',
		rule: 'cure-part-temperature',
		from: 2,
		title: { en: 'A sheet in °C and an oven in °F', es: 'Una hoja en °C y un horno en °F' },
		weave: (job) => ({ ...job, bench: { ...job.bench, ovenUnit: '°F' } }),
		overlooked(plan) {
			const right = plannedField(plan, 'cure-temperature')?.answer;
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
			const right = plannedField(plan, 'oven-wet-volume')?.answer;
			return right?.kind === 'quantity' ? { 'oven-wet-volume': typed(si(right.value * 2)) } : {};
		}
	}
];
