import { materials } from '../../plan/materials';
import { commonPractice } from '../../sources/provenance';
import { substrate } from '../../substrates/substrates';
import type { Rule } from '../rule';
import { suitableMedia } from './blasting';

export default {
	id: 'iron-free-media',
	station: 'preparation',
	competency: 'preparation',
	skill: 'C7',
	title: {
		en: 'No steel grit on metals that must stay free of iron',
		es: 'Nada de granalla de acero en metales que deben quedar sin hierro'
	},
	why: {
		en: 'Steel grit leaves iron in stainless, aluminium, titanium and brass. It rusts under the film and lifts it from below.',
		es: 'La granalla de acero deja hierro en el inoxidable, el aluminio, el titanio y el latón. Se oxida bajo la película y la levanta desde abajo.'
	},
	severity: 'quality',
	authority: 'shop',
	provenance: commonPractice,
	lesson: 'blast-settings#iron-free-media',
	breaks: { wrong: ['cross-contamination', 'pinpoint-rust'] },
	outcome: {
		en: 'Rust spots come through on a metal that does not rust.',
		es: 'Salen motas de óxido en un metal que no se oxida.'
	},
	evidence: {
		en: 'Wet the blasted face overnight and look for orange dots, or use a magnet on the dust.',
		es: 'Deje la cara granallada húmeda una noche y busque motas naranja, o pase un imán por el polvo.'
	},
	field: 'blast-media',
	applies: (seen) =>
		suitableMedia(seen) !== undefined && materials(seen).some((material) => substrate(material).ironFree),
	expects: () => ({ kind: 'none-of', options: ['steel-grit'] })
} satisfies Rule;
