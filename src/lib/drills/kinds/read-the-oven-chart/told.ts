import { kelvin, wallHeatUp, type PlannedField } from '$lib/engine';
import type { OvenChart } from '../../figures/oven-chart';
import { asked } from './asked';
import { decided } from './decided';
import { heating, type Draws, type Heating } from './heating';
import type { Load } from './load';
import { FEWEST_SAMPLES, MOST_SAMPLES, PACES, type Pace } from './pace';
import { recorder, type Recorder } from './recorder';
import { soakOf, type Run, type Soak } from './soak';
import type { Story } from './stories';

export type Told = { readonly figure: OvenChart; readonly fields: readonly PlannedField[] };

/** How many times the reading tolerance a trap has to lie away from what is right. */
const APART = 2;

/** Whether air, thinnest place and heaviest place come into the window so far apart that mistaking them shows. */
const apart = ({ airIn, thinnestIn, bothIn }: Heating, { every, tolerance }: Pace) =>
	(bothIn - airIn) * every >= APART * tolerance && (bothIn - thinnestIn) * every > tolerance;

/** Whether the soak ends with the door, or so long before it that the two are not taken for one. */
function endTells({ stretch }: Soak, { doorOpen }: Run, { tolerance }: Pace) {
	const before = stretch ? doorOpen.at(-1)!.from - stretch.ends : 0;
	return before === 0 || before >= APART * tolerance;
}

const figureOf = (
	{ every, air, heaviest, thinnest, doorOpen }: Run,
	unit: OvenChart['unit'],
	pace: Pace
): OvenChart => ({
	kind: 'oven-chart',
	unit,
	every,
	division: pace.division,
	air,
	heaviest,
	thinnest,
	doorOpen
});

function atPace(recorder: Recorder, draws: Draws, story: Story, unit: OvenChart['unit']): Told | undefined {
	const { load, pace } = recorder;
	const way = heating(recorder, draws, MOST_SAMPLES);
	if (!way || !apart(way, pace)) return undefined;
	const run = story.run(recorder, draws, way);
	if (!run || run.air.length < FEWEST_SAMPLES) return undefined;
	const soak = soakOf(run, load);
	if (decided(load, soak, pace) !== story.verdict || !endTells(soak, run, pace)) return undefined;
	return { figure: figureOf(run, unit, pace), fields: asked(load, pace, soak, story) };
}

/** Recorders on whose chart this load can heat up, quickest first. */
export function recordersFor(load: Load): readonly Recorder[] {
	const { heaviest, start, oven, cure } = load;
	const heatUp = wallHeatUp.at({ ...heaviest, start, air: oven, target: kelvin(cure.low.value) });
	return PACES.filter(({ every }) => heatUp < MOST_SAMPLES * every).map((pace) => recorder(load, pace));
}

/** A story told on the first of these recorders that shows it clearly; undefined where none does. */
export function told(
	recorders: readonly Recorder[],
	draws: Draws,
	story: Story,
	unit: OvenChart['unit']
): Told | undefined {
	for (const one of recorders) {
		const found = atPace(one, draws, story, unit);
		if (found) return found;
	}
	return undefined;
}
