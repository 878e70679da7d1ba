import { type In, InputError, type Kind, quantity, type UnitOf } from '../../units/index.js'
import { displayStep } from './display-step.js'
import { headerIn } from './log-header.js'
import type { LogColumn, LogRemark } from './log-remarks.js'
import { type LogText, logText } from './log-text.js'

export { type LogColumn, type LogRemark, ofLog } from './log-remarks.js'

/** A log that was read: SI values of the rows that are whole, and the line of each. */
export interface ReadLog {
  readonly rows: readonly (readonly number[])[]
  readonly lines: readonly number[]
  /** Unit of each column in the header. */
  readonly units: readonly string[]
  /** Step of the display that each column was read from, SI: its last written digit. 0 where it does not show. */
  readonly steps: readonly number[]
  readonly notes: LogText['notes']
  readonly remarks: readonly LogRemark[]
}

/** The header line of a log, units in brackets. */
export const headerOf = (columns: readonly LogColumn[]): string => columns.map(({ name, unit }) => `${name} [${unit}]`).join(',')

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
  const written: string[][] = columns.map(() => [])
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
      for (const [i, { name }] of columns.entries()) written[i]?.push(cells[names.indexOf(name)] ?? '')
    }
  }
  const steps = columns.map(({ kind }, i) => displayStep(written[i] ?? [], kind, units[i] as string))
  return { rows, lines, units, steps, notes: file.notes, remarks }
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
