import { EXAMPLE_JOBS, type Job, type Shop } from '$lib/engine';
import type { Conditions } from './conditions';

/** A one-part coating comes without hardener, whatever the example says. */
const shelfFor = (parts: number, shelf: Job['shelf']): Job['shelf'] =>
	parts === 2 ? shelf : { ...shelf, hardenerExpires: null, hardenerState: null };

/**
 * Jobs that the one in question may have been: every example job, with what is known of it put in. Where the coating
 * is not known, with each sheet of the shop.
 */
export function jobCompletions(known: Conditions, shop: Shop): readonly Job[] {
	const { coating, material, air, humidity, part, paint } = known;
	const sheets = Object.values(shop.sheets).filter(({ id }) => coating === null || id === coating);
	return EXAMPLE_JOBS.flatMap(({ on }) => {
		const example = on(shop.on);
		const job = {
			...example,
			ticket: 'completion',
			weather: {
				air: (air as Job['weather']['air'] | null) ?? example.weather.air,
				humidity: (humidity as Job['weather']['humidity'] | null) ?? example.weather.humidity,
				part: (part as Job['weather']['part'] | null) ?? example.weather.part,
				paint: (paint as Job['weather']['paint'] | null) ?? example.weather.paint
			},
			parts: material === null ? example.parts : example.parts.map((one) => ({ ...one, material }))
		};
		return sheets.map((sheet) => ({
			...job,
			coating: sheet.id,
			shelf: shelfFor(sheet.parts, example.shelf)
		}));
	});
}
