import type { EventData } from '../event';
import { foldOf } from '../fold';

export type Practical = EventData<'practical.recorded'> & { readonly recordedAt: string };

export type PracticalsState = Map<string, Practical>;

export const practicalsFold = foldOf<PracticalsState>(() => new Map(), {
	'practical.recorded': (practicals, data, { at }) => {
		practicals.set(data.practical, { ...data, recordedAt: at });
	}
});
