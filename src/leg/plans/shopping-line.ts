/** One line of the shopping list. */
export interface ShoppingLine {
  /** Article. */
  readonly item: string
  /** Its size, as a shop lists it. */
  readonly size: string
  /** How much of it. */
  readonly quantity: string
  /** Its purpose. */
  readonly remark: string
}
