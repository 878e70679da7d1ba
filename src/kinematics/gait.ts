import { type Given, type Inputs, readInputs } from '../formula/index.js'
import { Quantity } from '../units/index.js'
import { withLists } from './columns.js'
import { phasesOf } from './gait-phases.js'
import type { Gait, GaitLeg, GaitSamples } from './gait-result.js'
import { longitudinalMargin, supportMargin } from './support-margin.js'
import { xyz } from './vectors.js'
import { shareWeight } from './weight-sharing.js'

const SPECIFICATION = {
  /** Places of the feet at mid stance, three or more; in the order of `FOUR_LEGS` for a named gait. */
  feet: {
    list: {
      fields: {
        /** Place forward of the origin under the body. */
        x: 'length',
        /** Place to the left of it. */
        y: 'length',
      },
    },
    least: 3,
  },
  /** A named gait of four legs. Give this or `phases`. */
  gait: { oneOf: ['walk', 'diagonalWalk', 'trot', 'pace', 'bound'], optional: true },
  /** Touch-down of each foot as part of the stride, 0 to 1, one for each foot. Give this or `gait`. */
  phases: { list: { kind: 'ratio', min: 0, max: 1 }, optional: true },
  /** Part of the stride that each foot stands. */
  dutyFactor: { kind: 'ratio', above: 0, max: 1 },
  /** Time from one touch-down of a foot to its next. */
  stridePeriod: { kind: 'time', above: 0 },
  /** Speed of the body forward. Default 0. */
  forward: { kind: 'velocity', default: '0 m/s' },
  /** Speed of the body to the left. Default 0. */
  sideways: { kind: 'velocity', default: '0 m/s' },
  /** Rate at which the body turns to the left. Default 0. */
  turnRate: { kind: 'angularVelocity', default: '0 rad/s' },
  /** Mass of the robot. */
  mass: { kind: 'mass', above: 0 },
  /** Centre of mass; z is its height over the ground. */
  centreOfMass: { fields: /* @__PURE__ */ xyz('length') },
  /** Slope of the ground, 0 to 60°. Default 0. */
  slope: { kind: 'angle', min: 0, max: '60 deg', default: '0 deg' },
  /** Direction of the slope, from x towards y. Default 0: the slope rises forward. */
  uphill: { kind: 'angle', default: '0 deg' },
  /** Coefficient of friction between feet and ground. Default 0.6. */
  friction: { kind: 'ratio', above: 0, default: 0.6 },
  /** Acceleration of free fall. Default 9.80665 m/s². */
  gravity: { kind: 'acceleration', above: 0, default: '9.80665 m/s^2' },
  /** Moments of the stride that are evaluated, 8 to 20 000. Default 240. */
  samples: { kind: 'count', min: 8, max: 20_000, whole: true, default: 240 },
} as const satisfies Inputs

/**
 * A gait of a robot whose body keeps parallel to the ground: places of the feet at mid stance under the body (for a named gait in the order of
 * `FOUR_LEGS`), a named gait or each leg's phase of touch-down, duty factor and period, speed forward and to the left, rate of turning (to the left).
 * x, y and the height of the centre of mass (z, above the ground) are in one frame that moves with the body. `uphill` is the direction of a slope, from x
 * towards y. Default: level ground, friction 0.6.
 */
export interface GaitSpecification extends Given<typeof SPECIFICATION> {}

/**
 * A gait of four (or more) legs along its stride: which feet stand where, how the weight passes from foot to foot, and how far it is from tipping.
 *
 * Loads are those of standing still at each moment (`footForces`), which is what a slow walk has; with two feet the weight is shared by the lever rule
 * along the line between them. Accelerations of the body are neglected. A foot in stance moves under the body on the arc that the body's speed and turn
 * give it.
 */
export function gait(given: GaitSpecification): Gait {
  const where = 'kinematics.gait'
  const spec = readInputs(where, SPECIFICATION, given)
  const { feet, dutyFactor, stridePeriod, samples: count } = spec
  const phases = phasesOf(where, spec.gait, spec.phases, feet.length)
  const n = feet.length
  const moments = count
  const columns = {
    count: moments,
    legs: n,
    time: new Float64Array(moments),
    stands: new Uint8Array(moments * n),
    footX: new Float64Array(moments * n).fill(Number.NaN),
    footY: new Float64Array(moments * n).fill(Number.NaN),
    margin: new Float64Array(moments),
    longitudinalMargin: new Float64Array(moments),
    share: new Float64Array(moments * n),
    frictionUse: new Float64Array(moments),
  }
  const { centreOfMass: c, slope, uphill } = spec
  // Where the weight passes through the ground.
  const weightAt = { x: c.x - c.z * Math.tan(slope) * Math.cos(uphill), y: c.y - c.z * Math.tan(slope) * Math.sin(uphill) }
  const travel = Math.atan2(spec.sideways, spec.forward)
  for (let i = 0; i < moments; i++) {
    const time = ((i + 0.5) / moments) * stridePeriod
    columns.time[i] = time
    const standing: { leg: number; x: number; y: number }[] = []
    for (let leg = 0; leg < n; leg++) {
      const since = (time / stridePeriod - phases[leg]! + 1) % 1
      if (since >= dutyFactor) continue
      const at = underBody(feet[leg]!, (since - 0.5 * dutyFactor) * stridePeriod, spec)
      columns.stands[n * i + leg] = 1
      columns.footX[n * i + leg] = at.x
      columns.footY[n * i + leg] = at.y
      standing.push({ leg, ...at })
    }
    columns.margin[i] = supportMargin(standing, weightAt)
    columns.longitudinalMargin[i] = longitudinalMargin(standing, weightAt, travel)
    columns.frictionUse[i] = shareWeight(columns.share.subarray(n * i, n * i + n), standing, weightAt, spec)
  }
  return summary(columns, phases, spec)
}

/** Where a foot fixed to the ground is seen from the body, a time after mid stance, for a body that moves and turns at constant rates. */
function underBody(
  foot: { readonly x: number; readonly y: number },
  time: number,
  { forward, sideways, turnRate }: { readonly forward: number; readonly sideways: number; readonly turnRate: number },
): { x: number; y: number } {
  const turn = turnRate * time
  // Displacement of the body: the speed's own direction turns with it; the series keep their digits for small turns.
  const along = Math.abs(turn) < 1e-4 ? time * (1 - (turn * turn) / 6) : Math.sin(turn) / turnRate
  const aside = Math.abs(turn) < 1e-4 ? time * (turn / 2) : (1 - Math.cos(turn)) / turnRate
  const x = foot.x - (forward * along - sideways * aside)
  const y = foot.y - (forward * aside + sideways * along)
  const [s, c] = [Math.sin(turn), Math.cos(turn)]
  return { x: c * x + s * y, y: c * y - s * x }
}

type Columns = Omit<GaitSamples, 'toJSON'>

function summary(
  columns: Columns,
  phases: readonly number[],
  spec: {
    feet: readonly { x: number; y: number }[]
    dutyFactor: number
    stridePeriod: number
    forward: number
    sideways: number
    turnRate: number
  },
): Gait {
  const { count, legs: n, margin, longitudinalMargin: along, stands, share, time, frictionUse } = columns
  const worst = margin.indexOf(Math.min(...margin))
  const perSample = Array.from({ length: count }, (_, i) => stands.subarray(n * i, n * i + n).reduce((sum, x) => sum + x, 0))
  const legs = spec.feet.map((foot, leg): GaitLeg => {
    const half = 0.5 * spec.dutyFactor * spec.stridePeriod
    const [start, end] = [underBody(foot, -half, spec), underBody(foot, half, spec)]
    const shares = Array.from({ length: count }, (_, i) => share[n * i + leg]!).filter((x) => !Number.isNaN(x))
    return {
      phase: phases[leg]!,
      stanceSweep: new Quantity(Math.hypot(start.x - end.x, start.y - end.y), 'length'),
      heading: new Quantity(Math.atan2(start.y - end.y + 0, start.x - end.x + 0), 'angle'),
      largestShare: new Quantity(Math.max(0, ...shares), 'ratio'),
      meanShare: new Quantity(shares.reduce((sum, x) => sum + x, 0) / Math.max(1, shares.length), 'ratio'),
    }
  })
  return {
    legs,
    leastMargin: new Quantity(margin[worst]!, 'length'),
    leastLongitudinalMargin: new Quantity(Math.min(...along), 'length'),
    atTime: new Quantity(time[worst]!, 'time'),
    standing: { fewest: Math.min(...perSample), most: Math.max(...perSample) },
    staticallyStable: margin[worst]! >= 0,
    worstFrictionUse: new Quantity(Math.max(0, ...frictionUse.filter((x) => !Number.isNaN(x))), 'ratio'),
    samples: withLists(columns),
  }
}
