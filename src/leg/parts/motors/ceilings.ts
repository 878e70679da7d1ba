import { constant } from '../../run/index.js'

/** The temperature that stands for a motor without a steady one: every correlation ends below it. */
export const ceiling = constant('motor.ceiling', {
  title: 'highest temperature of a motor mount, and of the mean of its winding, in the calculation',
  kind: 'temperature',
  typical: 700,
  source: { level: 'assumption', where: 'a mount this hot is beyond every correlation here, and no insulation bears it' },
})
/** The same for the hottest phase of its winding, which is hotter than the mount. */
export const windingCeiling = constant('motor.windingCeiling', {
  title: 'highest temperature of a winding in the calculation',
  kind: 'temperature',
  typical: 1000,
  source: { level: 'assumption', where: 'a winding this hot has lost its insulation long before' },
})
