import { safetyGate, type SafetyPlan, type SafetyStanding } from '$lib/learning';
import type { State } from '../state';

/**
 * Where a person stands at the safety gate. Passing takes a conclusion in the record: a plan that was made
 * shorter since passes nobody by itself, and one made longer takes no pass away.
 */
export function safetyStanding(state: State, person: string, plan: SafetyPlan): SafetyStanding {
	const record = state.safety.get(person);
	const gate = safetyGate(plan, record?.steps ?? []);
	if (record?.concluded?.verdict === 'passed') return { ...gate, state: 'passed' };
	return gate.state === 'passed' ? { ...gate, state: 'open' } : gate;
}
