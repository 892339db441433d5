import type { Rule } from '../rule';
import acceptWhenClear from './accept-when-clear';
import cureWithinPartLimit from './cure-within-part-limit';
import filmBasisStated from './film-basis-stated';
import filmWithinSheet from './film-within-sheet';
import fitFacesMasked from './fit-faces-masked';
import fittedItemsOut from './fitted-items-out';
import growthOnDiameter from './growth-on-diameter';
import lowEnergyPlasticAsked from './low-energy-plastic-asked';
import magnesiumRefused from './magnesium-refused';
import magnetAgreesWithPaper from './magnet-agrees-with-paper';
import materialKnown from './material-known';
import oldCoatingQuestioned from './old-coating-questioned';
import partLimitLowest from './part-limit-lowest';
import questionNamed from './question-named';
import sealedCavityStops from './sealed-cavity-stops';
import tapeStandsTheOven from './tape-stands-the-oven';
import temperMargin from './temper-margin';
import windowsMeet from './windows-meet';
import yellowPlatingIsolated from './yellow-plating-isolated';

/** In working order. */
export const intakeRules: readonly Rule[] = [
	materialKnown,
	magnetAgreesWithPaper,
	magnesiumRefused,
	sealedCavityStops,
	oldCoatingQuestioned,
	yellowPlatingIsolated,
	fittedItemsOut,
	cureWithinPartLimit,
	filmBasisStated,
	filmWithinSheet,
	lowEnergyPlasticAsked,
	windowsMeet,
	acceptWhenClear,
	questionNamed,
	partLimitLowest,
	temperMargin,
	fitFacesMasked,
	tapeStandsTheOven,
	growthOnDiameter
];
