import { type In, type Kind, Quantity, quantity, significant, type UnitOf } from '../../units/index.js'
import type { LegModel } from '../leg-model.js'
import type { DrivenJoint, Joint } from '../numbers.js'
import { springLawOf } from '../parallel-torque.js'
import { springTorqueAt } from '../parts/springs/law.js'
import { type ColumnRange, rangesOf } from './column-ranges.js'
import { copiesIn } from './copies.js'
import type { LogRemark, ReadLog } from './logs.js'
import { COLUMNS, type MeasurementId } from './measurements.js'
import type { Rows } from './model.js'

/** A log whose rows were looked at: what is left of it, or why none of it is believed. */
export interface ExaminedLog {
  readonly rows: Rows
  readonly lines: readonly number[]
  /** Rows that count as readings: copies of earlier rows do not. */
  readonly kept: readonly boolean[]
  readonly refusal: { readonly what: 'implausible' | 'wrong file'; readonly message: string } | undefined
}

/** Looks at the rows of a log: wrong file, columns outside what can be, contradictions between columns, copied rows. */
export function examineLog(
  leg: LegModel,
  log: string,
  id: MeasurementId,
  joint: DrivenJoint,
  read: ReadLog,
  remarks: LogRemark[],
): ExaminedLog {
  const file = wrongFile(log, read)
  const ranges = rangesOf(leg, id, joint)
  const cannotBe = implausibleRows(leg, id, joint, ranges, read.rows, read.units)
  const refusal =
    file !== undefined
      ? ({ what: 'wrong file', message: file } as const)
      : cannotBe === undefined
        ? undefined
        : ({ what: 'implausible', message: cannotBe } as const)
  const good = read.rows.map((row) => outside(ranges, row) === undefined)
  if (refusal === undefined)
    for (const [i, row] of read.rows.entries()) {
      const column = outside(ranges, row)
      if (column !== undefined)
        remarks.push({
          log,
          line: read.lines[i],
          what: 'implausible',
          message: `${COLUMNS[id][column]!.name}: ${inUnit(id, column, read.units, row[column]!)} cannot be; ${rangeText(id, column, read.units, ranges[column]!)} can; row left out`,
        })
    }
  const rows = refusal === undefined ? read.rows.filter((_, i) => good[i]) : read.rows
  const lines = refusal === undefined ? read.lines.filter((_, i) => good[i]) : read.lines
  // Readings of one column are one thing read again and again: a display of coarse steps shows the same.
  const copies = copiesIn(rows, COLUMNS[id].length === 1)
  for (const i of copies)
    remarks.push({ log, line: lines[i], what: 'duplicate', message: 'the same as an earlier row, with its neighbours; it counts once' })
  return { rows, lines, kept: rows.map((_, i) => !copies.has(i)), refusal }
}

/** Why a file is not the log that it was given as: what its comments say. */
export function wrongFile(log: string, { notes }: Pick<ReadLog, 'notes'>): string | undefined {
  const said = notes.find(({ key }) => key === 'log')
  if (said !== undefined && said.value.replaceAll(/\s+/g, ' ') !== log)
    return `line ${said.line} of the file says that it is the log ${said.value}, but it was given as ${log}`
  const joint = notes.find(({ key }) => key === 'joint')
  if (joint !== undefined && !log.endsWith(` ${joint.value}`))
    return `line ${joint.line} of the file says that it is of the ${joint.value}, but it was given as ${log}`
  return undefined
}

const outside = (ranges: readonly ColumnRange[], row: readonly number[]): number | undefined => {
  const at = ranges.findIndex(({ low, high, whole }, i) => whole !== true && !(row[i]! >= low && row[i]! <= high))
  return at < 0 ? undefined : at
}

/** Why most rows cannot be; absent where they can. */
export function implausibleRows(
  leg: LegModel,
  id: MeasurementId,
  joint: DrivenJoint,
  ranges: readonly ColumnRange[],
  rows: Rows,
  units: readonly string[],
): string | undefined {
  for (const [column, range] of ranges.entries()) {
    const first = range.fromFirst === true ? (rows[0]?.[column] ?? 0) : 0
    const values = rows.map((row) => row[column]! - first)
    const bad = values.filter((x) => !(x >= range.low && x <= range.high)).length
    if (bad > rows.length / 2 || (range.whole === true && bad > 0)) {
      const seen = [Math.min(...values), Math.max(...values)].map((x) => inUnit(id, column, units, x)).join(' to ')
      return `${COLUMNS[id][column]!.name} goes from ${seen}; only ${rangeText(id, column, units, range)} can be${range.why === undefined ? '' : ` (${range.why})`}`
    }
  }
  return pushesTheWrongWay(leg, id, joint as Joint, rows) ?? CONTRADICTIONS[id]?.(rows, units, id)
}

const most = (rows: Rows, holds: (row: readonly number[]) => boolean) => rows.filter(holds).length > rows.length / 2

/** A spring or counterweight that pushes against what the document says of it. */
function pushesTheWrongWay(leg: LegModel, id: MeasurementId, joint: Joint, rows: Rows): string | undefined {
  if (id !== 'springTorque' && id !== 'weightTorque') return undefined
  const law = id === 'springTorque' ? springLawOf(leg, joint) : undefined
  const expected = (angle: number) => (id === 'springTorque' ? springTorqueAt(law, angle) : Math.sin(angle))
  const along = rows.reduce((sum, [angle, loaded, bare]) => sum + expected(angle!) * (loaded! - bare!), 0)
  return along < 0
    ? `the ${id === 'springTorque' ? 'spring' : 'counterweight'} pushes the joint the other way than the document says: are the columns swapped, or is a sign flipped?`
    : undefined
}

type Contradiction = (rows: Rows, units: readonly string[], id: MeasurementId) => string | undefined

/** A column that falls while the other one should grow with it. */
const falling: Contradiction = (rows, _, id) => {
  const [xs, ys] = [0, 1].map((column) => rows.map((row) => row[column]!)) as [number[], number[]]
  const mean = (list: number[]) => list.reduce((sum, x) => sum + x, 0) / list.length
  const [mx, my] = [mean(xs), mean(ys)]
  return xs.reduce((sum, x, i) => sum + (x - mx) * (ys[i]! - my), 0) < 0
    ? `the ${COLUMNS[id][1]!.name} falls while the ${COLUMNS[id][0]!.name} grows: the sign of one column is flipped`
    : undefined
}

const DAY = 86_400
/** A decay that is shorter than this many days says nothing of a year. */
const SHORT_DECAY_DAYS = 3
/** A decay that grows, or whose last time is too short for the plan. */
const decaying =
  (reading: string, thing: string): Contradiction =>
  (rows, units) => {
    const [first, last] = [rows[0]!, rows.at(-1)!]
    if (last[1]! > 1.03 * first[1]!)
      return `the ${reading} grows with time, but a ${thing} only relaxes: was it tightened again, or are the columns swapped?`
    if (units[0] === 'day' || last[0]! >= SHORT_DECAY_DAYS * DAY) return undefined
    const days = inUnitNumber('time', units[0] as string, last[0]!)
    return days >= SHORT_DECAY_DAYS && days < 1200
      ? `the last reading is after ${new Quantity(last[0]!, 'time')}, which says nothing of a year; its numbers as days are the weeks of the plan: is the unit of the header wrong?`
      : undefined
  }

/** How the columns of a log can contradict each other. */
const CONTRADICTIONS: { readonly [K in MeasurementId]?: Contradiction } = {
  cordFriction: (rows) =>
    most(rows, ([slack, taut]) => taut! <= slack!) ? 'the taut tension is not above the slack one: are the columns swapped?' : undefined,
  heating: (rows) => {
    const heated = rows.filter(([, current]) => current! > 0)
    if (most(heated, ([, , winding, mount]) => winding! < mount! - 0.5))
      return 'the winding is colder than its mounting face while the current flows: are the columns swapped?'
    return most(heated, ([, , , mount, air]) => mount! < air! - 3)
      ? 'the mounting face is colder than the air while the current flows: are the columns swapped?'
      : undefined
  },
  efficiency: (rows) =>
    most(rows, ([, lifting, lowering]) => lifting! < lowering!)
      ? 'lifting takes less current than lowering: are the columns swapped?'
      : undefined,
  windup: falling,
  torqueConstant: falling,
  pretension: decaying('tension', 'cord'),
  beltPitch: decaying('pitch', 'belt'),
}

const sizeOf = (kind: Kind, unit: string, x: number) => quantity(kind, [x, unit as UnitOf<Kind>] as unknown as In<Kind>).si
/** A number in a unit of its kind, also where the unit has a zero of its own. */
export const inUnitNumber = (kind: Kind, unit: string, si: number): number => {
  const [at1, at2] = [sizeOf(kind, unit, 300), sizeOf(kind, unit, 301)]
  return 300 + (si - at1) / (at2 - at1)
}
const inUnit = (id: MeasurementId, column: number, units: readonly string[], si: number) =>
  `${significant(inUnitNumber(COLUMNS[id][column]!.kind, units[column]!, si), 4)} ${units[column]}`
const rangeText = (id: MeasurementId, column: number, units: readonly string[], { low, high }: ColumnRange) =>
  `${inUnit(id, column, units, low)} to ${inUnit(id, column, units, high)}`
