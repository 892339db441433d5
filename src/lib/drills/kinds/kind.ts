import type { Answers, FieldId, Job, Plan, PlannedField, Shop, Skill, Text } from '$lib/engine';
import type { Random } from '../random';
import type { DrillStep } from '../step';

/** What a short drill makes of a ticket. */
export type MadeDrill = {
	/** Everything it asks, in the order of its steps. */
	readonly fields: readonly PlannedField[];
	readonly steps: readonly DrillStep[];
	/** What stands in the fields when the drill is issued. */
	readonly filled?: Answers;
};

/** A job that can be started, with its whole plan. */
export type DrillTicket = { readonly job: Job; readonly plan: Plan; readonly shop: Shop };

/** A short drill: one sort of choice on a ticket, a few minutes of practice. */
export type DrillKind = {
	readonly id: string;
	readonly title: Text;
	readonly about: Text;
	/** What it trains first. */
	readonly skill: Skill;
	/** Fields it asks, where the ticket calls for them. */
	readonly asks: readonly FieldId[];
	/** A ticket suits only where it calls for all of these. */
	readonly needs: readonly FieldId[];
	/** What checking a page tells: each finding, or only how many lines are wrong, where finding them is the drill. */
	readonly tells?: 'findings' | 'count';
	/** Questions of its own; undefined where the ticket does not suit. Without it, `asks` of the ticket's plan are asked. */
	make?(ticket: DrillTicket, random: Random): MadeDrill | undefined;
};
