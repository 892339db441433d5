import type { skillPanel as words } from '$lib/i18n';
import { addDays, skillPanel, type CertificationState, type Strip } from '$lib/learning';
import { dayOf, type State } from '$lib/records';
import type { Area } from './areas';

type Standing = keyof (typeof words)['en']['standing'];

const WORDS: Readonly<Record<CertificationState, Standing>> = {
	// a panel carries a strip once it was signed, and nobody who was signed is back at the start
	none: 'in-training',
	'in-training': 'in-training',
	eligible: 'eligible',
	signed: 'signed',
	suspended: 'suspended',
	'continuity-lapsed': 'lapsed',
	expired: 'expired',
	withdrawn: 'withdrawn'
};

/** A lapse and an expiry are dated by the last good day; what is shown is the first day after it. */
const stripView = ({ state, date, dateIs }: Strip): { standing: Standing; date: string } => ({
	standing: WORDS[state],
	date: dateIs === 'until' && state !== 'signed' ? addDays(date, 1) : date
});

function panelView(state: State, { id, name, certification }: Area, href: string | undefined) {
	const { evidence, signOff, standing, validity, refreshers } = certification;
	const { finish, strip } = skillPanel(
		{
			lessonsDone: evidence.lessonsDone,
			proven: evidence.verdict === 'passed',
			practicalAccepted: evidence.practical === 'accepted',
			signedOff: signOff !== null
		},
		standing,
		validity
	);
	const [due] = refreshers;
	const view =
		due && standing.state === 'signed'
			? { standing: 'refresher-due' as const, date: dayOf(state, due.since) }
			: strip && stripView(strip);
	return { id, name, finish, ...(view && { strip: view }), ...(href && { href }) };
}

/**
 * The skill panels of a person as plain data for a page.
 * @param hrefOf where a panel leads to, if anywhere
 */
export const rackView = (state: State, areas: readonly Area[], hrefOf?: (area: Area) => string) =>
	areas.map((area) => panelView(state, area, hrefOf?.(area)));
