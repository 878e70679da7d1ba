import { type In, InputError, type Kind, nearName, quantity, type UnitOf, unitNames } from '../../units/index.js'
import { type LogText, logText } from './log-text.js'

/** A column of a log: its name and kind of quantity, and the unit of its header. */
export interface LogColumn {
  readonly name: string
  readonly kind: Kind
  readonly unit: string
}

/** Something found in a log that a reader should know: nothing is dropped without one. */
export interface LogRemark {
  /** Name of the log. */
  readonly log: string
  /** Line of the file, from 1; absent for the file as a whole. */
  readonly line: number | undefined
  /** Kind of the remark. */
  readonly what:
    | 'gap'
    | 'unreadable'
    | 'unit'
    | 'spike'
    | 'order'
    | 'column'
    | 'few readings'
    | 'disagreement'
    | 'duplicate'
    | 'implausible'
    | 'unexpected'
    | 'wrong file'
    | 'misfit'
    | 'instrument'
    | 'confounded'
    | 'format'
  /** The remark in plain words. */
  readonly message: string
}

/** A remark on a log as a whole. */
export const ofLog = (log: string, what: LogRemark['what'], message: string): LogRemark => ({ log, line: undefined, what, message })

/** A log that was read: SI values of the rows that are whole, and the line of each. */
export interface ReadLog {
  readonly rows: readonly (readonly number[])[]
  readonly lines: readonly number[]
  /** Unit of each column in the header. */
  readonly units: readonly string[]
  readonly notes: LogText['notes']
  readonly remarks: readonly LogRemark[]
}

/** The header line of a log, units in brackets. */
export const headerOf = (columns: readonly LogColumn[]): string => columns.map(({ name, unit }) => `${name} [${unit}]`).join(',')

const HEADER = /^\s*([^[\]()]+?)\s*[[(]([^[\]()]+)[\])]\s*$/
/** Spellings of units in spreadsheets, and how the library writes them. */
const SPELLINGS: Readonly<Record<string, string>> = {
  '°C': 'degC',
  C: 'degC',
  '°F': 'degF',
  '°': 'deg',
  Nm: 'N m',
  'N*m': 'N m',
  N·m: 'N m',
  Nmm: 'N mm',
  d: 'day',
  days: 'day',
  hours: 'h',
  minutes: 'min',
  sec: 's',
  turns: 'turn',
  rev: 'turn',
  µm: 'um',
}

/** Names and units of a header. */
function headerIn(log: string, { header }: LogText, columns: readonly LogColumn[], remarks: LogRemark[]) {
  const line = header?.line
  const cells = (header?.cells ?? []).map((cell) => HEADER.exec(cell))
  const names = cells.map((found, i) =>
    (found?.[1] ?? header?.cells[i] ?? '')
      .replaceAll(/[_\s]+/g, ' ')
      .trim()
      .toLowerCase(),
  )
  const twice = names.find((name, i) => names.indexOf(name) !== i && columns.some((column) => column.name === name))
  const issues = columns.flatMap(({ name, kind, unit }) => {
    const at = names.indexOf(name)
    const near = nearName(name, names)
    const accepts = `needs the column ${name} [${unit}]`
    if (at < 0)
      return [
        {
          path: log,
          given: header === undefined ? 'nothing' : names.join(', '),
          accepts: near === undefined ? accepts : `${accepts}; is ${near} meant?`,
        },
      ]
    const written = cells[at]?.[2]?.trim()
    const given = written === undefined ? undefined : (SPELLINGS[written] ?? written)
    const units: readonly string[] = unitNames(kind)
    if (given === undefined || !units.includes(given))
      return [{ path: `${log}.${name}`, given: given ?? 'no unit', accepts: `must be in ${units.join(', ')}` }]
    if (given !== unit) remarks.push({ log, line, what: 'unit', message: `${name} is in ${given}; converted from there` })
    return []
  })
  if (twice !== undefined)
    issues.push({ path: log, given: `the column ${twice} twice`, accepts: 'must name each column once: take one of them out' })
  if (issues.length > 0) throw new InputError('learn', issues)
  for (const [i, name] of names.entries())
    if (!columns.some((column) => column.name === name))
      remarks.push({ log, line, what: 'column', message: `the column ${name === '' ? `number ${i + 1}` : name} is not used` })
  const units = columns.map(({ name }) => {
    const written = cells[names.indexOf(name)]?.[2]?.trim() ?? ''
    return SPELLINGS[written] ?? written
  })
  return { names, units }
}

/**
 * Reads a CSV log: comments start with #, the header names each column with its unit in brackets, a cell may carry a unit of its own. Cells are
 * separated by comma, semicolon or tab; a decimal comma is read where the comma separates nothing.
 * Rows with a gap or an unreadable cell are left out and reported by line; other units are converted and reported.
 *
 * Throws an `InputError` for a header that lacks a column, or gives a unit of another kind.
 */
export function readLog(log: string, text: string, columns: readonly LogColumn[]): ReadLog {
  const file = logText(typeof text === 'string' ? text : '')
  const remarks: LogRemark[] = []
  const { names, units } = headerIn(log, file, columns, remarks)
  if (file.separator !== ',' || file.decimalComma)
    remarks.push({
      log,
      line: file.header?.line,
      what: 'format',
      message: `cells are separated by ${SEPARATORS[file.separator]}${file.decimalComma ? ', with a decimal comma' : ''}`,
    })
  const timed = columns[0]?.name === 'time'
  const rows: number[][] = []
  const lines: number[] = []
  for (const { cells, line } of file.rows) {
    const problems: LogRemark[] = []
    if (cells.length > names.length && cells.slice(names.length).some((cell) => cell !== ''))
      problems.push({
        log,
        line,
        what: 'unreadable',
        message: `${cells.length} cells for ${names.length} columns (a decimal comma?); row left out`,
      })
    const row = columns.map(({ name, kind }, i) =>
      cellOf(cells[names.indexOf(name)] ?? '', kind, units[i] as string, file.decimalComma, (what, message) =>
        problems.push({ log, line, what, message: `${name}: ${message}` }),
      ),
    )
    const last = rows.at(-1)
    // Time has to run on: what a reading did to cord or motor comes after what was before it.
    if (timed && last !== undefined && row[0]! <= last[0]!)
      problems.push({ log, line, what: 'order', message: 'its time is not after that of the row before; row left out' })
    remarks.push(...problems)
    if (problems.every(({ what }) => what === 'unit')) {
      rows.push(row)
      lines.push(line)
    }
  }
  return { rows, lines, units, notes: file.notes, remarks }
}

const SEPARATORS = { ',': 'commas', ';': 'semicolons', '\t': 'tabs' } as const

function cellOf(
  written: string,
  kind: Kind,
  unit: string,
  decimalComma: boolean,
  report: (what: LogRemark['what'], message: string) => void,
): number {
  // Minus signs and blanks of spreadsheets.
  const tidy = written
    .replaceAll('\u2212', '-')
    .replaceAll(/[\u00A0\u202F]/g, ' ')
    .trim()
  const cell = decimalComma ? tidy.replace(/^([+-]?\d*),(\d)/, '$1.$2') : tidy
  if (cell === '' || /^(nan|n\/a|na|null|-|--|#n\/a|#div\/0!|#value!|#ref!)$/i.test(cell)) {
    report('gap', 'no value; row left out')
    return Number.NaN
  }
  const plain = /^[+-]?(\d+\.?\d*|\.\d+)([eE][+-]?\d+)?$/.test(cell)
  try {
    if (plain) return quantity(kind, [Number(cell), unit as UnitOf<Kind>] as unknown as In<Kind>).si
    const { si } = quantity(kind, cell as unknown as In<Kind>)
    report('unit', `${cell} carries a unit of its own; converted`)
    return si
  } catch (error) {
    if (!(error instanceof InputError)) throw error
    report('unreadable', `${cell} is not a quantity in ${unit}; row left out`)
    return Number.NaN
  }
}
