import { calculationOf, type LegCalculation, placeOf } from '../calculation.js'
import type { LegModel } from '../leg-model.js'
import { family } from '../parts/materials/fields.js'
import type { Index, Value } from '../run/index.js'
import { keepCalculation } from '../what-if.js'
import { calculated, unlessNotDrawable } from './not-drawable.js'

/** Names of instances: a joint, an event, a bolt group. */
export type Names = { readonly [X in Index]?: string }

/** Values of a leg for its drawings, assessed or not. */
export class LegValues {
  readonly calculation: LegCalculation

  constructor(readonly leg: LegModel) {
    this.calculation = calculationOf(leg.x)
    keepCalculation(leg, this.calculation)
  }

  /** A value for instances by name. Throws `NotDrawable` where it cannot be calculated. */
  get<T, A extends Index>(of: Value<T, A>, names: Names = {}): T {
    return calculated(() => this.calculation.get(of, this.where(names) as never))
  }

  /** A value, or nothing where it cannot be calculated. */
  tried<T, A extends Index>(of: Value<T, A>, names: Names = {}): T | undefined {
    return unlessNotDrawable(
      () => this.get(of, names),
      () => undefined,
    )
  }

  /** A length in millimetres. */
  mm<A extends Index>(of: Value<number, A>, names: Names = {}): number {
    return 1000 * this.get(of, names)
  }

  /** The name of the instance that a reference stands for, such as a material. */
  named<A extends Index>(index: Index, of: Value<number, A>, names: Names = {}): string {
    return this.calculation.instances.name(index, this.get(of, names))
  }

  /** Whether a material is a metal; its surfaces in a section show no layers. */
  isMetal(material: string): boolean {
    return this.get(family, { material }) === 'metal'
  }

  /** Instances by name, with what they imply. */
  where(names: Names) {
    return this.calculation.instances.implied(placeOf(this.calculation, { leg: 'leg', ...names }))
  }

  /** Names of the instances of an index. */
  all(index: Index): readonly string[] {
    return this.calculation.instances.all(index).map((of) => this.calculation.instances.name(index, of))
  }
}
