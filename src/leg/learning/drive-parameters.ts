import { backlashAngle } from '../../capstan/index.js'
import type { LegModel } from '../leg-model.js'
import { type DrivenJoint, driveKindOf, driveOf, jointWords, motorOf, partOf } from '../numbers.js'
import { pitchRadius, stiffness } from '../parts/transmission/belt/lines.js'
import { beltOrCordOf, drivePath, kneePulleyIsLarge, SECOND_STAGE } from '../second-stage.js'
import { fieldParameter, type Parameter } from './model.js'

/** A play that is given as nothing is looked for from here, as an angle at the joint: a twentieth of a degree. */
const MIN_PLAY = Math.PI / 3600

/** Angle of free play for each metre of it along the pitch circle. */
const playPer = (radius: number) => backlashAngle.si({ backlash: 1, pitchRadius: radius })

/** Radius of the belt on the pulley of the joint: of a drive the large one, of a belt along the upper link that on the lower link. @internal */
export function jointPitchRadius(x: LegModel['x'], joint: DrivenJoint): number {
  const { belt: name, smallTeeth, largeTeeth } = driveOf(x, joint, 'belt')
  const through = (joint as string) === SECOND_STAGE ? beltOrCordOf(x) : undefined
  const teeth = through?.kind !== 'belt' || kneePulleyIsLarge(through) ? largeTeeth : smallTeeth
  return pitchRadius.si({ pitch: partOf(x.belts, name, 'belt').pitch, teeth })
}

/** What turns a field of play into an angle of the joint, and the field. @internal */
export function playOf({ x }: LegModel, joint: DrivenJoint): { readonly parameter: Parameter; readonly anglePer: number } {
  const kind = driveKindOf(x, joint)
  const cure = `log freePlay ${joint}`
  const of = (id: string, given: number, anglePer: number) => {
    const start = given > 0 ? given : MIN_PLAY / anglePer
    return { parameter: fieldParameter(id, `the play of the ${kind} at the ${jointWords(joint)}`, start, 0.4, cure), anglePer }
  }
  if (kind === 'belt') {
    const drive = driveOf(x, joint, 'belt')
    const belt = partOf(x.belts, drive.belt, 'belt')
    // Both pulleys have the clearance of a tooth.
    return of(`belts.${drive.belt}.clearance`, belt.clearance, 2 * playPer(jointPitchRadius(x, joint)))
  }
  if (kind === 'gear') {
    const { backlash, module, wheelTeeth } = driveOf(x, joint, 'gear')
    return of(`joints.${joint}.drive.backlash`, backlash, playPer((module * wheelTeeth) / 2))
  }
  return of(`joints.${joint}.drive.backlash`, driveOf(x, joint, 'gearbox').backlash, 1)
}

/** The field that the stiffness of a drive is proportional to, and the stiffness for one of it. @internal */
export function stiffnessOf({ x }: LegModel, joint: DrivenJoint, span: number): { readonly parameter: Parameter; readonly per: number } {
  const cure = `log windup ${joint}`
  if (driveKindOf(x, joint) === 'gearbox')
    return {
      parameter: fieldParameter(
        `joints.${joint}.drive.stiffness`,
        `the stiffness of the gearbox at the ${joint}`,
        driveOf(x, joint, 'gearbox').stiffness as number,
        0.3,
        cure,
      ),
      per: 1,
    }
  const drive = driveOf(x, joint, 'belt')
  const belt = partOf(x.belts, drive.belt, 'belt')
  const radius = jointPitchRadius(x, joint)
  return {
    parameter: fieldParameter(
      `belts.${drive.belt}.axialRigidity`,
      `the axial rigidity of the belt ${drive.belt}`,
      belt.axialRigidity,
      0.3,
      cure,
    ),
    per: stiffness.si({ rigidity: 1, radius, span }),
  }
}

/** The efficiency of a drive. @internal */
export function efficiencyOf({ x }: LegModel, joint: DrivenJoint): Parameter {
  const drive = ((joint as string) === SECOND_STAGE ? beltOrCordOf(x) : x.joints[joint]?.drive) as { readonly efficiency: number }
  return {
    id: `${drivePath(joint)}.efficiency`,
    what: `the efficiency of the drive of the ${jointWords(joint)}`,
    field: true,
    start: drive.efficiency,
    low: 0.2,
    high: 1,
    scale: 'plain',
    deviation: 0.05,
    cure: `log efficiency ${joint}`,
  }
}

/** The speed constant of the motor of a joint; known within a few per cent where no log determines it. @internal */
export function speedConstantOf({ x }: LegModel, joint: DrivenJoint): Parameter {
  const { speedConstant } = motorOf(x, joint)
  return {
    ...fieldParameter(
      `motors.${x.joints[joint]?.motor}.speedConstant`,
      'the speed constant of the motor',
      speedConstant,
      0.05,
      'log torqueConstant',
    ),
    low: speedConstant / 50,
    high: 50 * speedConstant,
  }
}

/** Half of a band of 95 % in standard deviations. */
const HALF_BAND = 1.96

/** The friction of a belt on its pulleys; known from its band where no log determines it. @internal */
export function beltFrictionOf({ x }: LegModel, joint: DrivenJoint): Parameter {
  const { belt } = driveOf(x, joint, 'belt')
  const { low, typical, high } = partOf(x.belts, belt, 'belt').friction
  return {
    ...fieldParameter(
      `belts.${belt}.friction`,
      `the friction of the belt ${belt} on its pulleys`,
      typical,
      Math.max(Math.log(high / low) / (2 * HALF_BAND), 1e-3),
      `log slipTorque ${joint}`,
    ),
    low: 1e-4,
    high: 3,
    most: 1,
  }
}

/** The pretension of a belt, and the share of it that a year leaves. @internal */
export function beltTensionOf({ x }: LegModel, joint: DrivenJoint): { readonly pretension: Parameter; readonly share: Parameter } {
  const drive = driveOf(x, joint, 'belt')
  const { low, typical, high } = partOf(x.belts, drive.belt, 'belt').pretensionLeft
  const cure = `log beltPitch ${joint}`
  return {
    pretension: fieldParameter(
      `${drivePath(joint)}.pretension`,
      `the pretension of the belt at the ${jointWords(joint)}`,
      drive.pretension,
      drive.pretensionScatter / HALF_BAND,
      cure,
    ),
    share: {
      id: `belts.${drive.belt}.pretensionLeft`,
      what: `the pretension that a year leaves in the belt ${drive.belt}`,
      field: true,
      start: typical,
      low: 0.02,
      high: 1,
      scale: 'plain',
      deviation: Math.max((high - low) / (2 * HALF_BAND), 1e-3),
      cure,
    },
  }
}
