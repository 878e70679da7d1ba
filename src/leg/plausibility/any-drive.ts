import type { Quantity } from '../../units/index.js'

/** Any drive: fields of every kind, absent where the kind has none. */
export interface AnyDrive {
  readonly kind?: string | undefined
  readonly cord?: string | undefined
  readonly belt?: string | undefined
  readonly pinion?: Wound | undefined
  readonly drum?: (Wound & { readonly bore?: Quantity; readonly groovePitch?: Quantity }) | undefined
  readonly anchor?: { readonly postDiameter?: Quantity; readonly postLength?: Quantity; readonly edgeDistance?: Quantity } | undefined
  readonly [quantity: string]: unknown
}
/** A pulley that cord is wound on. */
interface Wound {
  readonly grooveDiameter?: Quantity<'length'>
  readonly centreLineRadius?: Quantity<'length'>
  readonly turns?: Quantity<'count'>
  readonly length?: Quantity<'length'>
}

/** A field of a drive; absent where its kind has none. */
export const quantityOf = (drive: AnyDrive, name: string) => drive[name] as Quantity | undefined
