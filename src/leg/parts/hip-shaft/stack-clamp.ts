import { roundSection } from '../../../structures/index.js'
import { temperatureRise } from '../../lines.js'
import { line, type Use, value } from '../../run/index.js'
import { cooledOf, grown, sinceAssembly, warmedOf } from '../bolts/clamp.js'
import { boltModulus } from '../bolts/fields.js'
import { airTemperature, assemblyTemperature, season } from '../load/fields.js'
import { steel } from '../materials/fields.js'
import { timeKept } from '../materials/since-assembly.js'
import { creepCoefficient, modulus, thermalExpansion } from '../materials/values.js'
import * as shaft from './fields.js'
import { clampLeft, innerDiameter, material, outerDiameter } from './stack-fields.js'
import { stackPreload } from './stack-tightening.js'

const leftOf = line(
  'clamp load left of the stack',
  { preload: 'force', share: 'ratio', season: 'ratio', since: 'ratio' },
  'force',
  'preload · share · season / since',
  (x) => (x.preload * x.share * x.season) / x.since,
)
const differenceOf = line(
  'growth of the stack beyond that of its shaft, over its length',
  { expansion: 'thermalExpansion', ofShaft: 'thermalExpansion', rise: 'temperatureDifference' },
  'strain',
  '(expansion − ofShaft) · rise',
  (x) => (x.expansion - x.ofShaft) * x.rise,
)
const rigidityOf = line.product('axial rigidity', { modulus: 'modulus', area: 'area' }, 'axialRigidity')
const changeOf = line(
  'clamp load that the change of temperature adds to the stack',
  { growth: 'strain', shaft: 'axialRigidity', ring: 'axialRigidity' },
  'force',
  'growth / (1 / shaft + 1 / ring)',
  (x) => x.growth / (1 / x.shaft + 1 / x.ring),
)

/** Strain of the stack under its clamp load over the strain at once, after a time in ordinary air. */
function grownIn(use: Use<never>, time: number): number {
  const ring = use(material)
  return grown(use, ring, timeKept(use, ring, time))
}
/**
 * Clamp load that is left in ordinary air: the share of the document by the end of a season, and what creep takes of that until a year. In a stiff shaft the clamp load falls as
 * much as the strain of the stack grows.
 */
const inOrdinaryAir = value('stack.clampInOrdinaryAir', ['age'], (use) => {
  const creeps = use.at(creepCoefficient, { material: use(material) }) > 0
  return use.run(leftOf, {
    preload: use(stackPreload),
    share: use(clampLeft),
    season: creeps ? grownIn(use, use(season)) : 1,
    since: creeps ? grownIn(use, use(sinceAssembly)) : 1,
  })
})
/** Clamp load that the air adds, as if all parts of the stack were as its ring: of its material and size. Lengths cancel. */
const change = value('stack.clampChange', ['air'], (use) => {
  const ring = use(material)
  return use.run(changeOf, {
    growth: use.run(differenceOf, {
      expansion: use.at(thermalExpansion, { material: ring }),
      ofShaft: use.at(thermalExpansion, { material: use(steel) }),
      rise: use.run(temperatureRise, { air: use(airTemperature), assembly: use(assemblyTemperature) }),
    }),
    shaft: use.run(rigidityOf, {
      modulus: use(boltModulus),
      area: use.run(roundSection, { diameter: use(shaft.thread).diameter, holeDiameter: 0 }).area,
    }),
    ring: use.run(rigidityOf, {
      modulus: use.at(modulus, { material: ring }),
      area: use.run(roundSection, { diameter: use(outerDiameter), holeDiameter: use(innerDiameter) }).area,
    }),
  })
})
/** Clamp load of the stack that is left in an air, at an age. */
export const stackClamp = value('stack.clamp', ['air', 'age'], (use) =>
  use.run(cooledOf, { load: use(inOrdinaryAir), change: use(change) }),
)
/** Clamp load of the stack on its first day, in an air that may be warm. */
export const stackClampNew = value('stack.clampNew', ['air'], (use) =>
  use.run(warmedOf, { preload: use(stackPreload), change: use(change) }),
)
