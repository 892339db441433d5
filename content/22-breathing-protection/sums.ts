import {
	count,
	given,
	maximumUse,
	mixtureExposure,
	oneNumber,
	percent,
	PROTECTION_FACTORS,
	PROTECTION_FACTORS_SOURCE,
	SOLVENT_SOURCES,
	SOLVENTS,
	type SolventId
} from '$lib/engine';
import type { LessonSum } from '$lib/lessons';

const { toluene } = SOLVENTS;

const mixed = (
	[
		['acetone', 400],
		['toluene', 80],
		['xylenes', 25]
	] as const satisfies readonly (readonly [SolventId, number])[]
).map(([id, ppm]) => {
	const { name, osha } = SOLVENTS[id];
	return {
		measured: given('fraction', percent(ppm / 1e4), {
			en: `Measured over the shift: ${name.en}, C`,
			es: `Medido en el turno: ${name.es}, C`
		}),
		limit: given(
			'fraction',
			osha.average,
			{ en: `Legal limit: ${name.en}, L`, es: `Límite legal: ${name.es}, L` },
			SOLVENT_SOURCES.osha
		)
	};
});
const mixture = {
	concentrations: mixed.map(({ measured }) => measured),
	limits: mixed.map(({ limit }) => limit)
};

export default [
	{
		id: 'three-solvents-in-one-thinner',
		asks: {
			en: 'The air at the bench holds three solvents of one thinner, each below its own limit. Is that within the limit?',
			es: 'El aire del banco trae tres solventes de un mismo diluyente, cada uno por debajo de su límite. ¿Está dentro del límite?'
		},
		inAir: true,
		work: () =>
			oneNumber(
				mixtureExposure.share,
				mixture,
				'fraction',
				{ en: 'All together, E', es: 'Todos juntos, E' },
				({ sum }) => sum
			),
		so: () =>
			mixtureExposure.share.at({
				concentrations: mixture.concentrations.map(({ value }) => value),
				limits: mixture.limits.map(({ value }) => value)
			}).over
				? { en: 'Together they are over the limit.', es: 'Juntos pasan del límite.' }
				: { en: 'Together they are within the limit.', es: 'Juntos quedan dentro del límite.' }
	},
	{
		id: 'half-mask-in-toluene',
		asks: {
			en: 'Up to what toluene in the air may a half mask with the right, fresh cartridges be worn at all?',
			es: '¿Hasta cuánto tolueno en el aire se puede usar, cuando mucho, una media cara con los cartuchos correctos y nuevos?'
		},
		inAir: true,
		work: () =>
			maximumUse.share.of({
				protection: given(
					'count',
					count(PROTECTION_FACTORS['air-purifying'].factors.half),
					{ en: 'Protection factor of a half mask, APF', es: 'Factor de protección de media cara, APF' },
					PROTECTION_FACTORS_SOURCE
				),
				limit: given(
					'fraction',
					toluene.osha.average,
					{ en: 'Legal limit of toluene (limit)', es: 'Límite legal del tolueno (limit)' },
					SOLVENT_SOURCES.osha
				),
				danger: given(
					'fraction',
					toluene.niosh.dangerous,
					{
						en: 'Immediately dangerous to life or health, IDLH',
						es: 'Inmediatamente peligroso para la vida o la salud, IDLH'
					},
					SOLVENT_SOURCES.niosh
				)
			})
	}
] as const satisfies readonly LessonSum[];
