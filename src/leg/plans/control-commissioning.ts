import { torqueConstants } from '../../thermal/index.js'
import { Quantity, significant } from '../../units/index.js'
import type { LegModel } from '../leg-model.js'
import { type DrivenJoint, jointWords, motorOf } from '../numbers.js'
import { jointState } from '../what-if.js'
import { currentForTorque, jointTorqueConstant, torqueAtDrum } from '../workshop-lines.js'
import { torque } from './bench.js'
import { driveFacts, driveWords } from './drive-facts.js'
import { phrase } from './sheet-units.js'
import { throughGeometry } from './through-geometry.js'

/** A reading to expect while signs and phases are tested. */
export interface SignTest {
  /** Joint whose motor is tested. */
  readonly joint: DrivenJoint
  /** Current of the test: enough to turn the hanging leg, far from anything that breaks. */
  readonly current: Quantity<'peakPhaseCurrent'>
  /** Motion of the joint at a positive current of the motor. */
  readonly moves: string
  /** Current of the standing robot, with the sign of the motor. */
  readonly standing: Quantity<'peakPhaseCurrent'>
  /** Torque of the standing robot at what turns with the joint. */
  readonly standingTorque: Quantity<'torque'>
}

/** Torque of a joint and the current that makes it, magnets as cold and as warm as they get. */
export interface TorqueCurrent {
  /** Torque of the joint. */
  readonly jointTorque: Quantity<'torque'>
  /** Current with the magnets at 20 °C. */
  readonly cold: Quantity<'peakPhaseCurrent'>
  /** Current with the magnets as warm as the hottest walk makes them. */
  readonly warm: Quantity<'peakPhaseCurrent'>
}

/** Which way a joint moves with its angle. */
const MOVES = {
  hip: { up: 'the foot swings backward', down: 'the foot swings forward' },
  knee: { up: 'the shank folds backward', down: 'the shank unfolds' },
  sidewaysHip: { up: 'the foot swings to the left', down: 'the foot swings to the right' },
} as const
const HELD = ' while the upper link is held by hand'

/** Test of the signs of one joint. `hanging` is the largest gravity torque of the leg in the air. @internal */
export function signTest(leg: LegModel, joint: DrivenJoint, emf: number, hanging: number, dragTorque: number): SignTest {
  const { ratio: n, sign, efficiency } = driveFacts(leg, joint)
  const perAmpere = jointTorqueConstant.si({ motor: torqueConstants.si({ backEmfConstant: emf }).peakPhase, ratio: n, efficiency })
  const { torque: standing } = jointState(leg, 'stand', joint).drum
  const through = joint === 'knee' ? throughGeometry(leg.x) : undefined
  // A crossed cord turns the knee against the drum, and so does a crank on the other side of its rod than the rocker.
  const moves = MOVES[joint][sign * (through === undefined ? 1 : Math.sign(through.ratio(through.middle))) > 0 ? 'up' : 'down']
  const drag = torqueAtDrum.si({ motor: dragTorque, ratio: n })
  const current = currentForTorque.si({ torque: 0.5 * hanging + 2 * drag, perAmpere })
  const at = (x: number) => new Quantity(x, 'peakPhaseCurrent')
  return {
    joint,
    current: at(current),
    moves: through === undefined ? moves : `${moves}${HELD}`,
    standing: at(currentForTorque.si({ torque: sign < 0 ? -standing : standing, perAmpere })),
    standingTorque: torque(standing),
  }
}

const SHARES = [0.1, 0.25, 0.5, 0.75, 1] as const

/** Currents for some torques of a joint up to its largest. @internal */
export function torqueTable(leg: LegModel, joint: DrivenJoint, emf: number, warm: number, max: number): TorqueCurrent[] {
  const { ratio, efficiency } = driveFacts(leg, joint)
  const perAmpere = (backEmfConstant: number) =>
    jointTorqueConstant.si({ motor: torqueConstants.si({ backEmfConstant }).peakPhase, ratio, efficiency })
  return SHARES.map((share) => {
    const part = share * max
    const current = (backEmfConstant: number) =>
      new Quantity(currentForTorque.si({ torque: part, perAmpere: perAmpere(backEmfConstant) }), 'peakPhaseCurrent')
    return { jointTorque: torque(part), cold: current(emf), warm: current(warm) }
  })
}

/** First steps with a controller, in order, each with the reading to expect. @internal */
export function commissioning(leg: LegModel, tests: readonly SignTest[]): string[] {
  const pairs = [...new Set(tests.map(({ joint }) => motorOf(leg.x, joint).polePairs))]
  const electrical =
    pairs.length === 1 && pairs[0] !== undefined ? `${pairs[0]} electrical turns` : 'as many electrical turns as it has pole pairs'
  return [
    'Hang the leg up, joints free, hands clear, one finger on the switch. Set every current limit to the current of the sign test.',
    `Encoder: power off the bridge and turn each rotor by hand, counter-clockwise seen from the left of the robot${tests.some(({ joint }) => joint === 'sidewaysHip') ? ', that of the sideways hip from its front' : ''}. Its angle must grow. If it falls, invert the encoder in the controller.`,
    `Phases: let the controller turn the field forward slowly. The rotor must follow, and its angle must grow by one turn for ${electrical}. If it falls, swap any two motor wires. If it trembles, a wire is open.`,
    'Offset: hold the field at an electrical angle of zero, and read the encoder. Repeat at every pole pair, once from either side, and store the mean. The two sides differ by friction and cogging; a spread beyond the error of the table below means a loose magnet.',
    'Check of the offset: command the sign test current both ways. The rotor must speed up alike both ways; if one way is much faster, or it runs away, the offset is wrong. Switch off.',
    ...tests.map(
      ({ joint, current, moves }) =>
        phrase`Sign of the ${jointWords(joint)}: command ${current} in the positive sense of the motor for half a second. ${moves[0]?.toUpperCase()}${moves.slice(1)}. If it does the opposite, change the sign of that motor, not of the joint.`,
    ),
    'Position loop: close it with a tenth of the gains, push each link by hand. It must push back. A joint that helps your hand has its sign wrong: switch off.',
    ...tests.map(
      ({ joint, standing, standingTorque }) =>
        phrase`Standing on all feet, the ${jointWords(joint)} motor reads about ${significant(standing.in('A'), 3)} A peak phase (${standingTorque} at its ${driveWords(leg.x, joint).output}). A third more or less is friction; another sign is a wrong sign.`,
    ),
    'Raise the current limits to those of the table below, one after the other, only after homing.',
  ]
}
