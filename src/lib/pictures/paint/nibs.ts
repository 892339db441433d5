import type { Severity } from '../request';
import type { Surface } from '../surface';
import { scatter, type Spot } from './scatter';

/** Where things lie that got into a film, and how large they are: alike for dirt, gel and grit, which is why they are confused. */
export const nibs = (surface: Surface, severity: Severity): (Spot & { readonly radius: number })[] =>
	scatter(surface, [6, 20, 55][severity - 1]!, 111).map((spot, k) => ({
		...spot,
		radius: k === 0 ? 0.55 : 0.25 + spot.size * 0.35
	}));
