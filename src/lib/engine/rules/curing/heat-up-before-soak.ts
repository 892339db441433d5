import { heatUpKnown, slowestHeatUp } from '../../plan/slowest-heat-up';
import { shopValue } from '../../shop/shop';
import { cite } from '../../sources/provenance';
import type { Rule } from '../rule';

export default {
	id: 'heat-up-before-soak',
	station: 'curing',
	competency: 'curing',
	skill: 'C11',
	title: {
		en: 'Know how long the load heats before the hold begins',
		es: 'Saber cuánto calienta la carga antes de que empiece el tiempo'
	},
	why: {
		en: 'The hold begins when the slowest wall is hot. Twice the wall, twice the time. For the same wall aluminium takes two thirds of steel’s time, plastic about half, thick plastic more.',
		es: 'El curado cuenta desde que la pared más lenta está caliente. Doble pared, doble tiempo. A igual pared: aluminio, dos tercios del acero; plástico, cerca de la mitad; plástico grueso, más.'
	},
	severity: 'quality',
	authority: 'tool',
	provenance: cite(
		'oven-cure-article',
		'oven curing: thick sections heat slowly, thin ones overheat',
		{ read: 'article' },
		'paper'
	),
	lesson: 'soak#heat-up-before-soak',
	breaks: { low: ['soft-film', 'gloss-off'], high: ['over-cure', 'colour-shift'] },
	outcome: {
		en: 'Too short: thick parts stay soft. Too long: thin parts brown.',
		es: 'Muy corto: piezas gruesas blandas. Muy largo: piezas delgadas oscurecidas.'
	},
	evidence: {
		en: 'On the oven chart count the minutes from the door to the slowest part in the window, and keep them beside wall and material for the next load.',
		es: 'En el registro del horno cuente los minutos desde la puerta hasta la pieza más lenta en la ventana, y guárdelos junto a pared y material para la próxima carga.'
	},
	field: 'heat-up',
	applies: heatUpKnown,
	expects(seen) {
		const value = slowestHeatUp(seen)!;
		const tolerance = shopValue(seen.shop, 'cure.heat-up-tolerance');
		return { kind: 'computed', value, tolerance, amber: value.value * 0.2 };
	}
} satisfies Rule;
