import { nutInPocket, preloadAtUtilisation, tighteningTorque } from '../../../fasteners/index.js'
import { type Of, value } from '../../run/index.js'
import { assemblyTemperature } from '../load/fields.js'
import { layered } from '../materials/fields.js'
import { allowableStress } from '../materials/values.js'
import { BY_INFILL, solidZone } from '../prints/values.js'
import * as bolts from './fields.js'
import { bearingDiameter, preload } from './values.js'

/** Preload at the share of yield that tightening may use, torsion included. */
export const preloadAllowed = value('bolts.preloadAllowed', ['boltGroup'], (use) =>
  // Low friction gives the highest preload for a torque; the hand's scatter is in the utilisation.
  use.run(preloadAtUtilisation, {
    thread: use(bolts.thread),
    yieldStrength: use(bolts.steelOf).yieldStrength,
    threadFriction: use(bolts.friction),
    utilisation: use(bolts.utilisation),
    torsion: 'plastic',
  }),
)

/** Torque that the thread puts on the nut while it is tightened. */
export const nutTorque = value('bolts.nutTorque', ['boltGroup'], (use) => {
  const friction = use(bolts.friction)
  return use.run(tighteningTorque, {
    preload: use(preload),
    thread: use(bolts.thread),
    threadFriction: friction,
    headFriction: friction,
    bearingDiameter: use(bearingDiameter),
    holeDiameter: use(bolts.holeDiameter),
    prevailingTorque: 0,
  }).nutTorque
})
/** Torque at which the flats of the printed pocket yield. */
export const roundingTorque = value('bolts.roundingTorque', ['boltGroup'], (use) => {
  const { acrossFlats, leastHeight } = use(bolts.nutSizes)
  return use.run(nutInPocket, {
    torque: use(nutTorque),
    acrossFlats,
    height: leastHeight,
    flats: use(bolts.nut) === 'pocket' ? 6 : 2,
    clearance: use(bolts.pocketClearance),
    compressiveStrength: allowableStress(use, use(bolts.layers).at(-1) as Of<'material'>, {
      direction: 'alongLayers',
      temperature: use(assemblyTemperature),
      duration: use(bolts.tighteningTime),
    }),
  }).roundingTorque
})
/** Why no pocket holds the nut. */
export const noPocket = value('bolts.noPocket', ['boltGroup'], (use) => {
  const nut = use(bolts.nut)
  if (nut === 'onWasher') return 'a spanner holds the nut'
  return nut === 'tappedMetal' ? 'the bolts are screwed into metal' : undefined
})

/** Diameter round the hole that must be solid: what head or washer presses on. */
export const zoneNeeded = value('bolts.zoneNeeded', ['boltGroup'], (use) => use(bearingDiameter))
const zone = value('bolts.zone', ['boltGroup'], (use) => solidZone(use, use(bolts.print), use(bolts.holeDiameter), use(zoneNeeded)))
/** Diameter round the hole that is solid. */
export const zoneSolid = value('bolts.zoneSolid', ['boltGroup'], (use) => use(zone).solid)
export const zoneRemark = value('bolts.zoneRemark', ['boltGroup'], (use) => (use(zone).byInfill ? BY_INFILL : undefined))
/** Why the print under the heads carries nothing. */
export const sleeved = value('bolts.sleeved', ['boltGroup'], (use) => {
  if (use(bolts.sleeves)) return 'metal sleeves carry the clamp load'
  return use(bolts.layers).some((material) => use.at(layered, { material })) ? undefined : 'the clamped parts are not printed'
})
