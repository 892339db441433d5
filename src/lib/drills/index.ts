export { LARGEST_SEED } from './random';
export { makeTicket, type Conditions, type Ticket, type TicketOrder } from './ticket';
export { makeProvingDrill, type ProvingDrill, type ProvingOrder } from './proving';
export { TRAPS } from './traps';
export { BREADTHS, type Breadth, type Trap } from './trap';
export {
	drillKind,
	makePracticeDrill,
	PRACTICE_PARTS,
	type PracticeDrill,
	type PracticePart
} from './practice';
export { DRILL_KINDS, type DrillKindId } from './kinds';
export type { DrillStep } from './step';
export type { Figure } from './figures';
export { partSkill } from './part-skill';
export { partsFor } from './parts-for';
