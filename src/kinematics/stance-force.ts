import { formula } from '../formula/index.js'
import { DUTY_FACTOR, GRAVITY, ROBOT_MASS } from './robot-inputs.js'

/** Vertical force of the ground on one leg through its stance, from the weight the leg carries on average and the shape of the force. */
export const stanceForce = /* @__PURE__ */ formula('kinematics.stanceForce', {
  inputs: {
    ...ROBOT_MASS,
    /** Part of the weight this leg carries, averaged over the stride (four equal legs: 0.25; of a pair that carries the part p: p/2). */
    legShare: { kind: 'ratio', min: 0, max: 1 },
    ...DUTY_FACTOR,
    /** Part of the stance that has passed, 0 at touch-down, 1 at lift-off. */
    stancePhase: { kind: 'ratio', min: 0, max: 1 },
    /** Shape of the force: `halfSine` as in a run, `parabolic`, `rectangular`, or `twoPeaked` as in a slow walk. */
    shape: { oneOf: ['halfSine', 'parabolic', 'rectangular', 'twoPeaked'], default: 'halfSine' },
    /** For `twoPeaked`: weight of the third harmonic; 0 is a half sine, above 1/9 the force has two peaks, at 1 it falls to zero between them. */
    thirdHarmonic: { kind: 'ratio', min: -0.3333, max: 1, default: 0.4 },
    ...GRAVITY,
  },
  /** Vertical ground reaction on the leg. */
  output: 'force',
  assumes: ['impulse of the stance equals the leg’s share of weight times the stride period', 'steady gait on level ground'],
  source: [
    {
      level: 'unverified',
      where:
        'R. McN. Alexander, "The gaits of bipedal and quadrupedal animals", Int. J. Robotics Research 3(2), 1984: force with a third harmonic',
    },
  ],
  si: ({ mass, legShare, dutyFactor, stancePhase, shape, thirdHarmonic, gravity }) => {
    const mean = (legShare * mass * gravity) / dutyFactor
    if (shape === 'rectangular') return mean
    if (shape === 'parabolic') return mean * 6 * stancePhase * (1 - stancePhase)
    const angle = Math.PI * stancePhase
    if (shape === 'halfSine') return mean * 0.5 * Math.PI * Math.sin(angle)
    return ((mean * 1.5 * Math.PI) / (3 + thirdHarmonic)) * (Math.sin(angle) + thirdHarmonic * Math.sin(3 * angle))
  },
})

/** Peak vertical force on one leg of a pair in a run or trot, with a half-sine force (fore and hind pairs carry different parts of the weight). */
export const peakForceOfPair = /* @__PURE__ */ formula('kinematics.peakForceOfPair', {
  inputs: {
    ...ROBOT_MASS,
    /**
     * Part of the weight that the pair carries, averaged over the stride. Four equal legs: 0.5. A robot of two legs: 1. Four legs that all push together, as
     * in a hop: 0.5 too, because each pair carries half.
     */
    pairShare: { kind: 'ratio', min: 0, max: 1 },
    ...DUTY_FACTOR,
    ...GRAVITY,
  },
  /** Peak vertical ground reaction on one leg of the pair. */
  output: 'force',
  equation: ['result = pi / 4 * pairShare * mass * gravity / dutyFactor'],
  assumes: ['force over the stance is a half sine', 'both legs of the pair carry alike', 'steady gait on level ground'],
  source: [
    {
      level: 'published',
      where: 'R. McN. Alexander and others, 1979, as quoted on the list of the International Society of Biomechanics: F = π p m g / 4β',
    },
  ],
  si: ({ mass, pairShare, dutyFactor, gravity }) =>
    stanceForce.si({ mass, legShare: pairShare / 2, dutyFactor, stancePhase: 0.5, shape: 'halfSine', thirdHarmonic: 0, gravity }),
})
