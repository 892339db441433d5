import { terms, type Lang } from '$lib/i18n';
import { competencies, type CompetencyId } from '$lib/learning';
import { certification, type Certification } from '$lib/records';
import type { App } from '../app';
import { momentOf } from './moment';

/** One competency of a person with everything the record says about it now. */
export type Area = {
	readonly id: CompetencyId;
	/** In the reader's language. */
	readonly name: string;
	readonly certification: Certification;
};

/** The six competencies of a person, in the order a part meets them. */
export function areasOf(app: App, person: string, lang: Lang): Area[] {
	const moment = momentOf(app);
	return competencies.map(({ id }) => ({
		id,
		name: terms[lang].station[id],
		certification: certification(app.journal.state, person, id, moment)
	}));
}
