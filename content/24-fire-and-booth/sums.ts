import {
	celsius,
	dilutionAir,
	given,
	lowestLimit,
	millilitres,
	percent,
	SOLVENT_SOURCES,
	SOLVENTS,
	vapourVolume
} from '$lib/engine';
import type { LessonSum } from '$lib/lessons';

const { toluene } = SOLVENTS;

export default [
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
	}
] as const satisfies readonly LessonSum[];
