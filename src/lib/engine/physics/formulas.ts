import { airFormulas } from './air';
import { cureFormulas } from './cure';
import { exposureFormulas } from './exposure';
import { filmFormulas } from './film';
import { grainFormulas } from './grain';
import { heatFormulas } from './heat';
import { humidityFormulas } from './humidity';
import { mixingFormulas } from './mixing';
import { readingsFormulas } from './readings';
import { solventFormulas } from './solvent';
import { sprayFormulas } from './spray';
import type { FormulaNote } from './formula-note';

export type { FormulaNote };

/** Every formula and procedure of the engine, for the pages that show where numbers come from. */
export const FORMULAS: readonly FormulaNote[] = [
	...mixingFormulas,
	...filmFormulas,
	...sprayFormulas,
	...readingsFormulas,
	...humidityFormulas,
	...airFormulas,
	...grainFormulas,
	...heatFormulas,
	...cureFormulas,
	...solventFormulas,
	...exposureFormulas
];
