import type { Direction } from '../defects/causes';
import { DEFECTS, type DefectId } from '../defects/defects';
import type { Broken } from './broken';
import type { Degree } from './degree';
import type { OutcomeDefect } from './outcome';

type Cause = { readonly broken: Broken; readonly direction: Direction };

/** The worst of its causes; one worse where two meet that are independent, which is to say of different fields. */
function severityOf(causes: readonly Cause[]): Degree {
	const worst = Math.max(...causes.map(({ broken }) => broken.degree));
	const independent = new Set(causes.map(({ broken }) => broken.field)).size > 1;
	return Math.min(3, worst + (independent ? 1 : 0)) as Degree;
}

function causesIn(broken: readonly Broken[], defect: DefectId): readonly Cause[] {
	return broken.flatMap((one) =>
		one.directions
			.filter((direction) => one.rule.breaks[direction]?.includes(defect))
			.map((direction) => ({ broken: one, direction }))
	);
}

/** What the broken rules say comes out, worst first and else in the order of the catalogue. */
export const defectsFrom = (broken: readonly Broken[]): readonly OutcomeDefect[] =>
	(Object.keys(DEFECTS) as DefectId[])
		.map((defect) => ({ defect, causes: causesIn(broken, defect) }))
		.filter(({ causes }) => causes.length > 0)
		.map(({ defect, causes }) => ({
			defect,
			severity: severityOf(causes),
			from: causes.map(({ broken: { rule }, direction }) => ({ rule: rule.id, direction }))
		}))
		.toSorted((one, other) => other.severity - one.severity);
