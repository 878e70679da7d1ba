import { type Given, type Inputs, readInputs, requireKeys, type Si } from '../formula/index.js'
import { InputError, type Issue, issue, Quantity } from '../units/index.js'
import { DriveCoupling } from './coupling.js'
import { ThreeJointLeg } from './leg.js'
import type { GivenAngles } from './leg-inputs.js'
import { LEG_JOINTS } from './leg-specification.js'
import { longestSum, MAX_DIRECTIONS, merged } from './longest-sum.js'
import { invert3, multiply3 } from './matrix3.js'
import { perJoint, requireInstance, requireRecord, type Vector3, vectorOf, type xyz } from './vectors.js'

const HALF_RANGE = { kind: 'angle', min: 0, optional: true } as const
const MOVEMENT = { kind: 'length', optional: true } as const
const SOURCES = {
  angles: { fields: /* @__PURE__ */ perJoint('angle') },
  sources: {
    list: {
      fields: {
        at: { oneOf: ['joint', 'actuator', 'foot'] },
        sidewaysHip: HALF_RANGE,
        hip: HALF_RANGE,
        knee: HALF_RANGE,
        x: MOVEMENT,
        y: MOVEMENT,
        z: MOVEMENT,
      },
    },
  },
} as const satisfies Inputs
type Source = Si<typeof SOURCES>['sources'][number]

/** One cause of angle error: half its range, ±, of each joint or drum, and a name for the table. */
export interface AngleErrorSource extends Given<ReturnType<typeof perJoint<'angle'>>> {
  /** Name of the cause, for the table. */
  readonly name: string
  /** Whether the angles are of the joints or of the drums before the coupling. */
  readonly at: 'joint' | 'actuator'
}

/** One cause that moves the foot itself along one vector, either way: what drives, links or pad give under a load (`footStiffness`), a worn pad. */
export interface FootMovementSource extends Given<ReturnType<typeof xyz<'length'>>> {
  /** Name of the cause, for the table. */
  readonly name: string
  /** The cause moves the foot itself. */
  readonly at: 'foot'
}

/** Error of the foot from one cause, or from all. */
export interface FootErrorLine {
  /** Name of the cause. */
  readonly name: string
  /** Worst along each axis by itself (Σ|Jij| δj): not all axes reach it at once. */
  readonly worstPerAxis: Vector3<'length'>
  /** Worst distance: the worst corner of the box of joint errors. Exact for the linear error. */
  readonly worstCorner: Quantity<'length'>
  /** Root sum of squares along each axis, the errors of the joints assumed to be independent. */
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
 * What angle errors of joints and drums (encoder rounding, eccentricity, lost motion, calibration) and movements of the foot itself (what drives, links
 * and pad give under a load) do at the foot.
 *
 * Linear in the angles: for a degree at a leg of 300 mm the neglected second order is below 0.05 mm.
 */
export function footError(
  leg: ThreeJointLeg,
  given: {
    /** Angles of the joints at which the error is evaluated. */
    readonly angles: GivenAngles
    /** Causes of error, of the joints, the drums or the foot itself. */
    readonly sources: readonly (AngleErrorSource | FootMovementSource)[]
    /** How the knee is driven, for errors of the drums. Default: its motor is at the knee. */
    readonly coupling?: DriveCoupling
  },
): FootError {
  const where = 'kinematics.footError'
  requireInstance(where, 'leg', leg, ThreeJointLeg, 'threeJointLeg')
  requireRecord(where, given)
  requireKeys(where, '', given, ['angles', 'sources', 'coupling'])
  const { coupling } = given
  if (coupling !== undefined) requireInstance(where, 'coupling', coupling, DriveCoupling, 'driveCoupling')
  const { angles, sources } = readInputs(where, SOURCES, { angles: given.angles, sources: nameless(given.sources) as never })
  checkSources(where, given.sources, sources)
  const q = [angles.sidewaysHip, angles.hip, angles.knee] as const
  const J = new Float64Array(9)
  leg.si.jacobianInto(J, 0, ...q)
  const throughDrives = new Float64Array(J)
  if (coupling !== undefined) {
    const A = new Float64Array(9)
    const inverse = new Float64Array(9)
    coupling.si.matrixInto(A, 0, q)
    invert3(inverse, A)
    multiply3(throughDrives, J, inverse)
  }
  const columns = sources.map((source) => {
    if (source.at === 'foot') return [[source.x!, source.y!, source.z!]]
    const map = source.at === 'joint' ? J : throughDrives
    return LEG_JOINTS.map((joint, j) => [0, 3, 6].map((row) => map[row + j]! * source[joint]!))
  })
  const covarianceSi = new Float64Array(9)
  for (const c of columns.flat()) for (let i = 0; i < 9; i++) covarianceSi[i]! += c[Math.floor(i / 3)]! * c[i % 3]!
  const corner = (of: number[][]): number => {
    const distinct = merged(of)
    if (distinct.length > MAX_DIRECTIONS)
      throw new InputError(where, [
        { path: 'sources', given: `${sources.length} sources`, accepts: `at most ${MAX_DIRECTIONS - 4} at the foot` },
      ])
    return longestSum(distinct)
  }
  const line = (name: string, of: number[][]): FootErrorLine => {
    const perAxis = (term: (x: number) => number) => [0, 1, 2].map((i) => of.reduce((sum, c) => sum + term(c[i]!), 0))
    const squares = perAxis((x) => x * x)
    return {
      name,
      worstPerAxis: vectorOf('length', perAxis(Math.abs)),
      worstCorner: new Quantity(corner(of), 'length'),
      rssPerAxis: vectorOf('length', squares.map(Math.sqrt)),
      rss: new Quantity(Math.sqrt(squares[0]! + squares[1]! + squares[2]!), 'length'),
    }
  }
  return { lines: columns.map((of, k) => line(given.sources[k]!.name, of)), together: line('all causes', columns.flat()), covarianceSi }
}

const nameless = (sources: unknown): unknown =>
  Array.isArray(sources)
    ? sources.map((source: unknown) => {
        if (typeof source !== 'object' || source === null) return source
        const { name: _, ...rest } = source as { name?: unknown }
        return rest
      })
    : sources

/** Every source has a name, and the values of its own place only. */
function checkSources(where: string, given: readonly { readonly name: unknown }[], sources: readonly Source[]): void {
  const issues = sources.flatMap((source, k): Issue[] => {
    const { name } = given[k]!
    const found: Issue[] =
      typeof name === 'string' && name !== '' ? [] : [issue(`sources[${k}].name`, name, 'must be a name for the table')]
    const foot = source.at === 'foot'
    for (const field of [...LEG_JOINTS, 'x', 'y', 'z'] as const) {
      const own = foot === (field === 'x' || field === 'y' || field === 'z')
      if (own && source[field] === undefined)
        found.push({ path: `sources[${k}].${field}`, given: 'missing', accepts: foot ? 'must be a length' : 'must be an angle' })
      if (!own && source[field] !== undefined)
        found.push({ path: `sources[${k}].${field}`, given: 'given', accepts: `is not an input of a source at '${source.at}'` })
    }
    return found
  })
  if (issues.length > 0) throw new InputError(where, issues)
}
