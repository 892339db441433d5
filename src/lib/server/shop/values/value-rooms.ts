import { SHOP_VALUES, type ShopValueId, type Station } from '$lib/engine';

type Kind = ShopValueId extends infer Id ? (Id extends `${infer First}.${string}` ? First : never) : never;

/** Where on the way through the shop a value is met; `practical` is for the witness panels only. */
export type ValueRoom = Station | 'practical' | 'safety';

/** The station of each kind of value, by the first word of its id. */
const ROOM_OF: Readonly<Record<Kind, ValueRoom>> = {
	cap: 'intake',
	'part-cap': 'intake',
	growth: 'intake',
	tape: 'intake',
	blast: 'preparation',
	profile: 'preparation',
	'blast-to-coat': 'preparation',
	'bake-out': 'preparation',
	drying: 'preparation',
	mix: 'mixing',
	spray: 'spraying',
	gun: 'spraying',
	film: 'spraying',
	cure: 'curing',
	inspection: 'inspection',
	practical: 'practical',
	gear: 'safety'
};

export const VALUE_ROOMS: readonly ValueRoom[] = [
	'intake',
	'preparation',
	'mixing',
	'spraying',
	'curing',
	'inspection',
	'practical',
	'safety'
];

/** Whether a text is the id of a shop value. */
export const isShopValue = (id: string): id is ShopValueId => Object.hasOwn(SHOP_VALUES, id);

/** Whether a value is one line of the hazard assessment: gear listed for a task or not. */
export const isGear = (id: ShopValueId): boolean => id.startsWith('gear.');

/** The values of a station, in the order the engine lists them. */
export const valuesOf = (room: ValueRoom): ShopValueId[] =>
	(Object.keys(SHOP_VALUES) as ShopValueId[]).filter((id) => ROOM_OF[id.split('.')[0] as Kind] === room);
