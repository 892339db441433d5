import { sheetWindow, type Situation } from './situation';

/** The sheet's cure for the most delicate class on the ticket; undefined where it gives none. */
export const cureTemperature = (seen: Situation) => sheetWindow(seen, `cure-${seen.class}-temperature`);
export const cureHold = (seen: Situation) => sheetWindow(seen, `cure-${seen.class}-hold`);
