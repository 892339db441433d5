import type { Rule } from '../rule';
import airFedForIsocyanate from './air-fed-for-isocyanate';
import belowFumeLimit from './below-fume-limit';
import blowOffBelow30Psi from './blow-off-below-30-psi';
import bondedPouring from './bonded-pouring';
import boothAirSpeed from './booth-air-speed';
import breathingForSolventMist from './breathing-for-solvent-mist';
import breathingWhileMixing from './breathing-while-mixing';
import cabinetSoundBeforeBlasting from './cabinet-sound-before-blasting';
import gearForBlasting from './gear-for-blasting';
import gearForDegreasing from './gear-for-degreasing';
import gearForMixing from './gear-for-mixing';
import gearForSpraying from './gear-for-spraying';
import gearForTheOven from './gear-for-the-oven';
import leftOverReactsInOpenPan from './left-over-reacts-in-open-pan';
import maskOnUntilClear from './mask-on-until-clear';
import mayWearIt from './may-wear-it';
import noOpenChlorinatedDip from './no-open-chlorinated-dip';
import noSilicaSand from './no-silica-sand';
import ovenSolventLoad from './oven-solvent-load';
import purgeBeforeHeat from './purge-before-heat';
import ragsInMetalCan from './rags-in-metal-can';

/** In working order. */
export const safetyRules: readonly Rule[] = [
	gearForDegreasing,
	noOpenChlorinatedDip,
	ragsInMetalCan,
	cabinetSoundBeforeBlasting,
	gearForBlasting,
	noSilicaSand,
	blowOffBelow30Psi,
	bondedPouring,
	gearForMixing,
	breathingWhileMixing,
	leftOverReactsInOpenPan,
	boothAirSpeed,
	gearForSpraying,
	airFedForIsocyanate,
	breathingForSolventMist,
	mayWearIt,
	maskOnUntilClear,
	gearForTheOven,
	ovenSolventLoad,
	purgeBeforeHeat,
	belowFumeLimit
];
