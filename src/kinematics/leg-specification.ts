import type { Given, Inputs, Si } from '../formula/index.js'
import { InputError, Quantity } from '../units/index.js'

const RANGE = {
  fields: {
    /** Lowest angle that the joint reaches. */
    lowest: 'angle',
    /** Highest angle that the joint reaches, above the lowest. */
    highest: 'angle',
  },
  optional: true,
} as const

export const SPECIFICATION = {
  /** Offset of the leg's plane from the axis of the sideways hip, along +y. */
  hipOffset: 'length',
  /** Length of the upper link, from hip to knee. */
  upperLink: { kind: 'length', above: 0 },
  /** Length of the lower link, from knee to foot. */
  lowerLink: { kind: 'length', above: 0 },
  /** Lowest and highest angle of each joint. Default: no limits. */
  limits: {
    fields: {
      /** Limits of the sideways hip. Default: none. */
      sidewaysHip: RANGE,
      /** Limits of the hip. Default: none. */
      hip: RANGE,
      /** Limits of the knee. Default: none. */
      knee: RANGE,
    },
    optional: true,
  },
} as const satisfies Inputs

/** Data of a three-joint leg: lengths, and joint limits where there are any. */
export interface ThreeJointLegSpecification extends Given<typeof SPECIFICATION> {}

/** The names of the joints, in order from the body to the foot. */
export const LEG_JOINTS = ['sidewaysHip', 'hip', 'knee'] as const

/** A joint of the three-joint leg. */
export type LegJoint = (typeof LEG_JOINTS)[number]

/** Throws an `InputError` for limits that are upside down. */
export function checkLimits(where: string, spec: Si<typeof SPECIFICATION>): void {
  const issues = LEG_JOINTS.flatMap((joint) => {
    const range = spec.limits?.[joint]
    if (range === undefined || range.lowest < range.highest) return []
    return [
      {
        path: `limits.${joint}.lowest`,
        given: String(new Quantity(range.lowest, 'angle')),
        accepts: `must be below the highest, ${new Quantity(range.highest, 'angle')}`,
      },
    ]
  })
  if (issues.length > 0) throw new InputError(where, issues)
}
