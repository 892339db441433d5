/** The engine's only door. */
export type { Text } from './text';
export { ENGINE_VERSION } from './version';
export { STATIONS, STATION_NAMES, SKILLS, type Competency, type Skill, type Station } from './station';

export * from './units/construct';
export { SI_UNITS, type Dimension, type Si } from './units/dimension';
export type { Kelvin, Metre, Pascal, Second } from './units/dimension';
export { format, formatWindow, halfStep } from './units/display';
export { parseQuantity } from './units/parse';
export { METRIC, US, unitFor, type UnitPreferences } from './units/preferences';
export type { QuantityProblem } from './units/problem';
export { problemText } from './units/problem-text';
export { UNITS, unitOf } from './units/units';

export { AUTHORITIES, AUTHORITY_NAMES, type Authority } from './sources/authority';
export { SOURCES, type SourceId } from './sources/sources';
export { cite, commonPractice, type Origin, type Provenance, type Verification } from './sources/provenance';

export { FAMILIES, FAMILY_PARTS, HAZARDS, THINNERS, CUPS, type Family, type Hazard } from './coatings/traits';
export { REQUIRED_LINES, SHEET_LINES, TWO_PART_LINES, type LineId } from './coatings/lines';
export { LINE_BOUNDS } from './coatings/bounds';
export { startDays } from './coatings/start-days';
export type { DataSheet, IsoDate, SheetLine } from './coatings/sheet';
export { lineOn } from './coatings/in-force';
export { sheetLimits, sheetNumber } from './coatings/limits';
export { DEMO_SHEETS } from './coatings/sheets';
export { validateSheet } from './coatings/validate';
export type { CheckedSheet, SheetProblem } from './coatings/problem';
export { SHEET_FORMAT } from './coatings/format-tag';
export { exportSheet } from './coatings/export-sheet';
export { importSheet } from './coatings/import-sheet';
export { sheetJsonSchema } from './coatings/json-schema';

export { lowestLimit } from './solvents/lowest-limit';
export { SOLVENTS, SOLVENT_SOURCES, type SolventId } from './solvents/solvents';
export { SUBSTRATES, substrate, type SubstrateClass, type SubstrateId } from './substrates/substrates';
export { thermal } from './substrates/thermal';
export { SHOP_VALUES, type ShopValueId } from './shop/values';
export { GEAR_TASKS, PROTECTIVE, type GearTask, type Protective } from './shop/values/safety';
export { settingProblems, type SettingAmount, type SettingProblem } from './shop/setting-problems';
export { valueBounds } from './shop/bounds';
export { shopValue, shopWindow, type Shop, type ShopValueSetting } from './shop/shop';

export { jobSchema, FILM_BASES, type Job } from './job/job';
export {
	CAVITIES,
	FEATURES,
	FITTED,
	SHAPES,
	SURFACES,
	type Feature,
	type Part,
	type Shape
} from './job/part';
export {
	BLOTTERS,
	BREATHING,
	CABINETS,
	HARDENER_STATES,
	MEDIA,
	NOZZLE_BORES,
	NOZZLES,
	type Nozzle
} from './job/bench';

export { BENCH_FIELDS, FIELDS, FIELD_IDS, field, isFieldId, type FieldId } from './setup/fields';
export type { Field, Options } from './setup/field';
export { GEAR } from './setup/fields/safety';
export { CHART_VERDICTS, type ChartVerdict } from './setup/fields/chart-reading';
export { STANDS, type Stand } from './setup/fields/gauge-reading';

export { FORMULAS, type FormulaNote } from './physics/formulas';
export { formulaById } from './physics/formula-by-id';
export { sampleMean } from './physics/readings/sample-mean';
export { READINGS_PER_SPOT, SPOTS_PER_AREA } from './physics/readings/sampling-plan';
export { spotLimits } from './physics/readings/spot-limits';
export { batchVolume } from './physics/film/batch-volume';
export { cupViscosity } from './physics/mixing/cup-viscosity';
export { cureEquivalence } from './physics/cure/cure-equivalence';
export { dilutionAir } from './physics/solvent/dilution-air';
export { dryFilm } from './physics/film/dry-film';
export { filmFromMass } from './physics/film/film-from-mass';
export { filmPerPass } from './physics/spray/film-per-pass';
export { fitGrowth } from './physics/film/fit-growth';
export { hardenerForBase } from './physics/mixing/hardener-for-base';
export { hotExplosiveLimit } from './physics/solvent/hot-explosive-limit';
export { mixSplit } from './physics/mixing/mix-split';
export { ovenSolventLoad } from './physics/solvent/oven-solvent-load';
export { partArea } from './physics/film/part-area';
export { potLifeAt } from './physics/mixing/pot-life-at';
export { radiantHeatUpTime } from './physics/heat/radiant-heat-up-time';
export { ratioByMass } from './physics/mixing/ratio-by-mass';
export { spreadingRate } from './physics/film/spreading-rate';
export { vapourVolume } from './physics/solvent/vapour-volume';
export { timeAbove } from './physics/cure/time-above';
export { wallHeatUp } from './physics/heat/wall-heat-up';
export { wallTemperatureAfter } from './physics/heat/wall-temperature-after';
export { catalystShare } from './physics/mixing/catalyst-share';
export { blastNozzleAir } from './physics/air/blast-nozzle-air';
export { deliveryNeeded } from './physics/air/delivery-needed';
export { wornNozzleAir } from './physics/air/worn-nozzle-air';
export { clearanceLeft } from './physics/film/clearance-left';
export { judgeArea } from './physics/readings/judge-area';
export { judgeReading } from './physics/readings/judge-reading';
export { guardedLimits } from './physics/readings/guarded-limits';
export { readingUncertainty } from './physics/readings/reading-uncertainty';
export { hearingProtector } from './physics/exposure/hearing-protector';
export { maximumUse } from './physics/exposure/maximum-use';
export { mixtureExposure } from './physics/exposure/mixture-exposure';
export { noiseExposure } from './physics/exposure/noise-exposure';
export { PROTECTION_FACTORS, PROTECTION_FACTORS_SOURCE } from './physics/exposure/protection-factors';
export { wetFilm } from './physics/film/wet-film';
export { RULES, ruleById } from './rules';
export { taughtIn } from './rules/taught-in';
export type { Breaks, Rule, Severity } from './rules/rule';
export { limits, type Expectation } from './rules/expectation';

export { mayStart, solve } from './plan/solve';
export type { Conflict, Demand, Plan, PlannedField } from './plan/plan';
export { plannedField } from './plan/planned-field';
export { windowOf } from './plan/window-of';
export { given, workedOut, type Traced, type TraceOrigin } from './plan/trace';
export { areaOfPieces } from './plan/coated-area';
export { heatDepth } from './plan/heat-depth';
export { coldestIn } from './plan/coldest-part';
export { latestAge } from './plan/latest-age';
export { oneNumber } from './plan/one-number';
export { withReserve } from './plan/with-reserve';
export { breached, type Breached } from './grading/breached';
export { grade, rightAnswers, type Finding, type Findings } from './grading/grade';
export type { Answer, Answers } from './grading/answer';

export { DEFECTS, type DefectId } from './defects/defects';

export { EXAMPLE_JOBS, type ExampleJob } from './job/examples';
export { examplesByRule, exampleTickets, type ExampleTicket, type RuleExample } from './plan/example-tickets';
export { DEFECT_SHEETS, DEFECT_SHEETS_PROVENANCE } from './defects/sheets';
export type { DefectSheet } from './defects/sheet';
export { breaksInto } from './defects/breaks-into';
export { diagnose, type Cause } from './defects/diagnose';
export { FITS, type Fit } from './defects/fit';
export type { Circumstances } from './defects/circumstances';
export type { Direction } from './defects/causes';
export * from './defects/network';

export { ovenOutcome } from './outcome/oven-outcome';
export type { MeasureId, Outcome, OutcomeDefect, OutcomeMeasure } from './outcome/outcome';
export type { Degree } from './outcome/degree';
export type { Harm } from './outcome/harm';
export * from './outcome/film-map';
