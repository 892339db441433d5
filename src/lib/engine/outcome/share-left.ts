import type { DefectId } from '../defects/defects';
import type { Degree } from './degree';
import type { OutcomeDefect, Standing } from './outcome';
import { AS_WANTED } from './standing';
import { TEACHING } from './teaching';

const LEFT: Readonly<Record<Degree, number>> = {
	1: TEACHING.leftWhenSlight.value,
	2: TEACHING.leftWhenClear.value,
	3: TEACHING.leftWhenSevere.value
};

/** What these defects leave of a property: 1 where there are none, less with every one and with its severity. */
export function shareLeft(
	defects: readonly OutcomeDefect[],
	takenBy: ReadonlySet<DefectId>
): Standing & { readonly index: number } {
	const taking = defects.filter(({ defect }) => takenBy.has(defect));
	const [worst] = taking;
	if (!worst) return { ...AS_WANTED, index: 1 };
	return {
		degree: worst.severity,
		side: 'low',
		index: taking.reduce((left, { severity }) => left * LEFT[severity], 1)
	};
}
