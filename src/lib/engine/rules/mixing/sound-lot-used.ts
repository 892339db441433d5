import { commonPractice } from '../../sources/provenance';
import type { Rule } from '../rule';
import coldCanWarmsUp from './cold-can-warms-up';
import hardenerSound from './hardener-sound';
import lotInDate from './lot-in-date';

export default {
	id: 'sound-lot-used',
	station: 'mixing',
	competency: 'mixing',
	skill: 'C8',
	title: { en: 'A sound lot is used', es: 'Un lote en buen estado se usa' },
	why: {
		en: 'In date, clear and at shop temperature: nothing speaks against it, and waiting or throwing it away helps nobody.',
		es: 'En fecha, transparente y a la temperatura del taller: nada habla en su contra, y esperar o tirarlo no ayuda a nadie.'
	},
	severity: 'cost',
	authority: 'shop',
	provenance: commonPractice,
	lesson: 'lot-and-can#sound-lot-used',
	breaks: {},
	outcome: {
		en: 'Good coating goes to waste or the job waits for nothing.',
		es: 'Se desperdicia recubrimiento bueno o el trabajo espera en vano.'
	},
	evidence: {
		en: 'Check dates, hardener and temperature once more; all are in order.',
		es: 'Revise otra vez fechas, endurecedor y temperatura; todo está en orden.'
	},
	field: 'lot-action',
	applies: (seen) => ![lotInDate, hardenerSound, coldCanWarmsUp].some((rule) => rule.applies(seen)),
	expects: () => ({ kind: 'one-of', options: ['use'] })
} satisfies Rule;
