import type { DefectPicture } from '../defect-picture';
import { METAL, sheen, tint } from '../paint/colours';
import { fromEdge } from '../paint/edge';
import { noise, salted } from '../paint/noise';
import { dome, step } from '../paint/profile';

/** The line of the tape: a wall of film, torn like a saw where the tape was pulled. */
export default {
	paint(surface, severity) {
		const { frame, seed } = surface;
		const teeth = noise(frame, salted(seed, 221), 4, 0.7);
		const fine = noise(frame, salted(seed, 222), 2, 0.25);
		const ragged = severity * 0.35;
		fromEdge(surface, (i, inside) => {
			const line = inside + (teeth[i]! + fine[i]! * 0.5) * ragged;
			const bared = step(0.06, -0.06, line);
			surface.height[i]! += (14 + severity * 12) * dome(Math.abs(line - 0.25) / 0.45);
			tint(surface, i, METAL, bared);
			sheen(surface, i, 0.4, bared);
			surface.height[i]! += (-35 - surface.height[i]!) * bared;
		});
	}
} satisfies DefectPicture;
