import { bare, type Evaluator } from '../../formula/index.js'
import { steadyWindingTemperature } from '../../thermal/index.js'
import type { Prepared } from '../numbers.js'
import {
  type Basis,
  basisOf,
  type CanPath,
  canPathAt,
  type Excitation,
  excitationAt,
  type HeatAsk,
  hotTerminals,
  largestCurrent,
  type Paths,
  pathsFrom,
} from './balance.js'
import { recordMount } from './mount.js'
import { COLD_CAN_SHARE, type Stalled, stalled, stalledFinely } from './stall.js'

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
/** A mount this hot is beyond every correlation here; a loop that passes it is not coming back, K. */
const BEYOND = 700

/**
 * Temperatures of one motor: torque to current to loss to heat to resistance (and magnet strength) and back, until they settle.
 * The winding's own runaway is solved in closed form in each round, so that only film coefficients and magnets are iterated.
 */
export function heatOf(leg: Prepared, of: Evaluator, ask: HeatAsk): Heat {
  const basis = basisOf(leg, of, ask)
  if (ask.heating === 'none') return cold(leg, of, basis)
  if (ask.heldFor === undefined) return settle(leg, of, basis)
  const { end, steps } =
    ask.steps === undefined
      ? stalledFinely(leg, of, basis, ask.heldFor, BEYOND)
      : { end: stalled(leg, of, basis, ask.heldFor, ask.steps, BEYOND), steps: ask.steps }
  return end === undefined ? restless(leg, of, basis, steps, beyondWithin(ask.heldFor)) : afterStall(leg, of, basis, end, steps)
}

/**
 * The loop: where does a mounting face at some temperature drive itself? It runs over the temperature of the can, from which that of the mounting
 * face follows at once.
 */
function settle(leg: Prepared, of: Evaluator, basis: Basis): Heat {
  const { air } = basis
  // Films are weak where there is no difference yet: start warm, and take a runaway seriously only when a hotter mount does not cure it.
  let can = air + COLD_CAN_SHARE * FIRST_GUESS
  let rounds = 0
  let runaway = false
  let lastCan = Number.NaN
  let lastMoved = Number.NaN
  do {
    const through = canPathAt(leg, bare, basis, can)
    const mount = air + (can - air) / through.share
    if (mount > BEYOND - 1) break
    const round = roundAt(leg, bare, basis, mount, can, through)
    rounds++
    runaway = !round.steady
    if (runaway) {
      can += through.share * FIRST_GUESS
      lastCan = Number.NaN
      continue
    }
    const moved = round.mount - mount
    if (Math.abs(moved) < SETTLED) return settled(leg, of, basis, of === bare ? round : recorded(leg, of, basis, mount, can), rounds)
    // What a round moves falls nearly in a straight line with where it starts: go where it would move nothing (secant), within reason.
    const secant = (-moved * (can - lastCan)) / (moved - lastMoved)
    const step = through.share * moved
    let next = can + (Math.abs(secant) < 3 * Math.abs(step) ? secant : step)
    // Films of a cool mount send it far too high: look half way there first, as long as that is another place.
    const highest = air + through.share * (BEYOND - 1 - air)
    if (next > highest && mount < BEYOND - 4) next = (can + highest) / 2
    lastCan = can
    lastMoved = moved
    can = next
  } while (rounds < MOST_ROUNDS)
  return restless(leg, of, basis, rounds, runaway ? RUNAWAY : undefined)
}

const RUNAWAY = {
  loop: 'copper loss and winding temperature',
  why: 'The loss grows faster with temperature than the heat that leaves, so there is no steady temperature.',
}

const noRest = (rounds: number) => ({
  loop: 'motor torque, magnet strength, copper loss and temperature',
  why: `No rest after ${rounds} rounds below ${BEYOND - 273} degC at the mounting face.`,
})

const beyondWithin = (time: number) => ({
  loop: RUNAWAY.loop,
  why: `Within ${Math.round(time)} s of stall the mount passes ${BEYOND - 273} degC or the winding runs away from it.`,
})

/** One round: temperatures in, temperatures out. */
interface Round {
  readonly excitation: Excitation
  readonly paths: Paths
  /** Thermal resistance from winding to air. */
  readonly resistanceToAir: number
  readonly steady: boolean
  readonly loss: number
  readonly mount: number
  readonly windingMean: number
}

function roundAt(leg: Prepared, of: Evaluator, basis: Basis, mount: number, can: number, through: CanPath): Round {
  const { windingToMount } = leg.x.motor
  const excitation = excitationAt(leg, of, basis, can)
  const paths = pathsFrom(leg, of, basis, mount, through)
  const ambient = basis.air + basis.ironLoss / paths.total
  const resistanceToAir = windingToMount + 1 / paths.total
  const hot = of(steadyWindingTemperature, { lossAt20: excitation.lossAt20, thermalResistance: resistanceToAir, ambient })
  const steady = hot.state === 'steady'
  const loss = steady ? hot.loss : excitation.lossAt20
  const next = ambient + loss / paths.total
  return {
    excitation,
    paths,
    resistanceToAir,
    steady,
    loss,
    mount: next,
    windingMean: steady ? hot.temperature : next + loss * windingToMount,
  }
}

/** The round in which a loop came to rest, for the calculation sheet. */
function recorded(leg: Prepared, of: Evaluator, basis: Basis, mount: number, can: number): Round {
  const round = roundAt(leg, of, basis, mount, can, canPathAt(leg, of, basis, can))
  recordMount(leg, of, basis.air + 0.4 * (round.mount - basis.air), basis)
  return round
}

/** What differs from one way of warming up to another. */
interface Temperatures {
  readonly loss: number
  readonly windingMean: number
  readonly mount: number
  readonly can: number
  readonly resistanceToAir: number
  readonly rounds: number
}

function heatFrom(leg: Prepared, of: Evaluator, basis: Basis, { emf, heatingCurrent, lossAt20 }: Excitation, at: Temperatures): Heat {
  return {
    motorTorque: basis.motorTorque,
    heatingTorque: basis.heatingTorque,
    motorSpeed: basis.motorSpeed,
    loadedMotorSpeed: basis.loadedMotorSpeed,
    backEmfConstant: emf,
    resistance: hotTerminals(leg, of, at.windingMean),
    current: largestCurrent(of, basis, emf),
    heatingCurrent,
    loss: at.loss,
    ironLoss: basis.ironLoss,
    winding: at.mount + basis.share * at.loss * leg.x.motor.windingToMount,
    windingMean: at.windingMean,
    mount: at.mount,
    can: at.can,
    lossAt20,
    resistanceToAir: at.resistanceToAir,
    rounds: at.rounds,
    unsettled: undefined,
  }
}

const settled = (leg: Prepared, of: Evaluator, basis: Basis, round: Round, rounds: number): Heat =>
  heatFrom(leg, of, basis, round.excitation, {
    loss: round.loss,
    windingMean: round.windingMean,
    mount: round.mount,
    can: basis.air + (round.mount - basis.air) * round.paths.canShare,
    resistanceToAir: round.resistanceToAir,
    rounds,
  })

const afterStall = (leg: Prepared, of: Evaluator, basis: Basis, end: Stalled, rounds: number): Heat =>
  heatFrom(leg, of, basis, end.excitation, {
    loss: end.loss,
    windingMean: end.windingMean,
    mount: end.mount,
    can: basis.air + (end.mount - basis.air) * end.paths.canShare,
    resistanceToAir: leg.x.motor.windingToMount + 1 / end.paths.total,
    rounds,
  })

/** A motor without heat to shed is as warm as the air: no films are asked for. */
const cold = (leg: Prepared, of: Evaluator, basis: Basis): Heat =>
  heatFrom(leg, of, basis, excitationAt(leg, of, basis, basis.air), {
    loss: 0,
    windingMean: basis.air,
    mount: basis.air,
    can: basis.air,
    resistanceToAir: leg.x.motor.windingToMount,
    rounds: 0,
  })

/**
 * A motor that comes to no rest: taken where every film formula ends, so that no check of it looks better than that of a motor that just comes
 * to rest. Its magnets are weak where current is asked for, and strong where speed is.
 */
function restless(leg: Prepared, of: Evaluator, basis: Basis, rounds: number, why: Heat['unsettled']): Heat {
  const hot = roundAt(leg, of, basis, BEYOND, BEYOND, canPathAt(leg, of, basis, BEYOND))
  const heat = heatFrom(leg, of, basis, hot.excitation, {
    loss: hot.loss,
    windingMean: BEYOND,
    mount: BEYOND,
    can: BEYOND,
    resistanceToAir: hot.resistanceToAir,
    rounds,
  })
  return { ...heat, backEmfConstant: basis.coldEmf, winding: BEYOND, unsettled: why ?? (hot.steady ? noRest(rounds) : RUNAWAY) }
}
