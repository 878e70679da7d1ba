import { formula } from '../formula/index.js'
import { DUTY_FACTOR } from './robot-inputs.js'

/** Timing of a walk or trot: how long each foot stands, how far the body moves meanwhile, from stride period, duty factor and speed. */
export const strideTiming = /* @__PURE__ */ formula('kinematics.strideTiming', {
  inputs: {
    /** Time from one touch-down of a foot to its next. */
    stridePeriod: { kind: 'time', above: 0 },
    ...DUTY_FACTOR,
    /** Speed of the body over the ground. */
    bodySpeed: { kind: 'velocity', min: 0 },
  },
  output: {
    /** Time a foot stands. */
    stanceTime: 'time',
    /** Time a foot is in the air. */
    swingTime: 'time',
    /** Distance the foot sweeps backward under the body while it stands. */
    stanceSweep: 'length',
    /** Distance the body travels in a whole stride. */
    strideLength: 'length',
  },
  equation: [
    'stanceTime = dutyFactor * stridePeriod',
    'swingTime = (1 - dutyFactor) * stridePeriod',
    'stanceSweep = bodySpeed * stanceTime',
    'strideLength = bodySpeed * stridePeriod',
  ],
  assumes: ['constant speed over level ground', 'no slip of the foot'],
  source: [
    {
      level: 'unverified',
      where: 'R. McN. Alexander, Principles of Animal Locomotion (2003), ch. 7: duty factor, stride length and step length',
    },
  ],
  si: ({ stridePeriod, dutyFactor, bodySpeed }) => ({
    stanceTime: dutyFactor * stridePeriod,
    swingTime: (1 - dutyFactor) * stridePeriod,
    stanceSweep: bodySpeed * dutyFactor * stridePeriod,
    strideLength: bodySpeed * stridePeriod,
  }),
})
