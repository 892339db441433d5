import { fromJob } from '../../plan/trace';
import { cite } from '../../sources/provenance';
import type { Rule } from '../rule';
import { gunNeeds } from './breathing';

export default {
	id: 'mask-on-until-clear',
	station: 'spraying',
	competency: 'safety',
	skill: 'C2',
	title: {
		en: 'Protection stays on until the booth is clear',
		es: 'La protección queda puesta hasta que la cabina está despejada'
	},
	why: {
		en: 'Mist hangs in the air after the last pass, and a visor lifted to see the gloss lets it in. This booth’s time is measured with smoke, not guessed.',
		es: 'La neblina queda en el aire tras la última pasada, y una visera levantada para ver el brillo la deja entrar. El tiempo de esta cabina se mide con humo, no se adivina.'
	},
	severity: 'safety-stop',
	authority: 'safety-data-sheet',
	provenance: cite('hse-isocyanate', 'clearance time: measured, booths 1 to 5 min, rooms up to 30 min', {
		read: 'stored pages'
	}),
	lesson: 'breathing-protection#mask-on-until-clear',
	breaks: {},
	outcome: {
		en: 'The highest exposure of the day, taken in half a minute.',
		es: 'La mayor exposición del día en medio minuto.'
	},
	evidence: {
		en: 'Ask when the visor was lifted and compare with the clearance time posted at the booth.',
		es: 'Pregunte cuándo se levantó la visera y compare con el tiempo de despeje puesto en la cabina.'
	},
	field: 'clearance-wait',
	applies: (seen) => gunNeeds(seen) !== undefined,
	expects({ job }) {
		return {
			kind: 'at-least',
			min: fromJob('bench.clearance', 'duration', job.bench.clearance, {
				en: 'Clearance time measured in this booth',
				es: 'Tiempo de despeje medido en esta cabina'
			}),
			amber: 0
		};
	}
} satisfies Rule;
