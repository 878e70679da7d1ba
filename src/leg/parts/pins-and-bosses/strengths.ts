import { type Use, value } from '../../run/index.js'
import { strengthInAir } from '../materials/in-air.js'
import { boss } from './fields.js'

type At = Use<'joint' | 'event' | 'air'>
const longTerm = (use: At, direction: 'alongLayers' | 'acrossLayers' | 'interlayerShear') =>
  use.at(strengthInAir[direction], { material: use(boss.material) })

/** Strength of a boss along its layers for the time under load. */
export const bossStrength = value('boss.strength', ['joint', 'event', 'air'], (use) => longTerm(use, 'alongLayers'))
/** Shear strength of the boss between layers. */
export const bossInterlayerShear = value('boss.interlayerShear', ['joint', 'event', 'air'], (use) => longTerm(use, 'interlayerShear'))
/** Its strength in the direction of the hoop: across the layers where the bore lies in them. */
export const bossHoopStrength = value('boss.hoopStrength', ['joint', 'event', 'air'], (use) =>
  use(boss.axis) === 'alongLayers' ? longTerm(use, 'acrossLayers') : use(bossStrength),
)
