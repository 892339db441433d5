import type { QuantityProblem } from '$lib/engine';
import type { Refusal } from '$lib/records';
import { typed } from '../typed';

const LONGEST = 2000;

export type EntryProblem =
	| 'unanswered'
	| 'empty'
	| 'too-few'
	| 'not-a-day'
	| 'not-a-time'
	| 'not-an-id'
	| 'no-instrument'
	| { readonly quantity: QuantityProblem }
	| { readonly refusal: Refusal };

/** Collects what was typed and what is wrong with it, field by field. */
export class EntrySheet {
	readonly typed: Record<string, string> = {};
	readonly problems: Record<string, EntryProblem> = {};
	readonly #form: FormData;

	constructor(form: FormData) {
		this.#form = form;
	}

	take(name: string): string {
		return (this.typed[name] = typed(this.#form, name).slice(0, LONGEST));
	}

	wrong(name: string, problem: EntryProblem): void {
		this.problems[name] ??= problem;
	}
}
