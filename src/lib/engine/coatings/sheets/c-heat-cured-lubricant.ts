import type { DataSheet } from '../sheet';
import { value, window } from './line';

export default {
	id: 'demo-c-heat-cured-lubricant',
	title: 'Demo C: one-part heat-cured solid lubricant film',
	lang: 'en',
	demo: true,
	family: 'C',
	parts: 1,
	basis: null,
	thinner: 'ketone',
	cup: 'dip-cup-2',
	rubSolvent: null,
	hazards: ['flammable', 'solvent-vapour'],
	filled: true,
	lines: {
		'dry-film': window(10, 18, 'µm'),
		'volume-solids': value(22, '%'),
		coats: window(2, 3, ''),
		agitate: window(10, 20, 'min'),
		thinner: window(0, 15, '%'),
		strainer: window(75, 125, 'µm'),
		viscosity: window(20, 26, 's'),
		'air-temperature': window(18, 28, '°C'),
		humidity: window(35, 70, '%'),
		'cap-pressure': window(0.35, 0.55, 'bar'),
		distance: window(100, 150, 'mm'),
		interval: window(3, 10, 'min'),
		flash: window(5, 15, 'min'),
		'cure-metal-temperature': window(140, 160, '°C'),
		'cure-metal-hold': window(60, 90, 'min'),
		'adhesion-class': value(1, ''),
		storage: window(10, 27, '°C'),
		'solvent-share': value(10, '%')
	}
} satisfies DataSheet;
