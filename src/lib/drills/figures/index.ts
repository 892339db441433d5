import type { CaseFile } from './case-file';
import type { GaugePanel } from './gauge-panel';
import type { OvenChart } from './oven-chart';

/** What is looked at in a drill, as plain data in SI: it is kept with the drill and drawn at the edge. */
export type Figure = GaugePanel | OvenChart | CaseFile;
