import type { FieldId } from '../../setup/fields';
import type { Broken } from '../broken';
import type { OutcomeMeasure, Side } from '../outcome';
import { allSet, type PutIn } from '../put-in';
import { signedIndex } from '../signed-index';

const FIELDS: readonly FieldId[] = [
	'blast-media',
	'blast-pressure',
	'blast-nozzle',
	'blast-standoff',
	'profile-limit',
	'scuff-grit'
];

/** A wrong medium, nozzle or paper leaves less to hold to; from afar the grain has lost its push. */
function pull({ field, off }: Broken): Side | undefined {
	if (!FIELDS.includes(field)) return undefined;
	if (off === 'wrong') return 'low';
	return field === 'blast-standoff' ? (off === 'low' ? 'high' : 'low') : off;
}

/** How deep the surface is roughened for the film to hold to. */
export const key = (given: PutIn, broken: readonly Broken[]): OutcomeMeasure | undefined =>
	allSet(given, FIELDS) ? { id: 'key', kind: 'index', ...signedIndex(broken, pull) } : undefined;
