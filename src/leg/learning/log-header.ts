import { InputError, nearName, unitNames } from '../../units/index.js'
import type { LogColumn, LogRemark } from './log-remarks.js'
import type { LogText } from './log-text.js'

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
export function headerIn(log: string, { header }: LogText, columns: readonly LogColumn[], remarks: LogRemark[]) {
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
