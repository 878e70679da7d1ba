import { backEmfConstant } from '../../thermal/index.js'
import type { Leg } from '../document/describe.js'
import { type DrivenJoint, entriesOfJoints, motorOf, ofDrivenJoints } from '../numbers.js'
import { cautionsOf } from '../report/cautions.js'
import { jointState } from '../what-if.js'
import { benchLeg } from './bench.js'
import { commissioning } from './control-commissioning.js'
import { gravityTerms } from './control-gains.js'
import { type JointControlInputs, jointControl, motorControl } from './control-joint.js'
import { magnetErrors } from './control-magnet.js'
import { assumedBy, type ControlOptions, readOptions } from './control-options.js'
import type { ControlSheet } from './control-sheet.js'
import { supplyLimits } from './control-supply.js'
import { controlPage } from './control-text.js'
import { throughHip } from './control-through.js'
import { displayed } from './show.js'

const CONVENTIONS = [
  'Joint angles are right-handed about the axis that points to the robot’s left: zero with the leg straight down, a positive hip angle swings the foot backward, a positive knee angle folds the shank backward.',
  'Motor angles are seen from the same side, zero with the leg straight down. A motor that faces the other way, or a controller that counts the other way, turns every sign of that joint over.',
  'Peak phase current is the amplitude of a sinusoidal phase current: the q current of a vector controller that keeps amplitudes. Rms phase current is that over √2; a controller that keeps power shows it times √(3/2).',
  'Limits are for the magnitude of the current, either way.',
]

const SIDEWAYS =
  'The angle of the sideways hip is right-handed about the axis that points forward: a positive one swings the foot to the left. Its motor is seen from the front.'

/**
 * The control sheet of a leg: ratios and signs, limits in motor turns, counts, torque per ampere, current limits with what each protects,
 * feed-forward terms, stiffness, inertia, gains with their reasoning, and a homing run that finds what has slipped or worn, for every kind of drive.
 *
 * Throws an `InputError` for options that cannot be read. Start low: a leg with wrong signs or gains moves hard and pinches.
 */
export function controlSheet(leg: Leg, options: ControlOptions = {}): ControlSheet {
  const bench = benchLeg(leg)
  const read = readOptions(bench, options)
  const askOf = (joint: DrivenJoint): JointControlInputs => {
    const { heat } = jointState(bench, 'hotAfternoon', joint)
    const { speedConstant, speedConstantBasis: basis } = motorOf(bench.x, joint)
    return {
      leg: bench,
      emf: backEmfConstant.si({ speedConstant, basis }).typical,
      warm: heat.backEmfConstant,
      hottest: heat.unsettled === undefined ? Math.max(heat.winding, 293.15) : 293.15,
      loopRate: read.loopRate.si,
      copper: read.copper(joint).si,
      setting: read.setting.si,
      durations: read.durations.map(({ si }) => si),
    }
  }
  const joints = ofDrivenJoints(bench.x, (joint) => jointControl(joint, askOf(joint)))
  const gravity = gravityTerms(bench)
  const sheet: ControlSheet = {
    leg,
    conventions: joints.sidewaysHip === undefined ? CONVENTIONS : [...CONVENTIONS, SIDEWAYS],
    motors: ofDrivenJoints(bench.x, (joint) => motorControl(joint, askOf(joint))),
    gravity,
    joints,
    throughHip: throughHip(bench, joints.knee, gravity),
    commissioning: commissioning(
      bench,
      entriesOfJoints(joints).map(([, { signTest }]) => signTest),
    ),
    encoder: magnetErrors(bench),
    supply: supplyLimits(bench, {
      capacitance: read.capacitance.si,
      highestVoltage: read.highestVoltage.si,
      switchCurrent: read.switchCurrent.si,
    }),
    assumed: assumedBy(bench.x, options, read),
    cautions: cautionsOf(bench.x),
  }
  return displayed(sheet, controlPage)
}
