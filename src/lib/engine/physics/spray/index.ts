import type { FormulaNote } from '../formula-note';
import { bellRipple } from './bell-ripple';
import { bestOverlap } from './best-overlap';
import { faceFilm } from './face-film';
import { fanUniformity } from './fan-uniformity';
import { filmPerPass } from './film-per-pass';
import { strokeDeposit } from './stroke-deposit';
import { strokeFilm } from './stroke-film';
import { strokes } from './strokes';
import { transferEfficiency } from './transfer-efficiency';

/** In the order they are shown. */
export const sprayFormulas: readonly FormulaNote[] = [
	filmPerPass,
	transferEfficiency,
	strokeDeposit,
	strokeFilm.parabola,
	strokeFilm.beta,
	strokeFilm.bell,
	faceFilm,
	fanUniformity,
	bestOverlap,
	bellRipple,
	strokes
];
