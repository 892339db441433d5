import { cureTemperature } from '../../plan/cure-window';
import { shopValue } from '../../shop/shop';
import { commonPractice } from '../../sources/provenance';
import { degrees } from '../../units/construct';
import type { Rule } from '../rule';

export default {
	id: 'cool-before-handling',
	station: 'curing',
	competency: 'curing',
	skill: 'C11',
	title: {
		en: 'Parts cool before they are handled and measured',
		es: 'Las piezas enfrían antes de manipular y medir'
	},
	why: {
		en: 'A hot film is still soft: it takes prints and sticks to whatever it is stacked on, and a gauge reads wrong on it.',
		es: 'Una película caliente sigue blanda: toma marcas, se pega a lo que la toca, y el medidor lee mal sobre ella.'
	},
	severity: 'quality',
	authority: 'shop',
	provenance: commonPractice,
	lesson: 'cooling#cool-before-handling',
	breaks: { high: ['fingerprint', 'rack-mark'] },
	outcome: {
		en: 'Prints of gloves and of whatever touched it set into the film; film readings are off.',
		es: 'Marcas de guante y de contacto quedan en la película; las lecturas de espesor salen mal.'
	},
	evidence: {
		en: 'Look for the shape of a glove, a hook or the part stacked on top, and ask when the load was taken down.',
		es: 'Busque marcas con forma de guante, gancho o pieza apilada, y pregunte cuándo se descolgó la carga.'
	},
	field: 'cool-to',
	applies: (seen) => cureTemperature(seen) !== undefined,
	expects: ({ shop }) => ({ kind: 'at-most', max: shopValue(shop, 'cure.cool-to'), amber: degrees(5) })
} satisfies Rule;
