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
		en: 'Heat limit, cleaner and blast medium all hang on the material. A light grey metal nobody can name may be magnesium, and grinding or blasting it to find out can start a fire.',
		es: 'El límite de calor, el limpiador y el abrasivo dependen del material. Un metal gris claro que nadie sabe nombrar puede ser magnesio, y esmerilarlo o granallarlo para averiguarlo puede iniciar un incendio.'
	},
	severity: 'safety-stop',
	authority: 'shop',
	provenance: cite(
		'dguv-209-090',
		'§1.2 and §1.5: burning dust, hydrogen from wet dust',
		{ read: 'those paragraphs' },
		'handbook'
	),
	lesson: 'intake#material-known',
	breaks: { wrong: ['distorted-part', 'solvent-crazing', 'flaking'] },
	outcome: {
		en: 'A part is warped or a dust fire is lit because somebody guessed.',
		es: 'Se deforma una pieza o se prende un polvo porque alguien adivinó.'
	},
	evidence: {
		en: 'Look on the ticket for who confirmed the material, and from which paper.',
		es: 'Busque en la orden quién confirmó el material y con qué documento.'
	},
	field: 'decision',
	applies: hasUnknownMaterial,
	expects: () => ({ kind: 'one-of', options: ['ask', 'refuse'] })
} satisfies Rule;
