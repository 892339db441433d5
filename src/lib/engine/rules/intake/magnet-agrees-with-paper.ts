import { commonPractice } from '../../sources/provenance';
import { substrate } from '../../substrates/substrates';
import type { Rule } from '../rule';
import { askOr } from './dangers';

export default {
	id: 'magnet-agrees-with-paper',
	station: 'intake',
	competency: 'intake',
	skill: 'C4',
	title: { en: 'Magnet and paper agree', es: 'El imán y el documento coinciden' },
	why: {
		en: 'If the magnet holds where the paper says no, or not on what it calls steel, paper and part differ. Declared stainless may be a ferritic grade or plated steel.',
		es: 'Si el imán se pega donde el documento lo niega, o no en lo que llama acero, pieza y documento difieren. Un inoxidable declarado puede ser ferrítico o acero con baño.'
	},
	severity: 'quality',
	authority: 'shop',
	provenance: commonPractice,
	lesson: 'materials#magnet-agrees-with-paper',
	breaks: { wrong: ['cross-contamination', 'flaking', 'distorted-part'] },
	outcome: {
		en: 'Medium, heat and gauge are chosen for the wrong metal.',
		es: 'Abrasivo, calor y medidor se eligen para otro metal.'
	},
	evidence: {
		en: 'Put a magnet on the bare part and compare with the material on the ticket.',
		es: 'Acerque un imán a la pieza desnuda y compare con el material de la orden.'
	},
	field: 'decision',
	applies: ({ job }) =>
		job.parts.some(({ material, magnetSticks }) => {
			if (material === 'unknown' || magnetSticks === null) return false;
			const paper = substrate(material);
			return paper.class === 'metal' && magnetSticks !== (paper.magnetic === true);
		}),
	expects: (seen) => ({ kind: 'one-of', options: askOr(seen) })
} satisfies Rule;
