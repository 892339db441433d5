import type { Conditions } from '$lib/drills';
import type { Job } from '$lib/engine';
import type { App } from '../app';
import { canBe, READING_IDS, readConditions } from '../incidents/conditions';

/** The conditions of the job an incident was on, as far as anybody wrote them down. */
export function conditionsAgain({ journal }: Pick<App, 'journal'>, id: string): Conditions {
	const incident = journal.state.incidents.get(id);
	if (!incident) throw new Error(`a run names the incident ${id}, which is not in the record`);
	const { material, coating, ...known } = readConditions(incident.conditions);
	const readings = READING_IDS.flatMap((reading) => {
		const value = known[reading];
		return value !== null && canBe(reading, value) ? [[reading, value]] : [];
	});
	return { material, coating, weather: Object.fromEntries(readings) as Partial<Job['weather']> };
}
