import { Table } from '../../study/index.js'
import type { CheckResult } from '../check-result.js'
import type { Assessment } from '../result.js'

/**
 * Every check of a verdict as a table, smallest reserve first: part, mode, joint, load case, demand and capacity with their units, reserve, required
 * reserve and range. `checksTable(verdict).toCSV()` is a file that spreadsheets open.
 */
export function checksTable({ checks }: Assessment): Table {
  const words = (name: string, of: (check: CheckResult) => string) => ({ name, words: checks.map(of) })
  const ratios = (name: string, of: (check: CheckResult) => number) => ({
    name,
    kind: 'ratio' as const,
    unit: '1',
    values: Float64Array.from(checks, of),
  })
  return new Table(
    'leg.checks',
    [
      words('check', ({ id }) => id),
      words('part', ({ part }) => part),
      words('mode', ({ mode }) => mode),
      words('joint', ({ joint }) => joint ?? ''),
      words('load case', ({ caseTitle }) => caseTitle),
      words('demand', ({ demand }) => String(demand)),
      words('capacity', ({ capacity }) => String(capacity)),
      ratios('reserve', ({ reserve }) => reserve),
      ratios('required reserve', ({ requiredReserve }) => requiredReserve),
      ratios('lowest reserve', ({ range }) => range.worst),
      ratios('highest reserve', ({ range }) => range.best),
    ],
    checks.length,
  )
}
