import { BREADTHS, LARGEST_SEED, partSkill, PRACTICE_PARTS, type PracticePart } from '$lib/drills';
import { RULES, taughtIn, type Skill } from '$lib/engine';
import {
	drawnJob,
	estimate,
	nextJob,
	supportFor,
	type JobOffer,
	type NextJob,
	type PracticeState,
	type PractisedJob,
	type Support
} from '$lib/learning';
import type { Practice } from '$lib/records';
import type { App } from '../app';
import { workedSeen } from './worked-seen';

/** What is practised next. */
export type NextPractice = Omit<NextJob, 'part'> & { readonly part: PracticePart; readonly support: Support };

type Offer = JobOffer & { readonly part: PracticePart };

const OFFERS: readonly Offer[] = PRACTICE_PARTS.flatMap((part) => {
	const skill = partSkill(part);
	return skill ? BREADTHS.map((breadth) => ({ part, skill, breadth })) : [];
});

const partOf = (name: string) => PRACTICE_PARTS.find((part) => part === name);

/** Entries from before first checks were kept tell the kind of drill only, and what was left wrong in the end. */
function practised({ kind, level, rules, findings, first }: Practice): PractisedJob {
	const part = partOf(first?.part ?? kind);
	return {
		part: part ?? 'whole',
		breadth: BREADTHS.find((one) => one === level) ?? 1,
		skill: part && partSkill(part),
		rules,
		findings: first?.findings ?? findings
	};
}

const practiceState = ({ journal }: App, person: string): PracticeState =>
	estimate((journal.state.attempts.practice.get(person) ?? []).map(practised));

/** Skills that some rule trains; the others are taught by no single lesson. */
const RULED = new Set(RULES.map(({ skill }) => skill));

/** Offers for what the person's lessons taught so far, so that practice brings earlier ones back; all before the first. */
function offersFor({ journal }: App, person: string): readonly Offer[] {
	const done = journal.state.lessons.get(person);
	const taught = new Set<Skill>(RULES.filter((rule) => done?.has(taughtIn(rule))).map(({ skill }) => skill));
	return taught.size ? OFFERS.filter(({ skill }) => taught.has(skill) || !RULED.has(skill)) : OFFERS;
}

function helped(app: App, person: string, state: PracticeState, next: NextJob | undefined): NextPractice {
	const part = next && partOf(next.part);
	if (!next || !part) throw new Error('choose-next: nothing is offered to practise');
	const seen = workedSeen(app, person, next.skill);
	return { ...next, part, support: supportFor(state, next.skill, next.expected, seen) };
}

/** What suits the person best by what they did so far, and why. The same record gives the same choice. */
export function chooseNext(app: App, person: string): NextPractice {
	const state = practiceState(app, person);
	return helped(app, person, state, nextJob(state, offersFor(app, person), state.jobs));
}

/** Something drawn from all that is offered, but of another skill than the drill before. */
export function drawNext(app: App, person: string): NextPractice {
	const state = practiceState(app, person);
	return helped(app, person, state, drawnJob(state, offersFor(app, person), app.seed() & LARGEST_SEED));
}
