import { boxBendingStress } from '../../structures/index.js'
import type { Scene } from '../state.js'
import { type Check, LOADED, ONCE } from './check.js'
import { polymerRest } from './rests.js'

/** Links, joint range, sideways hip and the ground. */
export const frameChecks: readonly Check[] = [
  {
    id: 'leg.reach',
    part: 'leg',
    mode: 'cannot reach its foot path',
    stake: 'fails to work',
    kind: 'length',
    scope: 'leg',
    cases: LOADED,
    after: ['motion'],
    run: (_, { state }) => (state.motion === undefined ? undefined : { demand: state.motion.farthest, capacity: state.motion.reach }),
    demandIs: 'the farthest distance of the foot from the hip axis',
    capacityIs: 'the length of both links, stretched out',
    remedy: 'a lower stance, a shorter step, or longer links',
    enough: 1.02,
  },
  {
    id: 'leg.range',
    part: 'joint range',
    mode: 'ends before the foot path does',
    stake: 'fails to work',
    kind: 'angle',
    scope: 'joint',
    cases: LOADED,
    after: ['motion'],
    run: (_, { leg, joint }, { motion }) => {
      if (motion.lowest > motion.highest) return undefined
      const { from, to } = leg.x.joints[joint]
      const middle = (from + to) / 2
      return { demand: Math.max(motion.highest - middle, middle - motion.lowest), capacity: (to - from) / 2 }
    },
    demandIs: 'the farthest turn from the middle of the range',
    capacityIs: 'half the range between the joint limits',
    remedy: 'wider joint limits, a shorter step, or another stance height',
    enough: 1.02,
  },
  {
    id: 'sidewaysHip.hold',
    part: 'sideways hip',
    mode: 'gives way',
    stake: 'fails to work',
    kind: 'torque',
    scope: 'leg',
    cases: LOADED,
    after: ['motion'],
    run: (_, { leg, state }) => ({ demand: state.motion?.sideways ?? 0, capacity: leg.x.joints.sidewaysHip.holdingTorque }),
    demandIs: 'the torque of the foot force about the sideways-hip axis',
    capacityIs: 'the torque that its drive can hold',
    remedy: 'a smaller sideways offset, a stronger sideways drive, or feet nearer to the middle',
  },
  {
    id: 'ground.slip',
    part: 'foot on the ground',
    mode: 'slips',
    stake: 'fails to work',
    kind: 'ratio',
    scope: 'leg',
    cases: ['walk', 'trot', 'slope', 'stall', 'hotAfternoon', 'coldMorning', 'season'],
    after: ['motion'],
    run: (_, { leg, state }) => {
      const { motion } = state
      return motion === undefined || motion.vertical === 0
        ? undefined
        : { demand: motion.forward / motion.vertical, capacity: leg.groundFriction }
    },
    demandIs: 'the force along the ground over the force upright to it',
    capacityIs: 'the friction of foot on ground',
    remedy: 'studs or a softer, rougher sole, or a gentler slope',
    rests: ({ leg }) => [
      {
        what: 'friction of the foot on the ground',
        source: {
          level: 'assumption',
          where: `soft polymer on wet or silted ground, ${leg.x.foot.groundFriction.low} to ${leg.x.foot.groundFriction.high}`,
        },
        test: 'pull a weighted foot over your ground with a spring balance, wet and dry',
      },
    ],
  },
  ...(['upper', 'lower'] as const).map(
    (name): Check => ({
      id: `${name}Link.bending`,
      part: `${name} link`,
      mode: 'breaks in bending',
      stake: 'breaks',
      kind: 'stress',
      scope: 'leg',
      cases: ONCE,
      after: ['motion'],
      run: (of, scene) => linkStress(of, scene, name, false),
      demandIs: 'the stress at the outer fibre from the larger joint torque it carries and the foot force along it',
      capacityIs: 'the strength of the printed wall for a moment, along its layers',
      remedy: 'a deeper section or thicker walls',
      rests: ({ leg }) => polymerRest(leg.links[name], `${name} link`),
    }),
  ),
  ...(['upper', 'lower'] as const).map(
    (name): Check => ({
      id: `${name}Link.fatigue`,
      part: `${name} link`,
      mode: 'cracks by the strides of a season',
      stake: 'breaks',
      kind: 'stress',
      scope: 'leg',
      cases: ['season'],
      after: ['motion'],
      run: (of, scene) => linkStress(of, scene, name, true),
      demandIs: 'the stress at the outer fibre in every stride',
      capacityIs: 'the strength that the strides of a season leave',
      remedy: 'a deeper section or thicker walls',
      rests: ({ leg }) => polymerRest(leg.links[name], `${name} link`),
    }),
  ),
]

function linkStress(of: Parameters<Check['run']>[0], { leg, state }: Scene, name: 'upper' | 'lower', cyclic: boolean) {
  const { motion } = state
  if (motion === undefined) return undefined
  const link = leg.x.links[name]
  // The upper link carries the hip torque at its root and the knee torque at its end, the lower link the knee torque.
  const knee = Math.abs(motion.knee.torque)
  const moment = name === 'lower' ? knee : Math.max(knee, Math.abs(motion.hip.torque))
  const { stress } = of(boxBendingStress, {
    moment,
    width: link.width,
    depth: link.depth,
    wall: link.wall,
    axialForce: Math.hypot(motion.vertical, motion.forward),
  })
  const matter = leg.links[name]
  const numbers = cyclic ? matter.cyclic.alongLayers : matter.strength.alongLayers
  return { demand: stress, capacity: numbers.at(of, state.air, cyclic ? 1 : state.duration, state.cycles) }
}
