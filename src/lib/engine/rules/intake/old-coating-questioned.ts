import { cite } from '../../sources/provenance';
import type { Rule } from '../rule';
import { hasOldCoating } from './dangers';

export default {
	id: 'old-coating-questioned',
	station: 'intake',
	competency: 'intake',
	skill: 'C4',
	title: { en: 'An old coating is questioned first', es: 'Un recubrimiento anterior se pregunta primero' },
	why: {
		en: 'An unknown old film may hold lead, chromium or cadmium, which blasting turns into dust you breathe. New film lifts with whatever is below it.',
		es: 'Una película vieja desconocida puede tener plomo, cromo o cadmio, que al granallar se vuelven polvo que usted respira. La nueva se levanta con ella.'
	},
	severity: 'safety-stop',
	authority: 'shop',
	provenance: cite('blasting-lead-cadmium', 'exposure far above the limits', { read: 'abstract' }, 'paper'),
	lesson: 'materials#old-coating-questioned',
	breaks: { wrong: ['wrinkling', 'intercoat-peel', 'fisheyes'] },
	outcome: {
		en: 'Toxic dust gets into the cabinet and the air, or both films come off together.',
		es: 'Polvo tóxico en la cabina y el aire, o ambas películas se desprenden juntas.'
	},
	evidence: {
		en: 'Look at the receiving photo and ask which film it was.',
		es: 'Mire la foto de recepción y pregunte qué película era.'
	},
	field: 'decision',
	applies: hasOldCoating,
	expects: () => ({ kind: 'one-of', options: ['ask', 'refuse'] })
} satisfies Rule;
