/**
 * One leg as one specification: the loads of each load case on every part, and which part fails first.
 *
 * @module
 */
export { type LegFormulaOptions, type LegInputs, legFormula } from './as-formula.js'
export { type AssessOptions, assess } from './assess/assess.js'
export { checkReserves, governingReserve, type QuickVerdict } from './assess/quick.js'
export type { Consequence } from './cases/check.js'
export { ALL_CASE_IDS, CASE_IDS, type CaseId } from './cases/events.js'
export * from './exchange/index.js'
export { type LegFiguresOptions, legFigures } from './figures.js'
export type { FootResult } from './foot-result.js'
export * from './learning/index.js'
export { type End, type Joint, type LegNumbers, legNumbers } from './numbers.js'
export * from './plans/index.js'
export { type ReportChart, reportCharts } from './report/charts.js'
export { verdictText } from './report/content.js'
export { htmlReport } from './report/html.js'
export { markdownReport } from './report/markdown.js'
export { chartSvg, type ReportPicture, reportPictures } from './report/pictures.js'
export { rankedTable } from './report/text.js'
export type { Assessment, CaseResult, CheckResult, JointResult, Reliance, Unsettled } from './result.js'
export { describeLeg, type Leg } from './specification/describe.js'
export { legJsonSchema } from './specification/json-schema.js'
export { migrate } from './specification/migrate.js'
export type { OwnMaterial, OwnValue } from './specification/own-material.js'
export { type LegData, type LegSpecification, SCHEMA_VERSION } from './specification/schema.js'
export type { LegDefault } from './specification/walk.js'
