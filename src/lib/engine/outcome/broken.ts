import type { Direction } from '../defects/causes';
import { isThisWay } from '../defects/fit';
import type { Answer } from '../grading/answer';
import type { Breached } from '../grading/breached';
import { measure } from '../grading/measure';
import { ruleById } from '../rules';
import { limits } from '../rules/expectation';
import type { Rule } from '../rules/rule';
import { field, type FieldId } from '../setup/fields';
import { degreeOf, type Degree } from './degree';
import type { PutIn } from './put-in';

/** A rule that what was set breaks. */
export type Broken = {
	readonly field: FieldId;
	readonly rule: Rule;
	/** Which way it is off. */
	readonly off: Direction;
	/** The ways of the rule's `breaks` that this is. */
	readonly directions: readonly Direction[];
	readonly degree: Degree;
};

function degreeOfBreach({ field: id, demand }: Breached, off: Direction, beyond: number): Degree {
	if (demand.severity === 'safety-stop') return 3;
	const [spec, window] = [field(id), limits(demand.expectation)];
	// an option is right or wrong: there is no near and far
	if (spec.kind !== 'quantity' || !window) return 2;
	const limit = off === 'low' ? window.min : window.max;
	return degreeOf({ beyond, limit, amber: window.amber, dimension: spec.dimension });
}

function brokenBy(breach: Breached, answer: Answer): Broken {
	const rule = ruleById(breach.demand.rule);
	const { off, beyond } = measure(answer, breach.demand.expectation);
	if (off === null) throw new Error(`broken: ${rule.id} is breached but not off`);
	const named = Object.keys(rule.breaks) as Direction[];
	return {
		field: breach.field,
		rule,
		off,
		directions: named.filter((direction) => isThisWay(rule, off, direction)),
		degree: degreeOfBreach(breach, off, beyond)
	};
}

/** Every rule broken by an answer, in working order. A field left empty breaks nothing here: nothing was done. */
export const brokenRules = (breaches: readonly Breached[], { answers }: PutIn): readonly Broken[] =>
	breaches.flatMap((breach) => {
		const answer = answers[breach.field];
		return answer ? [brokenBy(breach, answer)] : [];
	});
