import type { FormulaNote } from '../formula-note';
import { combinedUncertainty } from './combined-uncertainty';
import { coverageFactor } from './coverage-factor';
import { expandedUncertainty } from './expanded-uncertainty';
import { filmEightyTwenty } from './film-eighty-twenty';
import { guardedLimits } from './guarded-limits';
import { individualsChart } from './individuals-chart';
import { judgeArea } from './judge-area';
import { judgeReading } from './judge-reading';
import { meanRangeChart } from './mean-range-chart';
import { readingUncertainty } from './reading-uncertainty';
import { sampleDeviation } from './sample-deviation';
import { sampleMean } from './sample-mean';
import { samplingPlan } from './sampling-plan';
import { spotLimits } from './spot-limits';

/** In the order they are shown. */
export const readingsFormulas: readonly FormulaNote[] = [
	spotLimits.lowest,
	spotLimits.highest,
	samplingPlan,
	judgeArea,
	filmEightyTwenty.fewer,
	filmEightyTwenty.upTo,
	guardedLimits,
	judgeReading,
	sampleMean,
	sampleDeviation,
	coverageFactor,
	readingUncertainty,
	combinedUncertainty,
	expandedUncertainty,
	individualsChart,
	meanRangeChart
];
