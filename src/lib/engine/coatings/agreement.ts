import type { Text } from '../text';
import { comparedNumbers } from './compared-numbers';
import { CURE_LINES, OVEN_LINES, REQUIRED_LINES, SHEET_LINES, TWO_PART_LINES, type LineId } from './lines';
import type { SheetProblem } from './problem';
import type { DataSheet } from './sheet';
import { startDays } from './start-days';
import { FAMILY_PARTS } from './traits';

type Found = SheetProblem | false | undefined;
const at = (path: string, en: string, es: string): SheetProblem => ({ path, text: { en, es } });
const onLine = (line: LineId, en: string, es: string) => at(`lines.${line}`, en, es);
const has = (sheet: DataSheet, line: LineId) => sheet.lines[line] !== undefined;
const label = (line: LineId): Text => SHEET_LINES[line].label;

/** The lines no plan can do without, all of them from the sheet's first day on. */
function needed(sheet: DataSheet): Found[] {
	const first = startDays(sheet)[0] ?? '';
	const oven = CURE_LINES.flat().some((line) => has(sheet, line));
	const lines: readonly LineId[] = [
		...REQUIRED_LINES,
		...(sheet.parts === 2 ? TWO_PART_LINES : []),
		...(oven ? OVEN_LINES : [])
	];
	return lines.map((line) => {
		const revisions = sheet.lines[line];
		if (!revisions)
			return onLine(
				line,
				`Every sheet of this kind states it: ${label(line).en}.`,
				`Toda hoja de este tipo lo indica: ${label(line).es}.`
			);
		const earliest = revisions.reduce((at, { from }, index) => (from < revisions[at]!.from ? index : at), 0);
		return (
			revisions[earliest]!.from > first &&
			at(
				`lines.${line}.${earliest}.from`,
				`The sheet starts on ${first}, so this line has to as well.`,
				`La hoja empieza el ${first}, así que esta línea también.`
			)
		);
	});
}

const onlyTwoPart: readonly LineId[] = [...TWO_PART_LINES, 'induction'];

function parts(sheet: DataSheet): Found[] {
	const { family, parts: count } = sheet;
	return [
		FAMILY_PARTS[family] !== count &&
			at(
				'parts',
				`A coating of family ${family} has ${FAMILY_PARTS[family]} part(s).`,
				`Un recubrimiento de la familia ${family} tiene ${FAMILY_PARTS[family]} parte(s).`
			),
		(sheet.basis === null) === (count === 2) &&
			at(
				'basis',
				'A mix of two parts states by volume or by weight; a one-part coating states neither.',
				'Una mezcla de dos partes indica por volumen o por peso; un recubrimiento de una parte, ninguno.'
			),
		...(count === 1 ? onlyTwoPart : []).map(
			(line) =>
				has(sheet, line) &&
				onLine(
					line,
					'A one-part coating has nothing to mix.',
					'Un recubrimiento de una parte no tiene nada que mezclar.'
				)
		)
	];
}

/** A statement in words and the line with its number: both or neither. */
const together = (sheet: DataSheet, key: 'thinner' | 'cup' | 'rubSolvent', line: LineId): Found =>
	(sheet[key] === null) === has(sheet, line) &&
	at(
		sheet[key] === null ? key : `lines.${line}`,
		`“${label(line).en}” and what it is done with go together: state both or neither.`,
		`«${label(line).es}» y con qué se hace van juntos: indique ambos o ninguno.`
	);

const cures = (sheet: DataSheet): Found[] =>
	CURE_LINES.map((pair) => {
		const [missing] = pair.filter((line) => !has(sheet, line));
		return (
			missing &&
			pair.some((line) => has(sheet, line)) &&
			onLine(
				missing,
				'A cure is a temperature and a time: one is missing.',
				'Un curado es una temperatura y un tiempo: falta uno.'
			)
		);
	});

const hazards = (sheet: DataSheet): Found[] => [
	sheet.family === 'A' &&
		!sheet.hazards.includes('isocyanate') &&
		at(
			'hazards',
			'A coating of family A names isocyanate among its hazards.',
			'Un recubrimiento de la familia A indica isocianato entre sus peligros.'
		),
	new Set(sheet.hazards).size < sheet.hazards.length &&
		at('hazards', 'A hazard is named twice.', 'Un peligro aparece dos veces.'),
	sheet.hazards.includes('decomposition-fume') &&
		!has(sheet, 'fume-above') &&
		onLine(
			'fume-above',
			'The sheet warns of fume: state above which temperature.',
			'La hoja advierte de humo: indique por encima de qué temperatura.'
		)
];

/** What the statements of one sheet, each sound by itself, say against each other. */
export const agreementProblems = (sheet: DataSheet): SheetProblem[] =>
	[
		...needed(sheet),
		...parts(sheet),
		together(sheet, 'thinner', 'thinner'),
		together(sheet, 'cup', 'viscosity'),
		together(sheet, 'rubSolvent', 'solvent-rubs'),
		...cures(sheet),
		...comparedNumbers(sheet),
		...hazards(sheet)
	].filter((found): found is SheetProblem => Boolean(found));
