import { biot } from './biot';
import { BODY, BODY_RANGE } from './lumped-body';
import { thermalDiffusivity } from './thermal-diffusivity';
import type {
	Conductivity,
	HeatTransfer,
	KilogramPerCubicMetre,
	Metre,
	SpecificHeat
} from '../../units/dimension';

/** What a plane wall is: `depth` is half its thickness where both faces are heated, all of it where one is insulated. */
export const WALL = { ...BODY, conductivity: 'conductivity' } as const;
export const WALL_RANGE: { [K in keyof typeof WALL]: [number, number] } = {
	...BODY_RANGE,
	conductivity: [0.01, 500]
};

export type Wall = {
	readonly density: KilogramPerCubicMetre;
	readonly heat: SpecificHeat;
	readonly depth: Metre;
	readonly heatTransfer: HeatTransfer;
	readonly conductivity: Conductivity;
};

/** Its Biot number, and the seconds in one Fourier number. */
export const scalesOf = (wall: Wall) => ({
	biot: biot.at(wall),
	seconds: wall.depth ** 2 / thermalDiffusivity.at(wall)
});
