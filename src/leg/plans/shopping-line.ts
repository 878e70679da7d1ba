/** One line of the shopping list. */
export interface ShoppingLine {
  /** What to buy. */
  readonly item: string
  /** Its size, as a shop lists it. */
  readonly size: string
  /** How much of it. */
  readonly quantity: string
  /** What it is for. */
  readonly remark: string
}
