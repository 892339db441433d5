import { posterior, type Network } from '$lib/engine';
import type { Random } from '../../random';
import { happens } from './chance';

/**
 * What really was the matter: as likely as the network says, given the defect, except that it is never nothing on the
 * list, which would be no search. One cause or more.
 */
export function drawTruth(network: Network, random: Random): readonly string[] {
	for (;;) {
		const so: Record<string, boolean> = {};
		for (const { id } of network.causes)
			so[id] = happens(random, posterior(network, { defect: true, causes: { ...so } })[id]!);
		const causes = Object.keys(so).filter((id) => so[id]);
		if (causes.length) return causes;
	}
}
