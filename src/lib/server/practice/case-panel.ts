import { pictureFile, type PictureFile } from '../pictures/picture-file';
import type { PracticeDraft } from './draft';

/** The panel of a drill's case, looked at in one way; nothing where the drill has none or there is no such way. */
export function casePanel({ steps }: PracticeDraft, view: string): PictureFile | undefined {
	const file = steps.flatMap(({ figures }) => figures).find((figure) => figure.kind === 'case-file');
	if (!file) return undefined;
	const { defect, severity, seed } = file.panel;
	return pictureFile(new URLSearchParams({ defect, severity: String(severity), seed: String(seed), view }));
}
