import { type Point, turned } from '../../drawing/index.js'
import { springAcrossJoint } from '../../kinematics/index.js'
import { extensionSpringForce, torsionSpringTorque, woundTorsionSpring } from '../../structures/index.js'
import type { Joint } from '../numbers.js'
import { from, to } from '../parts/joints/fields.js'
import * as spring from '../parts/springs/fields.js'
import { extensionLaw, stretchOfTravel, torsionLaw } from '../parts/springs/values.js'
import type { LegValues } from './leg-values.js'

/** Sizes that both kinds of spring have, mm and radians. */
const woundSizes = (facts: LegValues, at: { readonly joint: Joint }) => ({
  wireKind: facts.get(spring.wire, at),
  wire: facts.mm(spring.wireDiameter, at),
  coil: facts.mm(spring.coilDiameter, at),
  coils: facts.get(spring.coils, at),
  holder: facts.named('material', spring.holderMaterial, at),
  travel: [facts.get(from, at), facts.get(to, at)] as const,
})

/** Sizes of a torsion spring about a joint, mm and radians; what it does at an angle of the joint. */
export function torsionSizes(facts: LegValues, joint: Joint) {
  const at = { joint }
  const law = facts.get(torsionLaw, at)
  const own = woundSizes(facts, at)
  const mandrel = facts.get(spring.mandrel, at)
  const body = (windup: number) =>
    woundTorsionSpring.si({ wireDiameter: own.wire / 1000, coilDiameter: own.coil / 1000, bodyCoils: own.coils, windup })
  const turns = law.winds === 'growing' ? 1 : -1
  const movingAt = (angle: number) => angle - Math.PI / 2
  return {
    ...own,
    kind: 'torsion' as const,
    rate: law.rate,
    winds: law.winds,
    free: law.freeAngle,
    fixedLeg: facts.mm(spring.fixedLeg, at),
    movingLeg: facts.mm(spring.movingLeg, at),
    seat: facts.mm(spring.seatLength, at),
    mandrel: mandrel === undefined ? undefined : 1000 * mandrel,
    /** Sense in which its wire runs from the fixed leg on, seen from the robot's left: 1 counter-clockwise. */
    turns,
    /** Direction of the moving leg, along its link, and of the fixed leg, by the part of a coil; from what carries the joint. */
    movingAt,
    fixedAt: movingAt(law.freeAngle) - turns * (Math.PI + 2 * Math.PI * (own.coils % 1)),
    bodyLength: (windup: number) => 1000 * body(windup).bodyLength,
    innerDiameter: (windup: number) => 1000 * body(windup).innerDiameter,
    state: (jointAngle: number) => torsionSpringTorque.si({ jointAngle, ...law }),
  }
}
export type TorsionSizes = ReturnType<typeof torsionSizes>

/** Sizes of an extension spring across a joint, mm; what it does at an angle of the joint. */
export function extensionSizes(facts: LegValues, joint: Joint) {
  const at = { joint }
  const law = facts.get(extensionLaw, at)
  const own = woundSizes(facts, at)
  const fixed: Point = [-1000 * law.fixedForward, 1000 * law.fixedUp]
  const straight: Point = [-1000 * law.movingForward, -1000 * law.movingDown]
  const [hook, bend] = [facts.get(spring.hookRadius, at), facts.get(spring.bendRadius, at)]
  return {
    ...own,
    kind: 'extension' as const,
    rate: law.rate,
    freeLength: 1000 * law.freeLength,
    initialTension: law.initialTension,
    hook: hook === undefined ? own.coil / 2 : 1000 * hook,
    hookGiven: hook !== undefined,
    bend: bend === undefined ? own.wire : 1000 * bend,
    bendGiven: bend !== undefined,
    pin: facts.mm(spring.pinDiameter, at),
    depth: facts.mm(spring.pinDepth, at),
    arm: facts.mm(spring.pinArm, at),
    /** The most it pulls with over the whole travel: not always at an end of it. */
    mostForce: facts.get(stretchOfTravel, at).mostForce,
    /** Its ends from the axis, forward to the left: the fixed one, and the moving one with the joint straight and at an angle. */
    fixed,
    straight,
    movingAt: (angle: number): Point => turned(straight, angle),
    state: (jointAngle: number) => {
      const { length, arm } = springAcrossJoint.si({ jointAngle, ...law })
      return { length: 1000 * length, arm: 1000 * arm, force: extensionSpringForce.si({ length, ...law }).force }
    },
  }
}
export type ExtensionSizes = ReturnType<typeof extensionSizes>

/** The spring of a joint; absent where it has none. */
export function springSizes(facts: LegValues, joint: Joint): TorsionSizes | ExtensionSizes | undefined {
  const kind = facts.get(spring.kind, { joint })
  if (kind === undefined) return undefined
  return kind === 'torsion' ? torsionSizes(facts, joint) : extensionSizes(facts, joint)
}
