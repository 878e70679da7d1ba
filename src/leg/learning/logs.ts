import { type In, InputError, type Kind, nearName, quantity, type UnitOf, unitNames } from '../../units/index.js'

/** A column of a log: its name and kind of quantity, and the unit of its header. */
export interface LogColumn {
  readonly name: string
  readonly kind: Kind
  readonly unit: string
}

/** Something found in a log that a reader should know: nothing is dropped without one. */
export interface LogRemark {
  readonly log: string
  /** Line of the file, from 1; absent for the file as a whole. */
  readonly line: number | undefined
  readonly what: 'gap' | 'unreadable' | 'unit' | 'spike' | 'order' | 'column' | 'few readings' | 'disagreement'
  readonly message: string
}

/** A log that was read: SI values of the rows that are whole, and the line each stands in. */
export interface ReadLog {
  readonly rows: readonly (readonly number[])[]
  readonly lines: readonly number[]
  readonly remarks: readonly LogRemark[]
}

/** The header line of a log, units in brackets. */
export const headerOf = (columns: readonly LogColumn[]): string => columns.map(({ name, unit }) => `${name} [${unit}]`).join(',')

const HEADER = /^\s*([^[\]]+?)\s*\[([^[\]]+)\]\s*$/

/**
 * Reads a CSV log: comment lines start with #, the header names each column with its unit in brackets, a cell may carry a unit of its own.
 * Rows with a gap or an unreadable cell are left out and reported by line; other units are converted and reported.
 *
 * Throws an `InputError` for a header that lacks a column, or gives a unit of another kind.
 */
export function readLog(log: string, text: string, columns: readonly LogColumn[]): ReadLog {
  const all = (typeof text === 'string' ? text : '').split(/\r?\n/)
  const start = all.findIndex((line) => line.trim() !== '' && !line.startsWith('#'))
  const header = start < 0 ? [] : (all[start] as string).split(',').map((cell) => HEADER.exec(cell))
  const names = header.map((found, i) => found?.[1] ?? ((all[start] ?? '').split(',')[i] as string).trim())
  const remarks: LogRemark[] = []
  const issues = columns.flatMap(({ name, kind, unit }) => {
    const at = names.indexOf(name)
    const near = nearName(name, names)
    const accepts = `needs the column ${name} [${unit}]`
    if (at < 0)
      return [
        {
          path: log,
          given: start < 0 ? 'nothing' : names.join(', '),
          accepts: near === undefined ? accepts : `${accepts}; is ${near} meant?`,
        },
      ]
    const given = header[at]?.[2]
    const units: readonly string[] = unitNames(kind)
    if (given === undefined || !units.includes(given))
      return [{ path: `${log}.${name}`, given: given ?? 'no unit', accepts: `must be in ${units.join(', ')}` }]
    if (given !== unit) remarks.push({ log, line: start + 1, what: 'unit', message: `${name} is in ${given}; converted from there` })
    return []
  })
  if (issues.length > 0) throw new InputError('learn', issues)
  for (const name of names)
    if (!columns.some((column) => column.name === name))
      remarks.push({ log, line: start + 1, what: 'column', message: `the column ${name} is not used` })
  const timed = columns[0]?.name === 'time'
  const rows: number[][] = []
  const lines: number[] = []
  for (let i = start + 1; i < all.length; i++) {
    const line = all[i] as string
    if (line.trim() === '' || line.startsWith('#')) continue
    const cells = line.split(',').map((cell) => cell.trim())
    const problems: LogRemark[] = []
    if (cells.length !== names.length)
      problems.push({
        log,
        line: i + 1,
        what: 'unreadable',
        message: `${cells.length} cells for ${names.length} columns (a decimal comma?); row left out`,
      })
    const row = columns.map(({ name, kind }) => {
      const at = names.indexOf(name)
      return cellOf(cells[at] ?? '', kind, (header[at] as RegExpExecArray)[2] as string, (what, message) =>
        problems.push({ log, line: i + 1, what, message: `${name}: ${message}` }),
      )
    })
    const last = rows.at(-1)
    // Time has to run on: what a reading did to cord or motor comes after what was before it.
    if (timed && last !== undefined && row[0]! <= last[0]!)
      problems.push({ log, line: i + 1, what: 'order', message: 'its time is not after that of the row before; row left out' })
    remarks.push(...problems)
    if (problems.every(({ what }) => what === 'unit')) {
      rows.push(row)
      lines.push(i + 1)
    }
  }
  return { rows, lines, remarks }
}

function cellOf(cell: string, kind: Kind, unit: string, report: (what: LogRemark['what'], message: string) => void): number {
  if (cell === '' || /^(nan|n\/a|-)$/i.test(cell)) {
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
