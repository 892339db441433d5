import type { Skill as EngineSkill, Text } from '$lib/engine';
import type { AreaId } from './competency';

/** The fine groups of skills the engine's rules name, C1 to C14. */
export type SkillId = EngineSkill;

export type Skill = {
	readonly id: SkillId;
	readonly title: Text;
	/** Where its lessons and practice are grouped. A rule still names its own competency. */
	readonly area: AreaId;
	/** Whether a miss can hurt people: in all of it, in the part named by `danger`, or not. */
	readonly critical: 'whole' | 'part' | 'no';
	readonly danger?: Text;
};

/**
 * The fourteen skills and the area each belongs to.
 * C1–C3 concern people before parts and so belong to safety. C6 goes with intake, not preparation: what is taken
 * apart, masked and hung, and where, is decided from the drawing before anything is cleaned. C13 and C14 go with
 * inspection: a defect is named and a part released there, and a release needs its record; the waste-fire rules
 * of C14 are safety rules all the same.
 */
export const skills: readonly Skill[] = [
	{
		id: 'C1',
		title: { en: 'Hazard information and stop-work', es: 'Información de peligros y detener el trabajo' },
		area: 'safety',
		critical: 'whole'
	},
	{
		id: 'C2',
		title: { en: 'Breathing protection and isocyanates', es: 'Protección respiratoria e isocianatos' },
		area: 'safety',
		critical: 'whole'
	},
	{
		id: 'C3',
		title: { en: 'Flammables, booth and oven safety', es: 'Inflamables, seguridad de cabina y horno' },
		area: 'safety',
		critical: 'whole'
	},
	{
		id: 'C4',
		title: {
			en: 'Receiving inspection, material and heat limits',
			es: 'Inspección de recepción, material y límites de calor'
		},
		area: 'intake',
		critical: 'part',
		danger: { en: 'magnesium, polymers, closed cavities', es: 'magnesio, polímeros, cavidades cerradas' }
	},
	{
		id: 'C5',
		title: { en: 'Cleaning and water-break check', es: 'Limpieza y prueba de película de agua' },
		area: 'preparation',
		critical: 'no'
	},
	{
		id: 'C6',
		title: { en: 'Taking apart, masking, racking', es: 'Desmontar, enmascarar, colgar' },
		area: 'intake',
		critical: 'no'
	},
	{
		id: 'C7',
		title: { en: 'Abrasive blasting and blow-off', es: 'Granallado y soplado' },
		area: 'preparation',
		critical: 'part',
		danger: { en: 'silica dust, compressed air', es: 'polvo de sílice, aire comprimido' }
	},
	{
		id: 'C8',
		title: { en: 'Storage, ratio, pot life', es: 'Almacenamiento, proporción, vida de la mezcla' },
		area: 'mixing',
		critical: 'part',
		danger: { en: 'isocyanate hardeners', es: 'endurecedores con isocianato' }
	},
	{
		id: 'C9',
		title: { en: 'Ambient, air quality, gun set-up', es: 'Ambiente, calidad del aire, ajuste de la pistola' },
		area: 'spraying',
		critical: 'no'
	},
	{
		id: 'C10',
		title: { en: 'Spray technique and film build', es: 'Técnica de aplicación y espesor de película' },
		area: 'spraying',
		critical: 'part',
		danger: { en: 'isocyanate hardeners', es: 'endurecedores con isocianato' }
	},
	{
		id: 'C11',
		title: { en: 'Flash, oven load, cure', es: 'Evaporación, carga del horno, curado' },
		area: 'curing',
		critical: 'whole'
	},
	{
		id: 'C12',
		title: { en: 'Inspection and tests', es: 'Inspección y ensayos' },
		area: 'inspection',
		critical: 'no'
	},
	{
		id: 'C13',
		title: { en: 'Defects, rework, escalation', es: 'Defectos, retrabajo, a quién avisar' },
		area: 'inspection',
		critical: 'no'
	},
	{
		id: 'C14',
		title: { en: 'Clean-up, waste, record, release', es: 'Limpieza final, residuos, registro, liberación' },
		area: 'inspection',
		critical: 'part',
		danger: { en: 'waste that heats itself', es: 'residuos que se calientan solos' }
	}
];
