import { cite } from '../../sources/provenance';
import type { Rule } from '../rule';
import { hasUnknownMaterial } from './dangers';

export default {
	id: 'material-known',
	station: 'intake',
	competency: 'intake',
	skill: 'C4',
	title: { en: 'Unknown material stops the job', es: 'Material desconocido: el trabajo no empieza' },
	why: {
		en: 'Heat limit, cleaner and blast medium hang on the material. A light grey metal nobody can name may be magnesium: grinding or blasting it to see can start a fire.',
		es: 'Límite de calor, limpiador y abrasivo dependen del material. Un metal gris claro sin identificar puede ser magnesio, y esmerilarlo o granallarlo para averiguarlo puede iniciar un incendio.'
	},
	severity: 'safety-stop',
	authority: 'shop',
	provenance: cite(
		'dguv-209-090',
		'§1.2 and §1.5: burning dust, hydrogen from wet dust',
		{ read: 'those paragraphs' },
		'handbook'
	),
	lesson: 'materials#material-known',
	breaks: { wrong: ['distorted-part', 'solvent-crazing', 'flaking'] },
	outcome: {
		en: 'Somebody guesses: a part warps or a dust fire starts.',
		es: 'Alguien adivina: se deforma una pieza o se prende el polvo.'
	},
	evidence: {
		en: 'Look on the ticket for who confirmed the material, and from which paper.',
		es: 'Busque en la orden quién confirmó el material y con qué documento.'
	},
	field: 'decision',
	applies: hasUnknownMaterial,
	expects: () => ({ kind: 'one-of', options: ['ask', 'refuse'] })
} satisfies Rule;
