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
      /^((?:[A-Za-z][\w’-]*(?: of)? ?)+?) (-?[\d.]+(?:e-?\d+)?.*|(?:minus )?infinite.*|not a number.*|[a-z][a-z ]*)$/.exec(whole) ?? []
    add(name === '' ? 'result' : name, name === '' ? whole : value)
    open.length = 0
  }
  for (const part of parts) {
    if (/^[A-Za-z]/.test(part)) close()
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
    const [, rank, demand, capacity] = /^- (K\d+) .*?: demand (.*?), capacity (.*?), reserve /.exec(line) ?? []
    if (rank !== undefined) chains.set(rank, { demand: inputOf(demand as string), capacity: inputOf(capacity as string) })
  }
  const part = markdown.slice(markdown.indexOf('\n## Calculation steps'))
  const steps = part.slice(0, part.indexOf('\n## ', 5))
  return { groups: steps.split(/^### /m).slice(1).map(groupOf), values, chains }
}

/** A cell of a table, its unit from the name of its column: `pin, mm`. */
function take(row: PrintedStep, column: string, cell: string): void {
  if (cell === '') return
  const [name = '', unit] = column.replace(/^= /, '').split(', ')
  const { value, ...rest } = inputOf(cell)
  const whole = unit === undefined || /^(minus )?infini/.test(value) ? value : unit === '°' ? `${value}°` : `${value} ${unit}`
  if (column.startsWith('= ')) row.results.set(name, whole)
  else row.inputs.set(name, { value: whole, ...rest })
}

function groupOf(text: string): PrintedGroup {
  const [first = '', ...lines] = text.split('\n')
  const common = new Map<string, PrintedInput>()
  const ofJoint = new Map<string, Map<string, PrintedInput>>()
  const places = new Map<PrintedStep, string>()
  const rows: PrintedStep[] = []
  let equations: string[] = []
  let head: string[] = []
  let beside: PrintedStep[] = []
  const step = (number: string, place = ''): PrintedStep => {
    const row: PrintedStep = { number, inputs: new Map(common), results: new Map() }
    rows.push(row)
    places.set(row, place)
    return row
  }
  for (const line of lines) {
    if (line.startsWith('`')) equations = [...line.matchAll(/`([^`]*)`/g)].map(([, one]) => one as string)
    if (line.startsWith('In all: ')) named(line.slice('In all: '.length), (name, value) => common.set(name, inputOf(value)))
    const [, joint, shared] = /^In all of the (\w+): (.*)$/.exec(line) ?? []
    if (joint !== undefined) {
      ofJoint.set(joint, new Map())
      named(shared as string, (name, value) => ofJoint.get(joint)?.set(name, inputOf(value)))
    }
    const [, number, place, results, from] = /^- (\d+\.\d+)(?: \(([^:]*)\))?: (.*?)(?: ← (.*))?$/.exec(line) ?? []
    if (number !== undefined) {
      const row = step(number, place)
      named(results as string, (name, value) => row.results.set(name, value))
      if (from !== undefined) named(from, (name, value) => row.inputs.set(name, inputOf(value)))
    }
    if (!line.startsWith('|') || line.startsWith('|---')) continue
    const cells = cellsOf(line)
    const [lead = '', second = ''] = cells
    if (lead === 'step') {
      head = cells
      // Numbers in the head: steps stand beside each other.
      beside = /^\d+\.\d+$/.test(second) ? cells.slice(1).map((one) => step(one)) : []
    } else if (beside.length > 0) {
      for (const [i, row] of beside.entries())
        if (lead === 'for') places.set(row, cells[i + 1] as string)
        else take(row, lead, cells[i + 1] as string)
    } else {
      const placed = head[1] === 'for'
      const row = step(lead, placed ? second : '')
      for (const [i, cell] of cells.entries()) if (i > (placed ? 1 : 0)) take(row, head[i] as string, cell)
    }
  }
  // A long list stands once: other steps name the first with the same.
  for (const row of rows)
    for (const [name, value] of row.results) {
      const [, same] = /^as (\d+\.\d+)$/.exec(value) ?? []
      const whole = same === undefined ? value : rows.find(({ number }) => number === same)?.results.get(name)
      if (whole === undefined) throw new Error(`${row.number} is said to be as ${same}, which has no ${name}`)
      row.results.set(name, whole)
    }
  for (const [row, place] of places)
    for (const [name, input] of ofJoint.get(place.split(',')[0] as string) ?? []) row.inputs.set(name, input)
  return { title: first.replace(/^\d+ /, ''), equations, rows }
}
