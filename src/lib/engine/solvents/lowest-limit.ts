import type { Provenance } from '../sources/provenance';
import type { Fraction } from '../units/dimension';
import { SOLVENT_SOURCES, type Solvent } from './solvents';

/**
 * The lower explosive limit to reckon with: the lowest of the lists that name one, with the list it is from. Where they
 * agree the international list is cited.
 */
export function lowestLimit({ nfpa, iec }: Solvent): {
	readonly limit: Fraction;
	readonly provenance: Provenance;
} {
	return nfpa && nfpa.limit < iec.limit
		? { limit: nfpa.limit, provenance: SOLVENT_SOURCES.nfpa }
		: { limit: iec.limit, provenance: SOLVENT_SOURCES.iec };
}
