import { practical as words, refusalText, say, terms } from '$lib/i18n';
import { practicalGateNamed, practicalReadingNamed, type CompetencyId } from '$lib/learning';
import { problemWords, type Reader } from '$lib/paper';
import { dayOf, REASON_LENGTH, type Acting, type Refusal } from '$lib/records';
import type { App } from '../app';
import { nameOf } from '../shown-text';
import { momentOf } from './moment';
import { mayRecordPractical } from './offered-acts';
import { heldText, practicalBench, practicalCoatings, type PracticalBench } from './practical-bench';
import { gateField, INSTRUMENT_LINES, readingField, type ReadPractical } from './practical-form';
import type { EntryProblem } from './entry-sheet';

type Typed = Pick<ReadPractical, 'typed' | 'problems'>;

const nothing: Typed = { typed: {}, problems: {} };

/** A refusal with the gates and readings it names as the form calls them. */
const inWords = ({ code, detail = [] }: Refusal, { lang }: Reader) => ({
	code,
	detail: detail.map((id) => {
		const label = practicalReadingNamed(id)?.label ?? practicalGateNamed(id);
		return label ? say(label, lang) : id;
	})
});

const problemText = (problem: EntryProblem | undefined, reader: Reader): string | undefined => {
	if (problem === undefined) return undefined;
	if (typeof problem === 'object')
		return 'refusal' in problem
			? refusalText(inWords(problem.refusal, reader), reader.lang)
			: problemWords(problem.quantity, reader);
	return words[reader.lang].problem[problem];
};

/** The entries of the form as plain data, each with what was typed and what is wrong with it. */
export function practicalSheet(bench: PracticalBench, reader: Reader, entered: Typed = nothing) {
	const { lang } = reader;
	const told = words[lang];
	const { typed, problems } = entered;
	const field = (name: string, label: string, hint?: string) => {
		const error = problemText(problems[name], reader);
		return {
			...{ id: `field-${name}`, name, label, value: typed[name] ?? '' },
			...(hint && { hint }),
			...(error && { error })
		};
	};
	const options = Object.entries(told.seen).map(([id, label]) => ({ id, label }));
	return {
		gates: bench.plan.gates.map(({ id, label, critical }) => ({
			...field(gateField(id), told.gate(say(label, lang), critical)),
			kind: 'choice' as const,
			options
		})),
		readings: bench.plan.readings.map((asked) => {
			const { limits, provenance, unit } = heldText(asked, reader);
			return {
				id: asked.id,
				title: say(asked.label, lang),
				limits,
				provenance,
				film: asked.judged === 'film',
				fields: asked.places.map((place, at) => ({
					...field(readingField(asked.id, at), say(place, lang), told.readingHint(asked.each, unit)),
					kind: 'quantity' as const
				}))
			};
		}),
		day: field('day', told.day),
		time: field('time', told.time, told.timeHint),
		panels: field('panels', told.panels, told.panelsHint),
		instruments: INSTRUMENT_LINES.map((at) => ({
			serial: field(`serial-${at}`, told.serial(at + 1)),
			due: field(`due-${at}`, told.due(at + 1))
		})),
		result: {
			...field('result', told.result),
			kind: 'choice' as const,
			options: Object.entries(told.resultOf).map(([id, label]) => ({ id, label }))
		},
		witnessed: { ...field('witnessed', told.witnessed), checked: typed.witnessed === 'yes' },
		reason: field('reason', told.reason, told.reasonHint(REASON_LENGTH)),
		note: field('note', told.note, told.noteHint)
	};
}

export type PracticalSheet = ReturnType<typeof practicalSheet>;

/** The practical of a person in a competency: first the coating, then what is watched and measured with it. */
export function practicalPage(
	app: App,
	{ person, competency, coating }: { person: string; competency: CompetencyId; coating: string },
	witness: string,
	reader: Reader
) {
	const { state } = app.journal;
	const acting: Acting = { ...momentOf(app), actor: witness };
	const asked = mayRecordPractical(state, acting, person, competency);
	const bench = practicalBench(app, competency, coating);
	return {
		person,
		name: nameOf(app, person, reader.lang),
		competency,
		title: terms[reader.lang].station[competency],
		witness: nameOf(app, witness, reader.lang),
		against: (asked.ok ? null : asked.refusal) as Refusal | null,
		today: dayOf(state, acting.now),
		coatings: practicalCoatings(app, competency),
		coating: bench ? { id: coating, title: bench.title, revision: bench.sheet.revision } : null,
		sheet: bench ? practicalSheet(bench, reader) : null
	};
}
