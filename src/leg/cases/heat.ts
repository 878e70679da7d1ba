import { bare, type Evaluator } from '../../formula/index.js'
import {
  backEmfConstant,
  copperLoss,
  currentsForTorque,
  dragLoss,
  forcedConvection,
  hotResistance,
  hotSteadyState,
  lumpedResponse,
  magnetDerating,
  motorTorqueBand,
  naturalConvection,
  noLoadLoss,
  pressureAtAltitude,
  radiationCoefficient,
} from '../../thermal/index.js'
import type { Joint, Prepared } from '../numbers.js'
import type { JointMotion } from './motion.js'
import { mountConductance, recordMount } from './mount.js'

/** What a motor is asked in one load case. */
export interface HeatAsk {
  readonly joint: Joint
  readonly motion: JointMotion
  readonly air: number
  readonly wind: number
  readonly heating: 'none' | 'held' | 'moving'
  /** How long it is held from cold, s; until temperatures settle where silent. */
  readonly heldFor?: number | undefined
  /** Steps that time is taken in; six are good to half a kelvin (tested against hundreds). */
  readonly steps?: number
}

/** Motor and mount in one load case, SI. */
export interface Heat {
  /** Motor torque at the largest joint torque, and its root mean square (or the held torque). */
  readonly motorTorque: number
  readonly heatingTorque: number
  readonly motorSpeed: number
  readonly loadedMotorSpeed: number
  /** Peak line-to-line back-EMF per rad/s at the temperature of the magnets. */
  readonly backEmfConstant: number
  /** Terminal resistance at the temperature of the winding. */
  readonly resistance: number
  /** Peak phase current at the largest torque, and at the torque that heats. */
  readonly current: number
  readonly heatingCurrent: number
  /** Copper loss that heats, iron and bearing loss. */
  readonly loss: number
  readonly ironLoss: number
  /** Winding (the hottest phase), its mean, mounting face, can. */
  readonly winding: number
  readonly windingMean: number
  readonly mount: number
  readonly can: number
  /** Loss with the winding at 20 °C, and thermal resistance from winding to air: what decides about runaway. */
  readonly lossAt20: number
  readonly resistanceToAir: number
  readonly rounds: number
  /** Why temperatures come to no rest; then every temperature here is `BEYOND`. */
  readonly unsettled: { readonly loop: string; readonly why: string } | undefined
}

const FIRST_GUESS = 30
const MOST_ROUNDS = 60
/** Temperatures that move less than this in a round have settled, K. */
const SETTLED = 2e-5
const ROOM = 293.15
/** A mount this hot is beyond every correlation here; a loop that passes it is not coming back, K. */
const BEYOND = 700
/** A phase that carries its peak while the rotor stands still heats twice as much as its share when turning. */
const WORST_PHASE = 2
/** Magnets of the common grades lose this share of their strength per kelvin. */
const MAGNET_COEFFICIENT = -0.0011

/** What one round of the loop starts from. */
interface Basis {
  readonly air: number
  readonly wind: number
  readonly surroundings: number
  readonly pressure: number
  readonly coldEmf: number
  readonly motorTorque: number
  readonly heatingTorque: number
  readonly ironLoss: number
  readonly motorSpeed: number
  readonly loadedMotorSpeed: number
  readonly share: number
}

/**
 * Temperatures of one motor: torque to current to loss to heat to resistance (and magnet strength) and back, until they settle.
 * The winding's own runaway is solved in closed form in each round, so that only film coefficients and magnets are iterated.
 */
export function heatOf(leg: Prepared, of: Evaluator, ask: HeatAsk): Heat {
  const basis = basisOf(leg, of, ask)
  // Films are weak where there is no difference yet: start warm, and take a runaway seriously only when a hotter mount does not cure it.
  if (ask.heating === 'none') return cold(leg, of, basis)
  if (ask.heldFor !== undefined) return heldFor(leg, of, basis, ask.heldFor, ask.steps ?? STALL_STEPS)
  let mount = basis.air + FIRST_GUESS
  let can = mount
  let rounds = 0
  let heat: Heat
  let lastMount = Number.NaN
  let lastMoved = Number.NaN
  do {
    heat = round(leg, bare, basis, mount, can)
    rounds++
    const moved = heat.mount - mount
    const canMoved = Math.abs(heat.can - can)
    if (heat.unsettled !== undefined) {
      mount = can = Math.max(mount, can) + FIRST_GUESS
      lastMount = Number.NaN
      continue
    }
    if (Math.abs(moved) + canMoved < SETTLED) break
    // What a round moves falls nearly in a straight line with where it starts: go where it would move nothing (secant), within reason.
    const next = mount - (moved * (mount - lastMount)) / (moved - lastMoved)
    const trusted = Math.abs(next - mount) < 3 * Math.abs(moved)
    lastMount = mount
    lastMoved = moved
    mount = trusted ? next : heat.mount
    // Films of a cool mount, and a can not yet settled, send it far too high: look half way there first, as long as that is another place.
    if (mount > BEYOND - 1 && lastMount < BEYOND - 4) mount = (lastMount + BEYOND) / 2
    can = basis.air + (heat.can - basis.air) * ((mount - basis.air) / (heat.mount - basis.air || 1))
  } while (rounds < MOST_ROUNDS && mount <= BEYOND - 1)
  // The last round again, for the record: a settled loop repeats itself.
  if (mount <= BEYOND - 1) {
    const last = round(leg, of, basis, mount, can)
    if (of !== bare) recordMount(leg, of, basis.air + 0.4 * (last.mount - basis.air), basis)
    if (last.unsettled === undefined && Math.abs(last.mount - mount) < 10 * SETTLED) return { ...last, rounds }
  }
  return restless(leg, of, basis, rounds, heat.unsettled)
}

/**
 * A motor that comes to no rest: taken where every film formula ends, so that no check of it looks better than that of a motor that just comes
 * to rest. Its magnets are weak where current is asked for, and strong where speed is.
 */
function restless(leg: Prepared, of: Evaluator, basis: Basis, rounds: number, why: Heat['unsettled']): Heat {
  const hot = round(leg, of, basis, BEYOND, BEYOND)
  return {
    ...hot,
    backEmfConstant: basis.coldEmf,
    resistance: hotTerminals(leg, of, BEYOND),
    winding: BEYOND,
    windingMean: BEYOND,
    mount: BEYOND,
    can: BEYOND,
    rounds,
    unsettled: why ?? hot.unsettled ?? noRest(rounds),
  }
}

/** Rise of the can over that of the mount to begin with. */
const COLD_CAN_SHARE = 0.8
/** A motor without heat to shed is as warm as the air: no films are asked for. */
function cold(leg: Prepared, of: Evaluator, basis: Basis): Heat {
  const { air } = basis
  const { emf, heatingCurrent, current, lossAt20 } = currentsAt(leg, of, basis, air)
  return {
    motorTorque: basis.motorTorque,
    heatingTorque: basis.heatingTorque,
    motorSpeed: basis.motorSpeed,
    loadedMotorSpeed: basis.loadedMotorSpeed,
    backEmfConstant: emf,
    resistance: hotTerminals(leg, of, air),
    current,
    heatingCurrent,
    loss: 0,
    ironLoss: 0,
    winding: air,
    windingMean: air,
    mount: air,
    can: air,
    lossAt20,
    resistanceToAir: leg.x.motor.windingToMount,
    rounds: 0,
    unsettled: undefined,
  }
}

/** Steps of a stall; each is the exact course of one body while films and loss stand still, taken at its middle. */
const STALL_STEPS = 6

/**
 * A motor held still from cold for a time: motor and sink warm up as one body, the winding (whose own lag is seconds) rides on it. What the
 * printed plate stores is left out.
 */
function heldFor(leg: Prepared, of: Evaluator, basis: Basis, time: number, steps: number): Heat {
  const heatCapacity = heatCapacityOf(leg)
  const step = time / steps
  let mount = basis.air
  let last = { initial: mount, final: mount, heatCapacity, thermalResistance: 1, time: step }
  let body = bodyAt(leg, bare, basis, mount, COLD_CAN_SHARE)
  for (let i = 0; i < steps && body !== undefined; i++) {
    // What the body was heading for in the middle of the last step says well enough where the middle of this one is.
    const halfway = { initial: mount, final: body.final, heatCapacity, thermalResistance: body.resistance, time: step / 2 }
    body = bodyAt(leg, bare, basis, lumpedResponse.si(halfway).temperature, body.canShare)
    if (body === undefined) break
    last = { initial: mount, final: body.final, heatCapacity, thermalResistance: body.resistance, time: step }
    mount = lumpedResponse.si(last).temperature
    if (mount > BEYOND) body = undefined
  }
  const end = body === undefined ? undefined : bodyAt(leg, bare, basis, mount, body.canShare)
  if (end === undefined) return restless(leg, of, basis, steps, beyondWithin(time))
  if (of === bare) return end.heat
  // Once more, for the record: the last step, and films and loss at its end.
  of(lumpedResponse, last)
  bodyAt(leg, of, basis, mount, end.usedShare)
  recordMount(leg, of, basis.air + 0.4 * (mount - basis.air), basis)
  return end.heat
}

const beyondWithin = (time: number) => ({
  loop: 'copper loss and winding temperature',
  why: `Within ${Math.round(time)} s of stall the mount passes ${BEYOND - 273} degC or the winding runs away from it.`,
})

/** Heat that motor and sink take per kelvin. */
function heatCapacityOf({ x, sink }: Prepared): number {
  const own = x.motor.mass * x.motor.specificHeat
  if (x.sink === undefined || sink === undefined) return own
  const { density, specificHeat } = sink.material
  const { width, height, thickness } = x.sink
  return own + width * height * thickness * (density?.si ?? 0) * (specificHeat?.si ?? 0)
}

/** Motor and mount with the mounting face at a temperature: what it is heading for, and through which resistance. */
interface Body {
  readonly final: number
  readonly resistance: number
  /** Rise of the can over that of the mount: as it was taken, and as it comes out. */
  readonly usedShare: number
  readonly canShare: number
  readonly heat: Heat
}

/** Nothing where the winding runs away from a mount this hot. */
function bodyAt(leg: Prepared, of: Evaluator, basis: Basis, mount: number, usedShare: number): Body | undefined {
  const { motor } = leg.x
  const can = basis.air + usedShare * (mount - basis.air)
  const { emf, heatingCurrent, current, lossAt20 } = currentsAt(leg, of, basis, can)
  const canG = canConductance(leg, of, can, basis)
  const canPath = 1 / (motor.mountToCan + 1 / canG)
  const total = canPath + mountConductance(leg, of, mount, basis)
  const steady = of(hotSteadyState, { lossAt20, thermalResistance: motor.windingToMount, ambient: mount })
  if (steady.state !== 'steady') return undefined
  const { loss, temperature: windingMean } = steady
  return {
    final: basis.air + (loss + basis.ironLoss) / total,
    resistance: 1 / total,
    usedShare,
    canShare: canPath / canG,
    heat: {
      motorTorque: basis.motorTorque,
      heatingTorque: basis.heatingTorque,
      motorSpeed: basis.motorSpeed,
      loadedMotorSpeed: basis.loadedMotorSpeed,
      backEmfConstant: emf,
      resistance: hotTerminals(leg, of, windingMean),
      current,
      heatingCurrent,
      loss,
      ironLoss: basis.ironLoss,
      winding: mount + basis.share * loss * motor.windingToMount,
      windingMean,
      mount,
      can: basis.air + (mount - basis.air) * (canPath / canG),
      lossAt20,
      resistanceToAir: motor.windingToMount + 1 / total,
      rounds: STALL_STEPS,
      unsettled: undefined,
    },
  }
}

const noRest = (rounds: number) => ({
  loop: 'motor torque, magnet strength, copper loss and temperature',
  why: `No rest after ${rounds} rounds below ${BEYOND - 273} degC at the mounting face.`,
})

function basisOf(leg: Prepared, of: Evaluator, { joint, motion, air, wind, heating }: HeatAsk): Basis {
  const { motor, environment } = leg.x
  const { ratio } = leg.drives[joint]
  const { efficiency } = leg.x.drives[joint]
  const torqueAt = (torque: number) =>
    of(motorTorqueBand, { jointTorque: Math.abs(torque), ratio, efficiency, backEfficiency: undefined }).raising
  const motorTorque = torqueAt(motion.torque)
  const emf = of(backEmfConstant, { speedConstant: motor.speedConstant, basis: motor.speedConstantBasis })
  const motorSpeed = motion.speed * ratio
  return {
    air,
    wind,
    surroundings: environment.surroundings ?? air,
    pressure: of(pressureAtAltitude, { altitude: environment.altitude }),
    coldEmf: leg.end === 'pessimistic' ? emf.low : leg.end === 'optimistic' ? emf.high : emf.typical,
    motorTorque,
    heatingTorque: heating === 'none' ? 0 : heating === 'held' ? motorTorque : torqueAt(motion.rms),
    ironLoss: heating === 'moving' ? ironLossOf(leg, of, MEAN_OF_PEAK_SPEED * motorSpeed) : 0,
    motorSpeed,
    loadedMotorSpeed: motion.loadedSpeed * ratio,
    share: heating === 'held' ? WORST_PHASE : 1,
  }
}

/** The mean speed of a stride over its peak: two thirds, as of a half sine. */
const MEAN_OF_PEAK_SPEED = 2 / Math.PI

function ironLossOf({ x: { motor } }: Prepared, of: Evaluator, speed: number): number {
  if (motor.noLoadCurrent === 0) return 0
  const { dragTorque } = of(noLoadLoss, {
    voltage: motor.noLoadVoltage,
    current: motor.noLoadCurrent,
    terminalResistance: motor.terminalResistance,
    speed: motor.noLoadVoltage * motor.speedConstant,
  })
  return of(dragLoss, { constantDrag: dragTorque, viscousDrag: 0, speed })
}

/** Currents for the torques with magnets at a temperature, and the copper loss of the one that heats, winding at 20 °C. */
function currentsAt({ x: { motor } }: Prepared, of: Evaluator, basis: Basis, magnets: number) {
  const { backEmfConstant: emf } = of(magnetDerating, {
    backEmfConstant: basis.coldEmf,
    magnetTemperature: magnets,
    coefficient: MAGNET_COEFFICIENT,
  })
  const heatingCurrent = of(currentsForTorque, { torque: basis.heatingTorque, backEmfConstant: emf }).peakPhase
  const current = of(currentsForTorque, { torque: basis.motorTorque, backEmfConstant: emf }).peakPhase
  const lossAt20 = of(copperLoss, { peakPhaseCurrent: heatingCurrent, terminalResistance: motor.terminalResistance })
  return { emf, heatingCurrent, current, lossAt20 }
}

const hotTerminals = ({ x: { motor } }: Prepared, of: Evaluator, temperature: number) =>
  of(hotResistance, { resistance: motor.terminalResistance, measuredAt: ROOM, temperature, conductor: 'copper' })

/** One round: temperatures in, temperatures out. */
function round(leg: Prepared, of: Evaluator, basis: Basis, mount: number, can: number): Heat {
  const { motor } = leg.x
  const { emf, heatingCurrent, current, lossAt20 } = currentsAt(leg, of, basis, can)
  const canG = canConductance(leg, of, can, basis)
  const canPath = 1 / (motor.mountToCan + 1 / canG)
  const total = canPath + mountConductance(leg, of, mount, basis)
  const ambient = basis.air + basis.ironLoss / total
  const resistanceToAir = motor.windingToMount + 1 / total
  const steady = of(hotSteadyState, { lossAt20, thermalResistance: resistanceToAir, ambient })
  const settled = steady.state === 'steady'
  const loss = settled ? steady.loss : lossAt20
  const nextMount = ambient + loss / total
  const windingMean = settled ? steady.temperature : nextMount + loss * motor.windingToMount
  return {
    motorTorque: basis.motorTorque,
    heatingTorque: basis.heatingTorque,
    motorSpeed: basis.motorSpeed,
    loadedMotorSpeed: basis.loadedMotorSpeed,
    backEmfConstant: emf,
    resistance: hotTerminals(leg, of, windingMean),
    current,
    heatingCurrent,
    loss,
    ironLoss: basis.ironLoss,
    winding: nextMount + basis.share * loss * motor.windingToMount,
    windingMean,
    mount: nextMount,
    can: basis.air + (nextMount - basis.air) * (canPath / canG),
    lossAt20,
    resistanceToAir,
    rounds: 1,
    unsettled: settled
      ? undefined
      : {
          loop: 'copper loss and winding temperature',
          why: 'The loss grows faster with temperature than the heat that leaves, so there is no steady temperature.',
        },
  }
}

/** Conductance of the can's outside to air and surroundings: cylinder and one end face, convection (the stronger of still and moving air) and radiation. */
function canConductance({ x: { motor } }: Prepared, of: Evaluator, can: number, { air, wind, surroundings, pressure }: Basis): number {
  const area = Math.PI * motor.canDiameter * (motor.canLength + motor.canDiameter / 4)
  const still = of(naturalConvection, {
    surface: 'horizontalCylinder',
    length: motor.canDiameter,
    surfaceTemperature: can,
    airTemperature: air,
    pressure,
    tilt: 0,
  }).coefficient
  const moving =
    wind > 0
      ? of(forcedConvection, {
          surface: 'cylinder',
          length: motor.canDiameter,
          speed: wind,
          surfaceTemperature: can,
          airTemperature: air,
          pressure,
        }).coefficient
      : 0
  const radiated = of(radiationCoefficient, { emissivity: motor.canEmissivity, surface: can, surroundings, viewFactor: 1 })
  return area * (Math.max(still, moving) + radiated)
}
