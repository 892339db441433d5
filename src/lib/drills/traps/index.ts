import type { Trap } from '../trap';
import { curingTraps } from './curing';
import { inspectionTraps } from './inspection';
import { intakeTraps } from './intake';
import { mixingTraps } from './mixing';
import { preparationTraps } from './preparation';
import { sprayingTraps } from './spraying';

export const TRAPS: readonly Trap[] = [
	...intakeTraps,
	...preparationTraps,
	...mixingTraps,
	...sprayingTraps,
	...curingTraps,
	...inspectionTraps
];
