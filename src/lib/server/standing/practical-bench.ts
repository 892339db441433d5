import { unitFor, unitOf, type DataSheet } from '$lib/engine';
import { say } from '$lib/i18n';
import { practicalPlan, type CompetencyId, type PracticalPlan } from '$lib/learning';
import { provenanceView, windowText, type Reader } from '$lib/paper';
import type { App } from '../app';
import { shopInForce } from '../shop-in-force';

type Asked = PracticalPlan['readings'][number];

/** What is watched and measured with one coating, with the revision of its sheet as the record names it. */
export type PracticalBench = {
	readonly plan: PracticalPlan;
	readonly sheet: { readonly sheet: string; readonly revision: number; readonly hash: string };
	readonly title: string;
};

/** The bench for a coating of the shop; undefined for one it has no sheet of, or with nothing to measure. */
export function practicalBench(
	app: App,
	competency: CompetencyId,
	coating: string
): PracticalBench | undefined {
	const { shop, refs } = shopInForce(app);
	const revision = refs.sheets.find(({ sheet }) => sheet === coating);
	if (!revision) return undefined;
	const sheet = revision.content as unknown as DataSheet;
	const plan = practicalPlan(competency, { shop, sheet });
	if (plan.readings.length === 0) return undefined;
	return {
		plan,
		sheet: { sheet: revision.sheet, revision: revision.revision, hash: revision.contentHash },
		title: sheet.title
	};
}

/** The coatings a practical in a competency can be taken with, by title. */
export const practicalCoatings = (app: App, competency: CompetencyId) =>
	shopInForce(app)
		.refs.sheets.flatMap(({ sheet }) => {
			const bench = practicalBench(app, competency, sheet);
			return bench ? [{ id: sheet, label: bench.title }] : [];
		})
		.sort((a, b) => a.label.localeCompare(b.label));

/** The unit printed beside a reading: that in which this reader is shown its limits. */
export const unitBeside = ({ held, dimension }: Asked, { units }: Reader): string =>
	unitFor(held.most ?? held.least ?? 0, dimension, units);

/** A reading's limits and where they come from, in words. */
export const heldText = (asked: Asked, reader: Reader) => ({
	limits: windowText(
		{ min: asked.held.least ?? -Infinity, max: asked.held.most ?? Infinity },
		asked.dimension,
		reader
	),
	provenance: provenanceView(asked.held.provenance),
	// a ratio is written 4:1, which needs no unit
	unit:
		asked.dimension === 'ratio'
			? ''
			: say(unitOf(asked.dimension, unitBeside(asked, reader)).label, reader.lang)
});
