import { addDays, type IsoDate } from './calendar';
import type { Scheme } from './scheme';

export type Retest =
	| { readonly may: true; readonly sitting: number }
	| {
			readonly may: false;
			/** `new-application`: the retests are used up and a lead has to admit the person anew. */
			readonly waitsFor: readonly ('days' | 'lessons' | 'new-application')[];
			/** First day on which the waiting time is over. */
			readonly from: IsoDate;
	  };

/**
 * May a person begin a proving run in one competency today.
 * @param history.failedOn days of the failed verdicts since the person's last application, in order
 * @param history.lessonsRedoneOn days on which the competency's lesson sections were completed anew, in any order
 */
export function retest(
	limits: Scheme['retest'],
	history: { readonly failedOn: readonly IsoDate[]; readonly lessonsRedoneOn: readonly IsoDate[] },
	today: IsoDate
): Retest {
	const failed = history.failedOn.length;
	const last = history.failedOn.at(-1);
	if (last === undefined) return { may: true, sitting: 1 };

	if (failed > limits.most)
		return {
			may: false,
			waitsFor: ['new-application'],
			from: addDays(last, limits.newApplicationDays)
		};

	const from = addDays(last, limits.daysApart);
	const waitsFor: ('days' | 'lessons')[] = [];
	if (today < from) waitsFor.push('days');
	if (!history.lessonsRedoneOn.some((day) => day >= last)) waitsFor.push('lessons');
	return waitsFor.length === 0 ? { may: true, sitting: failed + 1 } : { may: false, waitsFor, from };
}
