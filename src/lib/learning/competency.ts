import type { Competency, Station, Text } from '$lib/engine';

/** The six competencies carry the ids of the stations; their names are the engine's station names. */
export type CompetencyId = Station;

/** What a rule, a lesson or a drill belongs to: one of the six competencies, or safety, which is a gate. */
export type AreaId = Competency;

type Area<Id extends AreaId> = { readonly id: Id; readonly holds: Text };

/** The six areas of work that are proven and signed one by one, in the order a part meets them. */
export const competencies: readonly Area<CompetencyId>[] = [
	{
		id: 'intake',
		holds: {
			en: 'Identify the material, its heat limits and fits; decide what is masked; accept, ask or refuse.',
			es: 'Identificar el material, sus límites de calor y sus ajustes; decidir qué se enmascara; aceptar, preguntar o rechazar.'
		}
	},
	{
		id: 'preparation',
		holds: {
			en: 'Handle, degrease, check with water, blast, blow off and bake out.',
			es: 'Manipular, desengrasar, comprobar con agua, granallar, soplar y desgasificar en horno.'
		}
	},
	{
		id: 'mixing',
		holds: {
			en: 'Control the material: ratio, pot life, viscosity and strainer.',
			es: 'Controlar el material: proporción, vida de la mezcla, viscosidad y colador.'
		}
	},
	{
		id: 'spraying',
		holds: {
			en: 'Judge the ambient conditions and the air, set the gun, build the film pass by pass.',
			es: 'Evaluar el ambiente y el aire, ajustar la pistola, formar la película pasada a pasada.'
		}
	},
	{
		id: 'curing',
		holds: {
			en: 'Flash off, load the oven, bring the part to temperature and hold it there.',
			es: 'Evaporar, cargar el horno, llevar la pieza a temperatura y mantenerla.'
		}
	},
	{
		id: 'inspection',
		holds: {
			en: 'Measure thickness, check cure, adhesion and gloss, name defects, release or hold.',
			es: 'Medir el espesor, comprobar curado, adherencia y brillo, nombrar defectos, liberar o retener.'
		}
	}
];

/** Measured on every proving drill of every competency and passed once per person; never signed by itself. */
export const safety: Area<'safety'> = {
	id: 'safety',
	holds: {
		en: 'Protective equipment, breathing protection, ignition, ventilation, dust, isocyanates, compressed air, ovens.',
		es: 'Equipo de protección, protección respiratoria, ignición, ventilación, polvo, isocianatos, aire comprimido, hornos.'
	}
};
