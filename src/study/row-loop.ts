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
  /** Rows next to each other that differ in the last input alone: how many, and how many of them are left at the first row. */
  readonly alike: { readonly rows: number; readonly first: number } | undefined
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
    compiled(loop, rows)
  } catch (error) {
    if (!isNoAnswer(error)) throw error
    runAnyRows(loop, rows)
  }
}

type Compiled = (loop: RowLoop, rows: number) => void

/** Compiled loops by kernel: a sweep in blocks needs the same loop again and again. */
const made = new WeakMap<RowLoop['kernel'], Map<string, Compiled | undefined>>()

function compile(loop: RowLoop): Compiled | undefined {
  const { x, kernel, requires, paths, keys, outputs, alike } = loop
  if (paths.some((path) => path.includes('.')) || outputs.some((column) => Array.isArray(column))) return undefined
  let loops = made.get(kernel)
  if (loops === undefined) {
    loops = new Map()
    made.set(kernel, loops)
  }
  const shape = JSON.stringify([Object.keys(x), paths, keys, requires.length, alike === undefined])
  if (!loops.has(shape)) loops.set(shape, compiledFor(loop))
  return loops.get(shape)
}

/**
 * The loop as code. Rows that are alike but for the last input have a loop of their own inside, in which the engine calculates once what their other
 * inputs decide. The argument has a constructor of its own: a literal would share its hidden class with the record of the formula's inputs, which has the
 * same names, and each number in it would be kept as an object.
 */
function compiledFor({ x, paths, keys, requires, alike }: RowLoop): Compiled | undefined {
  const text = JSON.stringify
  const names = Object.keys(x)
  const fixed = names.filter((name) => !paths.includes(name))
  const nested = alike !== undefined
  const last = paths.length - 1
  const value = (name: string) => {
    const p = paths.indexOf(name)
    return p < 0 ? `f${fixed.indexOf(name)}` : nested && p !== last ? `v${p}` : `a${p}[i]`
  }
  const gap = keys.map((_, q) => `b${q}[i] = NaN`).join('; ')
  const row = [
    `const given = new Given(${names.map(value).join(', ')})`,
    ...requires.map((_, r) => `if (!r${r}(given)) { ${gap}; continue }`),
    'const y = kernel(given)',
    ...keys.map((key, q) => `b${q}[i] = ${key === '' ? 'y' : `y[${text(key)}]`}`),
  ]
  const body = [
    `function Given(${names.map((_, k) => `n${k}`).join(', ')}) { ${names.map((name, k) => `this[${text(name)}] = n${k}`).join('; ')} }`,
    'Given.prototype = Object.prototype',
    'return ({ kernel, inputs, outputs, x, requires, alike }, rows) => {',
    ...paths.map((_, p) => `const a${p} = inputs[${p}]`),
    ...keys.map((_, q) => `const b${q} = outputs[${q}]`),
    ...fixed.map((name, f) => `const f${f} = x[${text(name)}]`),
    ...requires.map((_, r) => `const r${r} = requires[${r}].holds`),
    ...(nested
      ? [
          'for (let i = 0, end = Math.min(rows, alike.first); i < rows; end = Math.min(rows, end + alike.rows)) {',
          ...paths.slice(0, -1).map((_, p) => `const v${p} = a${p}[i]`),
          'for (; i < end; i++) {',
          ...row,
          '}',
          '}',
        ]
      : ['for (let i = 0; i < rows; i++) {', ...row, '}']),
    '}',
  ]
  try {
    return new Function(body.join('\n'))() as Compiled
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
