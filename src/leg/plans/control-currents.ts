import { torqueConstants } from '../../thermal/index.js'
import type { LegModel } from '../leg-model.js'
import { controllerOf, type DrivenJoint } from '../numbers.js'
import { currentForTorque, jointTorqueConstant, torqueOfCurrent } from '../workshop-lines.js'
import { continuousTorque, mechanicalTorques } from './control-envelope.js'
import { type CurrentLimit, type CurrentOf, currentLimit, type Limit } from './control-limits.js'
import { coldTorqueConstants } from './control-magnets.js'
import { type PulseStart, pulseCurrent, pulseStarts } from './control-pulse.js'
import { driveFacts } from './drive-facts.js'

/** Inputs of a joint's current limits besides the leg, SI. */
export interface CurrentLimitInputs {
  readonly leg: LegModel
  /** Back-EMF constant with the magnets at 20 °C, and as warm as the hottest walk makes them. */
  readonly emf: number
  readonly warm: number
  readonly durations: readonly number[]
  readonly copper: number
  /** How far the pretension may be set wrong, as a share. */
  readonly setting: number
}

const CAP = 'the controller: its own limit'

/** Current limits of one joint, and the checks that fail at any current. */
export interface Currents {
  readonly limits: readonly CurrentLimit[]
  readonly regardless: readonly string[]
}

/** Current limits of one joint, each the least over air, age and setting of the cord; the smallest current first. @internal */
export function currentLimitsOf(joint: DrivenJoint, ask: CurrentLimitInputs): Currents {
  const { leg, warm, durations, copper, setting } = ask
  const { currentLimit: cap } = controllerOf(leg.x, joint)
  const { ratio, efficiency } = driveFacts(leg, joint)
  const warmPerAmpere = jointTorqueConstant.si({ motor: torqueConstants.si({ backEmfConstant: warm }).peakPhase, ratio, efficiency })
  // The drive may get all of the motor's torque: losses are not counted where something breaks.
  const lossless = (motor: number) => jointTorqueConstant.si({ motor, ratio, efficiency: 1 })
  const moments = mechanicalTorques(
    leg,
    joint,
    (air) => torqueOfCurrent.si({ current: cap, perAmpere: lossless(coldTorqueConstants(leg, joint, air).typical) }),
    setting,
  )
  const never = least(
    moments.map((moment) => {
      const { typical, highest } = coldTorqueConstants(leg, joint, moment.air)
      return inAmperes(moment, lossless(typical), lossless(highest))
    }),
  )
  const heat = continuousTorque(leg, joint, torqueOfCurrent.si({ current: cap, perAmpere: warmPerAmpere }))
  const held = least([inAmperes(heat, warmPerAmpere), { ...never, torquePerAmpere: warmPerAmpere }])
  const starts = pulseStarts(leg, joint)
  const pulses = durations.map((seconds) => {
    const own = ownPulse(starts, seconds, copper, warmPerAmpere)
    if (own.peak === 0) return own
    // A continuous current may be held for a moment too.
    const hot = own.peak >= held.peak ? own : held
    const cautious = own.cautious === 0 || own.cautious >= held.cautious ? own : held
    return least([
      { ...hot, cautious: cautious.cautious, cautiousBy: cautious.cautiousBy },
      { ...never, torquePerAmpere: warmPerAmpere },
    ])
  })
  return {
    limits: [
      currentLimit('continuous, held still in hot air', undefined, held),
      ...pulses.map((pulse, i) => currentLimit('for a time, winding warm from walking', durations[i], pulse)),
      // Cold magnets give the most torque for a current: that is the case that breaks something.
      currentLimit('absolute maximum', undefined, never),
    ],
    regardless: [...new Set([heat, ...moments].flatMap(({ regardless }) => regardless))],
  }
}

/** Current that the winding alone allows for a time. */
function ownPulse(
  { typical, unfavourable }: ReturnType<typeof pulseStarts>,
  seconds: number,
  copper: number,
  torquePerAmpere: number,
): CurrentOf {
  const peak = pulseCurrent(typical, seconds, copper)
  const min = Math.min(peak, pulseCurrent(unfavourable, seconds, copper))
  return {
    peak,
    cautious: min,
    cautiousBy: `${windingOf(unfavourable, min)}; ${warmthOf(unfavourable)}`,
    torquePerAmpere,
    protects: windingOf(typical, peak),
    condition: warmthOf(typical),
  }
}

const windingOf = ({ settled }: PulseStart, current: number) =>
  current > 0
    ? 'motor winding: reaches its class'
    : settled
      ? 'motor winding: walking in hot air leaves it at its class already'
      : 'motor winding: walking in hot air leaves it without a steady temperature already'

const warmthOf = ({ settled, from }: PulseStart) =>
  settled ? `winding warm from walking, ${Math.round(from - 273.15)} °C` : 'walking in hot air, where temperatures do not converge'

/** A torque as a current: the cautious one at the highest torque per ampere. */
const inAmperes = (
  { torque, cautious, cautiousBy, by, condition }: Limit,
  torquePerAmpere: number,
  highestPerAmpere = torquePerAmpere,
): CurrentOf => ({
  peak: currentForTorque.si({ torque, perAmpere: torquePerAmpere }),
  cautious: currentForTorque.si({ torque: cautious, perAmpere: highestPerAmpere }),
  cautiousBy: cautiousBy === undefined ? CAP : `${cautiousBy}; ${condition}`,
  torquePerAmpere,
  protects: by ?? CAP,
  condition: by === undefined ? 'any' : condition,
})

/** Currents that differ by rounding alone are one. */
const SAME = 1e-9

/** The lowest current, of equal ones that with the most torque; its cautious one the lowest of all. */
function least(limits: readonly CurrentOf[]): CurrentOf {
  const first = limits.reduce((a, b) => {
    if (Math.abs(b.peak - a.peak) <= SAME * a.peak) return b.torquePerAmpere > a.torquePerAmpere ? b : a
    return b.peak < a.peak ? b : a
  })
  const { cautious, cautiousBy } = limits.reduce((a, b) => (b.cautious < a.cautious ? b : a))
  return { ...first, cautious, cautiousBy }
}
