import { cite } from '../../sources/provenance';
import type {
	Conductivity,
	HeatTransfer,
	Kelvin,
	KilogramPerCubicMetre,
	Metre,
	Second,
	SpecificHeat
} from '../../units/dimension';
import { heatModel } from './heat-model';
import { heatUpTime } from './heat-up-time';
import { PATH_RANGE, TEMPERATURE } from './lumped-body';
import { defineProcedure } from '../procedure';
import { scalesOf, WALL_RANGE, type Wall } from './wall-body';
import { wallHeatUp } from './wall-heat-up';
import { fourierUntil } from './wall-series';

type Rack = {
	densities: readonly KilogramPerCubicMetre[];
	heats: readonly SpecificHeat[];
	conductivities: readonly Conductivity[];
	depths: readonly Metre[];
	/** Hottest each part may get itself. */
	limits: readonly Kelvin[];
	heatTransfer: HeatTransfer;
	start: Kelvin;
	air: Kelvin;
	/** Where the cure begins to count. */
	target: Kelvin;
	/** Hottest the cure may get. */
	top: Kelvin;
	hold: Second;
};

export type RackHeatUp = {
	/** When the slowest spot of each part is at the cure temperature, and when its face passes its limit or the top. */
	readonly parts: readonly { readonly reached: number; readonly over: number | null }[];
	/** Place in the list. */
	readonly lastToSoak: number;
	readonly firstOver: number | null;
	/** When the last part has had its hold. */
	readonly soaked: number;
	/** Whether no part is over before that. */
	readonly oneClock: boolean;
};

type Path = Pick<Rack, 'start' | 'air'>;

/** When the face of a wall passes a limit: at once where it is hot already, never where the air is no hotter. */
function faceOver(wall: Wall, limit: Kelvin, { start, air }: Path): number | null {
	if (limit >= air) return null;
	if (limit <= start) return 0;
	if (heatModel.at(wall).model === 'lumped') return heatUpTime.at({ ...wall, start, air, target: limit });
	const { biot, seconds } = scalesOf(wall);
	return fourierUntil(biot, (air - limit) / (air - start), 1) * seconds;
}

/**
 * Unlike parts in one oven whose walls are as hot as its air: which soaks last, which is too hot first, and whether one
 * clock can serve all. An estimate for deciding how to load; the thermocouples decide the cure. Throws a RangeError
 * where the lists differ in length or the air is not hotter than the target.
 */
export const rackHeatUp = defineProcedure<Rack, RackHeatUp>({
	id: 'rack-heat-up',
	title: { en: 'Heat-up of a rack of unlike parts', es: 'Calentamiento de un bastidor con piezas distintas' },
	equation: 'one clock while max t(cure) + hold ≤ min t(over)',
	source: cite('holman-heat', 'ch. 4', { read: 'as worked in examples 4-1 and 4-6' }, 'handbook'),
	inputs: {
		densities: 'density',
		heats: 'specific-heat',
		conductivities: 'conductivity',
		depths: 'length',
		limits: 'temperature',
		heatTransfer: 'heat-transfer',
		start: 'temperature',
		air: 'temperature',
		target: 'temperature',
		top: 'temperature',
		hold: 'duration'
	},
	validFor: {
		densities: WALL_RANGE.density,
		heats: WALL_RANGE.heat,
		conductivities: WALL_RANGE.conductivity,
		depths: WALL_RANGE.depth,
		limits: TEMPERATURE,
		heatTransfer: WALL_RANGE.heatTransfer,
		...PATH_RANGE,
		top: TEMPERATURE,
		hold: [0, 604_800]
	},
	compute({ densities, heats, conductivities, depths, limits, heatTransfer, target, top, hold, ...path }) {
		if ([heats, conductivities, depths, limits].some(({ length }) => length !== densities.length))
			throw new RangeError(
				'rack-heat-up: densities, heats, conductivities, depths and limits differ in length'
			);
		const parts = densities.map((density, at) => {
			const wall = {
				...{ density, heatTransfer },
				heat: heats[at]!,
				conductivity: conductivities[at]!,
				depth: depths[at]!
			};
			const limit = Math.min(limits[at]!, top) as Kelvin;
			return {
				reached: wallHeatUp.at({ ...wall, ...path, target }),
				over: faceOver(wall, limit, path)
			};
		});
		const last = parts.reduce((so, { reached }, at) => (reached > parts[so]!.reached ? at : so), 0);
		const over = parts.map((part) => part.over ?? Infinity);
		const soaked = parts[last]!.reached + hold;
		const first = Math.min(...over);
		return {
			parts,
			lastToSoak: last,
			firstOver: first < Infinity ? over.indexOf(first) : null,
			soaked,
			oneClock: soaked <= first
		};
	}
});
