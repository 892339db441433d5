import {
	cutSection,
	isPictureId,
	SEVERITIES,
	sectionPaths,
	sectionSvg,
	VIEWS,
	type PictureRequest,
	type View
} from '$lib/pictures';
import { panelPng } from './panel-png';

/** A picture as it goes over the wire. */
export type PictureFile = { readonly type: 'image/png' | 'image/svg+xml'; readonly content: BodyInit };

const SEED = /^\d{1,9}$/;

function read(asked: URLSearchParams): { request: PictureRequest; view: View } | undefined {
	const defect = asked.get('defect') ?? '';
	const severity = SEVERITIES.find((one) => String(one) === asked.get('severity'));
	const view = VIEWS.find((one) => one === asked.get('view'));
	const seed = asked.get('seed') ?? '';
	if (!severity || !view || !SEED.test(seed)) return undefined;
	if (defect !== 'sound' && !isPictureId(defect)) return undefined;
	return { request: { defect, severity, seed: Number(seed) }, view };
}

/** The picture an address asks for by `defect`, `severity`, `seed` and `view`; nothing if it asks for none there is. */
export function pictureFile(asked: URLSearchParams): PictureFile | undefined {
	const known = read(asked);
	return known && drawnFile(known.request, known.view);
}

/** A panel in one way of looking at it, as a file. */
export function drawnFile(request: PictureRequest, view: View): PictureFile {
	return view === 'section'
		? { type: 'image/svg+xml', content: sectionSvg(sectionPaths(cutSection(request))) }
		: { type: 'image/png', content: panelPng(request, view) };
}
