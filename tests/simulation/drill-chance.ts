import { field, type Competency } from '../../src/lib/engine/index';
import type { ProvingDrill } from '../../src/lib/drills/index';
import type { Learner } from './proving-learners';

/** A rule a drill asks; broken, it makes the drill wrong or it does not. */
export type AskedRule = { readonly rule: string; readonly counts: boolean };

/** The most rules whose outcomes are counted one by one: 2^12 of them. */
export const COUNTED = 12;

/**
 * The distinct rules of a drill. A drill is right when every asked field of its competency is right and no safety stop
 * occurred, so what else is broken on other fields does not count.
 */
export function askedRules({ plan, asked }: ProvingDrill, competency: Competency): AskedRule[] {
	const rules = new Map<string, boolean>();
	for (const { field: id, demands } of plan.fields) {
		if (!asked.includes(id)) continue;
		const own = field(id).competency === competency;
		for (const { rule, severity } of demands)
			rules.set(rule, (rules.get(rule) ?? false) || own || severity === 'safety-stop');
	}
	return [...rules].map(([rule, counts]) => ({ rule, counts }));
}

export const isRight = (
	rules: readonly AskedRule[],
	broken: (rule: string, at: number) => boolean
): boolean => !rules.some(({ rule, counts }, at) => broken(rule, at) && counts);

/** Adds up the chances of all outcomes, each rule kept or broken, that leave the drill right. */
export function chanceByCounting(rules: readonly AskedRule[], { keeps }: Learner): number {
	if (rules.length > COUNTED) throw new RangeError(`${rules.length} rules are too many to count`);
	let right = 0;
	for (let outcome = 0; outcome < 2 ** rules.length; outcome += 1) {
		const broken = (_rule: string, at: number) => ((outcome >> at) & 1) === 1;
		if (!isRight(rules, broken)) continue;
		right += rules.reduce(
			(chance, { rule }, at) => chance * (broken(rule, at) ? 1 - keeps(rule) : keeps(rule)),
			1
		);
	}
	return right;
}

/** The same where rules are kept independently of each other: all that count must be kept. */
export const chanceByProduct = (rules: readonly AskedRule[], { keeps }: Learner): number =>
	rules.reduce((chance, { rule, counts }) => (counts ? chance * keeps(rule) : chance), 1);

/** Chance that this learner gets the drill right; counted where that can be, and held against the product. */
export function chanceOfRight(rules: readonly AskedRule[], learner: Learner): number {
	const product = chanceByProduct(rules, learner);
	if (rules.length > COUNTED) return product;
	const counted = chanceByCounting(rules, learner);
	if (Math.abs(counted - product) > 1e-9) throw new Error(`counted ${counted}, multiplied ${product}`);
	return counted;
}
