import type { Text } from './text';

/** The six stages of the work, in working order. */
export const STATIONS = ['intake', 'preparation', 'mixing', 'spraying', 'curing', 'inspection'] as const;
export type Station = (typeof STATIONS)[number];

/** What is proven and signed: the six stations' skills, and safety, which is one gate over all of them. */
export type Competency = Station | 'safety';

/** Finer groups of skills; they only group lessons and practice. */
export const SKILLS = [
	'C1',
	'C2',
	'C3',
	'C4',
	'C5',
	'C6',
	'C7',
	'C8',
	'C9',
	'C10',
	'C11',
	'C12',
	'C13',
	'C14'
] as const;
export type Skill = (typeof SKILLS)[number];

export const STATION_NAMES: Record<Competency, Text> = {
	intake: { en: 'Intake', es: 'Recepción' },
	preparation: { en: 'Preparation', es: 'Preparación' },
	mixing: { en: 'Mixing', es: 'Mezcla' },
	spraying: { en: 'Spraying', es: 'Aplicación' },
	curing: { en: 'Curing', es: 'Curado' },
	inspection: { en: 'Inspection', es: 'Inspección' },
	safety: { en: 'Safety', es: 'Seguridad' }
};
