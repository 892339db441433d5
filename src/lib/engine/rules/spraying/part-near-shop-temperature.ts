import { shopWindow } from '../../shop/shop';
import { commonPractice } from '../../sources/provenance';
import type { Rule } from '../rule';

export default {
	id: 'part-near-shop-temperature',
	station: 'spraying',
	competency: 'spraying',
	skill: 'C9',
	title: { en: 'Parts near shop temperature', es: 'Piezas cerca de la temperatura del taller' },
	why: {
		en: 'The part decides how the film behaves, not the air. Cold metal holds the solvent back; hot metal boils it off.',
		es: 'La pieza decide cómo se comporta la película, no el aire. El metal frío retiene el solvente; el caliente lo hierve.'
	},
	severity: 'quality',
	authority: 'shop',
	provenance: commonPractice,
	lesson: 'air-and-dew-point#part-near-shop-temperature',
	breaks: { wrong: ['cold-run', 'runs', 'dry-spray', 'solvent-pop'] },
	outcome: {
		en: 'Too cold: sags that show late. Too hot: dry spray and burst bubbles.',
		es: 'Muy fría: descuelgues que aparecen tarde. Muy caliente: aplicación seca y burbujas reventadas.'
	},
	evidence: {
		en: 'Hold a probe on the coldest and on the warmest part of the rack.',
		es: 'Ponga una sonda en la pieza más fría y en la más caliente del bastidor.'
	},
	field: 'spray-go',
	applies({ job, shop }) {
		const { min, max } = shopWindow(shop, 'spray.part');
		return job.weather.part < min.value || job.weather.part > max.value;
	},
	expects: () => ({ kind: 'one-of', options: ['no-go'] })
} satisfies Rule;
