import type { DefectPicture } from '../defect-picture';
import { shard } from '../section/cut';
import { METAL, SHADOW, tint } from '../paint/colours';
import { nibs } from '../paint/nibs';
import { grain, salted } from '../paint/noise';
import { dome, step } from '../paint/profile';
import { stamp } from '../paint/stamp';

/** Hard dark grains with corners, a bare halo around each and now and then a glint. */
export default {
	paint(surface, severity) {
		const own = salted(surface.seed, 113);
		for (const [k, nib] of nibs(surface, severity).entries()) {
			stamp(surface, nib.x, nib.y, nib.radius, (i, r, share, dx, dy) => {
				// the nearest of a few cut planes makes the grain angular
				const tilt = grain(own, k) - 0.5;
				const cornered = Math.max(
					Math.abs(dx + tilt * dy),
					Math.abs(dy - tilt * dx),
					Math.abs(dx + dy) * 0.8
				);
				const grainy = step(0.62, 0.52, cornered) * share;
				const facet = dx - dy > tilt ? 0.12 : 0;
				tint(surface, i, METAL, step(0.95, 0.7, r) * 0.35 * share);
				tint(surface, i, [SHADOW[0] + facet, SHADOW[1] + facet, SHADOW[2] + facet], grainy);
				surface.height[i]! +=
					34 * grainy * (1 - cornered * 0.5) - 10 * dome(Math.abs(r - 0.75) / 0.3) * share;
			});
		}
	},
	under: ({ bodies, seed }) => bodies.push({ kind: 'particle', outline: shard(0, 26, 0.3, 26, seed + 7) })
} satisfies DefectPicture;
