import { sheetWindow } from '../../plan/situation';
import { shopWindow } from '../../shop/shop';
import { commonPractice } from '../../sources/provenance';
import type { Rule } from '../rule';

export default {
	id: 'humidity-in-window',
	station: 'spraying',
	competency: 'spraying',
	skill: 'C9',
	title: { en: 'Humidity inside the sheet’s window', es: 'Humedad dentro de la ventana de la hoja' },
	why: {
		en: 'Moist air turns films milky, makes bubbles with isocyanate and lets steel rust under the film. Dry air charges the part and stalls films that cure with moisture.',
		es: 'El aire húmedo vela la película, forma burbujas con isocianato y oxida el acero bajo ella. El seco carga la pieza y detiene películas que curan con humedad.'
	},
	severity: 'quality',
	authority: 'data-sheet',
	provenance: commonPractice,
	lesson: 'air-and-dew-point#humidity-in-window',
	breaks: { wrong: ['blushing', 'pinholes', 'flash-rust', 'amine-bloom', 'soft-film'] },
	outcome: {
		en: 'Milky patches, bubbles, rust freckles; or dust and a film that stays soft.',
		es: 'Manchas lechosas, burbujas, pecas de óxido; o polvo y película blanda.'
	},
	evidence: {
		en: 'Read the humidity noted on the ticket against the data sheet.',
		es: 'Compare la humedad anotada en la orden con la hoja técnica.'
	},
	field: 'spray-go',
	applies(seen) {
		const { min, max } = sheetWindow(seen, 'humidity') ?? shopWindow(seen.shop, 'spray.humidity');
		const today = seen.job.weather.humidity;
		return today < min.value || today > max.value;
	},
	expects: () => ({ kind: 'one-of', options: ['no-go'] })
} satisfies Rule;
