import { drawPicture, type PictureId, type ShadedView } from '../../../src/lib/pictures';
import { imageDistance } from './image-distance';

const SEEDS = [1, 2, 3, 4];

/**
 * How unlike two severe defects are, as a share of how unlike a sound film the fainter of them is: below a half they
 * are nearer to each other than half way to a sound film. Mean over several panels.
 */
export function relativeDistance([one, other]: readonly [PictureId, PictureId], view: ShadedView): number {
	let [between, fromSound] = [0, 0];
	for (const seed of SEEDS) {
		const [a, b, sound] = ([one, other, 'sound'] as const).map((defect) =>
			drawPicture({ defect, severity: 3, seed }, view)
		) as [ReturnType<typeof drawPicture>, ReturnType<typeof drawPicture>, ReturnType<typeof drawPicture>];
		between += imageDistance(a, b);
		fromSound += Math.min(imageDistance(a, sound), imageDistance(b, sound));
	}
	return between / fromSound;
}
