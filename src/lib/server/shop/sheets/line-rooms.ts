import type { LineId } from '$lib/engine';

/** Where on the way through the shop a line of a data sheet is met; `store` is the shelf before it. */
export type LineRoom = 'store' | 'mixing' | 'spraying' | 'curing' | 'inspection';

const ROOM_OF: Readonly<Record<LineId, LineRoom>> = {
	'dry-film': 'spraying',
	'volume-solids': 'spraying',
	coats: 'spraying',
	agitate: 'mixing',
	'mix-ratio': 'mixing',
	'mix-ratio-band': 'mixing',
	'density-base': 'mixing',
	'density-hardener': 'mixing',
	stir: 'mixing',
	induction: 'mixing',
	'pot-life': 'mixing',
	'pot-life-at': 'mixing',
	thinner: 'mixing',
	strainer: 'mixing',
	viscosity: 'mixing',
	'air-temperature': 'spraying',
	humidity: 'spraying',
	'cap-pressure': 'spraying',
	distance: 'spraying',
	interval: 'spraying',
	flash: 'curing',
	'cure-metal-temperature': 'curing',
	'cure-metal-hold': 'curing',
	'cure-polymer-temperature': 'curing',
	'cure-polymer-hold': 'curing',
	'cure-laminate-temperature': 'curing',
	'cure-laminate-hold': 'curing',
	'solvent-rubs': 'inspection',
	'adhesion-class': 'inspection',
	storage: 'store',
	'fume-above': 'curing',
	'solvent-share': 'curing'
};

export const LINE_ROOMS: readonly LineRoom[] = ['store', 'mixing', 'spraying', 'curing', 'inspection'];

export const LINE_IDS = Object.keys(ROOM_OF) as LineId[];

/** The lines met at a place, in the order of a sheet. */
export const linesOf = (room: LineRoom): LineId[] => LINE_IDS.filter((id) => ROOM_OF[id] === room);
