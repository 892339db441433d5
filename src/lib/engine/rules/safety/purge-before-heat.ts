import { cureTemperature } from '../../plan/cure-window';
import { cite } from '../../sources/provenance';
import type { Rule } from '../rule';

export default {
	id: 'purge-before-heat',
	station: 'curing',
	competency: 'safety',
	skill: 'C3',
	title: { en: 'The oven is purged before the heat comes on', es: 'El horno se purga antes de dar calor' },
	why: {
		en: 'Vapour or gas left in the oven lights when the heat comes on. Fan first, purge to its end, then heat; wet parts only go where the fan is running.',
		es: 'El vapor o gas que quedó en el horno enciende al dar calor. Primero el extractor, la purga completa y luego el calor; las piezas húmedas solo entran con el extractor en marcha.'
	},
	severity: 'safety-stop',
	authority: 'shop',
	provenance: cite('osha-1910-107', '(j)', {
		read: 'state twin: ventilation runs first and is interlocked with the heat'
	}),
	lesson: 'loading-the-oven#purge-before-heat',
	breaks: {},
	outcome: {
		en: 'The oven explodes at start-up.',
		es: 'El horno explota al arrancar.'
	},
	evidence: {
		en: 'Watch one start, and see that the interlock refuses heat with the fan off.',
		es: 'Observe un arranque y compruebe que el enclavamiento niega el calor con el extractor apagado.'
	},
	field: 'oven-start',
	applies: (seen) => cureTemperature(seen) !== undefined,
	expects: () => ({
		kind: 'order',
		before: [
			['fan-on', 'purge'],
			['fan-on', 'load'],
			['purge', 'heat']
		]
	})
} satisfies Rule;
