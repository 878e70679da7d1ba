import { motorWarmUp } from '../../thermal/index.js'
import { calculationOf, type LegCalculation, placeOf } from '../calculation.js'
import type { LegNumbers } from '../leg-numbers.js'
import type { DrivenJoint } from '../numbers.js'
import { airTemperature, coolingFactor, stallTime, surroundings } from '../parts/load/fields.js'
import { mass } from '../parts/motors/fields.js'
import { cooling, store } from '../parts/plates/values.js'

/** A moment of a heating run: copper loss until the next moment, and the air. */
export interface HeatingMoment {
  readonly time: number
  readonly loss: number
  readonly air: number
}

type Law = typeof cooling.holds

/** Factors whose laws are kept: that of the fit, and a step to either side. */
const KEPT_LAWS = 3

/** Predicts the mounting face of a motor over a heating run in still air, from its first temperature on. */
export class HeatingRun {
  readonly #calculation: LegCalculation
  readonly #here: never
  readonly #surroundings: number | undefined
  /** Laws of cooling by cooling factor and air: a fit moves the factor in one of its many parameters only. */
  readonly #laws = new Map<number, Map<number, Law>>()

  constructor(x: LegNumbers, joint: DrivenJoint) {
    this.#calculation = calculationOf(x)
    const { instances } = this.#calculation
    this.#here = instances.implied(placeOf(this.#calculation, { joint, event: 'stall', air: 'normalStill' })) as never
    this.#surroundings = x.environment.surroundings
  }

  /** Temperatures of the mounting face at the moments of the run. */
  temperatures(factor: number, specificHeat: number, moments: readonly HeatingMoment[], initial: number): number[] {
    const [calculation, here] = [this.#calculation, this.#here]
    // The store answers as the plate does over the whole run.
    const whole = (moments.at(-1)?.time ?? 0) - (moments[0]?.time ?? 0)
    if (moments.length < 2) return moments.map(() => initial)
    calculation.set(coolingFactor, here, factor)
    calculation.set(stallTime, here, whole)
    const { capacity: storeCapacity, conductance: storeConductance } = calculation.get(store, here)
    const capacity = calculation.get(mass, here) * specificHeat
    let [mount, inStore] = [initial, initial]
    const laws = this.#lawsFor(factor)
    return moments.map(({ time, air }, i) => {
      const from = moments[i - 1]
      if (from === undefined) return mount
      const after = motorWarmUp.si({
        otherLoss: from.loss,
        initial: mount,
        initialStore: inStore,
        ...this.#lawAt(air, laws),
        capacity,
        storeCapacity,
        storeConductance,
        time: time - from.time,
      })
      mount = after.mount
      inStore = after.store
      return mount
    })
  }

  #lawsFor(factor: number): Map<number, Law> {
    const laws = this.#laws.get(factor) ?? new Map<number, Law>()
    // The last used stands last.
    this.#laws.delete(factor)
    this.#laws.set(factor, laws)
    for (const old of this.#laws.keys()) if (this.#laws.size > KEPT_LAWS) this.#laws.delete(old)
    return laws
  }

  #lawAt(air: number, laws: Map<number, Law>): Law {
    const known = laws.get(air)
    if (known !== undefined) return known
    const [calculation, here] = [this.#calculation, this.#here]
    calculation.set(airTemperature, here, air)
    calculation.set(surroundings, here, this.#surroundings ?? air)
    const law = calculation.get(cooling, here)
    laws.set(air, law)
    return law
  }
}
