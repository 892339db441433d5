import { DEFECTS, RULES, SHOP_VALUES } from '$lib/engine';
import { format, record, say, terms, type Lang } from '$lib/i18n';
import type { EventData, EventKind, TextRef } from '$lib/records';

/** What it takes to put an entry's content into words. */
export type Teller = {
	readonly lang: Lang;
	readonly name: (person: string) => string;
	readonly text: (ref: TextRef) => string;
	readonly time: (instant: string) => string;
	/** The run has its verdict, or the entry belongs to none. */
	readonly mayTell: boolean;
};

type Part = string | null | false | undefined;
type Tell<K extends EventKind> = (data: EventData<K>, teller: Teller) => readonly Part[];

const words = ({ lang }: Teller) => record[lang].told;
const day = (on: string, { lang }: Teller) => format.date(on, lang);
const area = (id: string, { lang }: Teller) => (terms[lang].station as Record<string, string>)[id] ?? id;
const named = (table: Readonly<Record<string, { en: string; es: string }>>, id: string, { lang }: Teller) =>
	Object.hasOwn(table, id) ? say(table[id]!, lang) : id;
const RULE_TITLES = Object.fromEntries(RULES.map(({ id, title }) => [id, title]));
const VALUE_LABELS = Object.fromEntries(Object.entries(SHOP_VALUES).map(([id, { label }]) => [id, label]));
/** A test is named by its rule, with the direction it showed after a colon. */
const rule = (id: string, teller: Teller) => named(RULE_TITLES, id.replace(/:.*/, ''), teller);
const optional = (ref: TextRef | null, { text }: Teller) => ref && text(ref);

/** The content of every kind of entry in short parts. A kind that is missing does not compile. */
export const TOLD: { readonly [K in EventKind]: Tell<K> } = {
	'shop.founded': ({ lead, name, demo }, t) => [t.text(name), t.name(lead), demo && words(t).demo],
	'sheet.saved': ({ sheet, revision, effective }, t) => [
		sheet,
		words(t).revision(revision),
		words(t).from(day(effective, t))
	],
	'shop-value.set': ({ value, from, reason }, t) => [
		named(VALUE_LABELS, value, t),
		words(t).from(day(from, t)),
		optional(reason, t)
	],
	'scheme.set': ({ version, effective }, t) => [words(t).version(version), words(t).from(day(effective, t))],
	'person.added': ({ person, roles }, t) => [t.name(person), ...roles.map((one) => terms[t.lang].role[one])],
	'person.roles-set': ({ person, roles }, t) => [
		t.name(person),
		...roles.map((one) => terms[t.lang].role[one])
	],
	'person.secret-set': ({ person }, t) => [t.name(person)],
	'person.erased': ({ person, texts }, t) => [t.name(person), words(t).texts(texts.length)],
	'auditor.opened': ({ person, until }, t) => [t.name(person), words(t).until(t.time(until))],
	'training.started': ({ person, areas, how }, t) => [
		t.name(person),
		...areas.map((one) => area(one, t)),
		words(t).how[how]
	],
	'lesson.done': ({ person, lesson }, t) => [t.name(person), lesson],
	'practice.handed-in': ({ person, right, hints }, t) => [
		t.name(person),
		right ? words(t).right : words(t).notRight,
		words(t).hints(hints)
	],
	'practice.first-check': ({ person, findings }, t) => [t.name(person), words(t).unkept(findings.length)],
	'proving.opened': ({ person, competency, purpose }, t) => [
		t.name(person),
		area(competency, t),
		words(t).purpose[purpose]
	],
	'proving.issued': ({ person }, t) => [t.name(person)],
	'proving.handed-in': ({ person, right }, t) => [
		t.name(person),
		t.mayTell && (right ? words(t).right : words(t).notRight)
	],
	'proving.given-up': ({ person, why }, t) => [t.name(person), words(t).left[why]],
	'proving.concluded': ({ person, verdict, right, drills }, t) => [
		t.name(person),
		words(t).verdict[verdict],
		words(t).drills(right, drills)
	],
	'safety.concluded': ({ person, verdict, misses, drills }, t) => [
		t.name(person),
		words(t).verdict[verdict],
		words(t).safetyDrills(misses, drills)
	],
	'safety.restarted': ({ person }, t) => [t.name(person)],
	'practical.recorded': ({ person, competency, result, late, override, note }, t) => [
		t.name(person),
		area(competency, t),
		words(t).result[result],
		late && words(t).late,
		override && `${words(t).override}: ${t.text(override.reason)}`,
		optional(note, t)
	],
	'signoff.granted': ({ person, competency, validUntil, nonIndependent, foundingLead, override }, t) => [
		t.name(person),
		area(competency, t),
		words(t).validUntil(day(validUntil, t)),
		nonIndependent && words(t).nonIndependent,
		foundingLead && words(t).foundingLead,
		override && `${words(t).override}: ${t.text(override.reason)}`
	],
	'signoff.second-person': ({ person, second }, t) => [t.name(person), t.name(second)],
	'signoff.suspended': ({ person, reason, reviewBy }, t) => [
		t.name(person),
		t.text(reason),
		words(t).reviewBy(day(reviewBy, t))
	],
	'signoff.reinstated': ({ person, reason }, t) => [t.name(person), t.text(reason)],
	'signoff.withdrawn': ({ person, reason }, t) => [t.name(person), t.text(reason)],
	'continuity.confirmed': ({ person, jobs, continuityDue }, t) => [
		t.name(person),
		words(t).jobs(
			format.list(
				jobs.map(({ job }) => job),
				t.lang
			)
		),
		words(t).confirmBy(day(continuityDue, t))
	],
	'incident.reported': ({ defect, job, person, note }, t) => [
		named(DEFECTS, defect, t),
		job,
		t.name(person),
		optional(note, t)
	],
	'incident.cause-recorded': ({ test, found, note }, t) => [
		rule(test, t),
		words(t).found[found],
		optional(note, t)
	],
	'incident.decided': (data, t) => [
		t.name(data.person),
		words(t).cause[data.cause],
		...(data.cause === 'system'
			? [t.text(data.action)]
			: [area(data.competency, t), ...data.rules.map((id) => rule(id, t))]),
		t.text(data.evidence)
	],
	'refresher.signed': ({ person, competency, nonIndependent, foundingLead }, t) => [
		t.name(person),
		area(competency, t),
		nonIndependent && words(t).nonIndependent,
		foundingLead && words(t).foundingLead
	],
	'incident.closed': ({ jobsChecked, note }, t) => [words(t).jobsChecked(jobsChecked), optional(note, t)],
	'act.refused': ({ what, code, person }, t) => [what, code, person && t.name(person)],
	'journal.repaired': ({ bytes }, t) => [words(t).bytes(bytes)],
	'clock.set-back': ({ from, to }, t) => [words(t).fromTo(t.time(from), t.time(to))]
};
