import { type Kind, Quantity, significant, type UnitOf } from '../../units/index.js'
import { unitSigns } from '../assess/sentence.js'
import { type Block, type Piece, table as tableOf } from '../report/blocks.js'

/** Units of a workshop where they differ from those of results: every torque in N m, so that a wrench and a table compare. */
const UNITS: { readonly [K in Kind]?: UnitOf<K> } = { torque: 'N m', torsionalDamping: 'N m s/rad' }
/** From here on a length is in millimetres, m. */
const TENTH = 0.99995e-4

const unitOf = ({ kind, si }: Quantity): string | undefined =>
  kind === 'length' && Math.abs(si) >= TENTH && Math.abs(si) < 1e-3 ? 'mm' : UNITS[kind as Kind]

/** A quantity as a workshop reads it: torque in N m, a length from a tenth of a millimetre on in millimetres, units with their signs; other values as they are. @internal */
export function shown(value: unknown): string {
  if (!(value instanceof Quantity)) return String(value)
  const unit = unitOf(value)
  return unitSigns(unit === undefined || !Number.isFinite(value.si) ? String(value) : `${significant(value.in(unit as never), 4)} ${unit}`)
}

/** Tag of a sentence whose quantities are printed as a workshop reads them. @internal */
export const phrase = (texts: TemplateStringsArray, ...values: readonly unknown[]): string =>
  String.raw({ raw: texts }, ...values.map(shown))

/** A table whose cells are printed as a workshop reads them. @internal */
export const table = (caption: string, head: readonly string[], rows: readonly (readonly unknown[])[]): Block =>
  tableOf(
    caption,
    head,
    rows.map((cells) => cells.map((cell) => (Array.isArray(cell) ? (cell as readonly Piece[]) : shown(cell)))),
  )
