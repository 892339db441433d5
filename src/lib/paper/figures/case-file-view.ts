import type { Figure } from '$lib/drills';
import { DIAGNOSIS_TEACHING, field as fieldById, ruleById, type Traced } from '$lib/engine';
import { caseFile, say } from '$lib/i18n';
import { answerText } from '../answer-text';
import { derivationView } from '../derivation-view';
import { expectationText } from '../expectation-text';
import type { Reader } from '../reader';

type CaseFile = Extract<Figure, { kind: 'case-file' }>;
type Line = CaseFile['lines'][number];

/** One way of looking at the panel: where its picture is, and what it shows for who cannot see it. */
type PanelPicture<View> = { readonly view: View; readonly src: string; readonly shows: string };

function lineView({ rule, field, says, answer, expected, testEnds }: Line, reader: Reader) {
	const words = caseFile[reader.lang];
	return {
		rule,
		title: say(ruleById(rule).title, reader.lang),
		says,
		saysWord: words.says[says],
		written: answerText(field, answer, reader),
		right: expectationText(field, expected, reader),
		onGauge: fieldById(field).kind === 'quantity',
		testEnds: words.testEnds[testEnds]
	};
}

function resultView({ rules, broken }: NonNullable<CaseFile['result']>, { lang }: Reader) {
	const tested = rules.map(ruleById);
	const titles = tested.map(({ title }) => say(title, lang));
	return {
		test: tested[0] ? say(tested[0].evidence, lang) : '',
		cameOut: caseFile[lang].cameOut[broken ? 'broken' : 'kept'](titles)
	};
}

/** Rates the case leans on; a fit or a sort of test that is not in it is left out. */
function rates({ lines }: CaseFile): readonly Traced[] {
	const { brokenWhere, strength, leak, test } = DIAGNOSIS_TEACHING;
	const says = (what: Line['says']) => lines.some((line) => line.says === what);
	const ends = (what: Line['testEnds']) => lines.some((line) => line.testEnds === what);
	return [
		...(says('broken') ? [brokenWhere.recorded] : []),
		...(says('nothing') ? [brokenWhere.unchecked] : []),
		...(says('kept') ? [brokenWhere.kept] : []),
		...(ends('reading') ? Object.values(test.reading) : []),
		...(ends('eye') ? Object.values(test.eye) : []),
		strength,
		leak
	];
}

/**
 * A case as it lies on the bench, in the reader's words and units. Nothing that is told only afterwards is in it, nor the
 * name of the defect: pictures come by addresses that do not name it either.
 */
export const caseFileView = <View extends string>(
	figure: CaseFile,
	reader: Reader,
	panel: readonly PanelPicture<View>[]
) => ({
	kind: figure.kind,
	panel,
	lines: figure.lines.map((line) => lineView(line, reader)),
	...(figure.result ? { result: resultView(figure.result, reader) } : {}),
	rates: rates(figure).map((rate) => derivationView(rate, reader))
});
