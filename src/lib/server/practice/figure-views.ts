import type { Figure } from '$lib/drills';
import { say } from '$lib/i18n';
import { caseFileView, gaugePanelView, ovenChartView, type Reader } from '$lib/paper';
import { describePicture, VIEWS } from '$lib/pictures';
import { stepInHand, type PracticeDraft } from './draft';

/** Where the picture of a drill's case is, by the drill: an address that named the defect would give it away. */
const addressOf = (view: string, { attempt }: PracticeDraft, { lang }: Reader) =>
	`/${lang}/practice/${attempt}/panel?view=${view}`;

function figureView(figure: Figure, draft: PracticeDraft, reader: Reader) {
	switch (figure.kind) {
		case 'gauge-panel':
			return gaugePanelView(figure, reader);
		case 'oven-chart':
			return ovenChartView(figure, reader);
		case 'case-file': {
			const panel = VIEWS.map((view) => ({
				view,
				src: addressOf(view, draft, reader),
				shows: say(describePicture(figure.panel, view), reader.lang)
			}));
			return caseFileView(figure, reader, panel);
		}
	}
}

/** What is looked at on the page in hand. */
export const figureViews = (draft: PracticeDraft, reader: Reader) =>
	stepInHand(draft).figures.map((figure) => figureView(figure, draft, reader));
