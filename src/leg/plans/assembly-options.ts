import { type In, InputError, issue, type Quantity, quantity } from '../../units/index.js'
import { knownOptions } from '../options.js'

/** Inputs of the plan that the specification does not hold. */
export interface AssemblyOptions {
  /** Free tail at each cord end, for pulling and for another end fitting. Default 150 mm. */
  readonly tail?: In<'length'>
  /** Stretch of a new braid that stays once it has been loaded. Default 1 %; measure yours. */
  readonly beddingStrain?: In<'strain'>
  /**
   * Depth of the threads in the motor, measured down to the first thing that a screw may not touch. Default: `tapDepth` of the motor, and one and a half
   * diameters without it.
   */
  readonly motorThreadDepth?: In<'length'>
}

export const ASSEMBLY_OPTIONS = ['tail', 'beddingStrain', 'motorThreadDepth'] as const

/** Options of a plan that were read. */
export interface ReadOptions {
  readonly tail: Quantity<'length'>
  readonly bedding: Quantity<'strain'>
  readonly depth: Quantity<'length'> | undefined
}

/** Options of a plan, read and checked. */
export function optionsOf(options: AssemblyOptions): ReadOptions {
  knownOptions('assemblyPlan', options, ASSEMBLY_OPTIONS)
  const tail = quantity('length', options.tail ?? '150 mm')
  const bedding = quantity('strain', options.beddingStrain ?? '1 %')
  const depth = options.motorThreadDepth === undefined ? undefined : quantity('length', options.motorThreadDepth)
  const bad = [
    ...(tail.si >= 0 ? [] : [issue('tail', tail, 'must not be negative')]),
    ...(bedding.si >= 0 ? [] : [issue('beddingStrain', bedding, 'must not be negative')]),
    ...(depth === undefined || depth.si > 0 ? [] : [issue('motorThreadDepth', depth, 'must be above zero')]),
  ]
  if (bad.length > 0) throw new InputError('assemblyPlan', bad)
  return { tail, bedding, depth }
}
