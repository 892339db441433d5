import type { Traced } from '../plan/trace';
import { commonPractice } from '../sources/provenance';
import { count, degrees, fraction, kilojoulesPerMole } from '../units/construct';
import type { Dimension, Si } from '../units/dimension';

export const teaching = <D extends Dimension>(
	dimension: D,
	value: Si<NoInfer<D>>,
	en: string,
	es: string
): Traced<D> => ({
	value,
	dimension,
	label: { en: `Teaching model: ${en}`, es: `Modelo didáctico: ${es}` },
	origin: { kind: 'teaching-model' },
	provenance: commonPractice,
	inputs: {}
});

/** Numbers of the teaching model. They order consequences and decide no answer, no plan and no release. */
export const TEACHING = {
	activation: teaching(
		'molar-energy',
		kilojoulesPerMole(67),
		'activation energy of a curing film',
		'energía de activación de una película que cura'
	),
	flashLeaves: teaching(
		'fraction',
		fraction(0.25),
		'part of the solvent still in the film after the shortest flash-off',
		'parte del solvente que queda en la película tras la evaporación más corta'
	),
	farInAmbers: teaching('count', count(3), 'amber widths to far outside', 'anchos de ámbar hasta muy fuera'),
	farInLimits: teaching(
		'fraction',
		fraction(0.5),
		'part of the limit to far outside',
		'parte del límite hasta muy fuera'
	),
	/** Half of a limit means nothing on a temperature scale. */
	farTemperature: teaching(
		'temperature-difference',
		degrees(15),
		'degrees to far outside',
		'grados hasta muy fuera'
	),
	nearInLimits: teaching(
		'fraction',
		fraction(0.1),
		'part of the limit that is just outside',
		'parte del límite que es apenas fuera'
	),
	leftWhenSlight: teaching('fraction', fraction(0.85), 'left by a slight defect', 'queda con defecto leve'),
	leftWhenClear: teaching('fraction', fraction(0.6), 'left by a clear defect', 'queda con defecto claro'),
	leftWhenSevere: teaching('fraction', fraction(0.3), 'left by a severe defect', 'queda con defecto grave')
} as const;
