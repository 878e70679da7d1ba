import { type Given, type Inputs, readInputs } from '../formula/index.js'
import { Quantity, refuse } from '../units/index.js'
import { dual, newtonStep } from './friction-cone.js'
import { cross3, unit3 } from './matrix3.js'
import { noDirection, type Vector3, vectorOf, xyz } from './vectors.js'

const SPECIFICATION = {
  /** Standing feet. */
  feet: {
    list: {
      fields: {
        /** Place of the foot. */
        at: { fields: /* @__PURE__ */ xyz('length') },
        /** Direction square to the ground there, of any length. Default: straight up. */
        normal: { fields: /* @__PURE__ */ xyz('ratio'), optional: true },
      },
    },
  },
  /** Coefficient of friction between every foot and the ground. */
  friction: { kind: 'ratio', above: 0 },
  /** Mass of the robot. */
  mass: { kind: 'mass', above: 0 },
  /** Place of the robot's centre of mass, in the frame of the feet. */
  centreOfMass: { fields: /* @__PURE__ */ xyz('length') },
  /** Acceleration of the centre of mass. Default: none. */
  acceleration: { fields: /* @__PURE__ */ xyz('acceleration'), optional: true },
  /** Rate of change of the angular momentum about the centre of mass. Default: none. */
  moment: { fields: /* @__PURE__ */ xyz('torque'), optional: true },
  /** Acceleration of free fall as a vector. Default 9.80665 m/s² downward. */
  gravity: { fields: /* @__PURE__ */ xyz('acceleration'), optional: true },
} as const satisfies Inputs

/**
 * Standing feet and what they carry, in one frame: places of the feet with the ground's normal there (default: straight up), coefficient of friction,
 * mass and centre of mass, acceleration of the centre of mass and rate of change of the angular momentum about it (`moment`). Default: at rest;
 * gravity 9.80665 m/s² downward.
 */
export interface FootForceSpecification extends Given<typeof SPECIFICATION> {}

/** Forces of the ground on each foot that carry the robot. */
export interface FootForces {
  readonly feasible: true
  /** Force of the **ground on the foot**, in the order of the feet. */
  readonly forces: readonly Vector3<'force'>[]
  /** Force square to the ground. */
  readonly normals: readonly Quantity<'force'>[]
  /** Part of each foot's friction that is used: 1 is on the verge of slipping. */
  readonly frictionUse: readonly Quantity<'ratio'>[]
  /** The largest of them. */
  readonly worstUse: Quantity<'ratio'>
}

/** No forces inside the friction cones carry the robot: it slips or tips. */
export interface NoFootForces {
  readonly feasible: false
}

/** Steps of Newton's method; some ten are enough, and a problem without a solution runs away. */
const MAX_STEPS = 100
/** Part of the wrench that may be left over. */
const WRENCH_TOLERANCE = 1e-10

/**
 * Shares the load of a robot among its standing feet: of all forces that push only, stay inside their friction cones and balance weight, acceleration and
 * moment, those with the least sum of squares. Which forces the drives make is free as long as there are more of them than conditions; the least squares
 * keep joint torques small. Two point feet balance no moment about the line through them, and one foot none at all.
 *
 * The optimum is f = P(Gᵀ y), with G the matrix from foot forces to force and moment, P the projection on the friction cones, and y from the six equations
 * G f = w by Newton's method; the cones are round, not pyramids.
 *
 * Source: any text on convex optimisation, "projection on a second-order cone"; force distribution of multi-legged robots.
 */
export function footForces(given: FootForceSpecification): FootForces | NoFootForces {
  const where = 'kinematics.footForces'
  const { feet, friction, mass, centreOfMass: c, acceleration: a, moment, gravity: g } = readInputs(where, SPECIFICATION, given)
  if (feet.length > 64) refuse(where, 'feet', `${feet.length} feet`, 'at most 64')
  const force = [
    mass * ((a?.x ?? 0) - (g?.x ?? 0)),
    mass * ((a?.y ?? 0) - (g?.y ?? 0)),
    mass * ((a?.z ?? 0) - (g === undefined ? -9.80665 : g.z)),
  ]
  // Moments about the centre of mass, as forces at a typical arm, so that all six equations are of one size.
  const arms = feet.map(({ at }) => [at.x - c.x, at.y - c.y, at.z - c.z] as const)
  const size = Math.max(...arms.map((arm) => Math.hypot(...arm)), 1e-9)
  const axes = feet.map(({ normal }, i) => axesOf(where, normal === undefined ? [0, 0, 1] : [normal.x, normal.y, normal.z], i))
  const wrench = Float64Array.from([...force, ...[moment?.x ?? 0, moment?.y ?? 0, moment?.z ?? 0].map((m) => m / size)])
  // Columns of G: two along the ground and one square to it, a foot.
  const columns = axes.flatMap((three, i) => three.map((u) => [...u, ...cross3(arms[i]!, u).map((m) => m / size)]))
  const found = balance(columns, wrench, friction)
  if (found === undefined) return { feasible: false }
  const forces = axes.map((three, i) =>
    vectorOf(
      'force',
      [0, 1, 2].map((k) => three[0]![k]! * found[3 * i]! + three[1]![k]! * found[3 * i + 1]! + three[2]![k]! * found[3 * i + 2]!),
    ),
  )
  const normals = axes.map((_, i) => found[3 * i + 2]!)
  const uses = normals.map((n, i) => (n > 0 ? Math.hypot(found[3 * i]!, found[3 * i + 1]!) / (friction * n) : 0))
  return {
    feasible: true,
    forces,
    normals: normals.map((n) => new Quantity(n, 'force')),
    frictionUse: uses.map((use) => new Quantity(use, 'ratio')),
    worstUse: new Quantity(Math.max(...uses), 'ratio'),
  }
}

/** Two directions along the ground and its normal, unit vectors. */
function axesOf(where: string, normal: readonly number[], i: number): [number, number, number][] {
  const n = unit3(normal)
  if (n === undefined) throw noDirection(where, `feet[${i}].normal`)
  const first = unit3(cross3(Math.abs(n[0]) < 0.8 ? [1, 0, 0] : [0, 1, 0], n))!
  return [first, cross3(n, first), n]
}

/** Forces f = P(Gᵀ y) with G f = w; `undefined` where there are none. */
function balance(columns: readonly (readonly number[])[], w: Float64Array, friction: number): Float64Array | undefined {
  const scale = Math.hypot(...w)
  const y = new Float64Array(6)
  const f = new Float64Array(columns.length)
  const slope = new Float64Array(3 * columns.length)
  let value = dual(columns, w, y, friction, f, slope)
  for (let step = 0; step < MAX_STEPS; step++) {
    const rest = w.map((x, k) => x - columns.reduce((sum, column, j) => sum + column[k]! * f[j]!, 0))
    if (Math.hypot(...rest) <= WRENCH_TOLERANCE * scale) return f
    const move = newtonStep(columns, slope, rest)
    if (move === undefined) return undefined
    let share = 1
    for (; share > 1e-12; share /= 2) {
      const trial = y.map((x, k) => x + share * move[k]!)
      const next = dual(columns, w, trial, friction, f, slope)
      const gain = rest.reduce((sum, x, k) => sum + x * move[k]!, 0)
      if (next >= value + 1e-4 * share * gain || share * gain <= 1e-14 * Math.abs(next)) {
        y.set(trial)
        value = next
        break
      }
    }
    if (!(share > 1e-12 && Number.isFinite(value))) return undefined
  }
  return undefined
}
