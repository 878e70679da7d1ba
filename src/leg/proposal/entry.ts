import type { Judge, JudgedLeg } from './judge.js'
import type { LegStock } from './stock.js'

/** A stock with its judge and the best leg found of it. */
export interface Entry {
  readonly stock: LegStock
  readonly judge: Judge
  readonly judged: JudgedLeg
}
