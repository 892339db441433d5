import { SOURCES, type Provenance } from '$lib/engine';

/** Where a number comes from, as plain data for a page. Editable is what the lead finds among the shop values. */
export const provenanceView = ({ origin, verification, source, where }: Provenance, editable = false) => ({
	origin,
	verification,
	editable,
	...(source || where ? { cite: [source && SOURCES[source].title, where].filter(Boolean).join(', ') } : {})
});
