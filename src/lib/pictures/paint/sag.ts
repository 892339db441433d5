import type { Severity } from '../request';
import type { Surface } from '../surface';
import { grain, salted } from './noise';
import { scatter } from './scatter';
import { dome, step } from './profile';
import { over } from './over';

/**
 * Lets film run down in tongues, each with a thick lip at its lower end; one lip is at the focus.
 *
 * @param lip height of the lip, µm
 * @param slack how far a lip spreads upwards, as a share of the tongue's width
 */
export function sag(surface: Surface, severity: Severity, lip: number, slack: number): void {
	const own = salted(surface.seed, 31);
	const tongues = scatter(surface, 1 + severity * 2, 32).map((spot, k) => ({
		x: spot.x,
		lip: spot.y,
		half: 1 + spot.size * (0.8 + severity * 0.5),
		length: 4 + severity * 3 + grain(own, k) * 5
	}));
	over(surface, (i, x, y) => {
		for (const { x: middle, lip: end, half, length } of tongues) {
			const side = (x - middle) / half;
			if (side < -1.4 || side > 1.4) continue;
			const up = end - y;
			if (up < -half || up > length) continue;
			const arch = up + side * side * half * 0.8;
			const body =
				step(1.15, 0.75, Math.abs(side)) *
				step(length, length * 0.4, up) *
				step(-half * 0.25, half * 0.2, arch);
			const swell = dome(Math.abs(arch - half * slack * 0.5) / (half * slack)) * dome(Math.abs(side) / 1.3);
			surface.height[i]! += lip * (0.3 * body + 0.9 * swell);
		}
	});
}
