import { closeUp, surfaceOf, wholePanel } from './place';
import type { PictureRequest, ShadedView } from './request';
import { loupe } from './shade/loupe';
import { plain } from './shade/plain';
import { raking } from './shade/raking';
import { shade, type Raster } from './shade/shade';

const LAMPS = { plain, raking, loupe };

/**
 * Draws a panel, 3 wide to 2 high.
 *
 * @param request what is on it
 * @param view how it is looked at
 * @param width pixels across, 48 to 960; 240 unless told
 * @throws RangeError for a width outside that
 */
export function drawPicture(request: PictureRequest, view: ShadedView, width = 240): Raster {
	if (!(width >= 48 && width <= 960)) throw new RangeError(`picture width ${width} is not 48 to 960`);
	const frame = view === 'loupe' ? closeUp(width, request.seed | 0) : wholePanel(width);
	return shade(surfaceOf(request, frame), LAMPS[view]);
}
