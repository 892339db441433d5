/** Puts what the engine says into words for a person: fields, tickets, findings, derivations. No rule lives here. */
export type { Reader } from './reader';
export { quantityText, windowText } from './quantity-text';
export { answerText, optionNames } from './answer-text';
export { expectationText } from './expectation-text';
export { provenanceView } from './provenance-view';
export { derivationView, derivationsOf } from './derivation-view';
export { findingView } from './finding-view';
export { outcomeView } from './outcome-view';
export { fieldView, problemWords, type Entry } from './field-view';
export { readEntries } from './read-entries';
export { movedOrder } from './moved-order';
export { ticketView, type TicketView } from './ticket/ticket-view';
export type { Row } from './ticket/words';
export { sheetView } from './sheet-view';
