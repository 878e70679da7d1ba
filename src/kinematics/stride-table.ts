import { type Given, type Inputs, readInputs } from '../formula/index.js'
import { Quantity, refuse } from '../units/index.js'
import type { NotWalkable } from './stride-demand.js'
import { at, STANCE, StrideFollower, TIME } from './stride-follower.js'
import { partsOf, STRIDE, type StrideParts, strideInputs } from './stride-inputs.js'
import { vectorOf } from './vectors.js'

const SPECIFICATION = {
  ...STRIDE,
  /** Rows for each second. Default: 1 kHz. */
  rate: { kind: 'frequency', above: 0, default: '1 kHz' },
} as const satisfies Inputs

/** A stride to be written as a table: as in `strideDemand`, without drives, at a fixed rate. Default: 1 kHz. */
export interface StrideTableSpecification extends Given<typeof SPECIFICATION>, StrideParts {}

const JOINTS = ['sideways hip', 'hip', 'knee'] as const
const AXES = ['x', 'y', 'z'] as const
const COLUMNS = [
  ['foot', 'foot', 'm', AXES],
  ['jointAngle', 'joint angle', 'rad', JOINTS],
  ['actuatorAngle', 'drum angle', 'rad', JOINTS],
  ['actuatorRate', 'drum rate', 'rad/s', JOINTS],
  ['actuatorTorque', 'drum torque', 'N m', JOINTS],
  ['groundReaction', 'force of the ground', 'N', AXES],
] as const

/** A stride as a table: one row a tick. */
export interface StrideTable {
  readonly walkable: true
  /** Names of the columns with their units, such as `drum angle knee [rad]`. */
  readonly columns: readonly string[]
  /** Rows of plain numbers in those units. */
  readonly rows: readonly (readonly number[])[]
  /** Time between rows. */
  readonly step: Quantity<'time'>
  /** The table as comma-separated values, one header line, nine significant digits. */
  csv(): string
}

const MAX_ROWS = 1_000_000

/**
 * One stride at a fixed rate, for a controller: time, stance, foot, joint angles, drum angles, drum rates and torques, force of the ground. The first row
 * is touch-down; the row after the last would be the first of the next stride only if the period is a whole number of ticks, so other periods throw an
 * `InputError` that names the nearest rate.
 */
export function strideTable(given: StrideTableSpecification): StrideTable | NotWalkable {
  const where = 'kinematics.strideTable'
  const { parts, rest } = partsOf(where, given)
  const spec = readInputs(where, SPECIFICATION, rest)
  const follower = new StrideFollower(strideInputs(where, parts, spec))
  const { period } = parts.path.si
  const ticks = Math.round(period * spec.rate)
  if (ticks < 1 || ticks > MAX_ROWS)
    refuse(where, 'rate', String(new Quantity(spec.rate, 'frequency')), `must give from 1 to ${MAX_ROWS} rows a stride`)
  if (Math.abs(ticks - period * spec.rate) > 1e-6 * ticks)
    refuse(
      where,
      'rate',
      String(new Quantity(spec.rate, 'frequency')),
      `must divide the stride into whole ticks, such as ${new Quantity(ticks / period, 'frequency')}`,
    )
  const rows: number[][] = []
  for (let i = 0; i < ticks; i++) {
    const row = follower.rowAt((i * period) / ticks, 0)
    if ('reason' in row)
      return { walkable: false, reason: row.reason, time: new Quantity(row.timeSi, 'time'), foot: vectorOf('length', row.foot) }
    rows.push([row[TIME]!, row[STANCE]!, ...COLUMNS.flatMap(([name]) => Array.from(row.subarray(at(name), at(name) + 3)))])
  }
  const columns = ['time [s]', 'stance [0 or 1]', ...COLUMNS.flatMap(([, name, unit, of]) => of.map((part) => `${name} ${part} [${unit}]`))]
  return {
    walkable: true,
    columns,
    rows,
    step: new Quantity(period / ticks, 'time'),
    csv: () =>
      [columns, ...rows.map((row) => row.map((x) => String(Number(x.toPrecision(9)))))].map((line) => `${line.join(',')}\n`).join(''),
  }
}
