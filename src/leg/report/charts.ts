import { barChart, type Chart } from '../../chart/index.js'
import { legModel } from '../leg-model.js'
import { cordJoints, legNumbers } from '../numbers.js'
import type { Assessment } from '../result.js'
import { rankOf } from './checks-section.js'
import { placeOf, reserveText, standing } from './content.js'
import { stallTemperatures, torqueSpeed } from './motor-charts.js'
import { reach } from './reach-chart.js'
import { sensitivityChart } from './sensitivity-chart.js'
import { clampOverSeason, pretensionOverTime } from './year-charts.js'

/** One chart of the report. */
export interface ReportChart {
  /** A name for links and file names, such as `reserves`. */
  readonly id: string
  /** The picture as a Vega-Lite specification. */
  readonly chart: Chart
}

/** The charts of a report: reserves, torque and speed of the gaits, temperatures of a stall, a year's tension and clamp load, reach, and what moves the governing reserve. */
export function reportCharts(assessment: Assessment): readonly ReportChart[] {
  const leg = legModel(legNumbers(assessment.leg))
  return [
    { id: 'reserves', chart: reserveChart(assessment) },
    { id: 'moves', chart: sensitivityChart(assessment) },
    { id: 'torque-speed', chart: torqueSpeed(leg) },
    { id: 'stall', chart: stallTemperatures(leg) },
    ...(cordJoints(leg.x).length > 0 ? [{ id: 'pretension', chart: pretensionOverTime(leg) }] : []),
    { id: 'clamp', chart: clampOverSeason(leg) },
    { id: 'reach', chart: reach(leg) },
  ]
}

/** Several forms of a report share its charts. */
const KEPT = new WeakMap<Assessment, readonly ReportChart[]>()

/** The charts of a report, made once for each assessment. */
export function chartsOf(assessment: Assessment): readonly ReportChart[] {
  let charts = KEPT.get(assessment)
  if (charts === undefined) {
    charts = reportCharts(assessment)
    KEPT.set(assessment, charts)
  }
  return charts
}

/** Charts that say less than a drawing of the page: where the drawing is there, the chart is not. */
const WITHIN: Readonly<Record<string, string>> = {
  reserves: 'reserve-bars',
  'torque-speed': 'torque-speed-hip',
  pretension: 'year',
  clamp: 'year',
}

/** Charts without those that say less than a drawing among the others of a page. */
export const besides = <C extends ReportChart>(charts: readonly C[], drawings: readonly { readonly id: string }[]): readonly C[] =>
  charts.filter((chart) => !drawings.some(({ id }) => id === WITHIN[chart.id]))

const MAX_BARS = 18
/** Reserves beyond this are drawn at this length; the label has the number. */
const MAX_BAR = 4

function reserveChart(assessment: Assessment): Chart {
  const { checks, requiredReserve } = assessment
  const shown = checks.slice(0, MAX_BARS)
  return barChart({
    title: 'Reserve of the checks nearest to their limit',
    description: `Bars of the ${shown.length} of ${checks.length} checks that are nearest to their required reserve. A check fails where its bar ends before the dashed line at 1${requiredReserve > 1 ? `; the other line is the required reserve of ${requiredReserve}` : ''}. First: ${placeOf(shown[0]!)}, ${reserveText(shown[0]!.reserve)}.`,
    value: { title: 'reserve: capacity over demand', unit: '1', zero: true },
    bars: shown.map((check) => ({
      name: `${rankOf(assessment, check)} ${placeOf(check)}`,
      to: Math.min(check.reserve, MAX_BAR),
      group: standing(check),
      label: `${reserveText(check.reserve)} ${standing(check)}`,
    })),
    rules: [1, ...(requiredReserve > 1 ? [requiredReserve] : [])].map((at) => ({ name: '', at })),
  })
}
