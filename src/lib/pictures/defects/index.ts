import type { DefectPicture } from '../defect-picture';
import airLineSpits from './air-line-spits';
import amineBloom from './amine-bloom';
import anodiseCrazing from './anodise-crazing';
import banding from './banding';
import blushing from './blushing';
import coldRun from './cold-run';
import colourShift from './colour-shift';
import crossContamination from './cross-contamination';
import dirt from './dirt';
import distortedPart from './distorted-part';
import drySpray from './dry-spray';
import fatEdges from './fat-edges';
import fingerprint from './fingerprint';
import fisheyes from './fisheyes';
import flaking from './flaking';
import flashRust from './flash-rust';
import gelBits from './gel-bits';
import glossOff from './gloss-off';
import gritInclusion from './grit-inclusion';
import holiday from './holiday';
import intercoatPeel from './intercoat-peel';
import maskBleed from './mask-bleed';
import maskRidge from './mask-ridge';
import mottling from './mottling';
import orangePeel from './orange-peel';
import outgassingBlisters from './outgassing-blisters';
import overCure from './over-cure';
import overThick from './over-thick';
import pinholes from './pinholes';
import pinpointRust from './pinpoint-rust';
import printThrough from './print-through';
import rackMark from './rack-mark';
import runs from './runs';
import softFilm from './soft-film';
import solventCrazing from './solvent-crazing';
import solventPop from './solvent-pop';
import thinEdges from './thin-edges';
import wrinkling from './wrinkling';

/** Every defect there is a picture of, in the order of the catalogue. */
const DEFECT_PICTURES = {
	'orange-peel': orangePeel,
	runs,
	fisheyes,
	'dry-spray': drySpray,
	pinholes,
	'solvent-pop': solventPop,
	'outgassing-blisters': outgassingBlisters,
	flaking,
	'intercoat-peel': intercoatPeel,
	holiday,
	'thin-edges': thinEdges,
	'fat-edges': fatEdges,
	dirt,
	'gel-bits': gelBits,
	blushing,
	'amine-bloom': amineBloom,
	mottling,
	'gloss-off': glossOff,
	'colour-shift': colourShift,
	'soft-film': softFilm,
	'over-cure': overCure,
	'grit-inclusion': gritInclusion,
	'flash-rust': flashRust,
	'pinpoint-rust': pinpointRust,
	fingerprint,
	'mask-bleed': maskBleed,
	'mask-ridge': maskRidge,
	banding,
	'cold-run': coldRun,
	'cross-contamination': crossContamination,
	'over-thick': overThick,
	'distorted-part': distortedPart,
	'solvent-crazing': solventCrazing,
	wrinkling,
	'air-line-spits': airLineSpits,
	'rack-mark': rackMark,
	'print-through': printThrough,
	'anodise-crazing': anodiseCrazing
} as const satisfies Record<string, DefectPicture>;

export type PictureId = keyof typeof DEFECT_PICTURES;

export const PICTURE_IDS = Object.keys(DEFECT_PICTURES) as PictureId[];

export const isPictureId = (id: string): id is PictureId => Object.hasOwn(DEFECT_PICTURES, id);

export const pictureOf = (id: PictureId): DefectPicture => DEFECT_PICTURES[id];
