import { readInputs } from '../formula/index.js'
import { fitLeastSquares, studentTQuantile } from '../numeric/index.js'
import { type In, InputError, type Issue, Quantity } from '../units/index.js'
import { type Network, readInitial, withoutCapacity } from './network.js'
import { courseNumbers } from './network-course.js'
import { siOf, unknownNode } from './network-numbers.js'

/** Temperatures read at a settled state. */
type SteadyReading = Readonly<Record<string, In<'temperature'>>>

/** A logged course: times from the start and temperatures of the nodes that carry a sensor. */
export interface TemperatureLog {
  readonly times: readonly In<'time'>[]
  readonly temperatures: Readonly<Record<string, readonly In<'temperature'>[]>>
  /** Temperatures of all nodes at time zero. Default the warmest fixed temperature. */
  readonly initial?: Readonly<Record<string, In<'temperature'>>> | In<'temperature'>
}

/** One corrected parameter. */
export interface Correction {
  /** The link's or node's name. */
  readonly name: string
  readonly of: 'conductance' | 'capacity'
  /** What the model's value is multiplied by. */
  readonly factor: Quantity<'ratio'>
  /** 95 % interval of the factor after the measurement. */
  readonly low: Quantity<'ratio'>
  readonly high: Quantity<'ratio'>
  /** Half-width of the 95 % band it had before, relative. */
  readonly before: Quantity<'ratio'>
  /** Whether the measurement said anything about it: its band shrank by a tenth or more. */
  readonly informed: boolean
}

/** A network corrected by measurement. */
export interface Calibration {
  readonly network: Network
  /** Every parameter that could change, the largest change first. */
  readonly corrections: readonly Correction[]
  /** Root-mean-square of reading less model, before and after. */
  readonly misfitBefore: Quantity<'temperatureDifference'>
  readonly misfitAfter: Quantity<'temperatureDifference'>
  /** `consistent`; or `strained` where readings lie further off than sensor and scatter explain: something is missing in the model. */
  readonly state: 'consistent' | 'strained'
  /** The factors for `scaled`, to carry them to other loads. */
  readonly factors: { readonly links: Readonly<Record<string, number>>; readonly capacities: Readonly<Record<string, number>> }
}

/**
 * Corrects a network by measured temperatures: a settled state, a logged heating or cooling curve, or both.
 *
 * Every link moves as far as its own scatter makes likely, none further than the readings ask (least squares with the bands as prior knowledge); capacities too when there is a log.
 * The losses are taken as known: measure voltage and current. The links' scatter in the result is what is left of it.
 */
export function calibrate(
  network: Network,
  measured: { readonly steady?: SteadyReading; readonly log?: TemperatureLog },
  options: {
    /** Standard deviation of a reading. Default 1 K. */
    readonly sensor?: In<'temperatureDifference'>
    /** Relative 95 % half-width of the heat capacities. Default 20 %. */
    readonly capacityScatter?: In<'ratio'>
  } = {},
): Calibration {
  const n = network.si.numbers
  const issues: Issue[] = []
  const { sensor, capacityScatter } = readInputs(
    'thermal.calibrate',
    { sensor: { kind: 'temperatureDifference', above: 0, default: '1 K' }, capacityScatter: { kind: 'ratio', min: 0, default: 0.2 } },
    options,
  )
  const node = (path: string, name: string) => {
    const index = n.names.indexOf(name)
    if (index < 0) issues.push(unknownNode(path, name, n.names))
    return index
  }
  const steady = Object.entries(measured.steady ?? {}).map(([name, T]) => ({
    index: node(`steady.${name}`, name),
    T: siOf(`steady.${name}`, 'temperature', T, issues),
  }))
  const log = measured.log === undefined ? undefined : readLog(network, measured.log, issues)
  if (steady.length === 0 && log === undefined)
    issues.push({ path: 'measured', given: 'nothing', accepts: 'needs steady readings or a log' })
  if (issues.length > 0) throw new InputError('thermal.calibrate', issues)

  const linked = n.links.filter(({ scatter }) => scatter > 0)
  const stored = log === undefined || capacityScatter === 0 ? [] : n.names
  const spread = [...linked.map(({ scatter }) => scatter), ...stored.map(() => capacityScatter)].map((band) => Math.log1p(band) / 1.96)
  const factorsOf = (p: ArrayLike<number>) => ({
    links: Object.fromEntries(linked.map(({ name }, i) => [name, Math.exp(p[i]! * spread[i]!)])),
    capacities: Object.fromEntries(stored.map((name, i) => [name, Math.exp(p[linked.length + i]! * spread[linked.length + i]!)])),
  })
  const readings = steady.length + (log === undefined ? 0 : log.rows.length)
  const model = (p: ArrayLike<number>, out: Float64Array) => {
    const trial = network.scaled(factorsOf(p))
    let at = 0
    if (steady.length > 0) {
      const { T } = trial.si.steady()
      for (const { index, T: read } of steady) out[at++] = (T[index]! - read) / sensor
    }
    if (log !== undefined) {
      const { solution } = courseNumbers(trial.si.numbers, log.initial, log.duration)
      for (const { time, index, T } of log.rows) out[at++] = (solution.at(Math.min(time, solution.tEnd))[index]! - T) / sensor
    }
    for (let i = 0; i < spread.length; i++) out[readings + i] = p[i]!
  }
  const fit = fitLeastSquares({
    residuals: (p, out) => model(p, out),
    count: readings + spread.length,
    start: new Float64Array(spread.length),
    sigma: 1,
  })
  const before = new Float64Array(readings + spread.length)
  model(new Float64Array(spread.length), before)
  const rms = (r: ArrayLike<number>) => {
    let sum = 0
    for (let i = 0; i < readings; i++) sum += r[i]! ** 2
    return new Quantity(sensor * Math.sqrt(sum / readings), 'temperatureDifference')
  }
  const factors = factorsOf(fit.parameters)
  const ratio = (x: number) => new Quantity(x, 'ratio')
  const corrections = spread.map((width, i): Correction => {
    const value = fit.parameters[i]! * width
    const half = 1.96 * fit.standardErrors[i]! * width
    return {
      name: i < linked.length ? linked[i]!.name : stored[i - linked.length]!,
      of: i < linked.length ? 'conductance' : 'capacity',
      factor: ratio(Math.exp(value)),
      low: ratio(Math.exp(value - half)),
      high: ratio(Math.exp(value + half)),
      before: ratio(Math.expm1(1.96 * width)),
      informed: fit.standardErrors[i]! < 0.9,
    }
  })
  return {
    network: network.scaled(factors),
    corrections: corrections.toSorted((a, b) => Math.abs(Math.log(b.factor.si)) - Math.abs(Math.log(a.factor.si))),
    misfitBefore: rms(before),
    misfitAfter: rms(fit.residuals),
    // With the priors counted as data, the sum of squares has as many degrees of freedom as there are readings.
    state: fit.sumOfSquares <= readings + 3 * Math.sqrt(2 * readings) ? 'consistent' : 'strained',
    factors,
  }
}

function readLog(network: Network, log: TemperatureLog, issues: Issue[]) {
  const n = network.si.numbers
  withoutCapacity(n, issues)
  const times = log.times.map((t, k) => siOf(`log.times[${k}]`, 'time', t, issues, -Number.MIN_VALUE))
  const rows = Object.entries(log.temperatures).flatMap(([name, values]) => {
    const index = n.names.indexOf(name)
    if (index < 0) issues.push(unknownNode(`log.temperatures.${name}`, name, n.names))
    if (values.length !== times.length)
      issues.push({
        path: `log.temperatures.${name}`,
        given: `${values.length} values`,
        accepts: `needs one for each of the ${times.length} times`,
      })
    return values.map((T, k) => ({ time: times[k] ?? 0, index, T: siOf(`log.temperatures.${name}[${k}]`, 'temperature', T, issues) }))
  })
  const duration = times.reduce((most, t) => Math.max(most, t), 0)
  if (!(duration > 0)) issues.push({ path: 'log.times', given: String(times.length), accepts: 'must reach beyond time zero' })
  const initial = readInitial(n, log.initial, issues).slice(0, n.names.length)
  return { rows, duration, initial }
}

/** What a heating or cooling curve of one body tells. */
export interface StepResponse {
  readonly timeConstant: Quantity<'time'>
  /** Temperature it tends to. */
  readonly final: Quantity<'temperature'>
  /** 95 % half-width of the time constant and of the final temperature. */
  readonly timeConstantBand: Quantity<'time'>
  readonly finalBand: Quantity<'temperatureDifference'>
  /** With the change of loss known: resistance to the surroundings and heat capacity. */
  readonly resistance: Quantity<'thermalResistance'> | undefined
  readonly capacity: Quantity<'heatCapacity'> | undefined
}

/**
 * Fits one exponential to a logged heating or cooling curve. With the power that was switched it gives resistance and heat capacity.
 *
 * A motor has a fast winding on a slow mount: leave out the first two time constants of the winding, or calibrate a network instead.
 */
export function fitStepResponse(curve: {
  readonly times: readonly In<'time'>[]
  readonly temperatures: readonly In<'temperature'>[]
  /** Change of loss at the start of the curve: positive when switched on. */
  readonly power?: In<'power'>
  /** Temperature before the change, needed with a power. */
  readonly before?: In<'temperature'>
}): StepResponse {
  const issues: Issue[] = []
  const times = curve.times.map((t, k) => siOf(`times[${k}]`, 'time', t, issues))
  const values = curve.temperatures.map((T, k) => siOf(`temperatures[${k}]`, 'temperature', T, issues))
  if (times.length !== values.length || times.length < 4)
    issues.push({
      path: 'temperatures',
      given: `${values.length} for ${times.length} times`,
      accepts: 'needs four or more points, one temperature for each time',
    })
  const power = curve.power === undefined ? undefined : siOf('power', 'power', curve.power, issues)
  const before = curve.before === undefined ? undefined : siOf('before', 'temperature', curve.before, issues)
  if (power !== undefined && before === undefined)
    issues.push({ path: 'before', given: 'missing', accepts: 'is needed with a power: the temperature before the change' })
  if (issues.length > 0) throw new InputError('thermal.fitStepResponse', issues)
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
  const timeConstant = Math.exp(fit.parameters[2]!)
  const final = fit.parameters[1]!
  const resistance = power === undefined ? undefined : (final - before!) / power
  return {
    timeConstant: new Quantity(timeConstant, 'time'),
    final: new Quantity(final, 'temperature'),
    timeConstantBand: new Quantity(t95 * fit.standardErrors[2]! * timeConstant, 'time'),
    finalBand: new Quantity(t95 * fit.standardErrors[1]!, 'temperatureDifference'),
    resistance: resistance === undefined ? undefined : new Quantity(resistance, 'thermalResistance'),
    capacity: resistance === undefined ? undefined : new Quantity(timeConstant / resistance, 'heatCapacity'),
  }
}
