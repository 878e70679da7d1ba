import { magnetDerating, torqueConstants } from '../../thermal/index.js'
import { airNamed, controllerOf, driveOf, type Joint, type Prepared } from '../numbers.js'
import { caseState } from '../what-if.js'
import { continuousTorque, mechanicalTorques } from './control-envelope.js'
import { type CurrentLimit, type CurrentOf, currentLimit, type Limit } from './control-limits.js'
import { pulseCurrent } from './control-pulse.js'

/** What the current limits of a joint depend on besides the leg, SI. */
export interface CurrentsAsk {
  readonly leg: Prepared
  /** Back-EMF constant with the magnets at 20 °C, and as warm as the hottest walk makes them. */
  readonly emf: number
  readonly warm: number
  readonly durations: readonly number[]
  readonly copper: number
  /** How far the pretension may be set wrong, as a share. */
  readonly setting: number
}

const CAP = 'the controller: its own limit'

/** Winding temperature from which pulses start: an hour of walking; the hot air where that has no steady state. */
export function startOf(leg: Prepared, joint: Joint): number {
  const { heat } = caseState(leg, 'hotAfternoon').joints[joint]
  return heat.unsettled === undefined ? heat.winding : airNamed(leg.x, 'hot').temperature
}

/** Current limits of one joint, and the checks that fail at any current. */
export interface Currents {
  readonly limits: readonly CurrentLimit[]
  readonly regardless: readonly string[]
}

/** Current limits of one joint, each the least over air, age and setting of the cord; the smallest current first. @internal */
export function currentLimitsOf(joint: Joint, ask: CurrentsAsk): Currents {
  const { leg, emf, warm, durations, copper, setting } = ask
  const { currentLimit: cap } = controllerOf(leg.x, joint)
  const perAmpere = leg.drives[joint].ratio * driveOf(leg.x, joint, 'cord').efficiency
  const warmPerAmpere = torqueConstants.si({ backEmfConstant: warm }).peakPhase * perAmpere
  // The cord may get all of the motor's torque: losses are not counted where something breaks.
  const coldPerAmpere = (air: number) =>
    leg.drives[joint].ratio *
    torqueConstants.si({
      backEmfConstant: magnetDerating.si({ backEmfConstant: emf, magnetTemperature: air, coefficient: MAGNETS }).backEmfConstant,
    }).peakPhase
  const moments = mechanicalTorques(leg, joint, (air) => cap * coldPerAmpere(air), setting)
  const never = least(moments.map((one) => inAmperes(one, coldPerAmpere(one.air))))
  const heat = continuousTorque(leg, joint, cap * warmPerAmpere)
  const held = least([inAmperes(heat, warmPerAmpere), { ...never, torquePerAmpere: warmPerAmpere }])
  const start = startOf(leg, joint)
  const pulses = durations.map((seconds) => {
    const pulse = pulseCurrent(leg, joint, seconds, start, copper)
    const winding = `winding warm from walking, ${Math.round(start - 273.15)} degC`
    const own = (protects: string): CurrentOf => ({
      peak: pulse,
      cautious: pulse,
      cautiousBy: `${protects}; ${winding}`,
      torquePerAmpere: warmPerAmpere,
      protects,
      condition: winding,
    })
    if (pulse === 0) return own('motor winding: walking in hot air leaves it at its class already')
    const winds = own('motor winding: reaches its class (motor.winding)')
    // A continuous current may be held for a moment too.
    const hot = pulse >= held.peak ? winds : held
    const cautious = pulse >= held.cautious ? winds : held
    return least([
      { ...hot, cautious: cautious.cautious, cautiousBy: cautious.cautiousBy },
      { ...never, torquePerAmpere: warmPerAmpere },
    ])
  })
  return {
    limits: [
      currentLimit('continuous, held still in hot air', undefined, held),
      ...pulses.map((one, i) => currentLimit('for a time, winding warm from walking', durations[i], one)),
      // Cold magnets give the most torque for a current: that is the case that breaks something.
      currentLimit('absolute maximum', undefined, never),
    ],
    regardless: [...new Set([heat, ...moments].flatMap(({ regardless }) => regardless))],
  }
}

/** Reversible change of remanence per kelvin: the usual value for neodymium. */
const MAGNETS = -0.0011

const inAmperes = ({ torque, cautious, cautiousBy, by, condition }: Limit, torquePerAmpere: number): CurrentOf => ({
  peak: torque / torquePerAmpere,
  cautious: cautious / torquePerAmpere,
  cautiousBy: cautiousBy === undefined ? CAP : `${cautiousBy}; ${condition}`,
  torquePerAmpere,
  protects: by ?? CAP,
  condition: by === undefined ? 'any' : condition,
})

/** The lowest current; its cautious one the lowest of all. */
function least(limits: readonly CurrentOf[]): CurrentOf {
  const first = limits.reduce((a, b) => (b.peak < a.peak ? b : a))
  const { cautious, cautiousBy } = limits.reduce((a, b) => (b.cautious < a.cautious ? b : a))
  return { ...first, cautious, cautiousBy }
}
