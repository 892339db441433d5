import type { Surface } from '../surface';
import { over } from './over';

/** Goes over every pixel with its distance from the part's edge, mm; beyond the edge it is negative. The edge runs past the focus. */
export function fromEdge(
	surface: Surface,
	each: (i: number, inside: number, x: number, y: number) => void
): void {
	const { focus } = surface;
	over(surface, (i, x, y) => each(i, x - focus.x + 0.8, x, y));
}
