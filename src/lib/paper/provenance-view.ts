import { SOURCES, type Provenance } from '$lib/engine';

/** Where a number comes from, as plain data for a page. */
export const provenanceView = ({ origin, verification, source, where }: Provenance) => ({
	origin,
	verification,
	editable: origin === 'common-practice' || origin === 'shop',
	...(source || where ? { cite: [source && SOURCES[source].title, where].filter(Boolean).join(', ') } : {})
});
