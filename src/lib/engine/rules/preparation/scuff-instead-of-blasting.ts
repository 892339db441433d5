import { commonPractice } from '../../sources/provenance';
import type { Rule } from '../rule';
import { onlyScuffed } from './blasting';

export default {
	id: 'scuff-instead-of-blasting',
	station: 'preparation',
	competency: 'preparation',
	skill: 'C7',
	title: {
		en: 'Anodising, laminates and soft plastics are scuffed',
		es: 'Anodizado, laminados y plásticos blandos se lijan a mano'
	},
	why: {
		en: 'Blasting takes an anodised layer off, cuts laminate fibres and bruises a plastic that crazes. A light scuff by hand gives the key without the harm.',
		es: 'El granallado quita la capa anodizada, corta fibras de laminado y golpea un plástico que se fisura. Un lijado suave a mano da anclaje sin ese daño.'
	},
	severity: 'quality',
	authority: 'shop',
	provenance: commonPractice,
	lesson: 'blast-settings#scuff-instead-of-blasting',
	breaks: { wrong: ['print-through', 'anodise-crazing', 'distorted-part', 'pinholes'] },
	outcome: {
		en: 'Bare patches in the oxide, cut fibres or cracked plastic: none can be put back.',
		es: 'Zonas sin óxido, fibras cortadas o plástico agrietado: nada se repara.'
	},
	evidence: {
		en: 'Look with a loupe for fibre ends, bare metal or hair cracks.',
		es: 'Busque con lupa puntas de fibra, metal desnudo o grietas finas.'
	},
	field: 'blast-media',
	applies: onlyScuffed,
	expects: () => ({ kind: 'one-of', options: ['scuff'] })
} satisfies Rule;
