import { sheetWindow } from '../../plan/situation';
import { shopWindow } from '../../shop/shop';
import { commonPractice } from '../../sources/provenance';
import type { Rule } from '../rule';

export default {
	id: 'air-in-window',
	station: 'spraying',
	competency: 'spraying',
	skill: 'C9',
	title: {
		en: 'Air temperature inside the sheet’s window',
		es: 'Temperatura del aire dentro de la ventana de la hoja'
	},
	why: {
		en: 'Air sets how fast solvent leaves. Cold air keeps the film wet too long; hot air dries the drops on their way.',
		es: 'El aire marca qué tan rápido se va el solvente. El aire frío deja la película húmeda demasiado tiempo; el caliente seca las gotas en el camino.'
	},
	severity: 'quality',
	authority: 'data-sheet',
	provenance: commonPractice,
	lesson: 'air-and-dew-point#air-in-window',
	breaks: { wrong: ['runs', 'dry-spray', 'orange-peel'] },
	outcome: {
		en: 'Too cold: runs and slow flash. Too hot: a dry, sandy film.',
		es: 'Muy frío: escurridos y evaporación lenta. Muy caliente: película seca y arenosa.'
	},
	evidence: {
		en: 'Read the air temperature noted on the ticket against the data sheet.',
		es: 'Compare la temperatura del aire anotada en la orden con la hoja técnica.'
	},
	field: 'spray-go',
	applies(seen) {
		const { min, max } = sheetWindow(seen, 'air-temperature') ?? shopWindow(seen.shop, 'spray.air');
		const today = seen.job.weather.air;
		return today < min.value || today > max.value;
	},
	expects: () => ({ kind: 'one-of', options: ['no-go'] })
} satisfies Rule;
