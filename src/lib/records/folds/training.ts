import type { EventData } from '../event';
import { foldOf } from '../fold';

export interface TrainingStart {
	readonly how: EventData<'training.started'>['how'];
	readonly by: string;
	readonly at: string;
}

/** `person area` to the last time training was started in it. */
export type TrainingState = Map<string, TrainingStart>;

export const trainingKey = (person: string, area: string): string => `${person} ${area}`;

export const trainingFold = foldOf<TrainingState>(() => new Map(), {
	'training.started': (training, { person, areas, how }, { at, actor }) => {
		for (const area of areas) training.set(trainingKey(person, area), { how, by: actor, at });
	}
});
