import { field, HAZARDS, ruleById, type DataSheet, type FieldId, type PlannedField } from '$lib/engine';
import { say } from '$lib/i18n';
import { answerText, type Reader } from '$lib/paper';
import type { CardLine } from './line-view';

/** Answers that mean something has to be put right, or somebody told, before the work goes on. */
export const NOT_IN_ORDER: Readonly<Partial<Record<FieldId, readonly string[]>>> = {
	'cabinet-action': ['repair'],
	'blast-nozzle': ['none'],
	'wearer-action': ['stop'],
	'booth-action': ['stop'],
	'lot-action': ['warm', 'reject'],
	'overdue-action': ['wipe', 'restart'],
	'residue-action': ['repeat', 'tell-supervisor'],
	'left-over-action': ['thin', 'discard'],
	'spray-go': ['no-go'],
	'film-verdict': ['hold']
};

const isNotInOrder = ({ field: id, answer }: PlannedField) =>
	answer.kind === 'choice' && (NOT_IN_ORDER[id]?.includes(answer.option) ?? false);

/** What has to be seen before anything is set: what is not in order today, the coating's hazards, what gave way. */
export const cautionsOf = (
	fields: readonly PlannedField[],
	lines: readonly CardLine[],
	sheet: DataSheet,
	reader: Reader
) => ({
	today: fields.filter(isNotInOrder).map(({ field: id, answer, demands }) => ({
		label: say(field(id).label, reader.lang),
		set: answerText(id, answer, reader),
		why: demands.map(({ rule }) => say(ruleById(rule).why, reader.lang)).join(' ')
	})),
	hazards: sheet.hazards.map((hazard) => say(HAZARDS[hazard], reader.lang)),
	gaveWay: lines.flatMap(({ label, gaveWay }) => gaveWay.map((one) => ({ label, ...one })))
});
