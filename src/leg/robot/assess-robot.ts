import { type Given, type Inputs, readInputs } from '../../formula/index.js'
import { layerResistance, surfaceResistance } from '../../thermal/index.js'
import { Quantity, refuse } from '../../units/index.js'
import type { Leg } from '../document/describe.js'
import { type LegModel, legModel } from '../leg-model.js'
import type { LegNumbers } from '../leg-numbers.js'
import { drivenJoints, jointWords, legNumbers } from '../numbers.js'
import { busMotors } from './bus.js'
import { robotChecks } from './checks.js'
import { robotGait } from './gait.js'
import { robotLandings } from './landing.js'
import type { RobotAssessment, RobotGait, RobotLanding } from './result.js'
import { robotAcross, robotSlope, robotStand } from './stand.js'

const OPTIONS = {
  /** Power of a brake resistor at the bus. Default: none. */
  brakeResistor: { kind: 'power', min: 0, default: '0 W' },
  /** Push along the ground over the load on a foot: 0 on firm level ground. Default: both ends of the traction of each gait, the worse value by value. */
  traction: { kind: 'ratio', min: -1, max: 1, optional: true },
  /** Speed to the left besides that of the gait forward. Needs a motor at the sideways hip. Default: 0. */
  sideways: { kind: 'velocity', default: '0 m/s' },
  /** Rate at which the body turns to the left as it goes. Needs that motor too. Default: 0. */
  turnRate: { kind: 'angularVelocity', default: '0 rad/s' },
  /** A closed housing with all motors and controllers inside. Default: they stand in free air. */
  housing: {
    fields: {
      /** Surface that gives heat to the air outside. */
      surface: { kind: 'area', above: 0 },
      /** Thickness of its wall. Default: 3 mm. */
      wall: { kind: 'length', above: 0, default: '3 mm' },
      /** Conductivity of its wall. Default: 0.2 W/(m K), a printed polymer. */
      conductivity: { kind: 'thermalConductivity', above: 0, default: '0.2 W/(m K)' },
      /** Heat transfer coefficient on each side, radiation included. Default: 8 W/(m^2 K), still air; an assumption. */
      coefficient: { kind: 'heatTransferCoefficient', above: 0, default: '8 W/(m^2 K)' },
    },
    optional: true,
  },
} as const satisfies Inputs

/** Options of `assessRobot`: a brake resistor at the bus, the push along the ground, and a closed housing around the motors. */
export interface RobotOptions extends Partial<Given<typeof OPTIONS>> {}

/**
 * A robot of four legs built alike, assessed as a whole: how the feet stand along the strides of walk and trot, and what each leg carries. All motors
 * together draw from the supply and return to it at every instant; energy for each metre, running time and heat follow.
 *
 * The legs are mirrored left to right, and the hind ones front to back where `robot.hindLegs` is `mirrored`. Each follows the gait of the document at its phase: the
 * walk puts down left hind, left front, right hind, right front; the trot moves diagonal legs together. Power is summed over the motors first: one that
 * brakes feeds those that drive. Motors are as warm as the load case of the gait makes them. All feet push, then all brake, as hard as the load cases of the
 * gait have it, and are pushed to either side by its lateral force: each value is that of the worst, and energy that of the one which draws the most.
 *
 * Across the slope of the load cases it walks as well, the lower side on the left. Not in it: motion of the body (it keeps its height and stays level), and
 * parts of the legs, which `assess` judges for the most loaded leg. The blow of the rotors at touch-down is a figure with a note, no check: a leg that retracts as it lands has less of it.
 *
 * Throws an `InputError` for a robot with other than four legs, a gait that its legs cannot follow, or an unknown option.
 */
export function assessRobot(leg: Leg, options: RobotOptions = {}): RobotAssessment {
  const where = 'assessRobot'
  const { brakeResistor, traction, housing, sideways, turnRate } = readInputs(where, OPTIONS, options as Given<typeof OPTIONS>)
  const x = legNumbers(leg)
  if (x.robot.legs !== 4) refuse(where, 'robot.legs', x.robot.legs, 'must be 4: other robots stand otherwise')
  const driven = drivenJoints(x).includes('sidewaysHip')
  for (const [name, rate] of Object.entries({ sideways, turnRate }))
    if (rate !== 0 && !driven) refuse(where, name, rate, 'must be 0: no motor drives the sideways hip')
  const prepared = legModel(x)
  const way = { brakeResistor, traction, sideways, turnRate }
  const gaits = { walk: robotGait(prepared, 'walk', way), trot: robotGait(prepared, 'trot', way) }
  const slopes = {
    up: robotSlope(x, slopeIn(x, 'slopeUp'), 1),
    down: robotSlope(x, slopeIn(x, 'slopeDown'), -1),
    across: robotAcross(prepared, slopeIn(x, 'slopeAcross'), way),
  }
  const checks = robotChecks(prepared, { gaits, slopes, brakeResistor }).sort(
    (a, b) => a.reserve / a.requiredReserve - b.reserve / b.requiredReserve,
  )
  const landings = robotLandings(prepared)
  const heat = gaits.walk.motorHeat.si + gaits.walk.controllerHeat.si
  return {
    passes: checks.every(({ reserve }) => reserve >= 1),
    meetsTarget: checks.every(({ reserve, requiredReserve }) => reserve >= requiredReserve),
    checks,
    stand: robotStand(prepared),
    gaits,
    slopes,
    landings,
    housingRise: housing === undefined ? undefined : new Quantity(heat * housingResistance(housing), 'temperatureDifference'),
    notes: [...unsettledNotes(prepared), ...notesOf(gaits, landings)],
  }
}

/** Size of the slope of an event. */
function slopeIn({ loadCases: { events } }: LegNumbers, name: 'slopeUp' | 'slopeDown' | 'slopeAcross'): number {
  const event = events[name]
  if (event?.kind !== 'slope') return refuse('assessRobot', `loadCases.events.${name}.kind`, event?.kind, 'must be slope')
  return Math.abs(event.angle)
}

function housingResistance({
  surface,
  wall,
  conductivity,
  coefficient,
}: {
  readonly surface: number
  readonly wall: number
  readonly conductivity: number
  readonly coefficient: number
}): number {
  return 2 * surfaceResistance.si({ coefficient, area: surface }) + layerResistance.si({ thickness: wall, conductivity, area: surface })
}

/** A motor without a steady temperature counts at the highest temperatures of the calculation. */
function unsettledNotes(leg: LegModel): string[] {
  return (['walk', 'trot'] as const).flatMap((id) =>
    [...busMotors(leg, id)].flatMap(([joint, { unsettled }]) =>
      unsettled === undefined
        ? []
        : [
            `${id}, motor of the ${jointWords(joint)}: ${unsettled}. Its power counts with winding and magnets at the highest temperatures of the calculation.`,
          ],
    ),
  )
}

const percent = (ratio: Quantity<'ratio'>) => `${(100 * ratio.si).toPrecision(2)} %`

function notesOf(gaits: { readonly walk: RobotGait; readonly trot: RobotGait }, landings: readonly RobotLanding[]): string[] {
  const snapping = landings.filter(({ blow, held, slackTorque }) => !(blow.si + held.si <= slackTorque.si))
  const { walk, trot } = gaits
  return [
    ...(walk.unsupported.si > 0
      ? [
          `Walking, no three feet hold the weight during ${percent(walk.unsupported)} of the stride: the robot may not stop there, and rolls by ${walk.tips} until the next foot is down.`,
        ]
      : []),
    ...(trot.feet.standing.fewest === 0 ? ['Trotting, all feet leave the ground between the pairs.'] : []),
    `Trotting, it rolls by at least ${trot.tips} about the line of two feet, unless it steps or leans against it.`,
    ...snapping.map(({ event, joint, blow, held, slackTorque, beyond, toes }) => {
      const flat = toes === 'lie flat' ? ' The toes lie flat by then: softer or longer ones take the blow.' : ''
      return `At touch-down of a ${event} the rotor of the ${joint} still rests. Blow and load wind its drive up to ${blow.plus(held)}. In the cold ${beyond.replace('{}', String(slackTorque))}.${flat} Land with the leg more bent, or let it retract as it touches down.`
    }),
  ]
}
