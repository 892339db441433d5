export { canonical } from './canonical';
export { contentHash } from './content-hash';
export { recordAsCsv, type CsvWording } from './csv';
export {
	accept,
	refuse,
	type Accepted,
	type Acting,
	type Decision,
	type Moment,
	type Refused
} from './decision';
export { endsAct } from './ends-act';
export type { Entry } from './entry';
export { EVENTS, type EventData, type EventKind, type JournalEvent } from './event';
export type { Conflict } from './events/conflict';
export { inForce, type InForce } from './in-force';
export { Journal, type Outcome, type Surroundings } from './journal';
export { json, type Json } from './json';
export { localDay } from './local-day';
export { REFUSALS, type Refusal, type RefusalCode } from './refusal';
export type { LogRefusal } from './refusal-event';
export type { Requirements } from './requirements';
export { sha256 } from './sha256';
export { isId, ROLES, type Role, type TextRef } from './shapes';
export { foldEntries, type State } from './state';
export { verify, type Fault, type LineFault, type Verification } from './verify';

export type { Drill, Practice, Run, Settled } from './folds/attempts';
export type { Incident } from './folds/incidents';
export type { LessonDone } from './folds/lessons';
export type { Person } from './folds/people';
export type { Practical } from './folds/practicals';
export type { SchemeVersion, SheetRevision, ShopValue } from './folds/shop';
export type { SignOff } from './folds/sign-offs';

export { dayOf } from './standing/calendar-day';
export { certification, type Certification } from './standing/certification';
export { evidenceFor, signOffOf, type EvidenceFound } from './standing/evidence';
export { refreshersDue, type RefresherDue } from './standing/refreshers';
export { firstAttempts, type FirstAttempt } from './standing/first-attempts';
export { mayAct, rolesAt } from './standing/roles';
export { safetyStanding } from './standing/safety';
export { schemeAt, schemeNamed, type SchemeInForce } from './standing/scheme';

export { addPerson, type AddPerson } from './commands/add-person';
export { addSecondPerson } from './commands/add-second-person';
export {
	reinstateSignOff,
	suspendSignOff,
	withdrawSignOff,
	type ChangeSignOff
} from './commands/change-sign-off';
export { closeIncident, type CloseIncident } from './commands/close-incident';
export { confirmContinuity, type ConfirmContinuity } from './commands/confirm-continuity';
export { decideIncident, type DecideIncident } from './commands/decide-incident';
export { erasePerson } from './commands/erase-person';
export { finishLesson, type FinishLesson } from './commands/finish-lesson';
export { foundShop, type FoundShop } from './commands/found-shop';
export { giveUpDrill } from './commands/give-up-drill';
export { handInDrill, type HandInDrill } from './commands/hand-in-drill';
export { handInPractice, type HandInPractice } from './commands/hand-in-practice';
export { issueDrill, type IssueDrill } from './commands/issue-drill';
export { lapseDrills } from './commands/lapse-drills';
export { noteSecret } from './commands/note-secret';
export { openAuditor } from './commands/open-auditor';
export { openRun, type OpenRun } from './commands/open-run';
export { REASON_LENGTH, type Reason } from './commands/override';
export { provingHistory } from './commands/proving-history';
export { recordCause, type RecordCause } from './commands/record-cause';
export { recordPractical, type RecordPractical } from './commands/record-practical';
export { reportIncident, type ReportIncident } from './commands/report-incident';
export { saveSheet, type SaveSheet } from './commands/save-sheet';
export { setRoles } from './commands/set-roles';
export { setScheme, type SetScheme } from './commands/set-scheme';
export { setShopValue, type SetShopValue } from './commands/set-shop-value';
export { overridden, signOff, type Sign } from './commands/sign-off';
export { signRefresher, type SignRefresher } from './commands/sign-refresher';
export { startTraining, type StartTraining } from './commands/start-training';
