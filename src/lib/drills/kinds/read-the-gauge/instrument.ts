import type { PlannedField } from '$lib/engine';
import type { Random } from '../../random';
import type { Instrument } from '../../figures/gauge-panel';
import type { DrillTicket } from '../kind';

/** What is drawn at one place, and what is asked of it. */
export type Asked = { readonly instruments: readonly Instrument[]; readonly fields: readonly PlannedField[] };

/** Sets up one instrument for a ticket; undefined where the ticket's plan has no window for it. */
export type MakeInstrument = (ticket: DrillTicket, random: Random) => Asked | undefined;
