import { latestAge } from '../../plan/latest-age';
import { potLifeToday } from '../../plan/pot-life-today';
import { shopWindow } from '../../shop/shop';
import { cite } from '../../sources/provenance';
import type { Rule } from '../rule';

export default {
	id: 'use-within-pot-life',
	station: 'mixing',
	competency: 'mixing',
	skill: 'C8',
	title: {
		en: 'Use the mix well within its pot life today',
		es: 'Usar la mezcla bien dentro de su vida de hoy'
	},
	why: {
		en: 'Warm paint reacts faster: every 10 °C halves the time the sheet prints. Towards its end the mix flows and sticks poorly.',
		es: 'La pintura tibia reacciona más rápido: cada 10 °C reduce a la mitad el tiempo de la hoja. Hacia el final la mezcla fluye y se adhiere mal.'
	},
	severity: 'quality',
	authority: 'data-sheet',
	provenance: cite('ufgs-09-97-10', '§3.7.1', { read: 'pot life halves for a rise of 18 °F' }),
	lesson: 'pot-life#use-within-pot-life',
	breaks: { high: ['gel-bits', 'orange-peel', 'flaking'] },
	outcome: {
		en: 'Too late: stringy spray, gel bits, poor adhesion, a blocked gun. Far too early: good mix thrown away.',
		es: 'Muy tarde: hilos, grumos de gel, mala adhesión, pistola tapada. Demasiado pronto: se tira mezcla buena.'
	},
	evidence: {
		en: 'Compare the mix time on the cup, the paint temperature and the time of the last pass.',
		es: 'Compare la hora de mezcla del vaso, la temperatura de la pintura y la hora de la última pasada.'
	},
	field: 'use-within',
	applies: (seen) => potLifeToday(seen) !== undefined,
	expects(seen) {
		const life = potLifeToday(seen)!;
		const share = shopWindow(seen.shop, 'mix.pot-life-share');
		const [min, max] = [latestAge(life, share.min), latestAge(life, share.max)];
		return { kind: 'range', min, max, amber: life.value * 0.05 };
	}
} satisfies Rule;
