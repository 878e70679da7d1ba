import { luFactor, luSolve, type OdeSolution } from '../numeric/index.js'
import { imbalance, type NetworkNumbers, slopes } from './network-numbers.js'

/** Nodes by whether they store heat. Those without capacity follow the others at once: the net heat into them is zero at every instant. */
export interface Storage {
  readonly storing: readonly number[]
  readonly still: readonly number[]
}

export const storageOf = (n: NetworkNumbers): Storage => ({
  storing: n.names.flatMap((_, i) => (n.capacities[i]! > 0 ? [i] : [])),
  still: n.names.flatMap((_, i) => (n.capacities[i]! > 0 ? [] : [i])),
})

/** The balance of a node without capacity is met to this part of a kelvin. */
const SETTLED = 1e-9
const ROUNDS = 60

/**
 * Makes the function that sets the nodes without capacity to the temperatures at which their net heat is zero, by Newton's method from where they
 * are. A node that finds no balance, because its own loss runs away, is set just above the ceiling, where a transient is stopped.
 */
export function settler(n: NetworkNumbers, { still }: Storage): (T: Float64Array) => void {
  const size = n.names.length
  const count = still.length
  const [net, slope] = [new Float64Array(size), new Float64Array(size * size)]
  const [matrix, change, watt] = [new Float64Array(count * count), new Float64Array(count), new Float64Array(count)]
  const pivots = new Int32Array(count)
  /** One step of Newton's method; its largest change, NaN where there is none. */
  const step = (T: Float64Array): number => {
    imbalance(n, T, net)
    slopes(n, T, slope)
    for (let i = 0; i < count; i++) {
      change[i] = net[still[i]!]!
      for (let j = 0; j < count; j++) matrix[i * count + j] = -slope[still[i]! * size + still[j]!]!
    }
    if (luFactor(matrix, count, pivots) === 0) return Number.NaN
    // A watt more in every node without capacity must warm each of them; otherwise their balance is unstable.
    watt.fill(1)
    luSolve(matrix, count, pivots, watt)
    if (!watt.every((warms) => warms > 0)) return Number.NaN
    luSolve(matrix, count, pivots, change)
    let max = 0
    for (let i = 0; i < count; i++) {
      T[still[i]!] = T[still[i]!]! + change[i]!
      max = Math.max(max, Math.abs(change[i]!))
    }
    return max
  }
  return (T) => {
    for (let round = 0; count > 0; round++) {
      const max = step(T)
      if (max < SETTLED) return
      if (round < ROUNDS && max < n.ceiling) continue
      for (const i of still) T[i] = n.ceiling * 1.001
      return
    }
  }
}

/** Derivatives of the heat into the storing nodes by their temperatures, with the others following; row by row. */
export function storedSlopes(n: NetworkNumbers, { storing, still }: Storage, T: Float64Array): Float64Array {
  const size = n.names.length
  const slope = new Float64Array(size * size)
  slopes(n, T, slope)
  if (still.length === 0) return slope
  const [rows, gone] = [storing.length, still.length]
  const matrix = Float64Array.from(still.flatMap((i) => still.map((j) => slope[i * size + j]!)))
  const pivots = new Int32Array(gone)
  luFactor(matrix, gone, pivots)
  const out = new Float64Array(rows * rows)
  const follows = new Float64Array(gone)
  for (let k = 0; k < rows; k++) {
    // Change of the nodes without capacity with that of the storing one.
    for (let i = 0; i < gone; i++) follows[i] = -slope[still[i]! * size + storing[k]!]!
    luSolve(matrix, gone, pivots, follows)
    for (let i = 0; i < rows; i++) {
      let sum = slope[storing[i]! * size + storing[k]!]!
      for (let j = 0; j < gone; j++) sum += slope[storing[i]! * size + still[j]!]! * follows[j]!
      out[i * rows + k] = sum
    }
  }
  return out
}

/** A solved transient of the storing nodes as a transient of all nodes. */
export function withStill(n: NetworkNumbers, storage: Storage, course: OdeSolution): OdeSolution {
  const { storing, still } = storage
  if (still.length === 0) return course
  const size = n.names.length
  const settle = settler(n, storage)
  const T = new Float64Array(size + n.fixed.length)
  T.set(n.fixed, size)
  T.fill(n.fixed[0]!, 0, size)
  const whole = (part: ArrayLike<number>, offset: number, out: Float64Array, at: number) => {
    for (let k = 0; k < storing.length; k++) T[storing[k]!] = part[offset + k]!
    settle(T)
    for (let i = 0; i < size; i++) out[at + i] = T[i]!
  }
  const y = new Float64Array(course.t.length * size)
  for (let k = 0; k < course.t.length; k++) whole(course.y, k * course.size, y, k * size)
  const yEnd = new Float64Array(size)
  whole(course.yEnd, 0, yEnd, 0)
  const part = new Float64Array(course.size)
  const at = (time: number, out = new Float64Array(size)) => {
    whole(course.at(time, part), 0, out, 0)
    return out
  }
  const events = course.events.map((event) => {
    const state = new Float64Array(size)
    whole(event.y, 0, state, 0)
    return { ...event, y: state }
  })
  const { t, tEnd, ended, steps, rejected, evaluations } = course
  return { t, tEnd, ended, steps, rejected, evaluations, size, y, yEnd, events, at }
}
