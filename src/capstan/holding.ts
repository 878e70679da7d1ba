import { formula } from '../formula/index.js'
import { branch, type CordDriveState, increasingRoot } from './branch.js'

/** Span tensions at which the pinion is on the verge of slipping. */
export function slipPoint(d: CordDriveState): { taut: number; slack: number } {
  const shrink = Math.exp(-d.friction * d.pinionWrap)
  if (shrink === 1) return { taut: d.pretension, slack: d.pretension }
  const f = (taut: number) => {
    const t = branch(d, taut, d.drumWrapTaut)
    const s = branch(d, taut * shrink, d.drumWrapSlack)
    return { value: t.length + s.length, slope: t.compliance + shrink * s.compliance }
  }
  const high = d.pretension / shrink
  const taut = increasingRoot(
    f,
    d.pretension * Math.min(2, 0.5 * (1 + 1 / shrink)),
    d.pretension * 0.999,
    Math.min(high, d.pretension * 1e6),
    1e-9 * d.pretension,
  )
  return { taut, slack: taut * shrink }
}

/** Torque at which the cord slips round a pinion that holds it by friction alone, with the unequal stretch of the two branches; the equal-force estimate is lower. */
export const slipTorque = /* @__PURE__ */ formula('capstan.slipTorque', {
  inputs: {
    /** Axial rigidity of the cord. */
    axialRigidity: { kind: 'axialRigidity', above: 0 },
    /** Tension of both spans and all wraps at rest. */
    pretension: { kind: 'force', above: 0 },
    /** Radius of the pinion to the cord's centre line. */
    pinionRadius: { kind: 'length', above: 0 },
    /** Radius of the drum to the cord's centre line. */
    drumRadius: { kind: 'length', above: 0 },
    /** Free span of one branch. */
    span: { kind: 'length', above: 0 },
    /** Angle of contact on the pinion, all turns counted. */
    pinionWrap: { kind: 'angle', above: 0 },
    /** Wrap from tangent point to anchor on the drum, taut branch. */
    drumWrapTaut: { kind: 'angle', min: 0 },
    /** Wrap from tangent point to anchor on the drum, slack branch. */
    drumWrapSlack: { kind: 'angle', min: 0 },
    /** Coefficient of friction, cord on pinion. */
    friction: { kind: 'ratio', min: 0 },
    /** Coefficient of friction, cord on drum; the pinion's where not given. */
    drumFriction: { kind: 'ratio', min: 0, optional: true },
  },
  output: {
    /** Torque at the joint. */
    torque: 'torque',
    /** Taut tension there. */
    tautTension: 'force',
    /** Slack tension there. */
    slackTension: 'force',
  },
  assumes: ['loaded from a uniform pretension', 'fixed centres', 'linear elastic cord', 'Coulomb friction, static and kinetic alike'],
  source: [
    { level: 'computed', where: 'Euler-Eytelwein ratio over the whole pinion wrap with equal lengths given and taken by the two branches' },
  ],
  si: (x) => {
    const { taut, slack } = slipPoint({ ...x, hold: 'frictionOnly' })
    return { torque: x.drumRadius * (taut - slack), tautTension: taut, slackTension: slack }
  },
})

/**
 * Torque at which a span of a cord clamped in the middle of the pinion goes loose, with the unequal stretch of the two branches. Beyond it
 * one branch carries alone, at half the stiffness or less. Cord held by friction alone slips before.
 */
export const slackTorque = /* @__PURE__ */ formula('capstan.slackTorque', {
  inputs: {
    /** Axial rigidity of the cord. */
    axialRigidity: { kind: 'axialRigidity', above: 0 },
    /** Tension of both spans and all wraps at rest. */
    pretension: { kind: 'force', above: 0 },
    /** Radius of the pinion to the cord's centre line. */
    pinionRadius: { kind: 'length', above: 0 },
    /** Radius of the drum to the cord's centre line. */
    drumRadius: { kind: 'length', above: 0 },
    /** Free span of one branch. */
    span: { kind: 'length', above: 0 },
    /** Angle of contact on the pinion, all turns counted; the clamp is in its middle. */
    pinionWrap: { kind: 'angle', above: 0 },
    /** Wrap from tangent point to anchor on the drum, taut branch. */
    drumWrapTaut: { kind: 'angle', min: 0 },
    /** Wrap from tangent point to anchor on the drum, slack branch. */
    drumWrapSlack: { kind: 'angle', min: 0 },
    /** Coefficient of friction, cord on pinion. */
    friction: { kind: 'ratio', min: 0 },
    /** Coefficient of friction, cord on drum; the pinion's where not given. */
    drumFriction: { kind: 'ratio', min: 0, optional: true },
  },
  output: {
    /** Torque at the joint. */
    torque: 'torque',
    /** Tension of the taut span there; the other has none. */
    tautTension: 'force',
    /** Angle of the joint there against its unloaded place. */
    windup: 'angle',
  },
  assumes: ['loaded from a uniform pretension', 'fixed centres', 'linear elastic cord', 'Coulomb friction, static and kinetic alike'],
  source: [{ level: 'computed', where: 'the taut branch gives what the slack branch takes in when all its tension is gone' }],
  si: (x) => {
    const d = { ...x, hold: 'clampedMidPinion' } as const
    const taken = branch(d, 0, d.drumWrapSlack).length
    const f = (taut: number) => {
      const { length, compliance } = branch(d, taut, d.drumWrapTaut)
      return { value: length + taken, slope: compliance }
    }
    // The span alone would need this much: the arcs only add to what the branch gives.
    const most = d.pretension - (taken * d.axialRigidity) / d.span
    const taut = increasingRoot(f, 2 * d.pretension, d.pretension, most, 1e-9 * d.pretension)
    return { torque: d.drumRadius * taut, tautTension: taut, windup: -taken / d.drumRadius }
  },
})
