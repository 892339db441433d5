import { NOZZLE_BORES, NOZZLES, type Nozzle } from '../../job/bench';
import { blastNozzleAir } from '../../physics/air/blast-nozzle-air';
import { deliveryNeeded } from '../../physics/air/delivery-needed';
import type { Situation } from '../../plan/situation';
import { fromJob, type Traced } from '../../plan/trace';
import { shopValue } from '../../shop/shop';
import { blastWindow } from './blast-window';

export type NozzleNeed = { readonly nozzle: Nozzle; readonly needs: Traced<'flow'> };

/** What the compressor has to deliver for each nozzle on the shelf at the highest pressure of this job, wide to narrow. */
export function nozzleNeeds(seen: Situation): readonly NozzleNeed[] {
	const gauge = blastWindow(seen).max;
	const { nozzles = [] } = seen.job.bench;
	const widest = (one: Nozzle, other: Nozzle) => NOZZLE_BORES[other] - NOZZLE_BORES[one];
	return nozzles.toSorted(widest).map((nozzle) => {
		const name = NOZZLES[nozzle];
		const bore = fromJob('bench.nozzles', 'length', NOZZLE_BORES[nozzle], {
			en: `Bore of the nozzle of ${name.en}`,
			es: `Diámetro de la boquilla de ${name.es}`
		});
		const coefficient = shopValue(seen.shop, 'blast.nozzle-coefficient');
		const needs = deliveryNeeded.of({
			demand: blastNozzleAir.of({ bore, gauge, coefficient }),
			duty: shopValue(seen.shop, 'blast.duty'),
			leak: shopValue(seen.shop, 'blast.leak'),
			reserve: shopValue(seen.shop, 'blast.reserve')
		});
		const label = {
			en: `Delivery needed for ${name.en}`,
			es: `Caudal que pide la de ${name.es}`
		};
		return { nozzle, needs: { ...needs, label } };
	});
}
