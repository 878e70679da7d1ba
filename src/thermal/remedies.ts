import { type Property, requireKeys } from '../formula/index.js'
import { type In, Quantity, quantity, refuse } from '../units/index.js'
import { intermittentDuty } from './intermittent-duty.js'
import type { PartLimit } from './limits.js'
import type { MotorMount } from './mount.js'
import { requireMadeBy } from './must-be-made.js'
import { continuousTorque } from './operating.js'
import { intermittentTorque } from './operating-duty.js'

/** A remedy for a hot mount. */
export interface Remedy {
  /** Name of the remedy, as the comparison shows it. */
  readonly name: string
  /** The changed mount. */
  readonly mount: MotorMount
  /** Limits that change with it, such as those of a better polymer. */
  readonly limits?: readonly PartLimit[]
  /** Part of each cycle under load, for a remedy that rests; with its period. */
  readonly duty?: {
    /** Part of the cycle under load, above 0 and below 1. */
    readonly dutyFactor: In<'ratio'>
    /** Length of a cycle. */
    readonly period: In<'time'>
  }
  /** Mass that the mount's specification does not know of, such as a fan. */
  readonly extraMass?: In<'mass'>
}

/** One line of a comparison. */
export interface RemedyRow {
  /** Name of the remedy; the first row is the mount as it is. */
  readonly name: string
  /** Torque it allows, with its band. */
  readonly torque: Property<'torque'>
  /** Torque gained over the mount as it is. */
  readonly gain: Quantity<'torque'>
  /** Mass it adds (negative when it saves). */
  readonly addedMass: Quantity<'mass'>
  /** Gain in percent of the present torque for each gram added; undefined where nothing is added. */
  readonly percentPerGram: number | undefined
  /** Mount temperature at the required torque, the peak of its cycle for a remedy that rests; undefined in a runaway. */
  readonly mountTemperature: Quantity<'temperature'> | undefined
  /** The part that governs. */
  readonly governs: string
}

const REMEDY = ['name', 'mount', 'limits', 'duty', 'extraMass'] as const satisfies readonly (keyof Remedy)[]

/** Compares remedies by the continuous torque they allow, the mass they add and the mount temperature at one torque. The first line is the mount as it is. */
export function compareMountRemedies(
  mount: MotorMount,
  limits: readonly PartLimit[],
  remedies: readonly Remedy[],
  at: {
    /** Torque at which the mount temperatures are compared. */
    readonly torque: In<'torque'>
  },
): RemedyRow[] {
  const where = 'thermal.compareMountRemedies'
  if (!Array.isArray(remedies)) refuse(where, 'remedies', remedies, 'must be a list of remedies, as standardRemedies returns it')
  remedies.forEach((remedy, i) => {
    requireKeys(where, `remedies[${i}]`, remedy, REMEDY)
    requireMadeBy(where, `remedies[${i}].mount`, remedy.mount, 'motorMount')
  })
  const present = continuousTorque(mount, limits).torque.si
  return [{ name: 'as it is', mount }, ...remedies].map((remedy: Remedy): RemedyRow => {
    const own = remedy.limits ?? limits
    const { torque, governs } =
      remedy.duty === undefined ? continuousTorque(remedy.mount, own) : intermittentTorque(remedy.mount, own, remedy.duty)
    const extra = remedy.extraMass === undefined ? 0 : quantity('mass', remedy.extraMass).si
    const addedMass = remedy.mount.mass.si - mount.mass.si + extra
    const gain = torque.si - present
    return {
      name: remedy.name,
      torque,
      gain: new Quantity(gain, 'torque'),
      addedMass: new Quantity(addedMass, 'mass'),
      percentPerGram: addedMass > 1e-6 && present > 0 ? (100 * gain) / present / (1000 * addedMass) : undefined,
      mountTemperature: mountAt(remedy, at),
      governs,
    }
  })
}

/** Mount temperature at a load: steady, or the peak of the settled cycle for a remedy that rests. */
function mountAt({ mount, duty }: Remedy, load: { readonly torque: In<'torque'> }): Quantity<'temperature'> | undefined {
  if (duty === undefined) return mount.network(load).steady().temperatures.mount
  const { state, peaks } = intermittentDuty({ load: mount.network(load), rest: mount.network({ torque: '0 N m' }), ...duty })
  return state === 'runaway' ? undefined : peaks.mount!.temperature
}
