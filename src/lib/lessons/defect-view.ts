import { DEFECT_SHEETS, DEFECT_SHEETS_PROVENANCE, DEFECTS, diagnose, type DefectId } from '$lib/engine';
import { say, type Lang } from '$lib/i18n';
import { pictureView, provenanceView } from '$lib/paper';
import type { DefectView } from './lesson-view';
import { TELLING_VIEW } from './telling-view';

/** The panel shown of every defect: plain to see, and the same one each time a lesson is read. */
const PANEL = { severity: 2, seed: 1 } as const;

/** Rules whose breach leads there, each once however many ways it can be broken, in working order. */
function rulesInto(defect: DefectId, lang: Lang): DefectView['rules'] {
	const titles = new Map(diagnose(defect).map(({ rule, title }) => [rule, say(title, lang)]));
	return [...titles].map(([id, title]) => ({ title, href: `/${lang}/rules/${id}` }));
}

/** The defects of the catalogue by id, in its order, in the reader's language. */
export const defectViews = (lang: Lang): Readonly<Record<string, DefectView>> =>
	Object.fromEntries(
		(Object.keys(DEFECTS) as DefectId[]).map((id) => [
			id,
			{
				name: say(DEFECTS[id], lang),
				look: say(DEFECT_SHEETS[id].look, lang),
				lookAlike: say(DEFECT_SHEETS[id].lookAlike, lang),
				now: say(DEFECT_SHEETS[id].now, lang),
				plain: pictureView({ defect: id, ...PANEL }, 'plain', lang),
				telling: pictureView({ defect: id, ...PANEL }, TELLING_VIEW[id], lang),
				rules: rulesInto(id, lang),
				provenance: provenanceView(DEFECT_SHEETS_PROVENANCE)
			}
		])
	);
