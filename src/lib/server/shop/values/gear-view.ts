import {
	GEAR,
	GEAR_TASKS,
	PROTECTIVE,
	shopValue,
	type GearTask,
	type Protective,
	type Shop,
	type ShopValueId
} from '$lib/engine';
import { say } from '$lib/i18n';
import type { Reader } from '$lib/paper';
import type { App } from '../../app';
import { nameOf } from '../../shown-text';

export const TASKS = Object.keys(GEAR_TASKS) as GearTask[];

export const gearId = (task: GearTask, item: Protective) => `gear.${task}.${item}` as const;

/** What the shop's written hazard assessment lists for a task on the shop's day. */
export const listedFor = (shop: Shop, task: GearTask): Protective[] =>
	PROTECTIVE.filter((item) => shopValue(shop, gearId(task, item)).value > 0);

/** The last decision of the shop on any gear of a task that has come into force. */
const lastSet = (app: App, task: GearTask, day: string, reader: Reader) => {
	const decided = PROTECTIVE.flatMap(
		(item) => app.journal.state.shop.values.get(gearId(task, item) satisfies ShopValueId) ?? []
	)
		.filter(({ from }) => from <= day)
		.reduce<{ from: string; by: string } | null>(
			(latest, each) => (!latest || each.from >= latest.from ? each : latest),
			null
		);
	return decided && { from: decided.from, by: nameOf(app, decided.by, reader.lang) };
};

/** The gear listed per task, in words, and when the shop last changed it; null where it stands as delivered. */
export const gearView = (app: App, reader: Reader, shop: Shop) => ({
	items: PROTECTIVE.map((id) => ({ id, label: say(GEAR[id], reader.lang) })),
	tasks: TASKS.map((id) => ({
		id,
		label: say(GEAR_TASKS[id], reader.lang),
		listed: listedFor(shop, id),
		set: lastSet(app, id, shop.on, reader)
	}))
});
