import { materials } from '../../plan/materials';
import type { Situation } from '../../plan/situation';
import { cite } from '../../sources/provenance';
import type { SubstrateId } from '../../substrates/substrates';
import type { Rule } from '../rule';

const ETCHED_BY_ALKALI: readonly SubstrateId[] = [
	'aluminium-6061',
	'aluminium-7075',
	'aluminium-casting',
	'anodised-aluminium',
	'magnesium',
	'zinc-die-cast'
];
/** So easily attacked that a mild cleaner is as right as solvent, oil or not. */
const MILD_WILL_DO: readonly SubstrateId[] = ['zinc-die-cast'];

function suiting(seen: Situation): string[] {
	if (seen.class !== 'metal') return ['mild-detergent'];
	const oily = seen.job.parts.some(({ surface }) => surface !== 'bare');
	return [
		'solvent-immersion',
		...(materials(seen).some((material) => ETCHED_BY_ALKALI.includes(material)) ? [] : ['aqueous']),
		...(oily ? [] : ['ketone-wipe']),
		...(!oily || materials(seen).every((material) => MILD_WILL_DO.includes(material))
			? ['mild-detergent']
			: [])
	];
}

export default {
	id: 'cleaner-suits-material',
	station: 'preparation',
	competency: 'preparation',
	skill: 'C5',
	title: { en: 'A cleaner the material can take', es: 'Un limpiador que el material aguante' },
	why: {
		en: 'Strong solvent cracks a stressed plastic, hot alkali etches aluminium and zinc, and a wipe alone only moves machining oil around. The most delicate part on the ticket decides.',
		es: 'Un solvente fuerte agrieta un plástico con tensiones, el álcali caliente ataca el aluminio y el zinc, y un paño solo reparte el aceite de mecanizado. Decide la pieza más delicada de la orden.'
	},
	severity: 'quality',
	authority: 'shop',
	provenance: cite('stress-cracking', 'stress and fluid together; amorphous plastics worst', {
		read: 'page'
	}),
	lesson: 'surface-preparation#cleaner-suits-material',
	breaks: { wrong: ['solvent-crazing', 'fisheyes', 'flaking'] },
	outcome: {
		en: 'The plastic crazes in minutes or days, the metal is etched, or oil stays and the film pits.',
		es: 'El plástico se fisura en minutos o días, el metal queda atacado, o queda aceite y la película hace cráteres.'
	},
	evidence: {
		en: 'Look for silvery hair cracks at gates and corners, and wipe with a white cloth.',
		es: 'Busque grietas finas plateadas en entradas de inyección y esquinas, y pase un paño blanco.'
	},
	field: 'clean-method',
	applies: () => true,
	expects(seen) {
		return { kind: 'one-of', options: suiting(seen) };
	}
} satisfies Rule;
