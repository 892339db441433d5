import { ovenOutcome, type DefectId, type Degree, type Shop } from '$lib/engine';
import { say } from '$lib/i18n';
import { outcomeView, type Reader } from '$lib/paper';
import { describePicture, VIEWS } from '$lib/pictures';
import { answersIn } from './answers';
import { askedIn, type PracticeDraft } from './draft';

/** A defect in every way of looking at it: where its picture is, and what it shows for who cannot see it. */
const viewsOf = (defect: DefectId, severity: Degree, seed: number, reader: Reader) =>
	VIEWS.map((view) => {
		const asked = new URLSearchParams({ defect, severity: String(severity), seed: String(seed), view });
		return {
			view,
			src: `/${reader.lang}/practice/picture?${asked}`,
			shows: say(describePicture({ defect, severity, seed }, view), reader.lang)
		};
	});

/** What would come out of the oven from a practice drill as it was handed in, with pictures of its defects. */
export function ovenView(draft: PracticeDraft, shop: Shop, reader: Reader) {
	const { plan, job, entries } = draft;
	const made = ovenOutcome(plan, answersIn(entries), job, shop, askedIn(draft));
	const outcome = outcomeView(made, reader);
	// no wider than an address of a picture takes
	const seed = draft.seed % 1e9;
	return {
		outcome,
		pictures: Object.fromEntries(
			outcome.defects.map(({ defect, severity }) => [defect, viewsOf(defect, severity, seed, reader)])
		)
	};
}
