import { type Given, type Inputs, readInputs } from '../formula/index.js'
import { Quantity } from '../units/index.js'
import type { DriveCoupling } from './coupling.js'
import type { GivenAngles, ThreeJointLeg } from './leg.js'
import { invert3, multiply3 } from './matrix3.js'
import { perJoint, type Vector3, vectorOf } from './vectors.js'

const HALF_RANGE = { kind: 'angle', min: 0 } as const
const SOURCES = {
  angles: { fields: /* @__PURE__ */ perJoint('angle') },
  sources: {
    list: {
      fields: {
        at: { oneOf: ['joint', 'actuator'] },
        abduction: HALF_RANGE,
        hip: HALF_RANGE,
        knee: HALF_RANGE,
      },
    },
  },
} as const satisfies Inputs

/** One cause of angle error: half its range, ±, of each joint or drum, and a name for the table. */
export interface AngleErrorSource {
  readonly name: string
  /** Whether the angles are of the joints or of the drums before the coupling. */
  readonly at: 'joint' | 'actuator'
  readonly abduction: Given<{ x: 'angle' }>['x']
  readonly hip: Given<{ x: 'angle' }>['x']
  readonly knee: Given<{ x: 'angle' }>['x']
}

/** Error of the foot from one cause, or from all. */
export interface FootErrorLine {
  readonly name: string
  /** Worst along each axis by itself (Σ|Jij| δj): not all axes reach it at once. */
  readonly worstPerAxis: Vector3<'length'>
  /** Worst distance: the worst corner of the box of joint errors. Exact for the linear error. */
  readonly worstCorner: Quantity<'length'>
  /** Root sum of squares along each axis, the errors of the joints taken as independent. */
  readonly rssPerAxis: Vector3<'length'>
  /** Root sum of squares as a distance. */
  readonly rss: Quantity<'length'>
}

/** Error of the foot, cause by cause and together. */
export interface FootError {
  readonly lines: readonly FootErrorLine[]
  /**
   * All causes at once. `worstCorner` takes every cause at its worst in the same sense (it rarely happens); `rss` combines the causes as independent.
   */
  readonly together: FootErrorLine
  /** Covariance of the foot's place if each half range is one standard deviation, m², row-major: its root axes are the error ellipsoid. */
  readonly covarianceSi: Float64Array
}

/**
 * What angle errors of joints and drums (encoder rounding, eccentricity, lost motion, calibration) do at the foot.
 *
 * Linear in the errors: for a degree at a leg of 300 mm the neglected second order is below 0.05 mm.
 */
export function footError(
  leg: ThreeJointLeg,
  given: { readonly angles: GivenAngles; readonly sources: readonly AngleErrorSource[]; readonly coupling?: DriveCoupling },
): FootError {
  const names = given.sources.map(({ name }) => name)
  const { angles, sources } = readInputs('kinematics.footError', SOURCES, {
    angles: given.angles,
    sources: given.sources.map(({ at, abduction, hip, knee }) => ({ at, abduction, hip, knee })),
  })
  const q = [angles.abduction, angles.hip, angles.knee] as const
  const J = new Float64Array(9)
  leg.si.jacobianInto(J, 0, ...q)
  const throughDrives = new Float64Array(J)
  if (given.coupling !== undefined) {
    const A = new Float64Array(9)
    const inverse = new Float64Array(9)
    given.coupling.matrixInto(A, 0, q)
    invert3(inverse, A)
    multiply3(throughDrives, J, inverse)
  }
  const sum = { axis: [0, 0, 0], square: [0, 0, 0] }
  const covarianceSi = new Float64Array(9)
  const lines = sources.map((source, k): FootErrorLine => {
    const map = source.at === 'joint' ? J : throughDrives
    const delta = [source.abduction, source.hip, source.knee]
    const axis = [0, 0, 0]
    const square = [0, 0, 0]
    for (let i = 0; i < 3; i++) {
      for (let j = 0; j < 3; j++) {
        const part = map[3 * i + j]! * delta[j]!
        axis[i]! += Math.abs(part)
        square[i]! += part * part
        for (let l = 0; l < 3; l++) covarianceSi[3 * i + l]! += part * map[3 * l + j]! * delta[j]!
      }
      sum.axis[i]! += axis[i]!
      sum.square[i]! += square[i]!
    }
    return line(names[k]!, axis, square, worstCorner(map, delta))
  })
  // All causes together: each joint-space and drum-space box adds, and the worst corner of a sum of boxes is found over all their signs.
  const columns = sources.flatMap((source) => {
    const map = source.at === 'joint' ? J : throughDrives
    return [source.abduction, source.hip, source.knee].map((d, j) => [map[j]! * d, map[3 + j]! * d, map[6 + j]! * d])
  })
  return { lines, together: line('all causes', sum.axis, sum.square, longestSum(columns)), covarianceSi }
}

const line = (name: string, axis: readonly number[], square: readonly number[], corner: number): FootErrorLine => ({
  name,
  worstPerAxis: vectorOf('length', axis),
  worstCorner: new Quantity(corner, 'length'),
  rssPerAxis: vectorOf('length', square.map(Math.sqrt)),
  rss: new Quantity(Math.sqrt(square[0]! + square[1]! + square[2]!), 'length'),
})

const worstCorner = (map: ArrayLike<number>, delta: readonly number[]) =>
  longestSum([0, 1, 2].map((j) => [map[j]! * delta[j]!, map[3 + j]! * delta[j]!, map[6 + j]! * delta[j]!]))

/**
 * The longest vector Σ ± columns. Its signs are those of the projections on its own direction, so the corners of the sum of segments (a zonotope) are
 * all met by directions square to two of the columns; sorting out parallel ones leaves a few hundred trials for tens of columns.
 */
function longestSum(columns: readonly (readonly number[])[]): number {
  const used = columns.filter((c) => c.some((x) => x !== 0))
  let best = 0
  const lengthAlong = (u: readonly number[], tie: readonly number[]) => {
    const total = [0, 0, 0]
    for (const [k, c] of used.entries()) {
      const projection = c[0]! * u[0]! + c[1]! * u[1]! + c[2]! * u[2]!
      const scale = Math.hypot(...(c as [number, number, number])) * Math.hypot(...(u as [number, number, number]))
      const sign = Math.abs(projection) > 1e-12 * scale ? Math.sign(projection) : tie[k]!
      for (let i = 0; i < 3; i++) total[i]! += sign * c[i]!
    }
    best = Math.max(best, Math.hypot(total[0]!, total[1]!, total[2]!))
  }
  if (used.length <= 12) {
    for (let bits = 0; bits < 1 << Math.max(0, used.length - 1); bits++) {
      const total = [0, 0, 0]
      used.forEach((c, k) => {
        for (let i = 0; i < 3; i++) total[i]! += (bits >> k) & 1 ? -c[i]! : c[i]!
      })
      best = Math.max(best, Math.hypot(total[0]!, total[1]!, total[2]!))
    }
    return best
  }
  for (let a = 0; a < used.length; a++) {
    for (let b = a + 1; b < used.length; b++) {
      const [p, q] = [used[a]!, used[b]!]
      const u = [p[1]! * q[2]! - p[2]! * q[1]!, p[2]! * q[0]! - p[0]! * q[2]!, p[0]! * q[1]! - p[1]! * q[0]!]
      // Columns square to the direction (the two, and any in their plane) are given signs by directions just beside it.
      for (const [sa, sb] of [
        [1, 1],
        [1, -1],
        [-1, 1],
        [-1, -1],
      ] as const) {
        const beside = [0, 1, 2].map((i) => sa * p[i]! + sb * q[i]!)
        lengthAlong(
          u,
          used.map((c) => Math.sign(c[0]! * beside[0]! + c[1]! * beside[1]! + c[2]! * beside[2]!) || 1),
        )
      }
    }
  }
  return best
}
