/** An input as it is printed: its value, and the reference behind it. */
export interface PrintedInput {
  readonly value: string
  readonly ref: string | undefined
  readonly negative: boolean
}

/** A step as it is printed. */
export interface PrintedStep {
  readonly number: string
  readonly inputs: Map<string, PrintedInput>
  readonly results: Map<string, string>
}

/** The steps of a formula as they are printed. */
export interface PrintedGroup {
  readonly title: string
  readonly equations: readonly string[]
  readonly rows: PrintedStep[]
}

/** A calculation sheet as a reader of the Markdown has it: nothing but text. */
export interface PrintedSheet {
  readonly groups: PrintedGroup[]
  /** Values of fields, tables and constants by their numbers. */
  readonly values: Map<string, string>
  readonly chains: Map<string, { readonly demand: PrintedInput; readonly capacity: PrintedInput }>
}

const cellsOf = (line: string) => line.slice(1, -1).split(/(?<!\\)\|/)

function inputOf(text: string): PrintedInput {
  const [, value = '', minus, ref] = /^(.*?)(?: (−)?\[([\w.]+)\])?$/.exec(text) ?? []
  return { value: value.trim(), ref, negative: minus !== undefined }
}

/** Values with names, apart at commas; a part without a name of its own belongs to the list before it. */
function named(text: string, add: (name: string, value: string) => void): void {
  const parts = text.split(', ')
  const open: string[] = []
  const close = () => {
    if (open.length === 0) return
    const whole = open.join(', ')
    const [, name = '', value = ''] =
      /^((?:[a-z][\w-]*(?: of)? ?)+?) (-?[\d.]+(?:e-?\d+)?.*|(?:minus )?infinite.*|not a number.*|[a-z][a-z ]*)$/.exec(whole) ?? []
    add(name === '' ? 'result' : name, name === '' ? whole : value)
    open.length = 0
  }
  for (const part of parts) {
    if (/^[a-z]/.test(part)) close()
    open.push(part)
  }
  close()
}

/** Reads a printed sheet. */
export function readSheet(markdown: string): PrintedSheet {
  const values = new Map<string, string>()
  const chains: PrintedSheet['chains'] = new Map()
  for (const line of markdown.split('\n')) {
    const cells = line.startsWith('|') ? cellsOf(line) : []
    if (/^[FTC]\d+$/.test(cells[0] ?? '')) values.set(cells[0] as string, cells[2] as string)
    const [, rank, demand, capacity] = /^- (K\d+) .*?, demand (.*?), capacity (.*?), reserve /.exec(line) ?? []
    if (rank !== undefined) chains.set(rank, { demand: inputOf(demand as string), capacity: inputOf(capacity as string) })
  }
  const part = markdown.slice(markdown.indexOf('\n## Calculation steps'))
  const steps = part.slice(0, part.indexOf('\n## ', 5))
  return { groups: steps.split(/^### /m).slice(1).map(groupOf), values, chains }
}

function groupOf(text: string): PrintedGroup {
  const [first = '', ...lines] = text.split('\n')
  const common = new Map<string, PrintedInput>()
  const rows: PrintedStep[] = []
  let equations: string[] = []
  let head: string[] = []
  for (const line of lines) {
    if (line.startsWith('`')) equations = [...line.matchAll(/`([^`]*)`/g)].map(([, one]) => one as string)
    if (line.startsWith('In all: ')) named(line.slice('In all: '.length), (name, value) => common.set(name, inputOf(value)))
    const [, number, results, from] = /^- (\d+\.\d+)(?: \([^:]*\))?: (.*?)(?: ← (.*))?$/.exec(line) ?? []
    if (number !== undefined) {
      const row: PrintedStep = { number, inputs: new Map(common), results: new Map() }
      named(results as string, (name, value) => row.results.set(name, value))
      if (from !== undefined) named(from, (name, value) => row.inputs.set(name, inputOf(value)))
      rows.push(row)
    }
    if (!line.startsWith('|') || line.startsWith('|---')) continue
    const cells = cellsOf(line)
    if (cells[0] === 'step') {
      head = cells
      continue
    }
    const row: PrintedStep = { number: cells[0] as string, inputs: new Map(common), results: new Map() }
    for (const [i, cell] of cells.entries()) {
      const name = head[i] as string
      if (i > 1 && name.startsWith('= ')) row.results.set(name.slice(2), cell)
      else if (i > 1 && cell !== '') row.inputs.set(name, inputOf(cell))
    }
    rows.push(row)
  }
  return { title: first.replace(/^\d+ /, ''), equations, rows }
}
