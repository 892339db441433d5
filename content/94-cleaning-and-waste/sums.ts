import { celsius, given, millilitres, SOLVENT_SOURCES, SOLVENTS, vapourVolume } from '$lib/engine';
import type { LessonSum } from '$lib/lessons';

const { acetone } = SOLVENTS;

export default [
	{
		id: 'left-open',
		asks: {
			en: 'A cup of spent acetone is left open until it is dry. How much vapour went into the shop?',
			es: 'Un vaso de acetona usada se deja abierto hasta que se seca. ¿Cuánto vapor pasó al taller?'
		},
		work: () =>
			vapourVolume.of({
				liquid: given('volume', millilitres(250), {
					en: 'Liquid left open',
					es: 'Líquido que quedó abierto'
				}),
				density: given(
					'density',
					acetone.density,
					{ en: 'Density of acetone, ρ', es: 'Densidad de la acetona, ρ' },
					SOLVENT_SOURCES.density
				),
				molarMass: given(
					'molar-mass',
					acetone.molarMass,
					{ en: 'Molar mass, M', es: 'Masa molar, M' },
					SOLVENT_SOURCES.niosh
				),
				gas: given('temperature', celsius(25), { en: 'Air in the shop, T', es: 'Aire del taller, T' })
			})
	}
] as const satisfies readonly LessonSum[];
