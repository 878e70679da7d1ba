import { type Given, type Inputs, readInputs } from '../formula/index.js'
import { InputError, Quantity } from '../units/index.js'
import { ThreeJointLeg } from './leg.js'
import { REACHED } from './leg-geometry-kernel.js'
import { withinTurns } from './leg-limits.js'
import { requireInstance } from './vectors.js'

const SECTION = {
  /** Distance of the section from the sideways hip's axis, to the left. */
  y: 'length',
  /** Range of the grid along x. */
  x: {
    fields: {
      /** Lower end of the range. */
      lowest: 'length',
      /** Upper end of the range. */
      highest: 'length',
    },
  },
  /** Range of the grid along z. */
  z: {
    fields: {
      /** Lower end of the range. */
      lowest: 'length',
      /** Upper end of the range. */
      highest: 'length',
    },
  },
  /** Distance between points of the grid. */
  step: { kind: 'length', above: 0 },
} as const satisfies Inputs

/** Flag of a grid point: out of reach of the links. */
export const OUT_OF_REACH = 0
/** Flag of a grid point: the links reach it, the joint limits do not allow it. */
export const BEYOND_LIMITS = 1
/** Flag of a grid point: reachable; the higher flags count how many of the four branches do it (2: one, 3: two, …). */
export const REACHABLE = 2

/** An upright section through the workspace, at one y, on a grid. */
export interface WorkspaceSection {
  /** Forward places of the columns, m. */
  readonly x: Float64Array
  /** Heights of the rows, m. */
  readonly z: Float64Array
  /** Flags, row by row: `flags[iz * x.length + ix]`. */
  readonly flags: Uint8Array
  /** Which of the four branches reach it within limits, one bit each (1 << branch). */
  readonly branches: Uint8Array
  /** Points that more than one branch reaches: a foot there may stand with another knee, and joint-space integrals count it more than once. */
  readonly overlapping: number
  /** Area of the reachable points. */
  readonly area: Quantity<'area'>
}

const MAX_POINTS = 4_000_000

/** Flags an upright section of the workspace on a grid, for plots and for `largestStepBox`. Throws an `InputError` for ranges upside down or a grid too fine. */
export function workspaceSection(leg: ThreeJointLeg, given: Given<typeof SECTION>): WorkspaceSection {
  const where = 'kinematics.workspaceSection'
  requireInstance(where, 'leg', leg, ThreeJointLeg, 'threeJointLeg')
  const { y, x: xRange, z: zRange, step } = readInputs(where, SECTION, given)
  for (const [path, range] of [
    ['x', xRange],
    ['z', zRange],
  ] as const) {
    if (!(range.lowest < range.highest))
      throw new InputError(where, [
        { path: `${path}.lowest`, given: String(new Quantity(range.lowest, 'length')), accepts: 'must be below the highest' },
      ])
  }
  const places = ({ lowest, highest }: { lowest: number; highest: number }) => Math.floor((highest - lowest) / step + 1e-9) + 1
  const [nx, nz] = [places(xRange), places(zRange)]
  if (nx * nz > MAX_POINTS)
    throw new InputError(where, [
      { path: 'step', given: String(new Quantity(step, 'length')), accepts: `must give at most ${MAX_POINTS} points` },
    ])
  const x = Float64Array.from({ length: nx }, (_, i) => xRange.lowest + i * step)
  const z = Float64Array.from({ length: nz }, (_, i) => zRange.lowest + i * step)
  const flags = new Uint8Array(nx * nz)
  const branches = new Uint8Array(nx * nz)
  const q = new Float64Array(3)
  let reachable = 0
  let overlapping = 0
  for (let iz = 0; iz < nz; iz++) {
    for (let ix = 0; ix < nx; ix++) {
      let reached = false
      let bits = 0
      let count = 0
      for (let branch = 0; branch < 4; branch++) {
        if (leg.si.jointAnglesInto(q, 0, x[ix]!, y, z[iz]!, branch) !== REACHED) break
        reached = true
        if (inLimits(leg, q)) {
          bits |= 1 << branch
          count++
        }
      }
      const at = iz * nx + ix
      branches[at] = bits
      flags[at] = !reached ? OUT_OF_REACH : count === 0 ? BEYOND_LIMITS : REACHABLE + count - 1
      if (count > 0) reachable++
      if (count > 1) overlapping++
    }
  }
  return { x, z, flags, branches, overlapping, area: new Quantity(reachable * step * step, 'area') }
}

const inLimits = ({ limitsSi }: ThreeJointLeg, q: Float64Array) =>
  [0, 1, 2].every((i) => !Number.isNaN(withinTurns(q[i]!, limitsSi[2 * i]!, limitsSi[2 * i + 1]!)))

/** The largest box a step can use: every grid point in it is reachable on one branch, without changing knee or side. */
export interface StepBox {
  readonly sweep: Quantity<'length'>
  readonly lift: Quantity<'length'>
  /** Forward ends. */
  readonly x: { readonly lowest: Quantity<'length'>; readonly highest: Quantity<'length'> }
  /** Lower and upper ends. */
  readonly z: { readonly lowest: Quantity<'length'>; readonly highest: Quantity<'length'> }
  /** The branch, as the kernel counts them. */
  readonly branch: number
}

/**
 * The largest upright box of grid points that one branch reaches: the widest sweep that has at least a given lift, or by area when no lift is given.
 * Exact on the grid; between grid points it holds to a step. `undefined` when no box is tall enough.
 */
export function largestStepBox(
  section: WorkspaceSection,
  given: {
    /** Height that the box must have at least. Default: the box of the largest area. */
    readonly leastLift?: Given<{ l: 'length' }>['l']
  } = {},
): StepBox | undefined {
  const { leastLift } = readInputs('kinematics.largestStepBox', { leastLift: { kind: 'length', min: 0, optional: true } }, given)
  const { x, z, branches } = section
  const nx = x.length
  const step = x.length > 1 ? x[1]! - x[0]! : 0
  const leastRows = leastLift === undefined ? 1 : Math.ceil(leastLift / step - 1e-9) + 1
  let best = { score: -1, left: 0, right: 0, bottom: 0, top: 0, branch: 0 }
  const heights = new Int32Array(nx + 1)
  const stack: { start: number; height: number }[] = []
  for (let branch = 0; branch < 4; branch++) {
    heights.fill(0)
    for (let iz = 0; iz < z.length; iz++) {
      for (let ix = 0; ix < nx; ix++) heights[ix] = (branches[iz * nx + ix]! >> branch) & 1 ? heights[ix]! + 1 : 0
      // The largest rectangle under a row of heights, by a stack of rising heights.
      stack.length = 0
      for (let ix = 0; ix <= nx; ix++) {
        let start = ix
        while (stack.length > 0 && stack.at(-1)!.height >= heights[ix]!) {
          const popped = stack.pop()!
          start = popped.start
          const sweep = ix - 1 - popped.start
          const lift = popped.height - 1
          if (popped.height < leastRows || popped.height === 0) continue
          const score = leastLift === undefined ? sweep * lift : sweep + 1e-6 * lift
          if (score > best.score) best = { score, left: popped.start, right: ix - 1, bottom: iz - lift, top: iz, branch }
        }
        stack.push({ start, height: heights[ix]! })
      }
    }
  }
  if (best.score < 0) return undefined
  const length = (value: number) => new Quantity(value, 'length')
  return {
    sweep: length(x[best.right]! - x[best.left]!),
    lift: length(z[best.top]! - z[best.bottom]!),
    x: { lowest: length(x[best.left]!), highest: length(x[best.right]!) },
    z: { lowest: length(z[best.bottom]!), highest: length(z[best.top]!) },
    branch: best.branch,
  }
}

/**
 * Edge of the leg plane's reachable area between the limits of hip and knee: X forward and Z up from the hip point, m, along the four edges of the
 * joint box in turn (a closed line). Where it crosses itself the area overlaps. Joints without limits count as going once around.
 */
export function legPlaneOutlineSi(leg: ThreeJointLeg, pointsPerEdge = 48): (readonly [number, number])[] {
  const { upperLink: l1, lowerLink: l2 } = leg.si
  const limit = (i: number, none: number) => (Number.isFinite(leg.limitsSi[i]!) ? leg.limitsSi[i]! : none)
  const [low2, high2, low3, high3] = [limit(2, -Math.PI), limit(3, Math.PI), limit(4, 0), limit(5, Math.PI)]
  const corners = [
    [low2, low3],
    [high2, low3],
    [high2, high3],
    [low2, high3],
    [low2, low3],
  ] as const
  const outline: (readonly [number, number])[] = []
  for (let edge = 0; edge < 4; edge++) {
    const [a, b] = [corners[edge]!, corners[edge + 1]!]
    for (let i = 0; i < pointsPerEdge; i++) {
      const t = i / pointsPerEdge
      const q2 = a[0] + t * (b[0] - a[0])
      const q23 = q2 + a[1] + t * (b[1] - a[1])
      outline.push([-l1 * Math.sin(q2) - l2 * Math.sin(q23), -l1 * Math.cos(q2) - l2 * Math.cos(q23)])
    }
  }
  return [...outline, outline[0]!]
}
