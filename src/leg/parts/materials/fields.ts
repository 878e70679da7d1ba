import { type Material, PROPERTY_KINDS, type PropertyName } from '../../../materials/index.js'
import { InputError } from '../../../units/index.js'
import { reference, word } from '../../leaves.js'
import type { LegNumbers } from '../../leg-numbers.js'
import { constant, leaf, type Names, type Value } from '../../run/index.js'
import type { OwnMaterial } from '../../schema/field.js'
import { isLayered, materialOf } from '../../schema/tables.js'

/** The record of a material of the document or the table. */
export const found = (x: LegNumbers, name: string): Material =>
  materialOf(name, x.materials as Readonly<Record<string, OwnMaterial>> | undefined)

/** Tests that replace properties of a print by values of one's own. */
const PULL_TEST = 'pull five bars of the material from your printer, lying and standing'
const MEASURED_BY: { readonly [P in PropertyName]?: string } = {
  modulus: 'bend a printed bar with known weights and measure its deflection',
  modulusConditionedRatio: 'bend a bar dry, and again after a month in its air',
  modulusSaturatedRatio: 'bend a bar dry, and again after a week in water',
  poissonRatio: 'measure width and length of a pulled bar',
  thermalExpansion: 'measure a long bar cold and warm',
  thermalConductivity: 'heat one face of a plate with known power and measure both faces',
  serviceTemperature: 'load a bar and warm it until it sags',
  creepCoefficient: 'load a bar for a week and log its deflection',
  creepExponent: 'load a bar for a week and log its deflection',
  activationEnergy: 'log the deflection of loaded bars at two temperatures',
  frictionOnSteel: 'pull a weighted print over steel with a spring balance',
  moistureConditioned: 'weigh a bar dry, and again after a month in its air',
  moistureSaturated: 'weigh a bar dry, and again after a week in water',
  moistureSwelling: 'measure a bar dry and wet',
  strainLimit: 'bend a printed strip until it whitens or tears',
}

/** The same of a metal, whose parts are cut. */
const METAL_PULL_TEST = 'pull five bars cut from the stock of the part, or take the certificate of its batch'
const METAL_MEASURED_BY: { readonly [P in PropertyName]?: string } = {
  modulus: 'bend a bar of the stock with known weights and measure its deflection',
  frictionOnSteel: 'pull a weighted piece over steel with a spring balance',
}
/** The test that replaces a strength. */
export const pulled = (material: Material): string => (isLayered(material) ? PULL_TEST : METAL_PULL_TEST)
/** The test that replaces a property of a material. */
const measuredBy = (material: Material, name: PropertyName): string =>
  (isLayered(material) ? undefined : METAL_MEASURED_BY[name]) ?? MEASURED_BY[name] ?? pulled(material)

/** A property of a material; absent where its record has none. */
const propertyOf = (name: PropertyName, title: string): Value<number | undefined, 'material'> =>
  leaf(`material.${name}`, ['material'], {
    title,
    kind: PROPERTY_KINDS[name],
    read: (x: LegNumbers, { material }: Names) => found(x, material)[name]?.si,
    range: (x: LegNumbers, { material }: Names) => {
      const property = found(x, material)[name]
      return property === undefined || property.low >= property.high
        ? undefined
        : { low: property.low, high: property.high, source: property.source, measuredBy: measuredBy(found(x, material), name) }
    },
  })

export const dryModulus = propertyOf('modulus', 'modulus of elasticity of –')
export const modulusConditionedRatio = propertyOf('modulusConditionedRatio', 'modulus of – in room air, as a share')
export const modulusSaturatedRatio = propertyOf('modulusSaturatedRatio', 'modulus of – when wet, as a share')
export const poissonRatioGiven = propertyOf('poissonRatio', 'Poisson’s ratio of –')
export const thermalExpansionGiven = propertyOf('thermalExpansion', 'thermal expansion of –')
export const thermalConductivity = propertyOf('thermalConductivity', 'thermal conductivity of –')
export const thermalConductivityAcrossLayers = propertyOf('thermalConductivityAcrossLayers', 'thermal conductivity of – across the layers')
export const glassTransition = propertyOf('glassTransitionTemperature', 'glass transition temperature of –')
export const serviceTemperature = propertyOf('serviceTemperature', 'service temperature of –')
export const creepCoefficientGiven = propertyOf('creepCoefficient', 'creep coefficient of –')
export const creepExponentGiven = propertyOf('creepExponent', 'creep exponent of –')
export const activationEnergy = propertyOf('activationEnergy', 'activation energy of the creep of –')
export const frictionOnSteelGiven = propertyOf('frictionOnSteel', 'friction of – on steel')
export const moistureConditioned = propertyOf('moistureConditioned', 'water content of – in room air')
export const moistureSaturated = propertyOf('moistureSaturated', 'water content of – when wet')
export const moistureSwelling = propertyOf('moistureSwelling', 'swelling of – over its water content')
export const strainLimit = propertyOf('strainLimit', 'strain limit of –')
export const density = propertyOf('density', 'density of –')
export const specificHeat = propertyOf('specificHeat', 'specific heat of –')

export const name = word('material.name', ['material'], (_, { material }) => material)
export const family = word('material.family', ['material'], (x, { material }) => found(x, material).family)
/** Whether parts of it are built of layers. */
export const layered = word('material.layered', ['material'], (x, { material }) => isLayered(found(x, material)))
/** Whether strength over temperature follows the amorphous rule, with its glass transition. */
export const softensAtTransition = word('material.softensAtTransition', ['material'], (x, { material }) => {
  const { family: kind, strengthCurve } = found(x, material)
  return kind === 'amorphous' && strengthCurve === undefined
})

const TABLE = { level: 'assumption', where: 'where the record of the material has none' } as const
export const poissonRatioElse = constant('material.poissonRatioElse', {
  title: 'Poisson’s ratio where the table of the material has none',
  kind: 'ratio',
  typical: 0.38,
  low: 0.3,
  high: 0.45,
  source: TABLE,
  measuredBy: 'measure width and length of a pulled bar',
})
export const frictionElse = constant('material.frictionElse', {
  title: 'friction on steel where the table of the material has none',
  kind: 'ratio',
  typical: 0.15,
  low: 0.1,
  high: 0.3,
  source: TABLE,
  measuredBy: 'pull a weighted part over steel with a spring balance',
})
export const dryAir = constant('material.dryAir', {
  title: 'relative humidity below which prints are dry',
  kind: 'ratio',
  typical: 0.35,
  source: { level: 'assumption', where: 'air this dry leaves prints dry' },
})
export const dampAir = constant('material.dampAir', {
  title: 'relative humidity above which prints are wet',
  kind: 'ratio',
  typical: 0.75,
  source: { level: 'assumption', where: 'air this damp soaks prints' },
})
/** Margin below the glass transition at which the amorphous rule gives no strength any more. */
export const transitionMargin = constant('material.transitionMargin', {
  title: 'margin below the glass transition',
  kind: 'temperatureDifference',
  typical: 15,
  source: { level: 'commonPractice', where: '15 K below the glass transition for parts that bear load for long' },
})
/** Creep data are for this temperature. */
export const creepReference = constant('material.creepReference', {
  title: 'temperature of the creep data',
  kind: 'temperature',
  typical: 296.15,
  source: { level: 'standard', where: 'ISO 291: standard atmosphere 23/50' },
})
export const steel = reference('material.steel', [], 'material', () => 'steel 12.9')

/** A property that a calculation cannot do without. */
export function needed(material: string, property: string, given: number | undefined): number {
  if (given !== undefined) return given
  throw new InputError('leg', [{ path: `${material}.${property}`, given: 'nothing', accepts: 'must be there: give it under materials' }])
}

/** Properties of the table that a leaf is made of, by its id. */
const PROPERTIES_OF_LEAF: { readonly [id: string]: readonly PropertyName[] } = {
  'material.strength': ['tensileStrength', 'yieldStrength'],
  'material.share.acrossLayers': ['acrossLayersRatio'],
  'material.share.interlayerShear': ['acrossLayersRatio', 'interlayerShearRatio'],
  'material.share.conditioned': ['strengthConditionedRatio'],
  'material.share.saturated': ['strengthSaturatedRatio'],
  'material.kept1000Hours': ['strengthKept1000Hours'],
  'material.kept1Year': ['strengthKept1Year'],
  'material.fatigueRatio': ['fatigueRatio'],
  'material.strengthTransition': ['glassTransitionTemperature'],
  'material.strengthActivation': ['activationEnergy'],
  'material.shiftEnd': ['glassTransitionTemperature'],
  'material.strengthCurve': ['serviceTemperature'],
}
/** Properties of the table that a leaf of a material is made of. */
export const propertiesOf = (id: string): readonly PropertyName[] =>
  PROPERTIES_OF_LEAF[id] ?? [id.slice('material.'.length) as PropertyName]

/** Shear yield over tensile strength (von Mises). */
export const shearShare = constant('material.shearShare', {
  title: 'shear yield strength over tensile yield strength',
  kind: 'ratio',
  typical: 0.577,
  source: { level: 'commonPractice', where: 'shear yield 0.577 of tensile yield (von Mises)' },
})
