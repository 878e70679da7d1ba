import { bare } from '../../../formula/index.js'
import { type Heat, heatOf } from '../../cases/heat.js'
import { word } from '../../leaves.js'
import { type Joint, prepare } from '../../numbers.js'
import { value } from '../../run/index.js'
import { airTemperature, heating, wind } from '../load/fields.js'
import { heldFor } from '../load/values.js'
import { jointMotion } from '../motion/values.js'

/** The leg as the heat balance takes it, until the balance itself is made of values. */
const prepared = word('bridge.prepared', [], (x) => prepare(x))

/** Motor, mount and currents of a joint in an event. */
export const heat = value('motor.heat', ['joint', 'event', 'air'], (use, at): Heat => {
  const motion = use(jointMotion)
  return heatOf(use(prepared), bare, {
    joint: use.nameOf('joint', at.joint) as Joint,
    motion,
    air: use(airTemperature),
    wind: use(wind),
    heating: use(heating),
    heldFor: use(heldFor),
  })
})
