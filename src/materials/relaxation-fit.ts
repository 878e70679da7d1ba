import { Property, readInputs, requireKeys } from '../formula/index.js'
import { fitLeastSquares, studentTQuantile } from '../numeric/index.js'
import { type In, InputError, Quantity, refuse } from '../units/index.js'
import type { Relaxation } from './interconversion-series.js'
import { pronyRelaxationModulus } from './prony.js'

/** One line of a relaxation log: modulus (stress over held strain) after a time. */
export interface RelaxationReading {
  /** Time after the strain was put on. */
  readonly time: In<'time'>
  /** Stress over the held strain at that time. */
  readonly modulus: In<'modulus'>
}

/** A fitted Prony series. */
export interface RelaxationFit {
  /** The series, ready for `relaxationLaw` and `complianceFromRelaxation`; terms of zero are dropped. */
  readonly series: Relaxation
  /** Root mean square of the relative difference between modulus read and fitted. */
  readonly scatter: number
  /** Relative difference of each reading, read over fitted less one. */
  readonly residuals: readonly number[]
}

/**
 * A Prony series of a relaxation log: relaxation times are spaced uniformly in the logarithm of time over the log, the moduli are fitted and kept at or above zero.
 * Outside the times of the log the series knows nothing. Throws an `InputError` for fewer readings than unknowns, or readings that cannot be.
 */
export function fitRelaxation(
  readings: readonly RelaxationReading[],
  options: {
    /** Terms of the series for each decade of time, at most 4. Default 1. */
    readonly termsPerDecade?: number
    /** Whether nothing is left after endless time. Default no: a solid. */
    readonly fluid?: boolean
  } = {},
): RelaxationFit {
  const where = 'fitRelaxation'
  requireKeys(where, 'options', options, ['termsPerDecade', 'fluid'])
  const { termsPerDecade = 1, fluid = false } = options
  const fields = { time: { kind: 'time', above: 0 }, modulus: { kind: 'modulus', above: 0 } } as const
  const { readings: rows } = readInputs(where, { readings: { list: { fields } } }, { readings: readings as never })
  if (!(termsPerDecade > 0 && termsPerDecade <= 4)) refuse(where, 'termsPerDecade', termsPerDecade, 'must lie above 0 and be at most 4')
  const first = Math.min(...rows.map(({ time }) => time))
  const last = Math.max(...rows.map(({ time }) => time))
  const count = Math.max(1, Math.round(Math.log10(last / first) * termsPerDecade))
  const times = Array.from({ length: count }, (_, i) => first * (last / first) ** ((i + 0.5) / count))
  const n = count + (fluid ? 0 : 1)
  if (rows.length < n)
    throw new InputError(where, [
      {
        path: 'readings',
        given: `${rows.length} readings`,
        accepts: `${n} moduli are to be fitted: take at least as many readings, or fewer terms`,
      },
    ])
  const size = Math.max(...rows.map(({ modulus }) => modulus))
  const fit = fitTerms(rows, times, n, size)
  const modulus = (j: number) => (fit.parameters[j] as number) * size
  return {
    series: {
      longTermModulus: new Quantity(fluid ? 0 : modulus(count), 'modulus'),
      terms: times.flatMap((time, j) =>
        modulus(j) > 1e-9 * size
          ? [{ modulus: new Quantity(modulus(j), 'modulus' as const), time: new Quantity(time, 'time' as const) }]
          : [],
      ),
    },
    scatter: Math.sqrt(fit.sumOfSquares / rows.length),
    residuals: Array.from(fit.residuals, (r) => 1 / (1 + r) - 1),
  }
}

/** Fits the moduli of terms at the given times, and of a lasting term where there is one more: non-negative, in parts of `size`. */
function fitTerms(rows: readonly { readonly time: number; readonly modulus: number }[], times: readonly number[], n: number, size: number) {
  const basis = rows.map(({ time, modulus }) =>
    Array.from({ length: n }, (_, j) => {
      const tau = times[j]
      const one = tau === undefined ? { longTermModulus: 1, terms: [] } : { longTermModulus: 0, terms: [{ modulus: 1, time: tau }] }
      return (size * pronyRelaxationModulus.si({ ...one, time })) / modulus
    }),
  )
  return fitLeastSquares({
    count: rows.length,
    start: Array.from({ length: n }, () => 1 / n),
    lower: Array.from({ length: n }, () => 0),
    residuals: (p, out) => {
      basis.forEach((row, i) => {
        out[i] = row.reduce((sum, b, j) => sum + b * (p[j] as number), -1)
      })
    },
    jacobian: (_, out) => {
      basis.forEach((row, i) => {
        row.forEach((b, j) => {
          out[i * n + j] = b
        })
      })
    },
  })
}

/** A time shift found by laying creep or relaxation curves of two temperatures over one another. */
export interface ShiftReading {
  /** Temperature of the curve. */
  readonly temperature: In<'temperature'>
  /** Shift factor against the reference: below one when hotter. */
  readonly shift: In<'ratio'>
}

/**
 * The activation energy of time shifts measured below the glass transition, by regression of ln a on 1/T through the reference.
 * Throws an `InputError` for fewer than two readings, and for a reading at the reference, which holds no information.
 */
export function fitActivationEnergy(
  readings: readonly ShiftReading[],
  reference: In<'temperature'>,
  confidence = 0.95,
): Property<'activationEnergy'> {
  const where = 'fitActivationEnergy'
  const x = readInputs(
    where,
    {
      readings: { list: { fields: { temperature: { kind: 'temperature', above: 0 }, shift: { kind: 'ratio', above: 0 } } } },
      reference: { kind: 'temperature', above: 0 },
      confidence: { kind: 'ratio', above: 0, below: 1 },
    },
    { readings: readings as never, reference, confidence },
  )
  const points = x.readings.map(({ temperature, shift }) => ({
    x: (1 / temperature - 1 / x.reference) / 8.31446261815324,
    y: Math.log(shift),
  }))
  if (points.length < 2)
    throw new InputError(where, [
      { path: 'readings', given: `${points.length} shift`, accepts: 'at least two temperatures besides the reference are needed' },
    ])
  if (points.some((p) => p.x === 0))
    throw new InputError(where, [
      { path: 'readings', given: 'a shift at the reference', accepts: 'leave the reference out: its shift is one' },
    ])
  const xx = points.reduce((sum, p) => sum + p.x * p.x, 0)
  const energy = points.reduce((sum, p) => sum + p.x * p.y, 0) / xx
  const rest = points.reduce((sum, p) => sum + (p.y - energy * p.x) ** 2, 0)
  const freedom = points.length - 1
  const half = studentTQuantile((1 + x.confidence) / 2, freedom) * Math.sqrt(rest / freedom / xx)
  if (!(energy > 0))
    throw new InputError(where, [
      {
        path: 'readings',
        given: `${Math.round(energy)} J/mol`,
        accepts: 'shifts must fall with temperature: below one where hotter than the reference',
      },
    ])
  const where2 = `fitted to ${points.length} own time shifts; range at ${100 * x.confidence} % confidence`
  return new Property(
    energy,
    'activationEnergy',
    energy - half,
    energy + half,
    { level: 'computed', where: where2 },
    'below the glass transition',
  )
}
