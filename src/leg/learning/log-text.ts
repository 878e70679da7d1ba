/** A line of a log as cells, and where it stands in the file. */
export interface LogLine {
  readonly cells: readonly string[]
  /** Line of the file, from 1. */
  readonly line: number
}

/** A log as text: what its comments say, its header and its rows. */
export interface LogText {
  /** Comments of the form `# key: value`. */
  readonly notes: readonly { readonly key: string; readonly value: string; readonly line: number }[]
  readonly header: LogLine | undefined
  readonly rows: readonly LogLine[]
  /** Separator of the cells, and whether a comma is the decimal sign. */
  readonly separator: ',' | ';' | '\t'
  readonly decimalComma: boolean
}

const COMMENT = /^\s*(#|\/\/|%)/
const NOTE = /^\s*(?:#|\/\/|%)+\s*([A-Za-z][A-Za-z ]*?)\s*:\s*(.+?)\s*$/

/** Cells of a line. A quoted cell may hold the separator; two quotes in it stand for one. Rows never go over more than one line. */
function cellsOf(line: string, separator: string): string[] {
  const cells: string[] = []
  let [cell, quoted] = ['', false]
  for (let i = 0; i < line.length; i++) {
    const sign = line[i] as string
    if (sign === '"') {
      if (quoted && line[i + 1] === '"') {
        cell += '"'
        i++
      } else quoted = !quoted
    } else if (sign === separator && !quoted) {
      cells.push(cell.trim())
      cell = ''
    } else cell += sign
  }
  return [...cells, cell.trim()]
}

/** The separator that divides the header into most cells. */
function separatorOf(header: string): LogText['separator'] {
  const outside = header.replaceAll(/"[^"]*"/g, '')
  const counts = ([',', ';', '\t'] as const).map((sign) => [sign, outside.split(sign).length] as const)
  return counts.reduce((a, b) => (b[1] > a[1] ? b : a))[0]
}

/**
 * Takes a log apart: byte order mark, line ends of any system, comments (#, //, %), a line `sep=;` of a spreadsheet, quotes, and comma, semicolon or
 * tab between cells. Lines are read one by one, because every row that is left out is named by its line; a quoted line break does not occur in logs.
 */
export function logText(text: string): LogText {
  const all = text.replace(/^\uFEFF/, '').split(/\r\n|\n|\r/)
  const notes: LogText['notes'][number][] = []
  const open: { text: string; line: number }[] = []
  let stated: LogText['separator'] | undefined
  for (const [i, line] of all.entries()) {
    const sep = /^\s*"?sep=(.)"?\s*$/i.exec(line)
    if (sep !== null && open.length === 0) stated = sep[1] as LogText['separator']
    // A spreadsheet quotes a comment that holds its separator, and fills its row up.
    else if (COMMENT.test(line.replace(/^\s*"/, ''))) {
      const note = NOTE.exec(line.replace(/^\s*"/, '').replace(/"?[;,\t\s]*$/, ''))
      if (note !== null) notes.push({ key: (note[1] as string).toLowerCase(), value: note[2] as string, line: i + 1 })
    } else if (line.replaceAll(/[;,\t"\s]/g, '') !== '') open.push({ text: line, line: i + 1 })
  }
  const [first, ...rest] = open
  const separator = stated ?? separatorOf(first?.text ?? '')
  const split = ({ text: line, line: at }: { text: string; line: number }): LogLine => ({ cells: cellsOf(line, separator), line: at })
  const trimmed = (row: LogLine): LogLine => {
    let end = row.cells.length
    while (end > 0 && row.cells[end - 1] === '') end--
    return { ...row, cells: row.cells.slice(0, end) }
  }
  return {
    notes,
    header: first === undefined ? undefined : trimmed(split(first)),
    rows: rest.map(split),
    separator,
    decimalComma: isDecimalComma(
      separator,
      rest.map(({ text: line }) => line),
    ),
  }
}

/** Whether a comma is the decimal sign: it separates nothing, or stands in quotes, and no cell has a decimal point. */
const isDecimalComma = (separator: string, rows: readonly string[]): boolean =>
  rows.some((row) => (separator === ',' ? /"\s*[-+]?\d*,\d+\s*"/ : /\d,\d/).test(row)) && !rows.some((row) => /\d\.\d/.test(row))
