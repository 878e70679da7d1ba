import { type In, type Kind, quantity, type UnitOf, unitNames } from '../../units/index.js'
import type { LegModel } from '../leg-model.js'
import type { DrivenJoint } from '../numbers.js'
import { rangesOf } from './column-ranges.js'
import { implausibleRows, inUnitNumber } from './examine-log.js'
import { fitTogether, type Part, valueIn } from './fit.js'
import { estimatesIn } from './found.js'
import { isWhole, measuredJoints } from './measured-joints.js'
import { COLUMNS, type MeasurementId } from './measurements.js'
import type { LogModel, Rows } from './model.js'
import { distanceOf, expectationOf, implausible } from './priors.js'
import { withoutSpikes } from './spikes.js'

/** An ordinary slip: what it is, and the rows without it. */
interface Slip {
  readonly what: string
  readonly undone: (rows: Rows) => Rows
  /** The log is of the other joint. */
  readonly otherJoint?: boolean
}

/** Units that are mixed up, by kind. */
const UNITS: Readonly<Partial<Record<Kind, readonly string[]>>> = {
  force: ['N', 'kN', 'kgf', 'gf', 'lbf'],
  torque: ['N m', 'N mm', 'N cm', 'kgf cm', 'lbf in'],
  angle: ['deg', 'rad', 'turn'],
  time: ['s', 'min', 'h', 'day'],
  length: ['mm', 'm', 'cm', 'in'],
  temperature: ['degC', 'K', 'degF'],
  voltage: ['V', 'mV'],
  current: ['A', 'mA'],
  peakPhaseCurrent: ['A', 'mA'],
}

const changed = (column: number, change: (x: number) => number) => (rows: Rows) =>
  rows.map((row) => row.map((x, i) => (i === column ? change(x) : x)))

function slipsOf(id: MeasurementId, units: readonly string[]): Slip[] {
  const columns = COLUMNS[id]
  const inOtherUnit = columns.flatMap(({ name, kind }, column): Slip[] =>
    (UNITS[kind] ?? [])
      .filter((unit) => unit !== units[column] && (unitNames(kind) as readonly string[]).includes(unit))
      .map((unit) => ({
        what: `the numbers of ${name} are in ${unit}, not in ${units[column]}`,
        undone: changed(
          column,
          (si) => quantity(kind, [inUnitNumber(kind, units[column]!, si), unit as UnitOf<Kind>] as unknown as In<Kind>).si,
        ),
      })),
  )
  const swapped = columns.flatMap((column, a) =>
    columns.slice(a + 1).flatMap((other, k): Slip[] => {
      const b = a + 1 + k
      if (column.kind !== other.kind) return []
      return [
        {
          what: `the columns ${column.name} and ${other.name} are swapped`,
          undone: (rows) => rows.map((row) => row.map((x, i) => (i === a ? row[b]! : i === b ? row[a]! : x))),
        },
      ]
    }),
  )
  const signs = columns.flatMap(({ name, kind }, column): Slip[] =>
    kind === 'torque' || kind === 'angle' ? [{ what: `the sign of ${name} is flipped`, undone: changed(column, (x) => -x) }] : [],
  )
  const current = columns.flatMap(({ name, kind }, column): Slip[] =>
    kind === 'peakPhaseCurrent'
      ? [
          { what: `${name} holds rms values`, undone: changed(column, (x) => x * Math.SQRT2) },
          { what: `${name} holds values from peak to peak`, undone: changed(column, (x) => x / 2) },
        ]
      : [],
  )
  const decimals = columns.flatMap(({ name }, column): Slip[] =>
    columns[column]?.kind === 'temperature' || columns[column]?.kind === 'time'
      ? []
      : [10, 0.1].map((factor) => ({
          what: `${name} has its decimal point in the wrong place`,
          undone: changed(column, (x) => x * factor),
        })),
  )
  const joint: Slip[] =
    id === 'windup' || id === 'pretension' || id === 'beltPitch'
      ? [{ what: 'the log is of the other joint', undone: (rows) => rows, otherJoint: true }]
      : []
  return [...swapped, ...current, ...signs, ...inOtherUnit, ...joint, ...decimals]
}

/** Explanations of an implausible log. */
export interface Suspect {
  readonly leg: LegModel
  readonly id: MeasurementId
  readonly joint: DrivenJoint
  readonly rows: Rows
  readonly kept: readonly boolean[]
  readonly units: readonly string[]
  /** The model of the log for a joint. */
  readonly modelFor: (joint: DrivenJoint) => LogModel | undefined
}

/** Slips that bring all fields of a log into what is expected of them, the nearest first; three at most. */
export function explanationsOf({ leg, id, joint, rows, kept, units, modelFor }: Suspect): string[] {
  const found: { what: string; far: number }[] = []
  for (const { what, undone, otherJoint } of slipsOf(id, units)) {
    const at = otherJoint === true ? (joint === 'hip' ? 'knee' : 'hip') : joint
    if (!isWhole(id) && !measuredJoints(leg.x, id).includes(at)) continue
    const model = modelFor(at)
    const without = undone(rows)
    if (model === undefined || implausibleRows(leg, id, at, rangesOf(leg, id, at), without, units) !== undefined) continue
    const far = distanceAfter(leg, model, ...thinned(without, kept))
    if (far !== undefined) found.push({ what, far })
  }
  // Of slips that explain it well the commoner one comes first, which is their order.
  return found
    .sort((a, b) => Math.max(1, a.far) - Math.max(1, b.far))
    .slice(0, 3)
    .map(({ what }) => what)
}

/** The largest distance of a field from what is expected, with a quick fit; absent where one is too far. */
function distanceAfter(leg: LegModel, model: LogModel, rows: Rows, kept: readonly boolean[]): number | undefined {
  const read = rows.map(model.measured)
  const scatter = Array.from({ length: model.channels }, (_, c) => {
    const values = read.map((row) => row[c]!)
    return Math.max(0.02 * (Math.max(...values) - Math.min(...values)), 1e-6 * Math.max(...values.map(Math.abs)), 1e-12)
  })
  const part: Part = { model, rows, kept, scatter }
  let fit: ReturnType<typeof fitTogether>
  try {
    const first = fitTogether([part], undefined, QUICK_ITERATIONS)
    const channels = scatter.map((closest, c) => ({
      deviations: rows.map((_, i) => first.differences[0]![i * model.channels + c] as number),
      closest,
    }))
    const stay = withoutSpikes('', [], kept, channels, [], {})
    fit = stay === kept ? first : fitTogether([{ ...part, kept: stay }], first, QUICK_ITERATIONS)
  } catch {
    return undefined
  }
  let far: number | undefined
  for (const { path, interval } of estimatesIn(fit, [part])) {
    // What the log does not determine speaks neither for nor against a slip.
    if (interval === undefined) continue
    const expected = expectationOf(leg, path)
    const value = valueIn(fit, path)
    if (implausible(expected, value) !== undefined) return undefined
    far = Math.max(far ?? 0, distanceOf(expected, value))
  }
  return far
}

/** Iterations of a quick fit. */
const QUICK_ITERATIONS = 40
/** A dozen rows say enough of a long run. */
const ENOUGH_ROWS = 12
function thinned(rows: Rows, kept: readonly boolean[]): [Rows, readonly boolean[]] {
  // A path of loads needs every step; runs over time are longer, and do not.
  if (rows.length <= 2 * ENOUGH_ROWS) return [rows, kept]
  const every = Math.ceil(rows.length / ENOUGH_ROWS)
  return [rows.filter((_, i) => i % every === 0), kept.filter((_, i) => i % every === 0)]
}
