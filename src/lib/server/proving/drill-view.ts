import type { RequestEvent } from '@sveltejs/kit';
import { field, STATION_NAMES, STATIONS, type FieldId } from '$lib/engine';
import { say } from '$lib/i18n';
import { answerText, fieldView, sheetView, ticketView } from '$lib/paper';
import type { Drill } from '$lib/records';
import { requirePerson } from '../guard';
import { readerOf } from '../reader';
import { shopInForce } from '../shop-in-force';
import { provingDraft } from './draft';
import { askedOf, ticketOf } from './issued';

/** The person's own open drill of a run; undefined for any other. */
export function ownDrill(event: RequestEvent): Drill | undefined {
	const drill = event.locals.app.journal.state.attempts.drills.get(event.params.drill ?? '');
	const own = drill?.person === requirePerson(event).id && drill.run === event.params.run;
	return own ? drill : undefined;
}

/**
 * A proving drill as its page shows it: the ticket, the other stations as filled in, the fields asked. Nothing of what
 * is expected, and no seed.
 */
export function drillView(event: RequestEvent, drill: Drill) {
	const { app } = event.locals;
	const reader = readerOf(event);
	const { job, given } = ticketOf(drill);
	const { shop } = shopInForce(app, job.on);
	const sheet = shop.sheets[job.coating];
	if (!sheet) throw new Error(`the sheet ${job.coating} of drill ${drill.drill} is gone`);
	const draft = provingDraft(app, drill.person, drill.drill);
	const filledIn = Object.keys(given) as FieldId[];
	return {
		ticket: ticketView(job, shop, reader),
		sheet: sheetView(sheet, job.on, reader),
		given: STATIONS.map((station) => ({
			station: say(STATION_NAMES[station], reader.lang),
			rows: filledIn
				.filter((id) => field(id).station === station)
				.map((id) => ({
					label: say(field(id).label, reader.lang),
					value: answerText(id, given[id], reader),
					wide: true
				}))
		})).filter(({ rows }) => rows.length),
		fields: askedOf(drill).map((id) => fieldView(id, draft[id] ?? {}, reader)),
		review: askedOf(drill).map((id) => ({
			label: say(field(id).label, reader.lang),
			value: draft[id]?.problem ? (draft[id].typed ?? '') : answerText(id, draft[id]?.answer, reader),
			unreadable: Boolean(draft[id]?.problem)
		}))
	};
}
