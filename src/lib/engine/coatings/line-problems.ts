import type { Text } from '../text';
import type { Unit } from '../units/unit';
import { unitOf } from '../units/units';
import { LINE_BOUNDS } from './bounds';
import { SHEET_LINES, type LineId } from './lines';
import type { SheetProblem } from './problem';
import type { SheetLine } from './sheet';
import { SAME } from '../units/same';

const printed = (si: number, unit: Unit, lang: keyof Text) =>
	`${Number(unit.fromSi(si).toPrecision(4))} ${unit.label[lang]}`.trim();

function outOfBounds(line: LineId, unit: Unit, amount: number): Text | undefined {
	const [low, high] = LINE_BOUNDS[line];
	const si = unit.toSi(amount);
	const room = SAME * Math.max(1, Math.abs(si));
	if (si >= low - room && si <= high + room) return undefined;
	const between = (lang: keyof Text) => [printed(low, unit, lang), printed(high, unit, lang)] as const;
	return {
		en: `No coating has this: it lies between ${between('en').join(' and ')}. Check number and unit.`,
		es: `Ningún recubrimiento tiene esto: está entre ${between('es').join(' y ')}. Revise el número y la unidad.`
	};
}

const NOT_WHOLE: Text = {
	en: 'This is counted: write a whole number.',
	es: 'Esto se cuenta: escriba un número entero.'
};
const UPSIDE_DOWN: Text = {
	en: 'The highest value is below the lowest.',
	es: 'El valor máximo es menor que el mínimo.'
};
const SAME_DAY: Text = {
	en: 'Another entry of this line starts on the same day.',
	es: 'Otra entrada de esta línea empieza el mismo día.'
};

function amountProblem(line: LineId, unit: Unit, amount: number): Text | undefined {
	if (SHEET_LINES[line].dimension === 'count' && !Number.isInteger(amount)) return NOT_WHOLE;
	return outOfBounds(line, unit, amount);
}

/** What is wrong with the numbers and dates of one well-formed line, looked at by itself. */
export function lineProblems(line: LineId, revisions: readonly SheetLine[]): SheetProblem[] {
	const problems: SheetProblem[] = [];
	revisions.forEach((entry, index) => {
		const say = (key: string, text: Text | undefined) => {
			if (text) problems.push({ path: `lines.${line}.${index}.${key}`, text });
		};
		const unit = unitOf(SHEET_LINES[line].dimension, entry.unit);
		if ('value' in entry) say('value', amountProblem(line, unit, entry.value));
		else {
			say('min', amountProblem(line, unit, entry.min));
			say('max', amountProblem(line, unit, entry.max));
			if (entry.min > entry.max) say('max', UPSIDE_DOWN);
		}
		if (revisions.findIndex(({ from }) => from === entry.from) < index) say('from', SAME_DAY);
	});
	return problems;
}
