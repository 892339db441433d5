import { DEFECT_SHEETS, DEFECT_SHEETS_PROVENANCE, DEFECTS, type DefectId } from '$lib/engine';
import { say, type Lang } from '$lib/i18n';
import { provenanceView } from '$lib/paper';

export const isDefect = (id: string): id is DefectId => Object.hasOwn(DEFECTS, id);

/** A defect as a person at the rack needs it. A record of another engine version may name one that is gone. */
export const defectName = (id: string, lang: Lang): string => (isDefect(id) ? say(DEFECTS[id], lang) : id);

export const defectView = (id: DefectId, lang: Lang) => ({
	id,
	name: say(DEFECTS[id], lang),
	look: say(DEFECT_SHEETS[id].look, lang),
	lookAlike: say(DEFECT_SHEETS[id].lookAlike, lang),
	now: say(DEFECT_SHEETS[id].now, lang),
	// the sheets are text, which no shop value changes
	provenance: provenanceView(DEFECT_SHEETS_PROVENANCE)
});

/** Every defect of the catalogue with its look, in the catalogue's order. */
export const defectCatalogue = (lang: Lang) =>
	(Object.keys(DEFECTS) as DefectId[]).map((id) => ({
		id,
		name: say(DEFECTS[id], lang),
		look: say(DEFECT_SHEETS[id].look, lang)
	}));
