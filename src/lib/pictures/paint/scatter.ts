import type { Place, Surface } from '../surface';
import { PANEL } from './frame';
import { grain, salted } from './noise';

/** A thing lying on the panel, with two numbers of its own, 0 to 1. */
export type Spot = Place & { readonly size: number; readonly turn: number };

/** About so many spots over the whole panel, at random but not on top of one another; the first at the focus. */
export function scatter(
	{ seed, focus }: Pick<Surface, 'seed' | 'focus'>,
	count: number,
	salt: number
): Spot[] {
	const own = salted(seed, salt);
	const columns = Math.ceil(Math.sqrt(count * 1.5));
	const rows = Math.ceil(count / columns);
	const spots: Spot[] = [{ ...focus, size: 0.7, turn: grain(own, 1, 9) }];
	for (let k = 1; k < count; k++) {
		const [column, row] = [k % columns, Math.floor(k / columns)];
		spots.push({
			x: ((column + grain(own, k, 1)) / columns) * PANEL.width,
			y: ((row + grain(own, k, 2)) / rows) * PANEL.height,
			size: grain(own, k, 3),
			turn: grain(own, k, 4)
		});
	}
	return spots;
}

/** So many spots crowded around a few middles, the first of them the focus. */
export function clusters(
	surface: Surface,
	middles: number,
	each: number,
	spread: number,
	salt: number
): Spot[] {
	const own = salted(surface.seed, salt + 500);
	const near = (k: number, axis: number) => grain(own, k, axis) + grain(own, k, axis + 1) - 1;
	return scatter(surface, middles, salt).flatMap((middle, m) =>
		Array.from({ length: each }, (_, n) => {
			const k = m * 1000 + n;
			const away = n === 0 ? 0 : spread;
			return {
				x: middle.x + near(k, 10) * away,
				y: middle.y + near(k, 20) * away,
				size: grain(own, k, 5),
				turn: grain(own, k, 6)
			};
		})
	);
}
