import type { Surface } from '../surface';
import { noise, salted } from './noise';
import { dome, step } from './profile';

/**
 * How much of each pixel lies in one of some irregular patches, 0 to 1. One patch is always beside the focus.
 *
 * @param size about how wide a patch is, mm
 * @param share about how much of the panel they cover, 0 to 1
 * @param edge how soft their outline is: 0.05 torn, 0.5 cloudy
 */
export function patches(
	surface: Surface,
	salt: number,
	size: number,
	share: number,
	edge: number
): Float32Array {
	const { frame, seed, focus } = surface;
	const broad = noise(frame, salted(seed, salt), size * 2);
	const fine = noise(frame, salted(seed, salt + 1), size * (0.33 + edge));
	// only a torn outline has fibres to show
	const fray = edge < 0.2 ? 0.12 : 0;
	const frayed = fray ? noise(frame, salted(seed, salt + 2), size / 7) : fine;
	// torn patches end near the focus, so that loupe and section show their rim
	const middle = focus.x - size * (0.25 + share) * (1 - edge);
	const threshold = 0.75 - share * 1.3;
	for (let r = 0, i = 0; r < frame.height; r++) {
		const dy = (frame.top + (r + 0.5) * frame.pixel - focus.y) / size;
		for (let c = 0; c < frame.width; c++, i++) {
			const dx = (frame.left + (c + 0.5) * frame.pixel - middle) / size;
			const here = broad[i]! + fine[i]! * 0.25 + frayed[i]! * fray + 1.2 * dome(Math.sqrt(dx * dx + dy * dy));
			broad[i] = step(threshold - edge, threshold + edge, here);
		}
	}
	return broad;
}
