import type { Rule } from '../rule';
import agitateSettledCan from './agitate-settled-can';
import batchCoversTheJob from './batch-covers-the-job';
import coldCanWarmsUp from './cold-can-warms-up';
import cupTime from './cup-time';
import hardenerByVolume from './hardener-by-volume';
import hardenerByWeight from './hardener-by-weight';
import hardenerSound from './hardener-sound';
import inductionKept from './induction-kept';
import leftOverDiscarded from './left-over-discarded';
import lotInDate from './lot-in-date';
import namedThinnerOnly from './named-thinner-only';
import ratioBasisFromSheet from './ratio-basis-from-sheet';
import soundLotUsed from './sound-lot-used';
import stirTime from './stir-time';
import strainerOpening from './strainer-opening';
import thinnerShare from './thinner-share';
import useWithinPotLife from './use-within-pot-life';

/** In working order. */
export const mixingRules: readonly Rule[] = [
	lotInDate,
	hardenerSound,
	coldCanWarmsUp,
	soundLotUsed,
	agitateSettledCan,
	ratioBasisFromSheet,
	batchCoversTheJob,
	hardenerByVolume,
	hardenerByWeight,
	stirTime,
	inductionKept,
	useWithinPotLife,
	namedThinnerOnly,
	thinnerShare,
	strainerOpening,
	cupTime,
	leftOverDiscarded
];
