import {
	celsius,
	cite,
	cubicMetres,
	given,
	gramsPerMillilitre,
	hotExplosiveLimit,
	joulesPerKilogramKelvin,
	lowestLimit,
	millimetres,
	ovenSolventLoad,
	percent,
	radiantHeatUpTime,
	SOLVENT_SOURCES,
	SOLVENTS,
	wattsPerSquareMetreKelvin
} from '$lib/engine';
import type { LessonSum } from '$lib/lessons';

const { toluene } = SOLVENTS;
const STEEL = cite('incropera-heat', 'steel AISI 1010', { read: 'as worked in example 5.4' }, 'handbook');

export default [
	{
		id: 'closed-oven',
		asks: {
			en: 'A small oven whose air exchange has failed. How much toluene brings it to a quarter of what explodes?',
			es: 'Un horno chico al que le falló la renovación de aire. ¿Cuánto tolueno lo lleva a la cuarta parte de lo que explota?'
		},
		work() {
			const lowest = lowestLimit(toluene);
			const gas = given('temperature', celsius(150), { en: 'Air in the oven, T', es: 'Aire del horno, T' });
			return ovenSolventLoad.of({
				oven: given('volume', cubicMetres(2), { en: 'Inside of the oven', es: 'Interior del horno' }),
				gas,
				limit: hotExplosiveLimit.of({
					limit: given(
						'fraction',
						lowest.limit,
						{ en: 'Lower explosive limit, cold', es: 'Límite inferior de explosividad, en frío' },
						lowest.provenance
					),
					gas
				}),
				share: given('fraction', percent(25), {
					en: 'Share of the limit kept to (share)',
					es: 'Parte del límite que se respeta (share)'
				}),
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
				)
			});
		}
	},
	{
		id: 'cover-and-block',
		asks: {
			en: 'A thin steel cover and a thick steel block go in together. When is each as hot as the sheet asks?',
			es: 'Una tapa delgada y un bloque grueso, de acero, entran juntos. ¿Cuándo está cada uno a la temperatura que pide la hoja?'
		},
		work() {
			const shared = {
				density: given(
					'density',
					gramsPerMillilitre(7.832),
					{ en: 'Density of steel, ρ', es: 'Densidad del acero, ρ' },
					STEEL
				),
				heat: given(
					'specific-heat',
					joulesPerKilogramKelvin(434),
					{ en: 'Specific heat of steel, c', es: 'Calor específico del acero, c' },
					STEEL
				),
				heatTransfer: given('heat-transfer', wattsPerSquareMetreKelvin(15), {
					en: 'Heat transfer from moving air, h',
					es: 'Transferencia de calor del aire en movimiento, h'
				}),
				emissivity: given('fraction', percent(80), {
					en: 'Emissivity of the coated face, ε',
					es: 'Emisividad de la cara recubierta, ε'
				}),
				start: given('temperature', celsius(20), {
					en: 'Parts at the start, T₀',
					es: 'Piezas al empezar, T₀'
				}),
				air: given('temperature', celsius(175), {
					en: 'Air and walls of the oven, T∞',
					es: 'Aire y paredes del horno, T∞'
				}),
				target: given('temperature', celsius(150), {
					en: 'Part to reach, T',
					es: 'La pieza debe llegar a, T'
				})
			};
			const of = (half: number, en: string, es: string) =>
				radiantHeatUpTime.of({ ...shared, depth: given('length', millimetres(half), { en, es }) });
			return [
				of(0.75, 'Half the wall of the cover, L', 'Media pared de la tapa, L'),
				of(12.5, 'Half the wall of the block, L', 'Media pared del bloque, L')
			];
		}
	}
] as const satisfies readonly LessonSum[];
