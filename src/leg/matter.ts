import type { Material } from '../materials/index.js'
import { InputError } from '../units/index.js'
import type { End } from './numbers.js'

/** How wet the prints are. */
export type MoistureState = 'dry' | 'conditioned' | 'saturated'

/** A material as the plans use it: SI numbers at one end of its ranges. */
export interface Matter {
  readonly material: Material
  readonly modulus: number
  readonly poissonRatio: number
  readonly thermalExpansion: number
  readonly thermalConductivity: number
  /** The same through the layers of a print; of a metal as along them. */
  readonly conductivityAcrossLayers: number
  /** Glass transition, or the service limit where the material has no glass transition to mind. */
  readonly softening: number
  readonly softeningKind: 'glassTransition' | 'service'
  readonly creepCoefficient: number
  readonly creepExponent: number
  readonly frictionOnSteel: number
  /** Linear growth by the water it holds. */
  readonly swelling: number
  readonly strainLimit: number
}

type Kept = { [E in End]: { [M in MoistureState]?: Matter } }
const kept = new WeakMap<Material, Kept>()

/** The numbers of a material; made once for each end of the ranges and moisture. */
export function matterOf(material: Material, end: End, moisture: MoistureState): Matter {
  let states = kept.get(material)
  if (states === undefined) {
    states = { pessimistic: {}, typical: {}, optimistic: {} }
    kept.set(material, states)
  }
  states[end][moisture] ??= make(material, end, moisture)
  return states[end][moisture]
}

function make(material: Material, end: End, moisture: MoistureState): Matter {
  const worst = end === 'pessimistic' ? 'low' : end === 'optimistic' ? 'high' : 'typical'
  const least = (
    name: 'thermalConductivity' | 'thermalConductivityAcrossLayers' | 'frictionOnSteel' | 'serviceTemperature' | 'strainLimit',
    otherwise: number,
  ) => {
    const property = material[name]
    return property === undefined ? otherwise : worst === 'typical' ? property.si : property[worst]
  }
  const most = (name: 'creepCoefficient', otherwise: number) => {
    const property = material[name]
    if (property === undefined) return otherwise
    return worst === 'typical' ? property.si : worst === 'low' ? property.high : property.low
  }
  const metal = material.family === 'metal'
  const amorphous = material.family === 'amorphous' && material.strengthCurve === undefined
  const transition = material.glassTransitionTemperature
  const softening =
    amorphous && transition !== undefined
      ? worst === 'typical'
        ? transition.si
        : transition[worst]
      : least('serviceTemperature', Number.POSITIVE_INFINITY)
  const water = moisture === 'dry' ? 0 : (moisture === 'conditioned' ? material.moistureConditioned : material.moistureSaturated)?.si
  return {
    material,
    modulus: (material.modulus?.si ?? Number.NaN) * wetModulus(material, moisture),
    poissonRatio: material.poissonRatio?.si ?? 0.38,
    thermalExpansion: material.thermalExpansion?.si ?? 0,
    thermalConductivity: least('thermalConductivity', Number.NaN),
    conductivityAcrossLayers: least('thermalConductivityAcrossLayers', least('thermalConductivity', Number.NaN)),
    softening,
    softeningKind: amorphous ? 'glassTransition' : 'service',
    creepCoefficient: metal ? 0 : most('creepCoefficient', 0),
    creepExponent: metal ? 0 : (material.creepExponent?.si ?? 0),
    frictionOnSteel: least('frictionOnSteel', 0.15),
    swelling: (water ?? 0) * (material.moistureSwelling?.si ?? 0),
    strainLimit: least('strainLimit', Number.NaN),
  }
}

const wetModulus = (material: Material, moisture: MoistureState): number =>
  moisture === 'dry' ? 1 : ((moisture === 'conditioned' ? material.modulusConditionedRatio : material.modulusSaturatedRatio)?.si ?? 1)

/** A typical value that a material must have. Throws an `InputError` that names it where the material has none. */
export function known(material: Material, property: 'density' | 'specificHeat'): number {
  const value = material[property]
  if (value === undefined)
    throw new InputError('leg', [
      { path: `${material.name}.${property}`, given: 'nothing', accepts: 'must be there: give it under materials' },
    ])
  return value.si
}
