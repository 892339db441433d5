import { drillKind } from '$lib/drills';
import { grade, STATION_NAMES, type Finding } from '$lib/engine';
import { say } from '$lib/i18n';
import { fieldView, type Reader } from '$lib/paper';
import { answersIn } from './answers';
import { askedNow, offeredIn, stepInHand, type PracticeDraft } from './draft';
import { figureViews } from './figure-views';
import { givenView } from './given-view';
import { hintView } from './hint-view';
import { taughtFinding } from './taught-finding';

const worst = (findings: readonly Finding[]) =>
	findings.find(({ severity }) => severity === 'safety-stop') ??
	findings.find(({ zone }) => zone === 'red') ??
	findings[0];

const place = (index: number, at: number): 'done' | 'current' | 'open' =>
	index < at ? 'done' : index === at ? 'current' : 'open';

/** The page in hand: what is looked at, its fields with what was put in, what a check found, hints as far as opened. */
export function stepView(draft: PracticeDraft, reader: Reader) {
	const { station, fields } = stepInHand(draft);
	const asked = askedNow(draft);
	const offered = offeredIn(draft);
	const { all, breaches } = grade(draft.plan, answersIn(draft.entries), asked);
	const checked = draft.checked.includes(draft.at);
	const tells = checked && drillKind(draft.part)?.tells !== 'count';
	const findingOf = (id: string) => {
		const ofField = all.filter(({ field }) => field === id);
		return worst(ofField.filter(({ zone }) => zone !== 'green')) ?? ofField[0];
	};
	return {
		station,
		last: draft.at === draft.steps.length - 1,
		checked,
		outside: new Set(breaches.map(({ field }) => field)).size,
		line: draft.steps.map((step, index) => ({
			id: `${index}-${step.station}`,
			label: say(STATION_NAMES[step.station], reader.lang),
			place: place(index, draft.at)
		})),
		figures: figureViews(draft, reader),
		given: fields.filter((id) => !asked.includes(id)).map((id) => givenView(draft, id, reader)),
		fields: asked.map((id) => {
			const finding = tells && findingOf(id);
			return {
				field: {
					...fieldView(id, draft.entries[id] ?? {}, reader, offered[id]),
					...(finding ? { finding: taughtFinding(finding, draft.seed, offered, reader) } : {})
				},
				hint: hintView(draft, id, reader)
			};
		})
	};
}
