import type { DataSheet } from '../sheet';
import { value, window } from './line';

export default {
	id: 'demo-e-air-cured',
	title: 'Demo E: one-part air-cured thin film',
	lang: 'en',
	demo: true,
	family: 'E',
	parts: 1,
	basis: null,
	thinner: 'alcohol',
	cup: null,
	rubSolvent: null,
	hazards: ['flammable', 'solvent-vapour'],
	filled: false,
	lines: {
		'dry-film': window(8, 15, 'µm'),
		'volume-solids': value(30, '%'),
		coats: window(1, 2, ''),
		agitate: window(5, 10, 'min'),
		thinner: window(0, 5, '%'),
		strainer: window(45, 75, 'µm'),
		'air-temperature': window(18, 27, '°C'),
		humidity: window(40, 70, '%'),
		interval: window(10, 30, 'min'),
		'adhesion-class': value(1, ''),
		storage: window(10, 25, '°C')
	}
} satisfies DataSheet;
