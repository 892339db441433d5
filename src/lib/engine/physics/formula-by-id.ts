import { FORMULAS, type FormulaNote } from './formulas';

const byId = new Map(FORMULAS.map((formula) => [formula.id, formula]));

/** The formula of that id; an unknown one is a bug or a record of another engine version, so it throws. */
export function formulaById(id: string): FormulaNote {
	const formula = byId.get(id);
	if (!formula) throw new RangeError(`no formula '${id}' in this engine version`);
	return formula;
}
