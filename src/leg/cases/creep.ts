import type { Evaluator } from '../../formula/index.js'
import { arrheniusShift, equivalentTime, findleyRelaxationModulus } from '../../materials/index.js'
import type { Matter } from '../matter.js'

/** Creep data are for this temperature. */
const ROOM = 296.15

/** Modulus that is left of a strain held at a temperature for a time: heat counts as more time (below the glass transition, Arrhenius). */
export function relaxedModulus(of: Evaluator, matter: Matter, temperature: number, duration: number): number {
  if (matter.creepCoefficient === 0) return matter.modulus
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
