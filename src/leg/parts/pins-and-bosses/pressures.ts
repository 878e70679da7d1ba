import { embeddedPin, pinBearing } from '../../../fasteners/index.js'
import { shareOfStress } from '../../lines.js'
import { line, value } from '../../run/index.js'
import { strengthInAir } from '../materials/in-air.js'
import { boss, edgeSupport, eyeMaterial, leverShare, movingShare, pin } from './fields.js'
import { forceOnBoss, pinForce } from './loads.js'
import { bossStrength } from './strengths.js'

const leverArm = line(
  'arm of each half of the pin',
  { gap: 'length', share: 'ratio', lug: 'length' },
  'length',
  'gap + share · lug',
  (x) => x.gap + x.share * x.lug,
)

/** Mean pressure of a pin in its eye. */
export const eyePressure = value(
  'pin.eyePressure',
  ['joint', 'event', 'air', 'age'],
  (use) => use.run(pinBearing, { force: use(pinForce), diameter: use(pin.diameter), thickness: use(pin.lugThickness) }).projectedPressure,
)
/** Strength of an eye that turns on its pin. */
export const eyeStrength = value('pin.eyeStrength', ['joint', 'event', 'air'], (use) => {
  const strength = use.at(strengthInAir.alongLayers, { material: use(eyeMaterial) })
  return use.run(shareOfStress, { share: use(movingShare), strength })
})

/** Mean pressure in the boss that bears more. */
export const bossPressure = value(
  'boss.pressure',
  ['joint', 'event', 'air', 'age'],
  (use) => use.run(pinBearing, { force: use(forceOnBoss), diameter: use(pin.diameter), thickness: use(boss.engagement) }).projectedPressure,
)
/** Pressure at the mouth of a boss. */
export const mouthPressure = value(
  'boss.mouthPressure',
  ['joint', 'event', 'air', 'age'],
  (use) =>
    use.run(embeddedPin, {
      force: use(forceOnBoss),
      arm: use.run(leverArm, { gap: use(pin.gap), share: use(leverShare), lug: use(pin.lugThickness) }),
      depth: use(boss.engagement),
      diameter: use(pin.diameter),
    }).mouthPressure,
)
/** Strength of the edge at the mouth of a boss. */
export const mouthStrength = value('boss.mouthStrength', ['joint', 'event', 'air'], (use) =>
  use.run(shareOfStress, { share: use(edgeSupport), strength: use(bossStrength) }),
)
