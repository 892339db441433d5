/** Two stages over all proving drills of a person in order; a drill is a miss when it had a safety stop. */
export type SafetyPlan = {
	/** Drills without a miss that pass. */
	readonly cleanRun: number;
	/** Drills with exactly one miss that pass; above cleanRun. */
	readonly oneMissRun: number;
	/** How often the gate may begin again after the safety lessons, before a new application is needed. */
	readonly restarts: number;
};

export type SafetyStep = 'clear' | 'miss' | 'lessons-redone' | 'new-application';

export type SafetyStanding = {
	/** `stopped` waits for the safety lessons to be done again, `closed` for a new application. */
	readonly state: 'open' | 'passed' | 'stopped' | 'closed';
	/** Drills and misses of the present try. */
	readonly drills: number;
	readonly misses: number;
	readonly restartsUsed: number;
	/** Misses in drills after the pass: the pass stands, and whoever signs sees them. */
	readonly missesSincePass: number;
};

/** The state of one try after so many drills and misses. */
export function tryState(plan: SafetyPlan, drills: number, misses: number): 'open' | 'passed' | 'stopped' {
	if (misses > 1) return 'stopped';
	return drills >= (misses === 0 ? plan.cleanRun : plan.oneMissRun) ? 'passed' : 'open';
}

const opening: SafetyStanding = { state: 'open', drills: 0, misses: 0, restartsUsed: 0, missesSincePass: 0 };

function step(plan: SafetyPlan, now: SafetyStanding, what: SafetyStep): SafetyStanding {
	if (what === 'new-application') return opening;
	if (what === 'lessons-redone')
		// Doing the lessons again while a try is open must not wipe out its one miss.
		return now.state === 'stopped' ? { ...opening, restartsUsed: now.restartsUsed + 1 } : now;
	if (now.state === 'passed')
		return what === 'miss' ? { ...now, missesSincePass: now.missesSincePass + 1 } : now;
	if (now.state !== 'open') return now;

	const drills = now.drills + 1;
	const misses = now.misses + (what === 'miss' ? 1 : 0);
	const state = tryState(plan, drills, misses);
	const closed = state === 'stopped' && now.restartsUsed >= plan.restarts;
	return { ...now, state: closed ? 'closed' : state, drills, misses };
}

/** Where a person stands at the safety gate. Drills handed in while it is stopped or closed do not count. */
export const safetyGate = (plan: SafetyPlan, steps: readonly SafetyStep[]): SafetyStanding =>
	steps.reduce((now, what) => step(plan, now, what), opening);
