import { formula, property } from '../formula/index.js'
import { BOSS_DIAMETER } from './fit-inputs.js'
import { LETS_SCREW_TURN, WIDER_THAN_HOLE } from './screw-limits.js'
import { BEARING_RING, THREAD_HELIX } from './thread-inputs.js'
import { tighteningTorque } from './tightening.js'

/** Pull-out force of M8 threads in nylon PA12 sintered from powder, by how the thread was made, as tested. */
export const measuredPullOut = {
  /** Thread printed with the part. */
  printedThread: /* @__PURE__ */ pullOut('3.41 kN'),
  /** Brass insert set with heat. */
  heatSetInsert: /* @__PURE__ */ pullOut('3.83 kN'),
  /** Wire thread insert. */
  wireInsert: /* @__PURE__ */ pullOut('4.78 kN'),
}

function pullOut(typical: '3.41 kN' | '3.83 kN' | '4.78 kN') {
  const force = Number.parseFloat(typical)
  return property('force', {
    typical,
    low: [0.85 * force, 'kN'],
    high: [1.15 * force, 'kN'],
    source: { level: 'published', where: 'Śliwka & Wójcik 2025, Polymers 18:112 (means of the abstract; the range of 15 % is assumed)' },
    conditions: 'M8, sintered PA12, 23 °C, 2 mm/min',
  })
}

/**
 * A screw that forms its own thread in plastic: pull-out force, stripping torque and the torque to set.
 *
 * Measure the forming torque on your own boss: it depends on the hole, the plastic and the screw. A hole of 0.8 diameters and two diameters of engagement
 * are a start. Each time such a screw is driven again it forms a little more, so use an insert where the joint is opened often.
 */
export const threadFormingScrew = /* @__PURE__ */ formula('fasteners.threadFormingScrew', {
  inputs: {
    /** The screw's sizes: outer diameter of its thread, pitch, pitch diameter. */
    thread: THREAD_HELIX,
    /** Diameter of the hole before the thread is formed. */
    pilotDiameter: { kind: 'length', above: 0 },
    /** Length of formed thread, without the tapered start. */
    engagement: { kind: 'length', above: 0 },
    ...BOSS_DIAMETER,
    /** Shear strength of the plastic at its temperature and for the duration of the load; across the layers of an upright boss. */
    shearStrength: { kind: 'stress', above: 0 },
    /** Torque that forms the last turn, measured. */
    formingTorque: { kind: 'torque', min: 0 },
    /** Coefficient of friction in the formed thread. */
    threadFriction: { kind: 'ratio', min: 0 },
    /** Coefficient of friction under the head. */
    headFriction: { kind: 'ratio', min: 0 },
    ...BEARING_RING,
    /** Share of the way from forming to stripping at which the torque is set. */
    share: { kind: 'ratio', above: 0, below: 1, default: 0.5 },
  },
  output: {
    /** Force that shears the formed thread. */
    pullOutForce: 'force',
    /** Torque that strips the thread once the head is down. */
    strippingTorque: 'torque',
    /** Torque to set, between forming and stripping. */
    tighteningTorque: 'torque',
    /** Clamp load at that torque, before the plastic relaxes. */
    clampLoad: 'force',
    /** Stripping torque over forming torque; infinite where nothing is needed to form. */
    torqueRatio: { kind: 'ratio', infinite: true },
    /** Whether forming and stripping lie far enough apart for a torque setting. */
    state: { oneOf: ['settable', 'tooNarrow'] },
  },
  equation: [
    'pullOutForce = pi * thread.diameter * engagement * shearStrength',
    'clampLoad = share * pullOutForce',
    'tighteningTorque == formingTorque + share * (strippingTorque - formingTorque)',
  ],
  assumes: [
    'the thread shears on the cylinder of its outer diameter, uniformly along the engagement',
    'the forming torque goes on while the head is tightened',
    'boss that neither splits nor swells',
  ],
  source: [
    { level: 'computed', where: 'shear of a cylinder; torque of fasteners.tighteningTorque at the pull-out force' },
    {
      level: 'commonPractice',
      where: 'hole 0.75 to 0.9 diameters, engagement 2 to 3 diameters, boss 2 diameters or more; ratio of torques of 2 or more',
    },
  ],
  requires: {
    threadFriction: LETS_SCREW_TURN,
    bearingDiameter: WIDER_THAN_HOLE,
    pilotDiameter: { accepts: 'must be smaller than the screw', holds: ({ pilotDiameter, thread }) => pilotDiameter < thread.diameter },
    bossDiameter: { accepts: 'must be larger than the screw', holds: ({ bossDiameter, thread }) => bossDiameter > thread.diameter },
  },
  valid: {
    'hole from 0.75 to 0.9 of the diameter': ({ pilotDiameter, thread }) =>
      pilotDiameter >= 0.75 * thread.diameter * (1 - 1e-9) && pilotDiameter <= 0.9 * thread.diameter * (1 + 1e-9),
    'engagement of 2 to 3 diameters': ({ engagement, thread }) =>
      engagement >= 2 * thread.diameter * (1 - 1e-9) && engagement <= 3 * thread.diameter * (1 + 1e-9),
    'boss of at least 2 diameters': ({ bossDiameter, thread }) => bossDiameter >= 2 * thread.diameter * (1 - 1e-9),
  },
  si: ({ thread, engagement, shearStrength, formingTorque, threadFriction, headFriction, bearingDiameter, holeDiameter, share }) => {
    const pullOutForce = Math.PI * thread.diameter * engagement * shearStrength
    const turned = { preload: 1, thread, threadFriction, headFriction, bearingDiameter, holeDiameter, prevailingTorque: 0 }
    const perForce = tighteningTorque.si(turned).torque
    const strippingTorque = formingTorque + perForce * pullOutForce
    const torqueRatio = formingTorque === 0 ? Number.POSITIVE_INFINITY : strippingTorque / formingTorque
    return {
      pullOutForce,
      strippingTorque,
      tighteningTorque: formingTorque + share * perForce * pullOutForce,
      clampLoad: share * pullOutForce,
      torqueRatio,
      state: torqueRatio >= 2 ? ('settable' as const) : ('tooNarrow' as const),
    }
  },
})
