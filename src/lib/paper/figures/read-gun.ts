import {
	beyondReach,
	GUN_CONTROL_IDS,
	GUN_CONTROLS,
	parseQuantity,
	TEACHING_GUN,
	type FieldId,
	type GunControlId,
	type GunSettings
} from '$lib/engine';
import { filmMap as messages } from '$lib/i18n';
import { problemWords, type Entry } from '../field-view';
import { windowText } from '../quantity-text';
import type { Reader } from '../reader';

/** Settings that can be laid, or the control that stands against it and why in words. */
export type GunRead =
	| { readonly ok: true; readonly settings: GunSettings }
	| { readonly ok: false; readonly control: GunControlId; readonly problem: string };

function refuse(control: GunControlId, problem: string, { lang }: Reader): GunRead {
	const words = messages[lang];
	return { ok: false, control, problem: words.cannotRead(words.control[control], problem) };
}

/** What a gun is set to, if every control can go there. */
function reached(settings: GunSettings, reader: Reader): GunRead {
	const control = beyondReach(settings);
	if (!control) return { ok: true, settings };
	const { least, most, dimension } = GUN_CONTROLS[control];
	const words = messages[reader.lang];
	const reach = windowText({ min: least, max: most }, dimension, reader);
	return { ok: false, control, problem: words.beyond(words.control[control], reach) };
}

/**
 * Reads settings as people type them, each with its unit.
 * @param typed the text of a control; null where there is none
 */
export function readGun(typed: (control: GunControlId) => string | null, reader: Reader): GunRead {
	const settings: Partial<Record<GunControlId, number>> = {};
	for (const id of GUN_CONTROL_IDS) {
		const read = parseQuantity(typed(id) ?? '', GUN_CONTROLS[id].dimension, { lang: reader.lang });
		if (!read.ok) return refuse(id, problemWords(read.problem, reader), reader);
		settings[id] = read.value;
	}
	return reached(settings as GunSettings, reader);
}

type Entries = Readonly<Partial<Record<FieldId, Entry>>>;

/**
 * The gun as far as the sheet says how it is set: what each control stands at, SI, and what that reads as once nothing is
 * missing.
 * @param flow as typed at the bench; where it starts if nothing was
 */
export function gunInSheet(entries: Entries, flow: string | null, reader: Reader) {
	const set: Partial<Record<GunControlId, number>> = {};
	for (const id of GUN_CONTROL_IDS) {
		const answer = id === 'flow' ? undefined : entries[id]?.answer;
		if (answer?.kind === 'quantity') set[id] = answer.value;
	}
	const typed = flow?.trim();
	const read = typed ? parseQuantity(typed, 'flow', { lang: reader.lang }) : undefined;
	if (read && !read.ok) return { set, read: refuse('flow', problemWords(read.problem, reader), reader) };
	set.flow = read?.value ?? TEACHING_GUN.flow.value;
	const whole = GUN_CONTROL_IDS.every((id) => set[id] !== undefined);
	return { set, read: whole ? reached(set as GunSettings, reader) : undefined };
}
