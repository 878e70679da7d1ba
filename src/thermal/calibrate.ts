import { readInputs, requireKeys } from '../formula/index.js'
import { fitLeastSquares } from '../numeric/index.js'
import { type In, InputError, type Issue, Quantity } from '../units/index.js'
import type { Calibration, SteadyReading } from './calibration.js'
import { correctionsOf, END } from './calibration-corrections.js'
import { partsOf } from './calibration-part.js'
import type { Network } from './network.js'
import { courseNumbers } from './network-course.js'
import { siOf, unknownNode } from './network-losses.js'
import type { NetworkNumbers } from './network-numbers.js'
import { displaced } from './network-spread.js'
import { steadyNumbers } from './network-steady.js'
import { readLog, type TemperatureLog, withCapacities } from './temperature-log.js'

/**
 * Corrects a network by measured temperatures: a settled state, a logged heating or cooling curve, or both.
 *
 * Every cause of scatter moves as far as its band makes likely, none further than the readings ask (least squares with the bands as prior knowledge); capacities too when there is
 * a log. The losses count as known: measure voltage and current.
 */
export function calibrate(
  network: Network,
  measured: {
    /** Settled temperatures by node. */
    readonly steady?: SteadyReading
    /** A logged heating or cooling curve, with the losses that the network has. */
    readonly log?: TemperatureLog
  },
  options: {
    /** Standard deviation of a reading. Default 1 K. */
    readonly sensor?: In<'temperatureDifference'>
    /** Relative 95 % half-width of the heat capacities that tell none of their own. Default 20 %. */
    readonly capacityScatter?: In<'ratio'>
  } = {},
): Calibration {
  requireKeys('thermal.calibrate', 'measured', measured, ['steady', 'log'])
  const { sensor, capacityScatter } = readInputs(
    'thermal.calibrate',
    { sensor: { kind: 'temperatureDifference', above: 0, default: '1 K' }, capacityScatter: { kind: 'ratio', min: 0, default: 0.2 } },
    options,
  )
  const readable = readMeasured(network.si.numbers, measured, capacityScatter)
  const { steady, log, free, touched } = readable
  const readings = steady.length + (log?.rows.length ?? 0)
  const model = residualsOf(readable, sensor)
  const count = free.length
  const fit = fitLeastSquares({
    residuals: model,
    jacobian: (p, out) => differences(model, p, readings + count, out),
    count: readings + count,
    start: new Float64Array(count),
    sigma: 1,
  })
  const before = new Float64Array(readings + free.length)
  model(new Float64Array(free.length), before)
  const rms = (r: ArrayLike<number>) => {
    let sum = 0
    for (let i = 0; i < readings; i++) sum += r[i]! ** 2
    return new Quantity(sensor * Math.sqrt(sum / readings), 'temperatureDifference')
  }
  const { factors, corrections } = correctionsOf(touched, fit)
  return {
    network: network.scaled(factors),
    corrections,
    misfitBefore: rms(before),
    misfitAfter: rms(fit.residuals),
    // With the priors counted as data, the sum of squares has as many degrees of freedom as there are readings.
    state: fit.sumOfSquares <= readings + 3 * Math.sqrt(2 * readings) ? 'consistent' : 'inconsistent',
    factors,
  }
}

type Measured = Parameters<typeof calibrate>[1]
type Readable = ReturnType<typeof readMeasured>

/** Readings, the network with the scatter of its capacities, and the causes that the readings may move. Throws one `InputError` that lists every issue. */
function readMeasured(given: NetworkNumbers, measured: Measured, capacityScatter: number) {
  const issues: Issue[] = []
  const steady = Object.entries(measured.steady ?? {}).map(([name, T]) => {
    const index = given.names.indexOf(name)
    if (index < 0) issues.push(unknownNode(`steady.${name}`, name, given.names))
    return { index, T: siOf(`steady.${name}`, 'temperature', T, issues) }
  })
  const log = measured.log === undefined ? undefined : readLog(given, measured.log, issues)
  const n = log === undefined ? given : { ...given, spreads: withCapacities(given, capacityScatter) }
  if (steady.length === 0 && log === undefined)
    issues.push({ path: 'measured', given: 'nothing', accepts: 'needs steady readings or a log' })
  const free = n.spreads.flatMap(({ links, capacities }, k) =>
    links.some((x) => x !== 0) || (log !== undefined && capacities.some((x) => x !== 0)) ? [k] : [],
  )
  const touched = partsOf(n, free, log !== undefined)
  for (const { name } of touched.links)
    if (n.links.filter((link) => link.name === name).length > 1)
      issues.push({ path: 'network', given: `links named ${name}`, accepts: 'needs a name for each link, to correct them apart' })
  if (free.length === 0)
    issues.push({ path: 'network', given: 'no scatter', accepts: 'needs links with a scatter: nothing else may be corrected' })
  if (issues.length > 0) throw new InputError('thermal.calibrate', issues)
  return { steady, log, n, free, touched }
}

/** Makes the function that writes the residuals: readings over the deviation of the sensor, then the causes in standard deviations. */
function residualsOf({ steady, log, n, free }: Readable, sensor: number) {
  const moved = (p: ArrayLike<number>) => {
    const parts = new Float64Array(n.spreads.length)
    free.forEach((k, i) => {
      parts[k] = p[i]! / END
    })
    return displaced(n, parts)
  }
  const readings = steady.length + (log?.rows.length ?? 0)
  return (p: ArrayLike<number>, out: Float64Array) => {
    const trial = moved(p)
    let at = 0
    if (steady.length > 0) {
      const { T } = steadyNumbers(trial)
      for (const { index, T: read } of steady) out[at++] = (T[index]! - read) / sensor
    }
    if (log !== undefined) {
      const { solution } = courseNumbers(trial, log.initial, log.duration)
      for (const { time, index, T } of log.rows) out[at++] = (solution.at(Math.min(time, solution.tEnd))[index]! - T) / sensor
    }
    for (let i = 0; i < free.length; i++) out[readings + i] = p[i]!
  }
}

/** Step of the difference quotients in standard deviations of the causes: well above what the solvers leave open. */
const STEP = 1e-3

/** Central differences of the residuals, row by row. */
function differences(model: (p: Float64Array, out: Float64Array) => void, p: Float64Array, rows: number, out: Float64Array): void {
  const above = new Float64Array(rows)
  const below = new Float64Array(rows)
  for (let j = 0; j < p.length; j++) {
    model(
      p.map((x, i) => (i === j ? x + STEP : x)),
      above,
    )
    model(
      p.map((x, i) => (i === j ? x - STEP : x)),
      below,
    )
    for (let i = 0; i < rows; i++) out[i * p.length + j] = (above[i]! - below[i]!) / (2 * STEP)
  }
}
