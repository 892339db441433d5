import {
	fraction,
	heatDepth,
	kelvin,
	metres,
	plannedField,
	shopValue,
	thermal,
	wallHeatUp,
	type Demand,
	type FieldId,
	type Kelvin,
	type Part,
	type Plan,
	type Shop,
	type Traced
} from '$lib/engine';
import type { Random } from '../../random';
import type { DrillTicket } from '../kind';
import { limitsOf } from '../limits-of';

/** A wall as the heat formulas take it. */
export type Wall = Omit<Parameters<typeof wallHeatUp.at>[0], 'start' | 'air' | 'target'>;

/** A limit of both sides, strictest first, with what the plan demands. */
export type Window = { readonly low: Traced; readonly high: Traced };

/** One oven load: what is in it, what its data sheet asks, and how the oven is set. Invented save for the ticket. */
export type Load = {
	readonly start: Kelvin;
	/** Air the oven runs at. */
	readonly oven: Kelvin;
	/** Slowest place of the load, in its core, and quickest, at its face. */
	readonly heaviest: Wall;
	readonly thinnest: Wall;
	/** Part temperature and time in it. */
	readonly cure: Window;
	readonly hold: Window;
	/** Top of the sheet's own window; the strictest limit may lie below it. */
	readonly sheetTop: Traced;
	/** Demands of the ticket's plan by rule. */
	readonly demand: (rule: string) => Demand | undefined;
};

function windowOn(plan: Plan, id: FieldId): Window | undefined {
	const { low, high } = limitsOf(plannedField(plan, id)?.demands ?? []);
	return low && high && low.at.value < high.at.value ? { low: low.at, high: high.at } : undefined;
}

function wallOf(part: Part, shop: Shop): Wall | undefined {
	if (part.material === 'unknown') return undefined;
	const { density, heat, conductivity } = thermal(part.material);
	return {
		density: density.value,
		heat: heat.value,
		conductivity: conductivity.value,
		depth: metres(heatDepth(part)),
		heatTransfer: shopValue(shop, 'cure.heat-transfer').value
	};
}

/** The load of a ticket; undefined where its plan states no window on both sides or a material is not known. */
export function loadOf({ job, plan, shop }: DrillTicket, random: Random): Load | undefined {
	const [cure, hold] = [windowOn(plan, 'cure-temperature'), windowOn(plan, 'cure-hold')];
	const demand = (rule: string) =>
		plan.fields.flatMap(({ demands }) => demands).find((one) => one.rule === rule);
	const sheet = demand('cure-part-temperature')?.expectation;
	const walls = job.parts.map((part) => wallOf(part, shop)).filter((wall) => wall !== undefined);
	if (!cure || !hold || sheet?.kind !== 'range' || walls.length < job.parts.length) return undefined;
	const [low, high] = [cure.low.value, cure.high.value];
	const start = job.weather.part;
	const oven = kelvin(low + random.between(0.55, 0.8, 0.05) * (high - low));
	if (start >= low) return undefined;
	const heatUp = (wall: Wall) => wallHeatUp.at({ ...wall, start, air: oven, target: kelvin(low) });
	const byTime = walls.toSorted((one, other) => heatUp(one) - heatUp(other));
	// an edge is heated from three sides
	const edge = fraction(random.between(0.35, 0.6, 0.05));
	const quickest = byTime[0]!;
	return {
		start,
		oven,
		heaviest: byTime.at(-1)!,
		thinnest: { ...quickest, depth: metres(quickest.depth * edge) },
		cure,
		hold,
		sheetTop: sheet.max,
		demand
	};
}
