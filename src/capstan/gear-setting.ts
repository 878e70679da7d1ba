import { formula } from '../formula/index.js'
import { MODULE } from './belt-and-gear-inputs.js'
import { CENTRE_DISTANCE } from './inputs.js'

const PRESSURE_ANGLE = (20 * Math.PI) / 180
const involute = (angle: number) => Math.tan(angle) - angle

/** Backlash of two standard spur gears of full teeth whose axes stand a little farther apart than their pitch radii, 20° of pressure angle. */
export const spurBacklash = /* @__PURE__ */ formula('capstan.spurBacklash', {
  inputs: {
    /** Teeth of both gears together. */
    teeth: { kind: 'count', min: 12, whole: true },
    ...MODULE,
    ...CENTRE_DISTANCE,
  },
  output: {
    /** Backlash along the pitch circle, as gears are cut. */
    alongPitchCircle: 'length',
    /** Gap between the flanks, square to them: what a foil measures. */
    normal: 'length',
  },
  equation: [
    'working = acos(module * teeth / 2 * cos(20 deg) / centreDistance)',
    'alongPitchCircle = module * teeth * (tan(working) - working - tan(20 deg) + pi / 9)',
    'normal = alongPitchCircle * cos(20 deg)',
  ],
  requires: {
    centreDistance: {
      accepts: 'must be at least the sum of the pitch radii, or the teeth jam',
      holds: ({ teeth, module, centreDistance }) => centreDistance >= ((module * teeth) / 2) * (1 - 1e-12),
    },
  },
  assumes: ['teeth of half the pitch on both gears', 'involute flanks that still reach each other'],
  source: [{ level: 'computed', where: 'tooth thickness of involutes on the working pitch circles' }],
  si: ({ teeth, module, centreDistance }) => {
    const working = Math.acos(Math.min(1, ((module * teeth) / 2) * (Math.cos(PRESSURE_ANGLE) / centreDistance)))
    const alongPitchCircle = module * teeth * (involute(working) - involute(PRESSURE_ANGLE))
    return { alongPitchCircle, normal: alongPitchCircle * Math.cos(PRESSURE_ANGLE) }
  },
})

/** Width that a calliper reads over some teeth of a spur gear, its jaws tangent to the outer flanks, 20° of pressure angle. */
export const spurSpan = /* @__PURE__ */ formula('capstan.spurSpan', {
  inputs: {
    /** Teeth of the gear. */
    teeth: { kind: 'count', min: 6, whole: true },
    /** Teeth between the jaws. */
    spanned: { kind: 'count', min: 1, whole: true },
    ...MODULE,
    /** How much thinner than half the pitch each tooth is cut, along the pitch circle. */
    thinning: { kind: 'length', min: 0, default: '0 mm' },
  },
  output: 'length',
  equation: ['result = module * cos(20 deg) * (pi * (spanned - 1 / 2) + teeth * (tan(20 deg) - pi / 9)) - thinning * cos(20 deg)'],
  assumes: ['the jaws touch the flanks between root and tip'],
  source: [{ level: 'commonPractice', where: 'span over teeth: pitches and one tooth thickness on the base circle' }],
  si: ({ teeth, spanned, module, thinning }) =>
    Math.cos(PRESSURE_ANGLE) * (module * (Math.PI * (spanned - 0.5) + teeth * involute(PRESSURE_ANGLE)) - thinning),
})
