import { line, value } from '../../run/index.js'
import { cycles } from '../load/durations.js'
import { airTemperature, moment } from '../load/fields.js'
import { layered } from '../materials/fields.js'
import { strengthInAir } from '../materials/in-air.js'
import { allowableStress } from '../materials/values.js'
import * as link from './fields.js'

/** Strength of a link along its length: across the layers where it is printed standing. */
export const strength = value('link.strength', ['link', 'event', 'air'], (use) =>
  use.at(strengthInAir[use(link.axis)], { material: use(link.material) }),
)
/** Strength against shear between its layers. */
export const shearStrength = value('link.shearStrength', ['link', 'event', 'air'], (use) =>
  use.at(strengthInAir.interlayerShear, { material: use(link.material) }),
)

const inShock = line(
  'share of the strength that a shock finds',
  { air: 'temperature', warm: 'temperature', cold: 'temperature', share: 'ratio' },
  'ratio',
  'max(0, min(1, 1 − (1 − share) · (warm − air) / (warm − cold)))',
  (x) => Math.max(0, Math.min(1, 1 - ((1 - x.share) * (x.warm - x.air)) / (x.warm - x.cold))),
)
const brittle = line.product('strength in a shock', { strength: 'stress', share: 'ratio' }, 'stress')
/** Strength that a shock finds in the air. */
export const shockStrength = value('link.shockStrength', ['link', 'event', 'air'], (use) =>
  use.run(brittle, {
    strength: use(strength),
    share: use.run(inShock, {
      air: use(airTemperature),
      warm: use(link.shockWarm),
      cold: use(link.shockCold),
      share: use(link.shockShare),
    }),
  }),
)
/** Why no shock finds the link brittle; absent where it may. */
export const notBrittle = value('link.notBrittle', ['link', 'air'], (use) => {
  if (!use.at(layered, { material: use(link.material) })) return 'the link is not printed, and metal does not turn brittle here'
  return use(airTemperature) >= use(link.shockWarm) ? 'a shock in warm air finds the whole strength' : undefined
})

const afterStrides = (id: string, direction: 'own' | 'interlayerShear') =>
  value(id, ['link', 'event', 'air'], (use) =>
    allowableStress(use, use(link.material), {
      direction: direction === 'own' ? use(link.axis) : direction,
      temperature: use(airTemperature),
      duration: use(moment),
      cycles: use(cycles),
    }),
  )
/** Strength along its length that the strides of a season leave. */
export const enduring = afterStrides('link.enduringStress', 'own')
/** The same of the shear strength between its layers. */
export const enduringShear = afterStrides('link.enduringShear', 'interlayerShear')
