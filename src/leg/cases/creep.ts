import { bare, type Evaluator } from '../../formula/index.js'
import { arrheniusShift, equivalentTime, findleyRelaxationModulus } from '../../materials/index.js'
import type { Matter } from '../matter.js'

/** Creep data are for this temperature. */
const ROOM = 296.15

/** What was asked last of a material, where nothing is recorded: legs of a sweep mostly ask the same. */
const kept = new WeakMap<Matter, { temperature: number; duration: number; modulus: number }[]>()
const MOST_KEPT = 4

/** Modulus that is left of a strain held at a temperature for a time: heat counts as more time (below the glass transition, Arrhenius). */
export function relaxedModulus(of: Evaluator, matter: Matter, temperature: number, duration: number): number {
  if (matter.creepCoefficient === 0) return matter.modulus
  if (of !== bare) return workedOut(of, matter, temperature, duration)
  let known = kept.get(matter)
  if (known === undefined) {
    known = []
    kept.set(matter, known)
  }
  for (const one of known) if (one.temperature === temperature && one.duration === duration) return one.modulus
  const modulus = workedOut(of, matter, temperature, duration)
  if (known.length >= MOST_KEPT) known.shift()
  known.push({ temperature, duration, modulus })
  return modulus
}

function workedOut(of: Evaluator, matter: Matter, temperature: number, duration: number): number {
  const activation = matter.material.activationEnergy?.si
  const time =
    activation === undefined
      ? duration
      : of(equivalentTime, {
          time: duration,
          shift: of(arrheniusShift, {
            temperature: Math.min(temperature, matter.softening),
            reference: ROOM,
            activationEnergy: activation,
            glassTransition: matter.softeningKind === 'glassTransition' ? matter.softening : undefined,
          }),
        })
  return of(findleyRelaxationModulus, {
    modulus: matter.modulus,
    creepCoefficient: matter.creepCoefficient,
    creepExponent: matter.creepExponent,
    time,
    referenceTime: 3600,
  })
}
