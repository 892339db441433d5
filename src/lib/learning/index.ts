export { arrowWindows } from './arrow-windows';
export { arrows, type Act, type Actor, type Arrow, type WindowId } from './certification-arrows';
export { addDays, addMonths, daysBetween, isIsoDate, type IsoDate } from './calendar';
export { cardScope } from './card-scope';
export { certificationStates, type CertificationState } from './certification-state';
export { cleanRunFor } from './clean-run';
export { competencies, safety, type AreaId, type CompetencyId } from './competency';
export { decisionLines, type DecisionLines } from './decision-lines';
export { drillsNeeded } from './drills-needed';
export { eligibility, type Eligibility, type Flag, type Missing, type Signer } from './eligibility';
export { evidenceGaps, type Evidence, type EvidenceGap } from './evidence';
export type { AnsweredSheet } from './item-statistics/answered-sheet';
export { commonestForm } from './item-statistics/commonest-form';
export { formStatistics, type FormRefusal, type FormStatistics } from './item-statistics/form-statistics';
export type { ItemFlag } from './item-statistics/item-flag';
export { itemLimits, itemLimitsProvenance } from './item-statistics/item-limits';
export { itemStatistics, type ItemStatistics } from './item-statistics/item-statistics';
export { itemsNeeded } from './item-statistics/items-needed';
export { lengthened } from './item-statistics/lengthened';
export type { TooFew } from './item-statistics/too-few';
export { meaningOfFail, meaningOfPass, meaningOfRun } from './meaning';
export { operatingCharacteristic, type OperatingCharacteristic } from './operating-characteristic';
export {
	practicalEntries,
	practicalGateNamed,
	practicalPlan,
	practicalReadingNamed,
	type PracticalEntry,
	type PracticalPlan
} from './practical';
export { estimate, expectedAt, type JobOffer, type PracticeState } from './practice/estimate';
export { drawnJob } from './practice/drawn-job';
export { eloStep, type Rating } from './practice/elo-step';
export { expectedRight } from './practice/expected-right';
export { firstDifficulty } from './practice/first-difficulty';
export { nextJob, type NextJob } from './practice/next-job';
export { NEXT_JOB_DEFAULT } from './practice/next-job-default';
export type { JobBreadth, PractisedJob } from './practice/practised-job';
export { supportFor, type Support } from './practice/support-for';
export { readScheme, type SchemeProblem } from './read-scheme';
export { retest, type Retest } from './retest';
export { chanceOfClearing } from './safety-chance';
export { safetyGate, type SafetyPlan, type SafetyStanding, type SafetyStep } from './safety-gate';
export { meaningOfSafetyGate } from './safety-meaning';
export { holdsSafetySkill } from './safety-skills';
export { defaultScheme, type Scheme } from './scheme';
export { schemeDefaults } from './scheme-defaults';
export type { SchemeLimit } from './scheme-limit';
export { schemeSchema } from './scheme-schema';
export type { SequentialPlan } from './sequential-plan';
export { decide, verdict, type Verdict, type VerdictState } from './sequential-test';
export { skillPanel, type Finish, type PanelEvidence, type SkillPanel, type Strip } from './skill-panel';
export { skills, type Skill, type SkillId } from './skill';
export { stateOn } from './state-on';
export { transition, type Circumstances, type Standing, type Transition } from './transition';
export { shortestTruncation } from './truncation';
export { validity, type Validity } from './validity';
export { wilsonInterval } from './wilson';
export { workAllowed, type WorkAllowed } from './work-allowed';
