import { answering, isNoAnswer, setAt } from './path.js'

const NONE = new Float64Array(0)

/** Where the numbers of a row come from and go to. */
export interface RowLoop {
  /** The SI argument, owned by the caller; holds the last row afterwards. */
  readonly x: Record<string, unknown>
  readonly kernel: (x: unknown) => unknown
  /** Inputs that vary, by dotted path. */
  readonly paths: readonly string[]
  readonly inputs: readonly Float64Array[]
  /** Outputs by key; the key is empty for a single result. */
  readonly keys: readonly string[]
  readonly outputs: readonly (Float64Array | string[])[]
}

/**
 * Runs a kernel over rows of columns. The first four inputs and three numeric outputs are written out one by one: a property set at a place of its own
 * costs a few nanoseconds, one set by a name that changes from call to call ten times as much.
 */
export function runRows(loop: RowLoop, rows: number): void {
  if (loop.paths.some((path) => path.includes('.')) || loop.outputs.some((column) => Array.isArray(column))) {
    runAnyRows(loop, rows)
    return
  }
  try {
    runFlatRows(loop, rows)
  } catch (error) {
    if (!isNoAnswer(error)) throw error
    runAnyRows(loop, rows)
  }
}

function runFlatRows({ x, kernel, paths, inputs, keys, outputs }: RowLoop, rows: number): void {
  const k = paths.length
  const m = keys.length
  const [p0 = '', p1 = '', p2 = '', p3 = ''] = paths
  const [a0 = NONE, a1 = NONE, a2 = NONE, a3 = NONE] = inputs
  const [q0 = '', q1 = '', q2 = ''] = keys
  const [b0 = NONE, b1 = NONE, b2 = NONE] = outputs as readonly Float64Array[]
  const single = q0 === ''
  for (let i = 0; i < rows; i++) {
    x[p0] = a0[i]
    if (k > 1) x[p1] = a1[i]
    if (k > 2) x[p2] = a2[i]
    if (k > 3) x[p3] = a3[i]
    for (let p = 4; p < k; p++) x[paths[p] as string] = (inputs[p] as Float64Array)[i]
    const y = kernel(x)
    if (single) b0[i] = y as number
    else {
      const record = y as Record<string, number>
      b0[i] = record[q0] as number
      if (m > 1) b1[i] = record[q1] as number
      if (m > 2) b2[i] = record[q2] as number
      for (let q = 3; q < m; q++) (outputs[q] as Float64Array)[i] = record[keys[q] as string] as number
    }
  }
}

function runAnyRows({ x, kernel: bare, paths, inputs, keys, outputs }: RowLoop, rows: number): void {
  const kernel = answering(bare)
  for (let i = 0; i < rows; i++) {
    for (let p = 0; p < paths.length; p++) setAt(x, paths[p] as string, (inputs[p] as Float64Array)[i] as number)
    const y = kernel(x)
    for (let q = 0; q < keys.length; q++) {
      const key = keys[q] as string
      const value = key === '' ? y : (y as Record<string, unknown> | undefined)?.[key]
      const column = outputs[q] as Float64Array | string[]
      // A row without an answer: NaN, and a word that says so.
      if (Array.isArray(column)) column[i] = value === undefined ? 'no answer' : String(value)
      else column[i] = value === undefined ? Number.NaN : (value as number)
    }
  }
}
