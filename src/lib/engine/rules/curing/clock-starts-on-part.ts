import { cureTemperature } from '../../plan/cure-window';
import { cite } from '../../sources/provenance';
import type { Rule } from '../rule';

export default {
	id: 'clock-starts-on-part',
	station: 'curing',
	competency: 'curing',
	skill: 'C11',
	title: {
		en: 'The cure clock starts on the slowest part',
		es: 'El reloj del curado arranca con la pieza más lenta'
	},
	why: {
		en: 'Oven air is hot minutes before the metal is. Time counted from the door or the display is taken away from the cure.',
		es: 'El aire del horno está caliente minutos antes que el metal. El tiempo contado desde la puerta o la pantalla se le quita al curado.'
	},
	severity: 'quality',
	authority: 'shop',
	provenance: cite(
		'oven-cure-article',
		'oven curing: the schedule means component temperature',
		{ read: 'article' },
		'paper'
	),
	lesson: 'soak#clock-starts-on-part',
	breaks: { wrong: ['soft-film', 'gloss-off'] },
	outcome: {
		en: 'The heavy parts get a shorter cure than the sheet asks and stay soft.',
		es: 'Las piezas pesadas reciben menos curado del que pide la hoja y quedan blandas.'
	},
	evidence: {
		en: 'Lay the time written for the start of the hold beside the curve of the slowest part on the oven chart.',
		es: 'Compare la hora anotada de inicio con la curva de la pieza más lenta en el registro del horno.'
	},
	field: 'clock-starts',
	applies: (seen) => cureTemperature(seen) !== undefined,
	expects: () => ({ kind: 'one-of', options: ['part'] })
} satisfies Rule;
