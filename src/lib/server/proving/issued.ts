import type { Answers, FieldId, Job, Plan } from '$lib/engine';
import type { Drill, Json } from '$lib/records';

/** What the journal holds of an issued ticket: the job, and the other stations as filled in for the person. */
export type IssuedTicket = { readonly job: Job; readonly given: Answers };

/** Both directions of how a proving drill lies in the journal. */
export const toJournal = (ticket: IssuedTicket, expected: Plan) => ({
	ticket: JSON.parse(JSON.stringify(ticket)) as Json,
	expected: JSON.parse(JSON.stringify(expected)) as Json
});

export const ticketOf = ({ ticket }: Pick<Drill, 'ticket'>) => ticket as unknown as IssuedTicket;
/** The windows as they were when the ticket was issued: answers are always graded with these. */
export const expectedOf = ({ expected }: Pick<Drill, 'expected'>) => expected as unknown as Plan;
export const askedOf = ({ asked }: Pick<Drill, 'asked'>) => asked as readonly FieldId[];
