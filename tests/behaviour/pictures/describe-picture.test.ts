import { describe, expect, test } from 'vitest';
import { DEFECTS } from '../../../src/lib/engine';
import { describePicture, PICTURE_IDS, SEVERITIES, VIEWS } from '../../../src/lib/pictures';

/** Words of a defect's name that would give it away; a word of the shop such as `film` gives nothing away. */
const OPEN = new Set([
	...[
		'film',
		'edge',
		'edges',
		'thin',
		'thick',
		'part',
		'line',
		'mark',
		'mask',
		'area',
		'spots',
		'bits',
		'coats'
	],
	...[
		'between',
		'under',
		'through',
		'does',
		'high',
		'low',
		'showing',
		'torn',
		'gloss',
		'colour',
		'too',
		'the'
	],
	...[
		'película',
		'bordes',
		'pieza',
		'línea',
		'zona',
		'entre',
		'bajo',
		'marca',
		'máscara',
		'manos',
		'delgados'
	],
	...[
		'muy',
		'gruesa',
		'que',
		'por',
		'del',
		'brillo',
		'color',
		'alto',
		'tejido',
		'borde',
		'falta',
		'seca',
		'sin',
		'aire'
	]
]);
const telling = (name: string) =>
	name
		.toLowerCase()
		.split(/[^\p{L}]+/u)
		.filter((word) => word.length > 2 && !OPEN.has(word));

describe.each(PICTURE_IDS)('%s in words', (defect) => {
	test.each(['en', 'es'] as const)('is told in %s without its name', (lang) => {
		const named = telling(DEFECTS[defect][lang]);
		for (const severity of SEVERITIES) {
			for (const view of VIEWS) {
				const words = describePicture({ defect, severity, seed: 1 }, view)[lang];
				expect(words.length).toBeGreaterThan(30);
				const said = words.toLowerCase().split(/[^\p{L}]+/u);
				expect(named.filter((word) => said.includes(word))).toEqual([]);
			}
		}
	});

	test('says how much of it there is', () => {
		for (const view of VIEWS) {
			const texts = SEVERITIES.map((severity) => describePicture({ defect, severity, seed: 1 }, view));
			expect(new Set(texts.map(({ en }) => en)).size).toBe(3);
			expect(new Set(texts.map(({ es }) => es)).size).toBe(3);
		}
	});
});
