import type { LoadDirection } from '../materials/index.js'
import { placeOf } from './calculation.js'
import type { LegModel } from './leg-model.js'
import { density, frictionElse, frictionOnSteelGiven, name as nameOf, needed, steel } from './parts/materials/fields.js'
import { directionShare, strength } from './parts/materials/strength-fields.js'
import { frictionOnSteel, modulus, poissonRatio, softening, thermalExpansion } from './parts/materials/values.js'
import type { Value } from './run/index.js'
import { calculationFor } from './what-if.js'

/**
 * A material of a leg by name, as plans and drawings read it: the very values of the leg's calculation, in the moisture of its air. Each throws the error
 * that names a property which the material lacks.
 */
export function materialState(leg: LegModel, name: string) {
  const calculation = calculationFor(leg)
  const here = calculation.instances.implied(placeOf(calculation, { material: name })) as never
  const get = <T>(of: Value<T, 'material'>): T => calculation.get(of, here)
  const band = (of: Value<number | undefined, 'material'>, typical: number) => {
    const { low, high } = calculation.rangeOf(calculation.cell(of, here)) ?? { low: typical, high: typical }
    return { low, typical, high }
  }
  return {
    /** Modulus and Poisson's ratio, as a press fit takes them. */
    elastic: () => ({ modulus: get(modulus), poissonRatio: get(poissonRatio) }),
    thermalExpansion: () => get(thermalExpansion),
    /** Friction on steel and the highest that is known of it. */
    frictionOnSteel: () => band(get(frictionOnSteelGiven) === undefined ? frictionElse : frictionOnSteelGiven, get(frictionOnSteel)),
    softening: () => get(softening),
    density: () => needed(get(nameOf), 'density', get(density)),
    /** Strength of a dry print in a short test at room temperature. */
    strength: (direction: LoadDirection) => {
      const [along, share] = [band(strength, get(strength)), band(directionShare[direction], get(directionShare[direction]))]
      return { low: along.low * share.low, typical: along.typical * share.typical, high: along.high * share.high }
    },
  }
}

/** The steel of pins, as the checks take it. */
export const steelOf = (leg: LegModel): string => {
  const calculation = calculationFor(leg)
  return calculation.instances.name('material', calculation.get(steel, {} as never))
}
