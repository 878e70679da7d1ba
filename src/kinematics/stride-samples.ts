import { withLists } from './columns.js'
import {
  at,
  ROW_LENGTH,
  ROW_VECTORS,
  STANCE,
  type StrideFailure,
  StrideFollower,
  type StrideInputs,
  TIME,
  type Watch,
  WEIGHT,
} from './stride-follower.js'

/** One stride in numbers: columns of SI values, three to a sample (x, y, z, or sideways hip, hip, knee) unless noted. */
export interface StrideSamples {
  /** Number of samples. */
  readonly count: number
  /** Time after touch-down (one a sample), ascending. */
  readonly time: Float64Array
  /** Time a sample stands for; zero for samples that count for peaks only (one a sample). */
  readonly weight: Float64Array
  /** 1 in stance, 0 in swing (one a sample). */
  readonly stance: Uint8Array
  /** Place of the foot in the leg's frame, m. */
  readonly foot: Float64Array
  /** Velocity of the foot relative to the body, m/s. */
  readonly footVelocity: Float64Array
  /** Acceleration of the foot relative to the body, m/s². */
  readonly footAcceleration: Float64Array
  /** Force of the ground on the foot. */
  readonly groundReaction: Float64Array
  /** Angles of the joints, rad. */
  readonly jointAngle: Float64Array
  /** Rates of the joints, rad/s. */
  readonly jointRate: Float64Array
  /** Accelerations of the joints, rad/s². */
  readonly jointAcceleration: Float64Array
  /** Torques at the joints, N m. */
  readonly jointTorque: Float64Array
  /** Angles of the drums, rad. */
  readonly actuatorAngle: Float64Array
  /** Rates of the drums, rad/s. */
  readonly actuatorRate: Float64Array
  /** Accelerations of the drums, rad/s². */
  readonly actuatorAcceleration: Float64Array
  /** Torques at the drums, N m. */
  readonly actuatorTorque: Float64Array
  /** The same with plain lists in place of typed arrays, for `JSON.stringify`. */
  toJSON(): Record<string, unknown>
}

/** How a stride is sampled. */
export interface Sampling {
  /** Samples of the stride; each phase gets its share by time, but no fewer than `LEAST_CELLS`. */
  readonly samples: number
  /** Quantities whose largest and smallest values are to be met. */
  readonly watch?: Watch
}

/**
 * Fewest cells of a phase, however short it is: half a period of the fourth harmonic of a phase spans fifteen of them, so that a parabola through three
 * samples meets a peak to a thousandth.
 */
export const MIN_CELLS = 120
const JUST_INSIDE = 1e-9
/** Rates below this part of the largest are rounding of a joint at rest. */
const AT_REST = 1e-9
/** A change of power's sign is closed in to this part of the stride. */
const SIGN_CHANGE_TOLERANCE = 1e-9
/** Local peaks this close to the highest are refined as well: between samples one of them may be the higher. */
const NEARLY_HIGHEST = 0.95

type Rows = Float64Array[]

/** Follows a foot path with a leg: joint and actuator motion and torque at each sample, or where the leg cannot follow. */
export function sampleStride(inputs: StrideInputs, { samples, watch }: Sampling): StrideSamples | StrideFailure {
  const follower = new StrideFollower(inputs, watch)
  const { period, stanceTime } = inputs.path.si
  const all: Rows = []
  for (const [from, to] of [
    [0, stanceTime],
    [stanceTime, period],
  ] as const) {
    if (to - from <= 0) continue
    const rows = phaseRows(follower, from, to, Math.max(MIN_CELLS, Math.round((samples * (to - from)) / period)))
    if ('reason' in rows) return rows
    const more = [...signChanges(follower, rows, SIGN_CHANGE_TOLERANCE * period), ...peaks(follower, rows, watch?.count ?? 0)]
    for (const row of more) if ('reason' in row) return row
    all.push(...rows, ...(more as Rows))
  }
  return inColumns(all.sort((a, b) => a[TIME]! - b[TIME]!))
}

/** Midpoints of equal cells of a phase, and both ends with no weight. */
function phaseRows(follower: StrideFollower, from: number, to: number, cells: number): Rows | StrideFailure {
  const length = to - from
  const rows: Rows = []
  for (let i = -1; i <= cells; i++) {
    const end = i < 0 || i === cells
    const time = i < 0 ? from + length * JUST_INSIDE : end ? to - length * JUST_INSIDE : from + (length * (i + 0.5)) / cells
    const row = follower.rowAt(time, end ? 0 : length / cells)
    if ('reason' in row) return row
    rows.push(row)
  }
  return rows
}

/**
 * Rows on either side of each moment at which a drum turns round: there the reduction goes from driving to driven, and the motor's torque steps.
 */
function signChanges(follower: StrideFollower, rows: Rows, width: number): (Float64Array | StrideFailure)[] {
  const found: (Float64Array | StrideFailure)[] = []
  const rate = at('actuatorRate')
  let largest = 0
  for (const row of rows) for (let j = rate; j < rate + 3; j++) largest = Math.max(largest, Math.abs(row[j]!))
  for (let j = rate; j < rate + 3; j++)
    for (let i = 1; i < rows.length; i++) {
      let before = rows[i - 1]!
      let after = rows[i]!
      if (!(before[j]! * after[j]! < 0) || Math.max(Math.abs(before[j]!), Math.abs(after[j]!)) <= AT_REST * largest) continue
      while (after[TIME]! - before[TIME]! > width) {
        const middle = follower.rowAt(0.5 * (before[TIME]! + after[TIME]!), 0)
        if ('reason' in middle) return [middle]
        if (before[j]! * middle[j]! > 0) before = middle
        else after = middle
      }
      found.push(weightless(before), weightless(after))
    }
  return found
}

const weightless = (row: Float64Array): Float64Array => {
  const copy = row.slice()
  copy[WEIGHT] = 0
  return copy
}

/** Rows at the tops of parabolas through three samples around the highest and lowest values of each watched quantity. */
function peaks(follower: StrideFollower, rows: Rows, watched: number): (Float64Array | StrideFailure)[] {
  const times = new Set<number>()
  const values = new Float64Array(rows.length)
  for (let k = ROW_LENGTH; k < ROW_LENGTH + watched; k++)
    for (const sign of [1, -1]) {
      for (let i = 0; i < rows.length; i++) values[i] = sign * rows[i]![k]!
      for (const top of topsOf(rows, values)) times.add(top)
    }
  return Array.from(times, (time) => follower.rowAt(time, 0))
}

/** Times of the tops around the highest positive values. */
function topsOf(rows: Rows, values: Float64Array): number[] {
  let highest = 0
  for (let i = 0; i < values.length; i++) if (values[i]! > highest) highest = values[i]!
  const min = NEARLY_HIGHEST * highest
  const times: number[] = []
  if (highest === 0) return times
  for (let i = 1; i < rows.length - 1; i++) {
    const here = values[i]!
    if (here < min) continue
    const left = values[i - 1]!
    const right = values[i + 1]!
    if (here < left || here < right) continue
    // The ends of the phase are half a cell from their neighbours: slopes on either side, at the middles of unequal steps.
    const time = rows[i]![TIME]!
    const [before, after] = [time - rows[i - 1]![TIME]!, rows[i + 1]![TIME]! - time]
    const [rise, fall] = [(here - left) / before, (here - right) / after]
    if (rise + fall > 0) times.push(time + (0.5 * (rise * after - fall * before)) / (rise + fall))
  }
  return times
}

/** Rows as columns. */
function inColumns(rows: Rows): StrideSamples {
  const vectors = Object.fromEntries(
    ROW_VECTORS.map((name) => {
      const column = new Float64Array(3 * rows.length)
      rows.forEach((row, i) => {
        column.set(row.subarray(at(name), at(name) + 3), 3 * i)
      })
      return [name, column]
    }),
  ) as { readonly [K in (typeof ROW_VECTORS)[number]]: Float64Array }
  return withLists({
    count: rows.length,
    time: Float64Array.from(rows, (row) => row[TIME]!),
    weight: Float64Array.from(rows, (row) => row[WEIGHT]!),
    stance: Uint8Array.from(rows, (row) => row[STANCE]!),
    ...vectors,
  })
}
