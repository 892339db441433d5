import { coatingTerms } from './terms/coating';
import { curingTerms } from './terms/curing';
import { defectTerms } from './terms/defect';
import { inspectionTerms } from './terms/inspection';
import { mixingTerms } from './terms/mixing';
import { paperTerms } from './terms/paper';
import { partTerms } from './terms/part';
import { preparationTerms } from './terms/preparation';
import { safetyTerms } from './terms/safety';
import { sprayingTerms } from './terms/spraying';
import type { Term } from './term';

/** The words of the trade, along the line of the work. */
export const GLOSSARY: readonly Term[] = [
	...paperTerms,
	...partTerms,
	...preparationTerms,
	...coatingTerms,
	...mixingTerms,
	...sprayingTerms,
	...curingTerms,
	...inspectionTerms,
	...defectTerms,
	...safetyTerms
];
