import type { DataSheet } from '../sheet';
import { value, window } from './line';

export default {
	id: 'demo-d-high-bake',
	title: 'Demo D: one-part high-bake film',
	lang: 'en',
	demo: true,
	family: 'D',
	parts: 1,
	basis: null,
	thinner: null,
	cup: 'iso-2431-4mm',
	rubSolvent: 'MEK',
	hazards: ['flammable', 'solvent-vapour', 'decomposition-fume'],
	filled: false,
	lines: {
		'dry-film': window(20, 30, 'µm'),
		'volume-solids': value(35, '%'),
		coats: window(1, 2, ''),
		agitate: window(5, 10, 'min'),
		strainer: window(100, 190, 'µm'),
		viscosity: window(32, 40, 's'),
		'air-temperature': window(18, 28, '°C'),
		humidity: window(35, 70, '%'),
		interval: window(5, 15, 'min'),
		flash: window(10, 20, 'min'),
		'cure-metal-temperature': window(235, 250, '°C'),
		'cure-metal-hold': window(20, 24, 'min'),
		'solvent-rubs': value(100, ''),
		'adhesion-class': value(1, ''),
		storage: window(10, 32, '°C'),
		'fume-above': value(340, '°C'),
		'solvent-share': value(8, '%')
	}
} satisfies DataSheet;
