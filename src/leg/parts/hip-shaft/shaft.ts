import { boltStrength, drilledBolt, endCap, preloadFromTorque, threadStrip, tighteningTorque } from '../../../fasteners/index.js'
import { roundBendingStress } from '../../../structures/index.js'
import type { Check } from '../../cases/check.js'
import { shareOfStress } from '../../lines.js'
import { line, type Use, value } from '../../run/index.js'
import { strengthInAir } from '../materials/in-air.js'
import * as shaft from './fields.js'
import { shaftMoment, thrust } from './loads.js'

const weaker = line.smallest('force that strips either thread', { part: 'force', screw: 'force' }, 'force')
const held = line.smallest('diameter that holds the cap', { axle: 'length', head: 'length' }, 'length')
const axle = line.sum('length of the axle', { width: 'length', play: 'length' }, 'length')

/** Bending stress at the nearer bearing, over the root of the thread. */
const bending = value('shaft.bendingStress', ['leg', 'event', 'air', 'age'], (use) =>
  use.run(roundBendingStress, {
    moment: use(shaftMoment),
    diameter: use(shaft.thread).rootDiameter,
    holeDiameter: 0,
  }),
)
/** Yield strength of the shaft. */
export const yieldStrength = value('shaft.yieldStrength', [], (use) => use(shaft.steelOf).yieldStrength)

const screw = (use: Use<never>) => {
  const friction = use(shaft.innerFriction)
  return {
    thread: use(shaft.inner.thread),
    threadFriction: friction,
    headFriction: friction,
    bearingDiameter: use(shaft.inner.bearingDiameter),
    holeDiameter: use(shaft.inner.holeDiameter),
    prevailingTorque: 0,
  }
}
/** Preload of the screw in the end of the shaft. */
const screwPreload = value(
  'shaft.screwPreload',
  [],
  (use) => use.run(preloadFromTorque, { ...screw(use), torque: use(shaft.inner.tighteningTorque) }).preload,
)
const drilledEnd = value('shaft.drilledEnd', [], (use) => {
  const tension = use(screwPreload)
  const { threadTorque } = use.run(tighteningTorque, { ...screw(use), preload: tension })
  const { vonMises, wallRule } = use.run(drilledBolt, {
    outer: use(shaft.thread),
    inner: use(shaft.inner.thread),
    outerYieldStrength: use(yieldStrength),
    innerYieldStrength: use(shaft.inner.steelOf).yieldStrength,
    tension,
    torque: threadTorque,
  })
  return { vonMises, wallRule }
})
const stripForce = value('shaft.stripForce', [], (use) => {
  const [outer, inner, share] = [use(shaft.steelOf), use(shaft.inner.steelOf), use(shaft.threadShear)]
  const engagement = use(shaft.inner.engagement)
  const { partStripForce, screwStripForce } = use.run(threadStrip, {
    thread: use(shaft.inner.thread),
    engagement,
    threadLength: engagement,
    partShearStrength: use.run(shareOfStress, { share, strength: outer.tensileStrength }),
    screwShearStrength: use.run(shareOfStress, { share, strength: inner.tensileStrength }),
    screwTensileStrength: inner.tensileStrength,
    limits: 'worst',
  })
  return use.run(weaker, { part: partStripForce, screw: screwStripForce })
})
const capBending = value('shaft.capBending', ['leg', 'event'], (use) => {
  const width = use(shaft.bearing.width)
  return use.run(endCap, {
    thrust: use(thrust),
    // A screw head narrower than the shaft holds the cap only under the head.
    axleDiameter: use.run(held, { axle: use(shaft.thread).diameter, head: use(shaft.inner.bearingDiameter) }),
    capDiameter: use(shaft.cap.span),
    capThickness: use(shaft.cap.thickness),
    linkBore: use(shaft.bearing.bore),
    linkWidth: width,
    axleLength: use.run(axle, { width, play: use(shaft.axialPlay) }),
  }).bendingStress
})
const capStrength = value('shaft.capStrength', ['event', 'air'], (use) =>
  use.at(strengthInAir.alongLayers, { material: use(shaft.cap.material) }),
)
const screwProof = value(
  'shaft.screwProof',
  [],
  (use) =>
    use.run(boltStrength, { thread: use(shaft.inner.thread), bolt: use(shaft.inner.steelOf), shearRatio: use(shaft.shearRatio) }).proofLoad,
)

/** Checks of the hip shaft with its drilled end and its cap. */
export const shaftChecks: readonly Check[] = [
  {
    id: 'shaft.bending',
    part: 'hip shaft',
    mode: 'bends',
    consequence: 'breaks',
    kind: 'stress',
    scope: 'leg',
    when: ['oneMoment'],
    demand: bending,
    capacity: yieldStrength,
    demandIs:
      'the bending stress at the nearer bearing, over the root of the thread, of ground and cords as if they pulled the same way, and of a push to the side',
    capacityIs: 'the yield strength of its property class',
    remedy: 'a thicker shaft or a bearing nearer to the leg',
  },
  {
    id: 'shaft.drilledEnd',
    part: 'drilled end of the hip shaft',
    mode: 'bursts or strips when its screw is tightened',
    consequence: 'breaks',
    kind: 'stress',
    scope: 'leg',
    when: ['asBuilt'],
    demand: value('shaft.ringStress', [], (use) => use(drilledEnd).vonMises),
    capacity: yieldStrength,
    remark: value('shaft.wallRemark', [], (use) =>
      use(drilledEnd).wallRule === 'met' ? undefined : 'the wall round the inner thread is thinner than the rule of thumb requires',
    ),
    demandIs: 'the von Mises stress in the ring that drilling leaves',
    capacityIs: 'the yield strength of its property class',
    remedy: 'a thicker shaft, a thinner screw, or less tightening torque',
  },
  {
    id: 'shaft.strip',
    part: 'thread in the end of the hip shaft',
    mode: 'strips',
    consequence: 'breaks',
    kind: 'force',
    scope: 'leg',
    when: ['asBuilt'],
    demand: screwPreload,
    capacity: stripForce,
    demandIs: 'the preload of the screw',
    capacityIs: 'the force that strips the loosest pair of threads',
    remedy: 'more engagement or less tightening torque',
  },
  {
    id: 'shaft.endCap',
    part: 'end cap',
    mode: 'breaks under the sideways thrust of the leg',
    consequence: 'breaks',
    kind: 'stress',
    scope: 'leg',
    when: ['bearsLoad'],
    demand: capBending,
    capacity: capStrength,
    demandIs:
      'the bending stress of the cap at the edge of the screw head that holds it, with the foot force leaning by the farthest sideways turn',
    capacityIs: 'the strength of its material for the time under load',
    remedy: 'a thicker cap, or a metal one',
  },
  {
    id: 'shaft.capScrew',
    part: 'screw of the end cap',
    mode: 'is pulled beyond its proof load by the thrust of the leg',
    consequence: 'breaks',
    kind: 'force',
    scope: 'leg',
    when: ['oneMoment'],
    demand: thrust,
    capacity: screwProof,
    demandIs: 'the thrust along the shaft',
    capacityIs: 'the proof load of the screw',
    remedy: 'a thicker screw',
  },
]
