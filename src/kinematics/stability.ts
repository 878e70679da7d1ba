import { formula, type Given, type Inputs, readInputs } from '../formula/index.js'
import { InputError, Quantity } from '../units/index.js'
import { GRAVITY, HEIGHT, ROBOT_MASS } from './robot-inputs.js'
import { convexHull, insideEdge } from './support-margin.js'

/** Slope at which a robot that stands still starts to tip over an edge of its support polygon. */
export const tipOverSlope = /* @__PURE__ */ formula('kinematics.tipOverSlope', {
  title: 'slope at which a standing robot tips over',
  inputs: {
    /** Distance from the edge to the point of the support plane below the centre of mass, on level ground. */
    marginToEdge: { kind: 'length', min: 0 },
    ...HEIGHT,
  },
  /** Slope towards the edge at which the weight passes through it. */
  output: 'angle',
  equation: ['result = atan(marginToEdge / height)'],
  assumes: ['rigid stance, no motion', 'feet do not slip'],
  source: [{ level: 'commonPractice', where: 'moments about the tipping edge; any statics text, "tipping of a block"' }],
  si: ({ marginToEdge, height }) => Math.atan2(marginToEdge, height),
})

/** Horizontal push that tips a standing robot over an edge of its support polygon. */
export const tipOverPush = /* @__PURE__ */ formula('kinematics.tipOverPush', {
  title: 'push that tips a standing robot over',
  inputs: {
    ...ROBOT_MASS,
    /** Distance from the edge to the point of the ground below the centre of mass. */
    marginToEdge: { kind: 'length', min: 0 },
    /** Height of the push over the ground. */
    pushHeight: { kind: 'length', above: 0 },
    ...GRAVITY,
  },
  /** Push towards and square to the edge. */
  output: 'force',
  equation: ['result = mass * gravity * marginToEdge / pushHeight'],
  assumes: ['level ground, steady push', 'feet do not slip before'],
  source: [{ level: 'commonPractice', where: 'moments about the tipping edge; any statics text, "tipping of a block"' }],
  si: ({ mass, marginToEdge, pushHeight, gravity }) => (mass * gravity * marginToEdge) / pushHeight,
})

/** Whether a foot holds by friction, and how much of the friction it uses. */
export const frictionConeUse = /* @__PURE__ */ formula('kinematics.frictionConeUse', {
  inputs: {
    /** Force of the ground square to its surface, pushing. */
    normal: { kind: 'force', above: 0 },
    /** Force of the ground along its surface, in size. */
    tangential: { kind: 'force', min: 0 },
    /** Coefficient of friction, foot on ground. */
    friction: { kind: 'ratio', above: 0 },
  },
  output: {
    /** Tangential force over what friction can give; slips above 1. */
    use: 'ratio',
    /** Angle of the force from the surface’s normal. */
    forceAngle: 'angle',
    /** Half angle of the friction cone: also the steepest slope a foot stands on. */
    coneAngle: 'angle',
    /** Whether the foot holds. */
    state: { oneOf: ['holds', 'slips'] },
  },
  equation: ['use = tangential / (friction * normal)', 'forceAngle = atan(tangential / normal)', 'coneAngle = atan(friction)'],
  assumes: ['Coulomb friction; mud, sand and film of water do not obey it'],
  source: [{ level: 'commonPractice', where: 'Coulomb friction, angle of friction; any statics text' }],
  si: ({ normal, tangential, friction }) => ({
    use: tangential / (friction * normal),
    forceAngle: Math.atan2(tangential, normal),
    coneAngle: Math.atan(friction),
    state: tangential <= friction * normal ? ('holds' as const) : ('slips' as const),
  }),
})

/** A margin that is not a number counts as the worst. */
const orLowest = (edge: SupportEdge) => (Number.isNaN(edge.margin.si) ? -Infinity : edge.margin.si)

const POINT = {
  /** First coordinate in the horizontal frame. */
  x: 'length',
  /** Second coordinate in the horizontal frame. */
  y: 'length',
} as const
const STANCE = {
  /** Places of the standing feet. */
  feet: { list: { fields: POINT }, least: 1 },
  /** Centre of mass in the frame of the feet. */
  centreOfMass: {
    fields: {
      ...POINT,
      /** Height over the feet. */
      z: { kind: 'length', above: 0 },
    },
  },
  /** Mass of the robot, for the pushes that tip it. Default: no pushes are calculated. */
  mass: { kind: 'mass', above: 0, optional: true },
  /** Height at which the robot is pushed. Default: that of the centre of mass. */
  pushHeight: { kind: 'length', above: 0, optional: true },
  /** Acceleration of free fall. Default 9.80665 m/s². */
  gravity: { kind: 'acceleration', above: 0, default: '9.80665 m/s^2' },
} as const satisfies Inputs

/** One edge of the support polygon. */
export interface SupportEdge {
  /** Its two feet, by index in the list given; the interior is to the left going from one to the other. */
  readonly feet: readonly [number, number]
  /** Distance of the centre of mass' foot point inside the edge; negative outside. */
  readonly margin: Quantity<'length'>
  /** Slope towards the edge at which the robot tips; zero if it tips already. */
  readonly tipSlope: Quantity<'angle'>
  /** Horizontal push that tips it over this edge; `undefined` without a mass. */
  readonly tipPush: Quantity<'force'> | undefined
}

/** How a standing robot is supported. */
export interface SupportPolygon {
  /** Whether the centre of mass is over the polygon. Fewer than three feet off a line never support a robot on point feet. */
  readonly state: 'stable' | 'tips' | 'noPolygon'
  /** Feet at the polygon's corners, counter-clockwise seen from above, by index in the list given. */
  readonly corners: readonly number[]
  readonly area: Quantity<'area'>
  readonly edges: readonly SupportEdge[]
  /** The smallest margin over the edges: the static stability margin; `undefined` without a polygon. */
  readonly margin: Quantity<'length'> | undefined
  /** The edge it tips over first. */
  readonly weakest: SupportEdge | undefined
}

/**
 * Support polygon of point feet on a level plane, the static stability margin, and slope and push to tip over each edge.
 * The x and y of feet and centre of mass are in one horizontal frame, z is the height of the centre of mass over the feet. `pushHeight` is by default that height.
 *
 * Source of the margin: R. B. McGhee, A. A. Frank, "On the stability properties of quadruped creeping gaits", *Math. Biosciences* 3, 1968.
 */
export function supportPolygon(given: Given<typeof STANCE>): SupportPolygon {
  const where = 'kinematics.supportPolygon'
  const { feet, centreOfMass: c, mass, pushHeight, gravity } = readInputs(where, STANCE, given)
  if (feet.length > 10_000) throw new InputError(where, [{ path: 'feet', given: `${feet.length} feet`, accepts: 'at most 10000' }])
  const corners = convexHull(feet)
  const none = corners.length < 3
  let twiceArea = 0
  const edges = none
    ? []
    : corners.map((from, i): SupportEdge => {
        const to = corners[(i + 1) % corners.length]!
        const [a, b] = [feet[from]!, feet[to]!]
        twiceArea += a.x * b.y - b.x * a.y
        const margin = insideEdge(a, b, c)
        const marginToEdge = Math.max(0, margin)
        return {
          feet: [from, to],
          margin: new Quantity(margin, 'length'),
          tipSlope: new Quantity(tipOverSlope.si({ marginToEdge, height: c.z }), 'angle'),
          tipPush:
            mass === undefined
              ? undefined
              : new Quantity(tipOverPush.si({ mass, marginToEdge, pushHeight: pushHeight ?? c.z, gravity }), 'force'),
        }
      })
  const weakest = edges.reduce<SupportEdge | undefined>(
    (nearest, edge) => (nearest === undefined || orLowest(edge) < orLowest(nearest) ? edge : nearest),
    undefined,
  )
  return {
    state: weakest === undefined ? 'noPolygon' : weakest.margin.si >= 0 ? 'stable' : 'tips',
    corners,
    area: new Quantity(twiceArea / 2, 'area'),
    edges,
    margin: weakest?.margin,
    weakest,
  }
}
