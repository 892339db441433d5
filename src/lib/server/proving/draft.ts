import type { FieldId } from '$lib/engine';
import type { Entry } from '$lib/paper';
import type { Json } from '$lib/records';
import type { App } from '../app';

/** What a person has put into an open proving drill; kept across sign-out. */
export type ProvingDraft = Partial<Record<FieldId, Entry>>;

const key = (person: string, drill: string) => `proving ${person} ${drill}`;

export const provingDraft = ({ drafts }: App, person: string, drill: string): ProvingDraft =>
	(drafts.get<Json>(key(person, drill)) as ProvingDraft | undefined) ?? {};

export const keepProving = ({ drafts }: App, person: string, drill: string, draft: ProvingDraft) =>
	drafts.put(key(person, drill), JSON.parse(JSON.stringify(draft)) as Json);

export const dropProving = ({ drafts }: App, person: string, drill: string) =>
	drafts.drop(key(person, drill));
