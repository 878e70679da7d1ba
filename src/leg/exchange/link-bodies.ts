import { calculationOf, placeOf } from '../calculation.js'
import type { Leg } from '../document/describe.js'
import { legNumbers } from '../numbers.js'
import { body } from '../parts/links/values.js'

/** A link with what is mounted on it: mass (kg), distance of its centre of mass from its upper joint (m), inertia about that centre across the link (kg m²). */
export interface LinkBody {
  readonly mass: number
  readonly centre: number
  readonly inertia: number
}

/** Both links as the load cases take them: motors, controllers, plates and sinks are added where they are mounted. */
export function linkBodies(leg: Leg): { readonly upper: LinkBody; readonly lower: LinkBody } {
  const calculation = calculationOf(legNumbers(leg))
  const of = (link: 'upper' | 'lower') =>
    calculation.get(body, calculation.instances.implied(placeOf(calculation, { leg: 'leg', link })) as never)
  return { upper: of('upper'), lower: of('lower') }
}
