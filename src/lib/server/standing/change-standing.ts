import type { RequestEvent } from '@sveltejs/kit';
import { addSecondPerson, startTraining, type Outcome, type StartTraining } from '$lib/records';
import { act } from '../act';
import { typed } from '../typed';
import { withTexts } from '../with-texts';
import { CHANGES, STARTS, type Change } from './offered-acts';
import { onSignOffOf } from './own-of';
import { ownSecret } from './own-secret';
import { readConflict } from './signature-form';

const isChange = (word: string): word is Change => Object.hasOwn(CHANGES, word);

const isStart = (word: string): word is StartTraining['how'] => (STARTS as readonly string[]).includes(word);

type NotDone =
	| { readonly ok: false; readonly problem: 'act' | 'reason' | 'declaration' }
	| { readonly ok: false; readonly secret: NonNullable<Awaited<ReturnType<typeof ownSecret>>> };

const notDone = (problem: 'act' | 'reason' | 'declaration'): NotDone => ({ ok: false, problem });

/** Suspends, reinstates or withdraws a sign-off, with a reason and the secret of whoever does it. */
export async function changeSignOff(
	event: RequestEvent,
	form: FormData,
	person: string
): Promise<Outcome | NotDone> {
	const { app, lang } = event.locals;
	const change = typed(form, 'change');
	if (!isChange(change)) return notDone('act');
	const typedReason = typed(form, 'reason');
	if (!typedReason.trim()) return notDone('reason');
	const secret = await ownSecret(event, form, change);
	if (secret) return { ok: false, secret };
	return withTexts(app, { reason: typedReason }, lang, ({ reason }) => {
		if (!reason) throw new Error('a reason that is not empty is kept');
		const wish = { signOff: typed(form, 'signOff'), reason };
		return act(event, onSignOffOf(person, CHANGES[change]), wish, { what: change, person });
	});
}

/** Adds a second person's signature beside one that was not independent. */
export async function signAsSecond(
	event: RequestEvent,
	form: FormData,
	person: string
): Promise<Outcome | NotDone> {
	const { conflict, problems } = readConflict(form);
	if (Object.keys(problems).length > 0) return notDone('declaration');
	const secret = await ownSecret(event, form, 'second-person');
	if (secret) return { ok: false, secret };
	const wish = { signOff: typed(form, 'signOff'), conflict };
	return act(event, onSignOffOf(person, addSecondPerson), wish, { what: 'second-person', person });
}

/** Admits somebody to training in one area. */
export async function admit(event: RequestEvent, form: FormData, person: string): Promise<Outcome | NotDone> {
	const how = typed(form, 'how');
	if (!isStart(how)) return notDone('act');
	const wish = { person, area: typed(form, 'area'), how };
	return act(event, startTraining, wish, { what: how, person });
}
