import type { Part } from '../job/part';
import { fromJob, workedOut, type Traced } from './trace';

/**
 * Volume of a part's wall over its heated surface, metres: half the thickness of a wall heated from both faces, a
 * quarter of a bar's diameter. Edges are left out, which is slow by a little and so on the safe side.
 */
export const heatDepth = ({ shape, thickness }: Part): number => thickness / (shape === 'bar' ? 4 : 2);

/** The same with where it comes from, for the part at a place on the ticket. */
export function tracedHeatDepth(part: Part, at: number): Traced<'length'> {
	const thickness = fromJob(`parts.${at}.thickness`, 'length', part.thickness, {
		en: 'Wall, or diameter of a bar',
		es: 'Pared, o diámetro de una barra'
	});
	const label = { en: 'Volume over surface', es: 'Volumen entre superficie' };
	return workedOut('heat-up-before-soak', 'length', heatDepth(part), label, { thickness });
}
