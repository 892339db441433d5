import { commonPractice } from '../../sources/provenance';
import type { Rule } from '../rule';
import airInWindow from './air-in-window';
import cleanDryAir from './clean-dry-air';
import humidityInWindow from './humidity-in-window';
import partNearShopTemperature from './part-near-shop-temperature';
import surfaceAboveDewPoint from './surface-above-dew-point';

const AGAINST: readonly Rule[] = [
	surfaceAboveDewPoint,
	humidityInWindow,
	airInWindow,
	partNearShopTemperature,
	cleanDryAir
];

export default {
	id: 'go-when-clear',
	station: 'spraying',
	competency: 'spraying',
	skill: 'C9',
	title: {
		en: 'Spray when air, part and weather are in order',
		es: 'Aplicar cuando aire, pieza y clima están en orden'
	},
	why: {
		en: 'Cleaned parts get no better by waiting: oxide grows and dust settles.',
		es: 'Las piezas limpias no mejoran esperando: crece óxido y se asienta polvo.'
	},
	severity: 'cost',
	authority: 'shop',
	provenance: commonPractice,
	lesson: 'air-and-dew-point#go-when-clear',
	breaks: {},
	outcome: {
		en: 'The clock from blasting to coating runs out for nothing.',
		es: 'El tiempo entre granallar y recubrir se agota en vano.'
	},
	evidence: {
		en: 'Go through the readings on the ticket again; all are inside their windows.',
		es: 'Repase las lecturas de la orden; todas están dentro de sus ventanas.'
	},
	field: 'spray-go',
	applies: (seen) => !AGAINST.some((rule) => rule.applies(seen)),
	expects: () => ({ kind: 'one-of', options: ['go'] })
} satisfies Rule;
