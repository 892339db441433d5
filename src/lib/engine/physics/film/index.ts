import type { FormulaNote } from '../formula-note';
import { batchVolume } from './batch-volume';
import { clearanceLeft } from './clearance-left';
import { dryFilm } from './dry-film';
import { filmFromMass } from './film-from-mass';
import { fitGrowth } from './fit-growth';
import { holeArea } from './hole-area';
import { partArea } from './part-area';
import { spreadingRate } from './spreading-rate';
import { wetFilm } from './wet-film';

/** In the order they are shown. */
export const filmFormulas: readonly FormulaNote[] = [
	...Object.values(partArea),
	holeArea,
	batchVolume,
	spreadingRate,
	wetFilm,
	dryFilm,
	filmFromMass,
	fitGrowth.diameter,
	fitGrowth.bore,
	fitGrowth.thread,
	fitGrowth.flanks,
	clearanceLeft
];
