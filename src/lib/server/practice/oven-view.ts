import { ovenOutcome, type Shop } from '$lib/engine';
import { outcomeView, pictureView, type Reader } from '$lib/paper';
import { VIEWS } from '$lib/pictures';
import { answersIn } from './answers';
import { askedIn, type PracticeDraft } from './draft';

/** What would come out of the oven from a practice drill as it was handed in, with pictures of its defects. */
export function ovenView({ plan, job, entries, seed, ...draft }: PracticeDraft, shop: Shop, reader: Reader) {
	const made = ovenOutcome(plan, answersIn(entries), job, shop, askedIn(draft));
	const outcome = outcomeView(made, reader);
	return {
		outcome,
		pictures: Object.fromEntries(
			outcome.defects.map(({ defect, severity }) => [
				defect,
				VIEWS.map((view) => pictureView({ defect, severity, seed }, view, reader.lang))
			])
		)
	};
}
