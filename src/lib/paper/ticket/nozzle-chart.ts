import { bar, blastNozzleAir, NOZZLE_BORES, NOZZLES, psi, shopValue, type Job, type Shop } from '$lib/engine';
import type { TicketWords } from './words';

/** Round pressures of the gauge on the cabinet, over the range that blasting is done at. */
const PRESSURES = {
	bar: [2, 3, 4, 5, 6].map((value) => ({ value, gauge: bar(value) })),
	psi: [30, 45, 60, 75, 90].map((value) => ({ value, gauge: psi(value) }))
} as const;

/**
 * The chart that hangs beside the compressor: free air each nozzle on the shelf takes while it blasts, by gauge
 * pressure. It says nothing of duty, leaks or reserve, and not which nozzle to take.
 */
export const nozzleChart = ({ bench }: Job, shop: Shop, { words, engraved, name }: TicketWords): string =>
	(bench.nozzles ?? [])
		.map((nozzle) => {
			const takes = PRESSURES[bench.gauge].map(({ value, gauge }) => {
				const coefficient = shopValue(shop, 'blast.nozzle-coefficient').value;
				const air = blastNozzleAir.at({ bore: NOZZLE_BORES[nozzle], gauge, coefficient });
				return words.nozzleTakes(`${value} ${bench.gauge}`, engraved(air, 'flow', 'm³/h'));
			});
			return `${name(NOZZLES, nozzle)}: ${takes.join(', ')}`;
		})
		.join(' | ');
