import { readInputs } from '../formula/index.js'
import { bracketRoot, gradedTimes } from '../numeric/index.js'
import { type In, InputError, Quantity } from '../units/index.js'
import { type CreepLaw, type LinearCreepLaw, lawNotes } from './creep-law.js'
import { meanIntegral } from './histories.js'

/** One isochronous curve: stress over strain after a time. */
export interface CurvePoint {
  readonly strain: Quantity<'strain'>
  readonly stress: Quantity<'stress'>
}

/** Isochronous curve: strain for each stress after one time. A secant on it is the modulus for a part loaded that long. */
export function isochronousCurve(law: CreepLaw, time: In<'time'>, stresses: readonly In<'stress'>[]): CurvePoint[] {
  const x = readInputs('isochronousCurve', { time: { kind: 'time', min: 0 }, stresses: { list: 'stress' } }, { time, stresses })
  return x.stresses.map((stress) => ({
    stress: new Quantity(stress, 'stress'),
    strain: new Quantity(
      law.si(stress, x.time),
      'strain',
      undefined,
      lawNotes('materials.isochronousCurve', law, { stress, time: x.time }),
    ),
  }))
}

/** Isometric curve: the constant stress that reaches one strain after each time. Throws an `InputError` when no stress up to a gigapascal does. */
export function isometricCurve(
  law: CreepLaw,
  strain: In<'strain'>,
  times: readonly In<'time'>[],
): { readonly time: Quantity<'time'>; readonly stress: Quantity<'stress'> }[] {
  const x = readInputs(
    'isometricCurve',
    { strain: { kind: 'strain', above: 0 }, times: { list: { kind: 'time', min: 0 } } },
    { strain, times },
  )
  return x.times.map((time) => {
    const stress = stressFor(law, x.strain, time)
    const notes = lawNotes('materials.isometricCurve', law, { stress, time })
    return { time: new Quantity(time, 'time'), stress: new Quantity(stress, 'stress', undefined, notes) }
  })
}

const MAX_STRESS = 1e9

/** The constant stress that reaches a strain after a time, SI. */
function stressFor(law: CreepLaw, strain: number, time: number): number {
  if (law.linear !== undefined) return strain / law.linear.compliance(time)
  let high = 1e5
  while (law.si(high, time) < strain && high < MAX_STRESS) high *= 4
  if (law.si(high, time) < strain) {
    throw new InputError('isometricCurve', [
      { path: 'strain', given: String(strain), accepts: 'no stress up to 1 GPa reaches this strain' },
    ])
  }
  return bracketRoot((stress) => law.si(stress, time) - strain, 0, high)
}

const MAX_TIME = 100 * 31557600

/**
 * Time until a strain is reached under a constant stress, for any law.
 * Zero when loading alone reaches it, infinite when a century does not.
 */
export function timeToStrain(law: CreepLaw, stress: In<'stress'>, strain: In<'strain'>): Quantity<'time'> {
  const x = readInputs('timeToStrain', { stress: { kind: 'stress', above: 0 }, strain: { kind: 'strain', above: 0 } }, { stress, strain })
  const over = (logTime: number) => law.si(x.stress, Math.exp(logTime)) - x.strain
  const answer = (time: number) =>
    new Quantity(time, 'time', undefined, lawNotes('materials.timeToStrain', law, { stress: x.stress, time }))
  if (law.si(x.stress, 0) >= x.strain) return answer(0)
  if (over(Math.log(MAX_TIME)) < 0) return answer(Number.POSITIVE_INFINITY)
  const first = Math.log(1e-9)
  if (over(first) >= 0) return answer(1e-9)
  return answer(Math.exp(bracketRoot(over, first, Math.log(MAX_TIME))))
}

/** Stress at each time under a held strain, over the stress at once: straight lines between the times, whose strain is exact. */
function keptUnderHeldStrain(linear: LinearCreepLaw['linear'], times: Float64Array): Float64Array {
  const atOnce = linear.compliance(0)
  const kept = new Float64Array(times.length).fill(1)
  for (let n = 1; n < times.length; n++) {
    const now = times[n] as number
    let strain = linear.compliance(now)
    let mean = 0
    for (let j = 1; j <= n; j++) {
      const [from, to] = [times[j - 1] as number, times[j] as number]
      mean = meanIntegral(linear, now - from, now - to) / (to - from)
      if (j < n) strain += ((kept[j] as number) - (kept[j - 1] as number)) * mean
    }
    kept[n] = (kept[n - 1] as number) + (atOnce - strain) / mean
  }
  return kept
}

/** Share of a stress left over time at constant strain: on quantities, and on seconds. */
export interface RelaxationCurve {
  (time: Quantity<'time'>): Quantity<'ratio'>
  /** The same on seconds. */
  readonly si: (time: number) => number
}

/**
 * Share of the stress that is left under a held strain after a time: the curve that clamp-load and press-fit decay take.
 *
 * Exact conversion of a linear law by solving the superposition integral for the stress (not the reciprocal of the creep strain). The
 * curve is prepared up to `upTo` and read between its points in the logarithm of time; a later time throws a `RangeError`.
 */
export function relaxationCurve(law: LinearCreepLaw, upTo: In<'time'>): RelaxationCurve {
  const { upTo: end } = readInputs('relaxationCurve', { upTo: { kind: 'time', above: 0 } }, { upTo })
  const first = Math.min(1e-2, end / 10)
  const times = gradedTimes(end, 240, { first })
  const kept = keptUnderHeldStrain(law.linear, times)
  const si = (time: number): number => {
    if (!(time >= 0 && time <= end * (1 + 1e-12))) throw new RangeError(`relaxationCurve: prepared up to ${end} s, called at ${time} s`)
    if (time <= first) return 1 + ((kept[1] as number) - 1) * (time / first)
    const place = 1 + ((times.length - 2) * Math.log(time / first)) / Math.log(end / first)
    const i = Math.min(Math.floor(place), times.length - 2)
    return (kept[i] as number) + ((kept[i + 1] as number) - (kept[i] as number)) * (place - i)
  }
  const curve = (time: Quantity<'time'>) =>
    new Quantity(si(time.si), 'ratio' as const, undefined, lawNotes('materials.relaxationCurve', law, { stress: 0, time: time.si }))
  return Object.assign(curve, { si })
}
