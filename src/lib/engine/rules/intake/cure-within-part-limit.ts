import { cureTemperature } from '../../plan/cure-window';
import { lowestCap } from '../../plan/part-cap';
import { commonPractice } from '../../sources/provenance';
import type { Rule } from '../rule';
import { askOr } from './dangers';

export default {
	id: 'cure-within-part-limit',
	station: 'intake',
	competency: 'intake',
	skill: 'C4',
	title: {
		en: 'The cure must not be hotter than the part may get',
		es: 'El curado no debe ser más caliente de lo que aguanta la pieza'
	},
	why: {
		en: 'If even the coolest cure on the sheet is hotter than the most delicate part may get, or the sheet has none for it, no oven setting is right.',
		es: 'Si hasta el curado más frío de la hoja pasa el límite de la pieza más delicada, o no hay curado para ella, ningún ajuste sirve.'
	},
	severity: 'quality',
	authority: 'part-limit',
	provenance: commonPractice,
	lesson: 'heat-limits#cure-within-part-limit',
	breaks: { wrong: ['distorted-part', 'anodise-crazing', 'soft-film'] },
	outcome: {
		en: 'The part warps, loses temper or crazes, or the film stays soft.',
		es: 'La pieza se deforma, pierde temple o se agrieta, o la película queda blanda.'
	},
	evidence: {
		en: 'Lay the sheet’s cure beside the limits of every material on the ticket.',
		es: 'Ponga el curado de la hoja junto a los límites de cada material de la orden.'
	},
	field: 'decision',
	applies: (seen) => {
		const cure = cureTemperature(seen);
		if (!cure) return seen.sheet.family !== 'E';
		const cap = lowestCap(seen);
		return cap !== undefined && cure.min.value > cap.value;
	},
	expects: (seen) => ({ kind: 'one-of', options: askOr(seen) })
} satisfies Rule;
