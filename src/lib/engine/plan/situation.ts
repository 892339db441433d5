import {
	linesOn,
	type StatedValue,
	type StatedWindow,
	type ValueLine,
	type WindowLine
} from '../coatings/in-force';
import type { DataSheet } from '../coatings/sheet';
import type { Job } from '../job/job';
import type { Shop } from '../shop/shop';
import { substrate, type SubstrateClass } from '../substrates/substrates';

/** A job seen with the sheet and the shop values of its day: all that a rule may look at. */
export type Situation = {
	readonly job: Job;
	readonly shop: Shop;
	readonly sheet: DataSheet;
	/** The sheet's lines as they read on the job's day. */
	readonly stated: ReturnType<typeof linesOn>;
	/** The most delicate class among the parts: it decides cleaning and cure. Unknown material counts as metal. */
	readonly class: SubstrateClass;
};

/** Undefined where the shop has no sheet for the job's coating. */
export function situation(job: Job, shop: Shop): Situation | undefined {
	const sheet = shop.sheets[job.coating];
	if (!sheet) return undefined;
	const classes = job.parts.map(({ material }) =>
		material === 'unknown' ? 'metal' : substrate(material).class
	);
	const delicate = (['laminate', 'polymer'] as const).find((one) => classes.includes(one));
	return { job, shop, sheet, stated: linesOn(sheet, job.on), class: delicate ?? 'metal' };
}

/** What the job's data sheet states on the job's day; undefined where it is silent. */
export const sheetValue = <K extends ValueLine>({ stated }: Situation, line: K) =>
	stated(line) as StatedValue<K> | undefined;
export const sheetWindow = <K extends WindowLine>({ stated }: Situation, line: K) =>
	stated(line) as StatedWindow<K> | undefined;
