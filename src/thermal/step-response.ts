import { Property, requireKeys } from '../formula/index.js'
import { fitLeastSquares, studentTQuantile } from '../numeric/index.js'
import { type In, InputError, type Issue, type Kind } from '../units/index.js'
import { siOf } from './network-losses.js'

/** Results of a heating or cooling curve of one body, each with its 95 % interval. */
export interface FittedStepResponse {
  readonly timeConstant: Property<'time'>
  /** Temperature it tends to. */
  readonly final: Property<'temperature'>
  /** With the change of loss known: resistance to the surroundings and heat capacity. */
  readonly resistance: Property<'thermalResistance'> | undefined
  readonly capacity: Property<'heatCapacity'> | undefined
}

const SOURCE = { level: 'computed', where: 'least-squares fit of one exponential' } as const

/**
 * Fits one exponential to a logged heating or cooling curve. With the power that was switched it gives resistance and heat capacity.
 *
 * A motor has a fast winding on a slow mount: leave out the first two time constants of the winding, or calibrate a network instead.
 */
export function fitStepResponse(curve: {
  /** Times from the change of loss, rising. */
  readonly times: readonly In<'time'>[]
  /** Temperatures of the node, one for each time. */
  readonly temperatures: readonly In<'temperature'>[]
  /** Change of loss at the start of the curve: positive when switched on, negative when switched off. */
  readonly power?: In<'power'>
  /** Temperature before the change, needed with a power. */
  readonly before?: In<'temperature'>
}): FittedStepResponse {
  requireKeys('thermal.fitStepResponse', 'curve', curve, ['times', 'temperatures', 'power', 'before'])
  const { times, values, power, before } = readCurve(curve)
  const [first, last] = [values[0]!, values.at(-1)!]
  const span = times.at(-1)! - times[0]!
  const fit = fitLeastSquares({
    residuals: (p, out) => {
      for (let k = 0; k < times.length; k++)
        out[k] = p[1]! + (p[0]! - p[1]!) * Math.exp(-(times[k]! - times[0]!) / Math.exp(p[2]!)) - values[k]!
    },
    count: times.length,
    start: [first, last + 0.2 * (last - first), Math.log(0.4 * span)],
  })
  const t95 = studentTQuantile(0.975, Math.max(1, fit.degreesOfFreedom))
  const deviation = (i: number, j = i) => fit.covariance[3 * i + j]!
  const final = fit.parameters[1]!
  const timeConstant = Math.exp(fit.parameters[2]!)
  const told = <K extends Kind>(kind: K, x: number, low: number, high: number) =>
    new Property(x, kind, low, high, SOURCE, 'fitted, 95 % interval')
  const byFactor = <K extends Kind>(kind: K, x: number, variance: number) => {
    const factor = Math.exp(t95 * Math.sqrt(variance))
    return told(kind, x, x / factor, x * factor)
  }
  const half = t95 * Math.sqrt(deviation(1))
  const shared = {
    timeConstant: byFactor('time', timeConstant, deviation(2)),
    final: told('temperature', final, final - half, final + half),
  }
  if (power === undefined) return { ...shared, resistance: undefined, capacity: undefined }
  const resistance = (final - before!) / power
  if (!(resistance > 0))
    throw new InputError('thermal.fitStepResponse', [
      {
        path: 'power',
        given: `${power} W for a change of ${(final - before!).toPrecision(3)} K`,
        accepts: 'must have the sign of the change: positive when switched on',
      },
    ])
  // Relative variances: the capacity is the time constant over the resistance, and both come from one fit.
  const rise = final - before!
  const ofResistance = deviation(1) / rise ** 2
  return {
    ...shared,
    resistance: told('thermalResistance', resistance, resistance - half / Math.abs(power), resistance + half / Math.abs(power)),
    capacity: byFactor('heatCapacity', timeConstant / resistance, Math.max(0, deviation(2) + ofResistance - (2 * deviation(1, 2)) / rise)),
  }
}

/** The curve in SI numbers. Throws one `InputError` that lists every issue. */
function readCurve(curve: Parameters<typeof fitStepResponse>[0]) {
  const issues: Issue[] = []
  const times = curve.times.map((t, k) => siOf(`times[${k}]`, 'time', t, issues))
  const values = curve.temperatures.map((T, k) => siOf(`temperatures[${k}]`, 'temperature', T, issues))
  if (times.length !== values.length || times.length < 4)
    issues.push({
      path: 'temperatures',
      given: `${values.length} for ${times.length} times`,
      accepts: 'needs four or more points, one temperature for each time',
    })
  times.forEach((t, k) => {
    if (k > 0 && !(t > times[k - 1]!)) issues.push({ path: `times[${k}]`, given: `${t} s`, accepts: 'must be later than the time before' })
  })
  const power = curve.power === undefined ? undefined : siOf('power', 'power', curve.power, issues)
  const before = curve.before === undefined ? undefined : siOf('before', 'temperature', curve.before, issues)
  if (power === 0) issues.push({ path: 'power', given: '0 W', accepts: 'must be a change of loss' })
  if (power !== undefined && before === undefined)
    issues.push({ path: 'before', given: 'missing', accepts: 'is needed with a power: the temperature before the change' })
  if (issues.length > 0) throw new InputError('thermal.fitStepResponse', issues)
  return { times, values, power, before }
}
