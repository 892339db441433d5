import { commonPractice } from '../../sources/provenance';
import type { Rule } from '../rule';
import { blastings, suitableMedia } from './blasting';

export default {
	id: 'media-suits-metal',
	station: 'preparation',
	competency: 'preparation',
	skill: 'C7',
	title: { en: 'A medium that suits every part', es: 'Un abrasivo adecuado para cada pieza' },
	why: {
		en: 'Coarse grain digs deeper than a film of a few hundredths of a millimetre; bead or soft media leave too little key on hard metal. Where nothing suits, scuff by hand.',
		es: 'El grano grueso cava más hondo que una película de unas centésimas de milímetro; microesfera o abrasivo blando dejan poco anclaje en metal duro. Si nada sirve, lije a mano.'
	},
	severity: 'quality',
	authority: 'shop',
	provenance: commonPractice,
	lesson: 'blast-settings#media-suits-metal',
	breaks: { wrong: ['pinpoint-rust', 'flaking', 'grit-inclusion'] },
	outcome: {
		en: 'Peaks stand through the film, or it does not hold.',
		es: 'Los picos atraviesan la película, o esta no agarra.'
	},
	evidence: {
		en: 'Read the label of what is in the cabinet, and measure the profile with a stylus.',
		es: 'Lea la etiqueta de lo que hay en la cabina, y mida el perfil con palpador.'
	},
	field: 'blast-media',
	applies: (seen) => suitableMedia(seen) !== undefined,
	expects(seen) {
		const media = suitableMedia(seen)!;
		const scuffWill = media.length === 0 || blastings(seen)!.every((one) => one.scuffWill);
		return { kind: 'one-of', options: scuffWill ? [...media, 'scuff'] : media };
	}
} satisfies Rule;
