import { answering, isNoAnswer, placeAt } from './path.js'

/** Where the numbers of a row come from and go to. */
export interface RowLoop {
  /** The SI argument with its fixed inputs; what varies in it is overwritten. */
  readonly x: Record<string, unknown>
  readonly kernel: (x: unknown) => unknown
  /** Combinations that the formula rules out: a row that breaks one has no answer. */
  readonly requires: readonly { readonly holds: (x: unknown) => boolean }[]
  /** Inputs that vary, by dotted path. */
  readonly paths: readonly string[]
  readonly inputs: readonly Float64Array[]
  /** Outputs by key; the key is empty for a single result. */
  readonly keys: readonly string[]
  readonly outputs: readonly (Float64Array | string[])[]
}

/**
 * Runs a kernel over rows of columns.
 *
 * Where inputs are numbers side by side and outputs numbers, the loop is compiled for this formula's own names: written out like that the engine
 * can put the kernel into the loop and makes no object for a row, which is three to four times as fast as setting properties by name. Where
 * code may not be made at run time (a strict content policy) the plain loop gives the same bits.
 */
export function runRows(loop: RowLoop, rows: number): void {
  const compiled = compile(loop)
  if (compiled === undefined) {
    runAnyRows(loop, rows)
    return
  }
  try {
    compiled(loop.kernel, rows, loop.inputs, loop.outputs, loop.x, loop.requires)
  } catch (error) {
    if (!isNoAnswer(error)) throw error
    runAnyRows(loop, rows)
  }
}

type Compiled = (
  kernel: RowLoop['kernel'],
  rows: number,
  inputs: RowLoop['inputs'],
  outputs: RowLoop['outputs'],
  x: RowLoop['x'],
  requires: RowLoop['requires'],
) => void

/** Compiled loops by kernel: a sweep in blocks needs the same loop again and again. */
const made = new WeakMap<RowLoop['kernel'], Map<string, Compiled | undefined>>()

function compile({ x, kernel, requires, paths, keys, outputs }: RowLoop): Compiled | undefined {
  if (paths.some((path) => path.includes('.')) || outputs.some((column) => Array.isArray(column))) return undefined
  let loops = made.get(kernel)
  if (loops === undefined) {
    loops = new Map()
    made.set(kernel, loops)
  }
  const names = Object.keys(x)
  const shape = JSON.stringify([names, paths, keys, requires.length])
  if (!loops.has(shape)) loops.set(shape, compiledFor(names, paths, keys, requires.length))
  return loops.get(shape)
}

function compiledFor(names: readonly string[], paths: readonly string[], keys: readonly string[], requires: number): Compiled | undefined {
  const text = JSON.stringify
  const fixed = names.filter((name) => !paths.includes(name))
  const argument = names.map((name) => `${text(name)}: ${paths.includes(name) ? `a${paths.indexOf(name)}[i]` : `f${fixed.indexOf(name)}`}`)
  const body = [
    ...paths.map((_, p) => `const a${p} = inputs[${p}]`),
    ...keys.map((_, q) => `const b${q} = outputs[${q}]`),
    ...fixed.map((name, f) => `const f${f} = x[${text(name)}]`),
    ...Array.from({ length: requires }, (_, r) => `const r${r} = requires[${r}].holds`),
    'for (let i = 0; i < rows; i++) {',
    `const given = { ${argument.join(', ')} }`,
    ...Array.from({ length: requires }, (_, r) => `if (!r${r}(given)) { ${keys.map((_k, q) => `b${q}[i] = NaN`).join('; ')}; continue }`),
    'const y = kernel(given)',
    ...keys.map((key, q) => `b${q}[i] = ${key === '' ? 'y' : `y[${text(key)}]`}`),
    '}',
  ]
  try {
    return new Function('kernel', 'rows', 'inputs', 'outputs', 'x', 'requires', body.join('\n')) as Compiled
  } catch {
    return undefined
  }
}

function runAnyRows({ x, kernel: bare, requires, paths, inputs, keys, outputs }: RowLoop, rows: number): void {
  const kernel = answering(bare)
  const places = paths.map((path) => placeAt(x, path))
  for (let i = 0; i < rows; i++) {
    places.forEach(({ record, name }, p) => {
      record[name] = (inputs[p] as Float64Array)[i]
    })
    const y = requires.every(({ holds }) => holds(x)) ? kernel(x) : undefined
    for (let q = 0; q < keys.length; q++) {
      const key = keys[q] as string
      const value = key === '' ? y : (y as Record<string, unknown> | undefined)?.[key]
      const column = outputs[q] as Float64Array | string[]
      // A row without an answer: NaN, and the words 'no answer'.
      if (Array.isArray(column)) column[i] = value === undefined ? 'no answer' : String(value)
      else column[i] = value === undefined ? Number.NaN : (value as number)
    }
  }
}
