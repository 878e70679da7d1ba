import { Property, type Source } from '../formula/index.js'
import { InputError, refuse } from '../units/index.js'
import type { LoadDirection, MoistureState } from './conditions.js'
import { weakest } from './evidence.js'
import { type Material, requireProperty } from './record.js'

/** The properties an allowable stress is made of, each with its range and source. */
export interface StrengthParts {
  readonly strength: Property<'stress'>
  readonly direction: Property<'ratio'>
  readonly moisture: Property<'ratio'>
  readonly kept1000Hours: Property<'ratio'>
  readonly kept1Year: Property<'ratio'>
  readonly fatigueRatio: Property<'ratio'> | undefined
  readonly activation: Property<'activationEnergy'> | undefined
}

const unity = (reason: string): Property<'ratio'> => new Property(1, 'ratio', 1, 1, { level: 'commonPractice', where: reason }, reason)

const VON_MISES: Source = { level: 'commonPractice', where: 'shear yield 0.577 of tensile yield (von Mises)' }

/** Whether a part is built of layers, so that direction matters. */
export const isLayered = ({ process, family }: Material): boolean =>
  process === 'fusedFilament' || (process === 'sintered' && family !== 'magnet')

/** Whether a material neither creeps nor takes up water at the temperatures of a leg. */
export const isRigid = ({ family }: Material): boolean => family === 'metal' || family === 'magnet'

function directionShare(where: string, material: Material, direction: LoadDirection): Property<'ratio'> {
  if (material.family === 'adhesive') return unity('an adhesive has no layers; shear starts from its shear strength')
  if (direction === 'alongLayers') return unity('along the layers')
  if (!isLayered(material)) {
    return direction === 'acrossLayers'
      ? unity('no layers: the same in every direction')
      : new Property(0.577, 'ratio', 0.5, 0.6, VON_MISES, 'no layers: shear from tension')
  }
  const across = requireProperty(where, material, 'acrossLayersRatio')
  if (direction === 'acrossLayers') return across
  const shear = requireProperty(where, material, 'interlayerShearRatio')
  const high = across.high * shear.high
  if (high > 1)
    throw new InputError(where, [
      {
        path: 'material.interlayerShearRatio',
        given: `${shear} (to ${shear.highest}), times acrossLayersRatio to ${across.highest}`,
        accepts: 'layers cannot be stronger in shear than the material along them: the product must be at most 1',
      },
    ])
  const source = weakest([across.source, shear.source])
  return new Property(across.si * shear.si, 'ratio', across.low * shear.low, high, source, 'shear between layers')
}

function moistureShare(where: string, material: Material, moisture: MoistureState): Property<'ratio'> {
  if (moisture === 'dry') return unity('dry')
  if (isRigid(material)) return unity('takes up no water')
  return requireProperty(where, material, moisture === 'conditioned' ? 'strengthConditionedRatio' : 'strengthSaturatedRatio')
}

function startingStrength(where: string, material: Material, direction: LoadDirection): Property<'stress'> {
  if (material.family === 'metal') return requireProperty(where, material, 'yieldStrength')
  if (material.family !== 'adhesive') return requireProperty(where, material, 'tensileStrength')
  if (direction === 'interlayerShear') return requireProperty(where, material, 'shearStrength')
  if (material.tensileStrength === undefined && material.shearStrength !== undefined)
    refuse(where, 'direction', direction, `must be 'interlayerShear': ${material.name} is rated in shear only`)
  return requireProperty(where, material, 'tensileStrength')
}

/** The properties that lead to an allowable stress; throws an `InputError` that names one the table lacks. */
export function strengthParts(
  where: string,
  material: Material,
  direction: LoadDirection,
  moisture: MoistureState,
  cyclic: boolean,
): StrengthParts {
  const rigid = isRigid(material)
  if (cyclic && rigid) {
    refuse(
      where,
      'cycles',
      material.name,
      'metals need the size, finish and mean stress of the part: use partEnduranceLimit and goodmanSafetyFactor',
    )
  }
  return {
    strength: startingStrength(where, material, direction),
    direction: directionShare(where, material, direction),
    moisture: moistureShare(where, material, moisture),
    kept1000Hours: rigid ? unity('metals do not creep at these temperatures') : requireProperty(where, material, 'strengthKept1000Hours'),
    kept1Year: rigid ? unity('metals do not creep at these temperatures') : requireProperty(where, material, 'strengthKept1Year'),
    fatigueRatio: cyclic ? requireProperty(where, material, 'fatigueRatio') : undefined,
    activation: rigid ? undefined : material.activationEnergy,
  }
}
