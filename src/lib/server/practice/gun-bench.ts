import { filmMap, rightAnswers, TEACHING_GUN, UNITS, type GunSettings, type Shop } from '$lib/engine';
import { filmMap as messages, say } from '$lib/i18n';
import {
	filmMapView,
	gunControlsView,
	gunInSheet,
	quantityText,
	readGun,
	type GunRead,
	type Reader
} from '$lib/paper';
import type { PracticeDraft } from './draft';

/** Whether the drill is one that the gun bench belongs to. */
export const hasGunBench = ({ part }: PracticeDraft): boolean => part === 'plan-the-passes';

function mapOf(settings: GunSettings, draft: PracticeDraft, shop: Shop, reader: Reader) {
	const map = filmMap(settings, { plan: draft.plan, job: draft.job, shop });
	return map
		? { map: filmMapView(map, reader), problem: null }
		: { map: null, problem: messages[reader.lang].noFilm };
}

/** What a gun set as the address says would lay, or which control cannot be set so. */
export function filmMapAnswer(draft: PracticeDraft, shop: Shop, reader: Reader, asked: URLSearchParams) {
	const read = readGun((id) => asked.get(id), reader);
	return read.ok
		? mapOf(read.settings, draft, shop, reader)
		: { map: null, control: read.control, problem: read.problem };
}

function shownOf(read: GunRead | undefined, draft: PracticeDraft, shop: Shop, reader: Reader) {
	const missing = (why: string) => ({ map: null, missing: why });
	if (!read) return missing(messages[reader.lang].fill);
	if (!read.ok) return missing(read.problem);
	const drawn = mapOf(read.settings, draft, shop, reader);
	return drawn.map ? { map: drawn.map, missing: null } : missing(drawn.problem);
}

/** What stands in the sheet: entries so far, and the fields that the drill itself filled in. */
function sheetOf({ plan, given, entries }: PracticeDraft) {
	const right = rightAnswers(plan);
	return { ...entries, ...Object.fromEntries(given.map((id) => [id, { answer: right[id] }])) };
}

/**
 * The gun bench beside the sheet: where its controls stand, and the film of what is in the sheet so far.
 * @param flow as typed at the bench; null where nothing was
 */
export function gunBenchView(draft: PracticeDraft, shop: Shop, reader: Reader, flow: string | null) {
	const { lang } = reader;
	const { set, read } = gunInSheet(sheetOf(draft), flow, reader);
	const words = messages[lang];
	return {
		address: `/${lang}/practice/${draft.attempt}/film-map`,
		controls: gunControlsView(set, draft.plan, reader),
		flow: {
			id: 'gun-flow',
			name: 'flow',
			kind: 'quantity' as const,
			label: words.control.flow,
			hint: words.flowHint,
			value: flow?.trim() || quantityText(TEACHING_GUN.flow.value, 'flow', reader),
			units: UNITS.flow.slice(0, 3).map((unit) => say(unit.label, lang))
		},
		...shownOf(read, draft, shop, reader)
	};
}
