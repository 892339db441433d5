import type { DrillStep } from '$lib/drills';
import { VIEWS } from '$lib/pictures';
import { drawnFile, type PictureFile } from '../pictures/picture-file';

/** The case a drill has to solve, if it has one. */
export const caseFileIn = ({ steps }: { readonly steps: readonly DrillStep[] }) =>
	steps.flatMap(({ figures }) => figures).find((figure) => figure.kind === 'case-file');

/** The panel of a drill's case, looked at in one way; nothing where the drill has none or there is no such way. */
export function casePanel(
	drill: { readonly steps: readonly DrillStep[] },
	asked: string
): PictureFile | undefined {
	const file = caseFileIn(drill);
	const view = VIEWS.find((one) => one === asked);
	return file && view && drawnFile(file.panel, view);
}
