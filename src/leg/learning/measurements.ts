import { frictionFromTensions, tensionRatio } from '../../capstan/index.js'
import { copperLoss, hotResistance } from '../../thermal/index.js'
import { driveOf, type Joint, motorOf, type Prepared } from '../numbers.js'
import { retentionIn } from '../parts/transmission/cord/fields.js'
import { shareLeft } from '../plans/tensioning.js'
import { windups } from '../windup.js'
import { HeatingRun } from './heating-run.js'
import type { LogColumn } from './logs.js'

/** What can be measured on the test stand. */
export const MEASUREMENTS = ['cordFriction', 'windup', 'pretension', 'pullOut', 'heating', 'footDeflection'] as const
/** One kind of measurement. */
export type MeasurementId = (typeof MEASUREMENTS)[number]

/** Columns of each kind of log. */
export const COLUMNS: { readonly [M in MeasurementId]: readonly LogColumn[] } = {
  cordFriction: [
    { name: 'slack tension', kind: 'force', unit: 'N' },
    { name: 'taut tension', kind: 'force', unit: 'N' },
    { name: 'wrap angle', kind: 'angle', unit: 'turn' },
  ],
  windup: [
    { name: 'joint torque', kind: 'torque', unit: 'N m' },
    { name: 'joint angle', kind: 'angle', unit: 'deg' },
  ],
  pretension: [
    { name: 'time', kind: 'time', unit: 'day' },
    { name: 'tension', kind: 'force', unit: 'N' },
  ],
  pullOut: [{ name: 'breaking force', kind: 'force', unit: 'N' }],
  heating: [
    { name: 'time', kind: 'time', unit: 'min' },
    { name: 'peak phase current', kind: 'peakPhaseCurrent', unit: 'A' },
    { name: 'winding temperature', kind: 'temperature', unit: 'degC' },
    { name: 'mount temperature', kind: 'temperature', unit: 'degC' },
    { name: 'air temperature', kind: 'temperature', unit: 'degC' },
  ],
  footDeflection: [
    { name: 'upright force', kind: 'force', unit: 'N' },
    { name: 'upright deflection', kind: 'length', unit: 'mm' },
  ],
}

/** A parameter that a curve is fitted with, SI. */
export interface FitParameter {
  /** The field it corrects; absent for a zero of the instrument. */
  readonly path: string | undefined
  readonly start: number
  readonly low: number
  readonly high: number
}

/** How a log is turned into corrected fields: the scatter of single readings, or a curve fitted through all of them. */
export type Estimate =
  | { readonly kind: 'scatter'; readonly path: string; readonly value: (row: readonly number[]) => number; readonly high: number }
  | {
      readonly kind: 'curve'
      readonly parameters: readonly FitParameter[]
      /** Predicted readings of all rows for parameters. */
      readonly predict: (p: ArrayLike<number>, rows: readonly (readonly number[])[]) => number[]
      readonly measured: (row: readonly number[]) => number
    }
  | { readonly kind: 'comparison' }

/** Estimators of one measurement on one joint, in the order they are to be used. @internal */
export function estimatesOf(leg: Prepared, id: MeasurementId, joint: Joint): readonly Estimate[] {
  return id === 'heating' ? [windingEstimate(leg, joint), coolingEstimate(leg, joint)] : [estimateOf(leg, id, joint)]
}

function estimateOf(leg: Prepared, id: Exclude<MeasurementId, 'heating'>, joint: Joint): Estimate {
  const drive = driveOf(leg.x, joint, 'cord')
  const { cord } = leg.drives[joint]
  switch (id) {
    case 'cordFriction':
      return {
        kind: 'scatter',
        path: `joints.${joint}.drive.friction`,
        high: 1,
        value: ([slackTension, tautTension, wrapAngle]) =>
          frictionFromTensions.si({ slackTension: slackTension!, tautTension: tautTension!, wrapAngle: wrapAngle! }),
      }
    case 'pullOut':
      return { kind: 'scatter', path: `joints.${joint}.drive.endRetention`, high: 1, value: ([force]) => force! / cord.breakingStrength }
    case 'windup':
      return {
        kind: 'curve',
        parameters: [
          {
            path: `cords.${drive.cord}.axialRigidity`,
            start: cord.axialRigidity,
            low: cord.axialRigidity / 20,
            high: 20 * cord.axialRigidity,
          },
          { path: undefined, start: 0, low: -1, high: 1 },
        ],
        predict: (p, rows) =>
          windups(
            leg,
            joint,
            p[0]!,
            rows.map(([torque]) => torque!),
          ).map((x) => x + p[1]!),
        measured: (row) => row[1]!,
      }
    case 'pretension':
      return {
        kind: 'curve',
        parameters: [
          { path: `joints.${joint}.drive.pretension`, start: drive.pretension, low: 0.05 * drive.pretension, high: 20 * drive.pretension },
          { path: `cords.${drive.cord}.pretensionLeft`, start: leg.drives[joint].pretensionLeft, low: 0.02, high: 1 },
        ],
        predict: (p, rows) => rows.map(([time]) => p[0]! * shareLeft(leg, joint, time!, p[1]!)),
        measured: (row) => row[1]!,
      }
    case 'footDeflection':
      return { kind: 'comparison' }
  }
}

/** From winding to mounting face, whose difference follows the loss at once. */
const windingEstimate = (leg: Prepared, joint: Joint): Estimate => ({
  kind: 'curve',
  parameters: [
    { path: `motors.${leg.x.joints[joint].motor}.windingToMount`, start: motorOf(leg.x, joint).windingToMount, low: 0.01, high: 20 },
  ],
  predict: (p, rows) => rows.map(([, current, winding]) => p[0]! * lossOf(motorOf(leg.x, joint), current!, winding!)),
  measured: ([, , winding, mount]) => winding! - mount!,
})

/** From the mounting face to the air, and the heat that motor and sink take up on the way. */
function coolingEstimate(leg: Prepared, joint: Joint): Estimate {
  const motor = motorOf(leg.x, joint)
  const { typical } = leg.x.environment.coolingFactor
  const run = new HeatingRun(leg.x, joint)
  return {
    kind: 'curve',
    parameters: [
      { path: 'environment.coolingFactor', start: typical, low: 0.05, high: 10 },
      {
        path: `motors.${leg.x.joints[joint].motor}.specificHeat`,
        start: motor.specificHeat,
        low: motor.specificHeat / 10,
        high: 10 * motor.specificHeat,
      },
      // How far the first reading is off.
      { path: undefined, start: 0, low: -20, high: 20 },
    ],
    predict: (p, rows) =>
      run.temperatures(
        p[0]!,
        p[1]!,
        rows.map(([time, current, winding, , air]) => ({
          time: time!,
          air: air!,
          loss: lossOf(motorOf(leg.x, joint), current!, winding!),
        })),
        rows[0]![3]! + p[2]!,
      ),
    measured: ([, , , mount]) => mount!,
  }
}

/** Copper loss of a current with the winding at a temperature. @internal */
export function lossOf(motor: ReturnType<typeof motorOf>, peakPhaseCurrent: number, temperature: number): number {
  const terminalResistance = hotResistance.si({
    resistance: motor.terminalResistance,
    measuredAt: 293.15,
    temperature,
    conductor: 'copper',
  })
  return copperLoss.si({ peakPhaseCurrent, terminalResistance })
}

/** Share of strength that the ends of a joint's cord keep. @internal */
export const retentionOf = ({ x }: Prepared, joint: Joint) => retentionIn(x, joint)

/** Ratio of tensions that a friction gives over a wrap. @internal */
export const ratioOf = (friction: number, wrapAngle: number): number => tensionRatio.si({ friction, wrapAngle })
