/**
 * One leg as one specification: the loads of each load case on every part, and which part fails first.
 *
 * @module
 */

// The document

export { describeLeg, type Leg } from './document/describe.js'
export { DOCUMENT_VERSION as SCHEMA_VERSION, type LegData, type LegSpecification } from './document/fields.js'
export { legJsonSchema } from './document/json-schema.js'
export { migrate } from './document/migrate.js'
export type { CheckName, LegPath } from './document/names.js'
export type { LegDefault, OwnMaterial, OwnValue } from './schema/index.js'

// The verdict

export { type AssessOptions, assess } from './assess/assess.js'
export { checkReserves, governingReserve, type QuickVerdict } from './assess/quick.js'
export type { Consequence } from './cases/check.js'
export { ALL_CASE_IDS, CASE_IDS, type CaseId } from './cases/events.js'
export type { CheckResult, Reliance, ReserveEnds } from './check-result.js'
export type { FootResonance } from './foot-resonance.js'
export type { FootResult } from './foot-result.js'
export { type UnusualValue, unusualValues } from './plausibility/index.js'
export { verdictText } from './report/content.js'
export { rankedTable, textReport } from './report/text.js'
export type { Assessment, CaseResult, JointResult, Unsettled } from './result.js'
export type { SidewaysGive } from './sideways-give.js'

// Reports and drawings

export type { Drawing, DrawingTable } from '../drawing/index.js'
export {
  DRAWING_STYLE,
  type LegDrawing,
  type LegDrawingOptions,
  legDrawingNamed,
  legDrawings,
  legPoseDrawing,
  parametersCsv,
  toDxf,
  toTemplate,
} from './drawings/index.js'
export { type LegFiguresOptions, legFigures } from './figures.js'
export type { Picture } from './report/blocks.js'
export { type ReportChart, reportCharts } from './report/charts.js'
export { specificationHash } from './report/hash.js'
export { htmlReport } from './report/html.js'
export { markdownReport } from './report/markdown.js'
export { chartSvg, type ReportPicture, type ReportPicturesOptions, reportPictures } from './report/pictures.js'
export type { ReportOptions } from './report/report-page.js'

// Plans for the workshop and the stand

export * from './plans/index.js'

// Learning from logs

export * from './learning/index.js'

// From a wish to a leg

export * from './proposal/index.js'

// The whole robot

export * from './robot/index.js'

// Other tools and studies

export { type LegFormulaOptions, type LegInputs, legFormula } from './as-formula.js'
export { legCorrelations } from './correlations.js'
export * from './exchange/index.js'
export * from './field-range/index.js'
export type { LegNumbers } from './leg-numbers.js'
export { type End, type Joint, legNumbers } from './numbers.js'
