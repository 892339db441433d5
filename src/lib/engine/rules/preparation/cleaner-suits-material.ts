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
		en: 'Strong solvent cracks stressed plastic, hot alkali etches aluminium and zinc, and a wipe alone just moves machining oil. The most delicate part decides.',
		es: 'El solvente fuerte agrieta plástico con tensiones, el álcali caliente ataca aluminio y zinc, y un paño solo reparte el aceite de mecanizado. Decide la pieza más delicada.'
	},
	severity: 'quality',
	authority: 'shop',
	provenance: cite('stress-cracking', 'stress and fluid together; amorphous plastics worst', {
		read: 'page'
	}),
	lesson: 'degreasing#cleaner-suits-material',
	breaks: { wrong: ['solvent-crazing', 'fisheyes', 'flaking'] },
	outcome: {
		en: 'Plastic crazes in minutes or days, metal is etched, or oil stays and the film pits.',
		es: 'Plástico fisurado en minutos o días, metal atacado, o aceite y cráteres.'
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
