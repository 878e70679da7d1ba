import { readInputs } from '../formula/index.js'
import { type In, InputError, Quantity, refuse } from '../units/index.js'
import { type CreepLaw, type LinearCreepLaw, lawNotes } from './creep-law.js'

/** One corner of a stress history; straight lines join the corners, two corners at one time are a jump. */
export interface StressHistoryPoint {
  /** Time of the corner. */
  readonly time: In<'time'>
  /** Stress at the corner. */
  readonly stress: In<'stress'>
}

/** What else is known of a superposition. */
export interface SuperpositionOptions {
  /** Short-term strength, where the law does not carry one; a stress above half of it leaves a note, since the theory is linear. */
  readonly strength?: In<'stress'> | undefined
}

const HISTORY = {
  history: { list: { fields: { time: { kind: 'time', min: 0 }, stress: 'stress' } } },
  times: { list: { kind: 'time', min: 0 } },
  strength: { kind: 'stress', above: 0, optional: true },
} as const

/**
 * Strain at given times under any history of stress, by Boltzmann superposition: exact for straight pieces and jumps.
 *
 * Stress is zero before the first corner and stays at the last one. Throws an `InputError` for a law that is not linear or a history whose
 * times fall back.
 */
export function boltzmannStrain(
  law: CreepLaw,
  history: readonly StressHistoryPoint[],
  times: readonly In<'time'>[],
  options: SuperpositionOptions = {},
): Quantity<'strain'>[] {
  const where = 'boltzmannStrain'
  if (law.linear === undefined) {
    throw new InputError(where, [
      { path: 'law', given: law.name, accepts: 'superposition holds for a linear law only; use creepUnderSteps for stepped loads' },
    ])
  }
  const x = readInputs(where, HISTORY, { history: history as never, times, ...options })
  x.history.forEach((corner, i) => {
    const before = x.history[i - 1]
    if (before !== undefined && corner.time < before.time)
      refuse(where, `history[${i}].time`, history[i]?.time, 'must not come before the corner ahead of it')
  })
  const largest = Math.max(...x.history.map(({ stress }) => Math.abs(stress)))
  const start = x.history[0]?.time ?? 0
  return x.times.map((t) => {
    const notes = lawNotes(`materials.${where}`, law, { stress: largest, time: t - start }, x.strength ?? law.strength)
    return new Quantity(superposedSi(law as LinearCreepLaw, x.history, t), 'strain', undefined, notes)
  })
}

/** Strain by superposition in SI numbers, nothing checked. */
export function superposedSi(
  law: LinearCreepLaw,
  history: readonly {
    /** Time of the corner, s. */
    readonly time: number
    /** Stress at the corner, Pa. */
    readonly stress: number
  }[],
  t: number,
): number {
  const { compliance } = law.linear
  let strain = 0
  let before: { readonly time: number; readonly stress: number } = { time: history[0]?.time ?? 0, stress: 0 }
  for (const corner of history) {
    if (before.time >= t && !(before.time === t && corner.time === t)) break
    if (corner.time === before.time) strain += (corner.stress - before.stress) * compliance(t - corner.time)
    else {
      const rate = (corner.stress - before.stress) / (corner.time - before.time)
      strain += rate * meanIntegral(law.linear, t - before.time, t - Math.min(corner.time, t))
    }
    before = corner
  }
  return strain
}

/** Integral of the compliance from `to` to `from`; a short piece long ago by two-point Gauss, where the difference of integrals would cancel. */
export function meanIntegral({ compliance, integral }: LinearCreepLaw['linear'], from: number, to: number): number {
  const width = from - to
  if (width > 1e-3 * to) return integral(from) - integral(to)
  const middle = to + width / 2
  const aside = width / Math.sqrt(12)
  return (width * (compliance(middle - aside) + compliance(middle + aside))) / 2
}
