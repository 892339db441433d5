import { millilitresPerMinute, millimetres, metresPerSecond, percent } from '../../units/construct';
import type {
	CubicMetrePerSecond,
	Count,
	Dimension,
	Fraction,
	Metre,
	MetrePerSecond
} from '../../units/dimension';
import { SAME } from '../../units/same';

/** How a gun is set, in SI. All but the fluid flow are fields of the set-up sheet. */
export type GunSettings = {
	readonly 'gun-distance': Metre;
	readonly 'fan-width': Metre;
	readonly overlap: Fraction;
	readonly 'gun-speed': MetrePerSecond;
	readonly coats: Count;
	/** Paint through the tip. */
	readonly flow: CubicMetrePerSecond;
};

export type GunControlId = keyof GunSettings;

type GunControl = { readonly dimension: Dimension; readonly least: number; readonly most: number };

/**
 * How far each control of the bench goes, SI: past the windows of a shop on both sides, so that wrong can be set, and
 * within what the laws of the fan hold for. The reach of a control, not a fact of the trade.
 */
export const GUN_CONTROLS: Readonly<Record<GunControlId, GunControl>> = {
	'gun-distance': { dimension: 'length', least: millimetres(50), most: millimetres(300) },
	'fan-width': { dimension: 'length', least: millimetres(25), most: millimetres(200) },
	overlap: { dimension: 'fraction', least: percent(0), most: percent(80) },
	'gun-speed': { dimension: 'speed', least: metresPerSecond(0.05), most: metresPerSecond(1) },
	coats: { dimension: 'count', least: 1, most: 6 },
	flow: { dimension: 'flow', least: millilitresPerMinute(10), most: millilitresPerMinute(300) }
};

export const GUN_CONTROL_IDS = Object.keys(GUN_CONTROLS) as readonly GunControlId[];

/** The first control that would have to go further than it does; undefined where all can be set. */
export const beyondReach = (settings: GunSettings): GunControlId | undefined =>
	GUN_CONTROL_IDS.find((id) => {
		const { least, most } = GUN_CONTROLS[id];
		const room = SAME * most;
		return !(settings[id] >= least - room && settings[id] <= most + room);
	});
