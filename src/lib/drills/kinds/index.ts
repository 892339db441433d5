import type { DrillKind } from './kind';
import acceptThePanel from './accept-the-panel';
import auditTheTicket from './audit-the-ticket';
import dressForTheTask from './dress-for-the-task';
import goOrNoGo from './go-or-no-go';
import mixTheBatch from './mix-the-batch';
import planThePasses from './plan-the-passes';
import rackTheOven from './rack-the-oven';
import readTheGauge from './read-the-gauge';
import readTheOvenChart from './read-the-oven-chart';
import setTheBlast from './set-the-blast';
import stepsInOrder from './steps-in-order';
import whatWentWrong from './what-went-wrong';

/** In working order. */
export const DRILL_KINDS = [
	setTheBlast,
	mixTheBatch,
	goOrNoGo,
	readTheGauge,
	planThePasses,
	rackTheOven,
	readTheOvenChart,
	acceptThePanel,
	whatWentWrong,
	auditTheTicket,
	stepsInOrder,
	dressForTheTask
] as const satisfies readonly DrillKind[];

export type DrillKindId = (typeof DRILL_KINDS)[number]['id'];
