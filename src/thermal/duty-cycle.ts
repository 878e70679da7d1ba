import { Matrix, solve } from 'ml-matrix'
import type { OdeSolution } from '../numeric/index.js'
import { type Extremes, extremesOf, type Probe } from './course-extremes.js'
import { courseNumbers } from './network-course.js'
import { type NetworkNumbers, slopes } from './network-numbers.js'
import { type CourseShifts, courseShifts, shiftsAt } from './network-spread.js'
import { steadyNumbers } from './network-steady.js'

/** One part of a duty: a network with the losses of that part, seconds. */
export interface PhaseNumbers {
  readonly n: NetworkNumbers
  readonly duration: number
}

/** One pass through all phases. */
export interface CycleNumbers {
  /** Of each phase; the last one may be cut short by a runaway. */
  readonly solutions: readonly OdeSolution[]
  readonly end: Float64Array
  readonly runaway: boolean
}

/** Solver tolerance of a pass, kelvin. */
const TOLERANCE = 5e-6

/** Follows the phases once from start temperatures. */
export function passOnce(phases: readonly PhaseNumbers[], start: Float64Array, tolerance = TOLERANCE): CycleNumbers {
  const solutions: OdeSolution[] = []
  let end = start
  for (const { n, duration } of phases) {
    const course = courseNumbers(n, end, duration, { tolerance })
    solutions.push(course.solution)
    end = course.end
    if (course.state === 'runaway') return { solutions, end, runaway: true }
  }
  return { solutions, end, runaway: false }
}

/** Extremes of nodes and probes over a pass, times counted from its start. */
export function extremesOfPass({ solutions }: CycleNumbers, probes: readonly Probe[] = []): Extremes {
  let clock = 0
  let all: Extremes | undefined
  for (const solution of solutions) {
    const part = extremesOf(solution, probes)
    const at = part.highestAt.map((t) => clock + t)
    const before = all
    all =
      before === undefined
        ? { ...part, highestAt: at }
        : {
            highest: before.highest.map((x, i) => Math.max(x, part.highest[i]!)),
            highestAt: before.highestAt.map((t, i) => (part.highest[i]! > before.highest[i]! ? at[i]! : t)),
            lowest: before.lowest.map((x, i) => Math.min(x, part.lowest[i]!)),
            integral: before.integral.map((x, i) => x + part.integral[i]!),
          }
    clock += solution.tEnd
  }
  return all!
}

/** Matrix exponential of a small matrix: scaled to a norm below a quarter, 12 terms, squared back. */
function exponential(a: Matrix): Matrix {
  const norm = Math.max(...a.to2DArray().map((row) => row.reduce((sum, x) => sum + Math.abs(x), 0)))
  const squarings = Math.max(0, Math.ceil(Math.log2(norm * 4 + 1e-300)))
  const scaled = Matrix.mul(a, 2 ** -squarings)
  let term = Matrix.eye(a.rows)
  let sum = Matrix.eye(a.rows)
  for (let k = 1; k <= 12; k++) {
    term = term.mmul(scaled).mul(1 / k)
    sum = Matrix.add(sum, term)
  }
  for (let k = 0; k < squarings; k++) sum = sum.mmul(sum)
  return sum
}

/** How a disturbance at the start of a cycle arrives at its end, linearised at temperatures `T`. */
function propagator(phases: readonly PhaseNumbers[], y: Float64Array): Matrix {
  const size = y.length
  const slope = new Float64Array(size * size)
  let through = Matrix.eye(size)
  for (const { n, duration } of phases) {
    slopes(n, Float64Array.from([...y, ...n.fixed]), slope)
    const rate = new Matrix(size, size)
    for (let i = 0; i < size; i++) for (let j = 0; j < size; j++) rate.set(i, j, (slope[i * size + j]! / n.capacities[i]!) * duration)
    through = exponential(rate).mmul(through)
  }
  return through
}

/** One network with the time averages of the phases' losses, links and fixed temperatures. */
function averaged(phases: readonly PhaseNumbers[]): NetworkNumbers {
  const { n: first } = phases[0]!
  const period = phases.reduce((sum, { duration }) => sum + duration, 0)
  const share = <T extends { readonly factor: number }>(items: (n: NetworkNumbers) => readonly T[]) =>
    phases.flatMap(({ n, duration }) => items(n).map((item) => ({ ...item, factor: (item.factor * duration) / period })))
  return {
    ...first,
    losses: share((n) => n.losses),
    links: share((n) => n.links),
    fixed: first.fixed.map((_, i) => phases.reduce((sum, { n, duration }) => sum + (n.fixed[i]! * duration) / period, 0)),
    spreads: [],
  }
}

/** A settled cycle, or the pass that ran away. */
export interface SettledNumbers extends CycleNumbers {
  readonly start: Float64Array
}

const CYCLES = 40
/** A cycle that would move less than this, all cycles to come included, has settled, kelvin. */
const SETTLED = 1e-3
/** Error of one pass that may add up over as many cycles as the slowest time constant is long, kelvin. */
const FINEST = 1e-10

/**
 * Finds the cycle that returns to its start. It begins at the steady state of the averages. The linearised cycle corrects each pass for all later
 * cycles, so that a period far below the slowest time constant takes no more passes than a long one.
 */
export function settle(phases: readonly PhaseNumbers[], from?: Float64Array): SettledNumbers {
  const n = phases[0]!.n
  const size = n.names.length
  const middle = steadyNumbers(averaged(phases))
  // Where even the averages find no balance, the stable cycle, if there is one, lies on the way up from cold.
  const balanced = middle.state === 'steady'
  let y: Float64Array = from ?? (balanced ? middle.T.slice(0, size) : new Float64Array(size).fill(Math.min(...n.fixed)))
  const eye = Matrix.eye(size)
  const slowness = (through: Matrix) => Math.max(1, ...solve(Matrix.sub(eye, through), eye).to1DArray().map(Math.abs))
  let through = propagator(phases, balanced ? middle.T.slice(0, size) : y)
  // What is left over from one pass counts as often as it takes to die out.
  const tolerance = Math.max(FINEST, Math.min(TOLERANCE, SETTLED / (10 * slowness(through))))
  for (let k = 0; k < CYCLES; k++) {
    const pass = passOnce(phases, y, tolerance)
    if (pass.runaway) return { ...pass, start: y }
    if (k > 0 && !balanced) through = propagator(phases, y)
    const gap = Matrix.columnVector(Array.from(pass.end, (t, i) => t - y[i]!))
    const step = solve(Matrix.sub(eye, through), gap).to1DArray()
    if (step.every((s) => Math.abs(s) < SETTLED)) return { ...pass, start: y }
    y = y.map((t, i) => t + step[i]!)
    if (y.some((t) => !(t < n.ceiling && t > 0))) return { ...pass, runaway: true, start: y }
  }
  return { ...passOnce(phases, y, tolerance), runaway: true, start: y }
}

/** How far each cause of scatter shifts a pass, kelvin, at a time from its start. `periodic`: of the settled cycle, whose start shifts with it. */
export function shiftsOfPass(
  phases: readonly PhaseNumbers[],
  { solutions }: CycleNumbers,
  periodic: boolean,
): (time: number) => Float64Array[] {
  const { n } = phases[0]!
  const size = n.names.length
  const causes = n.spreads.length
  const unit = (i: number) => Float64Array.from({ length: size }, (_, j) => (i === j ? 1 : 0))
  const zero = () => n.spreads.map(() => new Float64Array(size))
  const parts: CourseShifts[] = []
  let rows: Float64Array[] = periodic ? [...zero(), ...Array.from({ length: size }, (_, i) => unit(i))] : zero()
  solutions.forEach((solution, p) => {
    const part = courseShifts(phases[p]!.n, solution, rows)
    parts.push(part)
    rows = [...part.rows.at(-1)!]
  })
  // The start shifts by what comes back: s = c + M s, with M the rows of a disturbed start.
  const starts = Array.from({ length: causes }, (_, k) => {
    if (!periodic) return new Float64Array(size)
    const returning = new Matrix(size, size)
    for (let i = 0; i < size; i++) for (let j = 0; j < size; j++) returning.set(i, j, (i === j ? 1 : 0) - rows[causes + j]![i]!)
    return Float64Array.from(solve(returning, Matrix.columnVector(Array.from(rows[k]!))).to1DArray())
  })
  return (time) => {
    let clock = 0
    let p = 0
    while (p < parts.length - 1 && time > clock + solutions[p]!.tEnd) clock += solutions[p++]!.tEnd
    const all = shiftsAt(parts[p]!, time - clock)
    return starts.map((start, k) =>
      all[k]!.map((x, i) => x + (periodic ? start.reduce((sum, s, j) => sum + s * all[causes + j]![i]!, 0) : 0)),
    )
  }
}
