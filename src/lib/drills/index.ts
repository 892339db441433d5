export { LARGEST_SEED } from './random';
export { makeTicket, type Conditions, type Ticket, type TicketOrder } from './ticket';
export { makeProvingDrill, type ProvingDrill, type ProvingOrder } from './proving';
export { TRAPS } from './traps';
export type { Breadth, Trap } from './trap';
export { makePracticeDrill, type PracticeDrill } from './practice';
export { fieldsAt, stationsOf } from './stations';
