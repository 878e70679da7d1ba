import { bare, type Evaluator } from '../formula/index.js'
import { type StrengthNumbers, strengthSi } from '../materials/index.js'

/** Answers kept for each strength: the load cases of a leg ask about a dozen things of one material, and most legs of a sweep ask the same. */
const MOST_KEPT = 32
/** Temperature, duration, cycles and the answer. */
const WIDTH = 4

/** The strength of a material in one direction, at one end of its ranges and in one state of moisture. */
export class Strength {
  #kept: Float64Array | undefined
  #next = 0

  constructor(readonly numbers: StrengthNumbers) {}

  /** What it bears at a temperature for a time, and after so many cycles (1 is a static load), Pa. */
  at(of: Evaluator, temperature: number, duration: number, cycles = 1): number {
    if (of !== bare) return strengthSi(this.numbers, temperature, duration, cycles, 1, of)
    this.#kept ??= new Float64Array(MOST_KEPT * WIDTH).fill(Number.NaN)
    const kept = this.#kept
    for (let i = 0; i < MOST_KEPT * WIDTH; i += WIDTH)
      if (kept[i] === temperature && kept[i + 1] === duration && kept[i + 2] === cycles) return kept[i + 3] as number
    const stress = strengthSi(this.numbers, temperature, duration, cycles, 1)
    const at = this.#next
    kept[at] = temperature
    kept[at + 1] = duration
    kept[at + 2] = cycles
    kept[at + 3] = stress
    this.#next = (at + WIDTH) % kept.length
    return stress
  }
}
