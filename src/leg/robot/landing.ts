import { cantileverToe, fourBarKneePose, LegKernel, rotorBlow } from '../../kinematics/index.js'
import { Quantity } from '../../units/index.js'
import { placeOf } from '../calculation.js'
import { STANDARD_GRAVITY } from '../gravity.js'
import type { LegModel } from '../leg-model.js'
import { materialState } from '../material-state.js'
import { JOINTS, type Joint, toesOf } from '../numbers.js'
import { turningWithRotor } from '../parts/motors/rotor.js'
import { blowTorque as ownBlowTorque, ratio, signedRatio } from '../parts/transmission/questions.js'
import { kneeLinkage, rodOf } from '../parts/transmission/through-hip/fields.js'
import { blowTorque, stiffnessAtRest } from '../parts/transmission/through-hip/whole.js'
import { branchOf } from '../pose.js'
import { beltOrCordOf } from '../second-stage.js'
import { throughRatio } from '../through-ratio.js'
import { calculationFor, caseState } from '../what-if.js'
import type { RobotLanding } from './result.js'

/** Pose and speeds of a leg whose foot touches down while the body falls. */
function touchDown(leg: LegModel, height: number, fall: number) {
  const { links } = leg.x
  const kernel = new LegKernel(links.hipOffset, links.upper.length, links.lower.length)
  const [angles, rates] = [new Float64Array(3), new Float64Array(3)]
  kernel.jointAnglesInto(angles, 0, 0, links.hipOffset, -height, branchOf(leg))
  const speed = Math.sqrt(2 * STANDARD_GRAVITY * fall)
  kernel.jointRatesInto(rates, 0, angles, Float64Array.of(0, 0, speed))
  return { speed, angles, rates }
}

/** Speed of a joint's drum against the rest of its rotor. A housing that turns with the upper link takes its rotor along. */
function drumSpeed(leg: LegModel, joint: Joint, angles: Float64Array, rates: Float64Array): number {
  const [hip, knee] = [rates[1]!, rates[2]!]
  if (joint === 'hip') return Math.abs(hip)
  if (rodOf(leg.x) !== undefined) return Math.abs(hip + fourBarKneePose.si({ ...kneeLinkage(leg.x), kneeAngle: angles[2]! }).ratio * knee)
  const pulleys = throughRatio(leg.x)
  if (pulleys !== undefined) return Math.abs(hip + pulleys * knee)
  const calculation = calculationFor(leg)
  return Math.abs(knee + hip / calculation.get(signedRatio, calculation.instances.implied(placeOf(calculation, { joint })) as never))
}

/** Toes as a spring under the foot, until they lie flat. */
function toesUnder(leg: LegModel) {
  const { count, length, width, thickness, lift, material } = toesOf(leg.x)
  const { modulus } = materialState(leg, material).elastic()
  const { stiffness } = cantileverToe.si({ modulus, length, width, thickness, allowableStrain: 1, tipForce: 1 })
  return { footStiffness: (count * stiffness) / Math.cos(lift) ** 2, footTravel: length * Math.sin(lift) }
}

/** Effect of a blow beyond the torque that a drive bears, by its kind. */
const BEYOND: Readonly<Record<string, string>> = {
  cord: 'a branch of its aged cord goes slack at {} and snaps back',
  belt: 'its aged belt jumps a tooth at {}',
  gearbox: 'its gearbox bears no more than {}',
}

/** The kind of the stage that bears the least blow: the drive of the joint, or belt or cord from the hip axis to the knee. */
const weakest = ({ x }: LegModel, joint: Joint, own: number | undefined, max: number): string =>
  own === max ? x.joints[joint].drive.kind : (beltOrCordOf(x)?.kind ?? x.joints[joint].drive.kind)

/** Rotors that still rest when the feet touch down: torque of the blow at each drum, next to what a cord bears in the cold, aged. */
export function robotLandings(leg: LegModel): RobotLanding[] {
  const calculation = calculationFor(leg)
  const toes = toesUnder(leg)
  return (['hop', 'drop'] as const).flatMap((name) => {
    const event = leg.x.loadCases.events[name]
    if (event?.kind !== name) return []
    const { speed, angles, rates } = touchDown(leg, event.touchDownHeight ?? leg.x.robot.standHeight, event.height)
    if (!(speed > 0)) return []
    return JOINTS.flatMap((joint): RobotLanding[] => {
      const where = calculation.instances.implied(placeOf(calculation, { joint, air: 'normal', age: 'new' })) as never
      const stiffness = calculation.get(stiffnessAtRest, where)
      const cold = calculation.instances.implied(placeOf(calculation, { joint, air: 'cold', age: 'year' })) as never
      const max = calculation.get(blowTorque, cold)
      if (stiffness === undefined || max === undefined) return []
      const drum = drumSpeed(leg, joint, angles, rates)
      const inertia = calculation.get(ratio, where) ** 2 * calculation.get(turningWithRotor, where)
      const blow = { drumSpeed: drum, driveStiffness: stiffness, inertia, footSpeed: speed }
      const { torque, state } = rotorBlow.si({ ...blow, ...toes })
      const held = Math.abs(caseState(leg, name).joints[joint].drum.torque)
      return [
        {
          event: name,
          joint,
          speed: new Quantity(speed, 'velocity'),
          drumSpeed: new Quantity(drum, 'angularVelocity'),
          blow: new Quantity(torque, 'torque'),
          held: new Quantity(held, 'torque'),
          toes: state === 'flat' ? 'lie flat' : 'give',
          slackTorque: new Quantity(max, 'torque'),
          beyond: BEYOND[weakest(leg, joint, calculation.get(ownBlowTorque, cold), max)] ?? 'its drive bears no more than {}',
        },
      ]
    })
  })
}
