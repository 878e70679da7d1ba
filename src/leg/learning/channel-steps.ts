import type { MeasurementId } from './measurements.js'
import type { LogModel, Rows } from './model.js'

/** Columns that are read off a display, where they are not all but the first one, which is set. */
const READ: { readonly [M in MeasurementId]?: readonly number[] } = { cordFriction: [1], pullOut: [0], freePlay: [0], slipTorque: [0] }

/** Step of each channel of a model: what a step of the displays of its readings changes in it, over the rows. */
export function channelSteps(id: MeasurementId, { measured, channels }: LogModel, rows: Rows, steps: readonly number[]): number[] {
  const read = READ[id] ?? steps.map((_, i) => i).slice(1)
  return Array.from({ length: channels }, (_, c) => {
    const squares = rows.map((row) =>
      read.reduce((sum, column) => {
        const moved = measured(row.map((x, i) => (i === column ? x + (steps[i] as number) : x)))[c] as number
        return sum + (moved - (measured(row)[c] as number)) ** 2
      }, 0),
    )
    return Math.sqrt(squares.reduce((sum, x) => sum + x, 0) / Math.max(1, rows.length))
  })
}
