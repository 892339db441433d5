import type { Place, Surface } from '../surface';
import { PANEL } from './frame';
import { grain, salted } from './noise';
import { way } from './way';

/** Fine cracks: each starts somewhere, wanders and forks; one starts beside the focus. */
export function forks(
	surface: Surface,
	starts: readonly Place[],
	length: number,
	bend: number,
	salt: number
): Place[][] {
	const own = salted(surface.seed, salt);
	return starts.flatMap((start, k) => {
		const turn = grain(own, k, 1);
		const trunk = way(start, turn, length * (0.6 + grain(own, k, 2) * 0.8), bend, own + k * 7);
		const branch = (at: number, side: number) =>
			way(
				trunk[at]!,
				turn + side * (0.1 + grain(own, k, at) * 0.1),
				length * 0.45,
				bend,
				own + k * 7 + at,
				5
			);
		return [trunk, branch(3, 1), branch(5, -1)];
	});
}

/** A closed net of cracks, its meshes about so wide, mm. One knot is at the focus. */
export function net({ seed, focus }: Surface, mesh: number, salt: number, kept: number): Place[][] {
	const own = salted(seed, salt);
	const [c0, r0] = [-Math.ceil(focus.x / mesh), -Math.ceil(focus.y / mesh)];
	const [c1, r1] = [Math.ceil((PANEL.width - focus.x) / mesh), Math.ceil((PANEL.height - focus.y) / mesh)];
	const knot = (c: number, r: number): Place => {
		const loose = c === 0 && r === 0 ? 0 : 0.7;
		return {
			x: focus.x + (c + (r % 2) * 0.5 + (grain(own, c, r) - 0.5) * loose) * mesh,
			y: focus.y + (r + (grain(own, c, r + 4000) - 0.5) * loose) * mesh
		};
	};
	const lines: Place[][] = [];
	const side = (c: number, r: number, dc: number, dr: number) => {
		if (grain(own, c * 3 + dc, r * 3 + dr + 9000) > kept) return;
		const [a, b] = [knot(c, r), knot(c + dc, r + dr)];
		const bow = (grain(own, c + dc * 50, r + dr * 50) - 0.5) * 0.3;
		lines.push([a, { x: (a.x + b.x) / 2 + (b.y - a.y) * bow, y: (a.y + b.y) / 2 - (b.x - a.x) * bow }, b]);
	};
	for (let r = r0; r <= r1; r++) {
		for (let c = c0; c <= c1; c++) {
			side(c, r, 1, 0);
			side(c, r, 0, 1);
		}
	}
	return lines;
}
