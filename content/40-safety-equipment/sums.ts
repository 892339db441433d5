import {
	celsius,
	count,
	decibels,
	dilutionAir,
	given,
	hearingProtector,
	hours,
	lowestLimit,
	maximumUse,
	millilitres,
	minutes,
	mixtureExposure,
	noiseExposure,
	oneNumber,
	percent,
	PROTECTION_FACTORS,
	PROTECTION_FACTORS_SOURCE,
	SOLVENT_SOURCES,
	SOLVENTS,
	vapourVolume,
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

const levels = [
	given('sound-level', decibels(98), { en: 'Noise at the cabinet', es: 'Ruido en la cabina' }),
	given('sound-level', decibels(102), { en: 'Noise at the blow-off', es: 'Ruido al sopletear' })
] as const;

export default [
	{
		id: 'blasting-shift',
		asks: {
			en: 'A shift with some hours at the cabinet and a little blow-off. How much of the permitted noise is that, by the law and by the health advice?',
			es: 'Un turno con unas horas en la cabina y algo de sopleteo. ¿Qué parte del ruido permitido es eso, según la ley y según la recomendación de salud?'
		},
		work() {
			const shift = {
				levels,
				durations: [
					given('duration', hours(2.5), { en: 'Time at the cabinet', es: 'Tiempo en la cabina' }),
					given('duration', minutes(30), { en: 'Time at the blow-off', es: 'Tiempo sopleteando' })
				]
			};
			const legal = oneNumber(
				noiseExposure.osha.dose,
				shift,
				'fraction',
				{ en: 'Dose by the law (dose)', es: 'Dosis según la ley (dose)' },
				(dose) => dose
			);
			return [
				noiseExposure.osha.average.of({ dose: legal }),
				oneNumber(
					noiseExposure.niosh.dose,
					shift,
					'fraction',
					{ en: 'Dose by the health advice', es: 'Dosis según la recomendación de salud' },
					(dose) => dose
				)
			];
		}
	},
	{
		id: 'under-the-plug',
		asks: {
			en: 'The pack of the ear plugs prints a rating. What reaches the ear on paper, and what to reckon with at work?',
			es: 'El empaque de los tapones trae un valor de reducción. ¿Qué llega al oído en el papel, y con qué hay que contar en el trabajo?'
		},
		work() {
			const plug = {
				level: levels[0],
				rating: given('count', count(25), { en: 'Rating printed, NRR', es: 'Valor impreso, NRR' })
			};
			return [hearingProtector.a.of(plug), hearingProtector.aHalved.of(plug)];
		}
	},
	{
		id: 'spilled-can',
		asks: {
			en: 'A small can of toluene tips over by the bench. How much vapour is that, and how much air keeps it at a quarter of what burns?',
			es: 'Una lata chica de tolueno se vuelca junto al banco. ¿Cuánto vapor es eso y cuánto aire lo mantiene en la cuarta parte de lo que arde?'
		},
		work() {
			const { limit, provenance } = lowestLimit(toluene);
			const vapour = vapourVolume.of({
				liquid: given('volume', millilitres(500), { en: 'Liquid spilled', es: 'Líquido derramado' }),
				density: given(
					'density',
					toluene.density,
					{ en: 'Density of toluene, ρ', es: 'Densidad del tolueno, ρ' },
					SOLVENT_SOURCES.density
				),
				molarMass: given(
					'molar-mass',
					toluene.molarMass,
					{ en: 'Molar mass, M', es: 'Masa molar, M' },
					SOLVENT_SOURCES.niosh
				),
				gas: given('temperature', celsius(25), { en: 'Air in the shop, T', es: 'Aire del taller, T' })
			});
			return dilutionAir.of({
				vapour,
				limit: given(
					'fraction',
					limit,
					{ en: 'Lower explosive limit, LEL', es: 'Límite inferior de explosividad, LEL' },
					provenance
				),
				share: given('fraction', percent(25), {
					en: 'Share of that limit kept to (share)',
					es: 'Parte de ese límite que se respeta (share)'
				})
			});
		}
	},
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
			es: '¿Hasta cuánto tolueno en el aire se puede usar, cuando mucho, una media máscara con los cartuchos correctos y nuevos?'
		},
		inAir: true,
		work: () =>
			maximumUse.share.of({
				protection: given(
					'count',
					count(PROTECTION_FACTORS['air-purifying'].factors.half),
					{ en: 'Protection factor of a half mask, APF', es: 'Factor de protección de media máscara, APF' },
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
						es: 'Peligro inmediato para la vida o la salud, IDLH'
					},
					SOLVENT_SOURCES.niosh
				)
			})
	}
] as const satisfies readonly LessonSum[];
