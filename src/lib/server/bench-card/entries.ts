import type { Reader } from '$lib/paper';
import { typed } from '../typed';
import { factsFor, MOST_LINES } from './rooms';

type System = Reader['units']['system'];

/** What a button of the form asks for. */
export type Wish = 'work' | 'add' | 'drop' | 'change';
const WISHES: readonly string[] = ['work', 'add', 'drop', 'change'] satisfies Wish[];
const SYSTEMS: readonly string[] = ['us', 'metric'] satisfies System[];

/** Longer than anything the form takes; what is beyond is cut before it is looked at or sent back. */
const LONGEST = 200;
/** More boxes of one name than the form has. */
const MOST_BOXES = 20;

/** A job as it was typed, readable or not. */
export type Entries = {
	/** How many part lines the form has. */
	readonly lines: number;
	/** Units chosen on the card; null leaves them to the reader's own. */
	readonly units: System | null;
	/** By the name of the fact; nothing, one text, or one for each box ticked. */
	readonly values: Readonly<Record<string, readonly string[]>>;
};

export const blankEntries = (lines = 1): Entries => ({ lines, units: null, values: {} });

/** The text typed for a fact. */
export const textIn = ({ values }: Pick<Entries, 'values'>, name: string): string => values[name]?.[0] ?? '';

/** Reads a posted form; undefined where no form of ours can have sent it. */
export function readForm(form: FormData): { wish: Wish; entries: Entries } | undefined {
	const [lines, units, wish] = [Number(typed(form, 'lines')), typed(form, 'units'), typed(form, 'wish')];
	if (!Number.isInteger(lines) || lines < 1 || lines > MOST_LINES) return undefined;
	if (units && !SYSTEMS.includes(units)) return undefined;
	if (wish && !WISHES.includes(wish)) return undefined;
	const values = [...factsFor(lines)].map(([name, { kind }]) => {
		const texts = form
			.getAll(name)
			.filter((value) => typeof value === 'string')
			.slice(0, kind === 'choices' ? MOST_BOXES : 1)
			.map((value) => value.slice(0, LONGEST));
		return [name, texts] as const;
	});
	return {
		wish: (wish || 'work') as Wish,
		entries: { lines, units: (units || null) as System | null, values: Object.fromEntries(values) }
	};
}

/** One part line more, or its last one less; the number of lines stays within what a job may have. */
export const withLines = (entries: Entries, wish: Wish): Entries => {
	const step = { add: 1, drop: -1, work: 0, change: 0 }[wish];
	return { ...entries, lines: Math.min(Math.max(entries.lines + step, 1), MOST_LINES) };
};
