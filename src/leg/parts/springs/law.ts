import { springAcrossJoint } from '../../../kinematics/index.js'
import { extensionSpringForce, torsionSpringTorque } from '../../../structures/index.js'

/** A torsion spring about a joint, SI. */
export interface TorsionLaw {
  readonly freeAngle: number
  readonly winds: 'growing' | 'falling'
  readonly rate: number
}
/** Both ends of an extension spring about a joint, SI. */
export interface SpringEnds {
  readonly fixedUp: number
  readonly fixedForward: number
  readonly movingDown: number
  readonly movingForward: number
}
/** An extension spring across a joint, SI. */
export interface ExtensionLaw extends SpringEnds {
  readonly freeLength: number
  readonly initialTension: number
  readonly rate: number
}
/** The spring of a joint: one of the two kinds. */
export interface SpringLaw {
  readonly torsion?: TorsionLaw | undefined
  readonly extension?: ExtensionLaw | undefined
}

/** The same as inputs of a formula. */
export const SPRING_LAW = {
  /** A torsion spring about the joint. */
  torsion: {
    fields: {
      /** Joint angle at which its legs just touch. */
      freeAngle: 'angle',
      /** Whether a growing or a falling joint angle winds it. */
      winds: { oneOf: ['growing', 'falling'] },
      /** Torque over angle. */
      rate: { kind: 'torsionalStiffness', above: 0 },
    },
    optional: true,
  },
  /** An extension spring across the joint. */
  extension: {
    fields: {
      /** Height of the fixed end above the axis. */
      fixedUp: 'length',
      /** Distance of the fixed end in front of the axis. */
      fixedForward: 'length',
      /** Distance of the moving end below the axis, joint straight. */
      movingDown: 'length',
      /** Distance of the moving end in front of the axis, joint straight. */
      movingForward: 'length',
      /** Length between the hooks, unloaded. */
      freeLength: { kind: 'length', above: 0 },
      /** Pull that opens its coils. */
      initialTension: { kind: 'force', min: 0 },
      /** Force over deflection. */
      rate: { kind: 'linearStiffness', above: 0 },
    },
    optional: true,
  },
} as const

/** Torque of a spring on its joint at an angle, positive the way the angle grows; 0 without a spring. */
export function springTorqueAt(law: SpringLaw | undefined, jointAngle: number): number {
  if (law?.torsion !== undefined) return torsionSpringTorque.si({ jointAngle, ...law.torsion }).torque
  if (law?.extension === undefined) return 0
  const { length, arm } = springAcrossJoint.si({ jointAngle, ...law.extension })
  const { force } = extensionSpringForce.si({ length, ...law.extension })
  return force === 0 ? 0 : -force * arm
}
