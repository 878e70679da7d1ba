import { boltStrength, capCocking, preloadAtUtilisation, preloadFromTorque } from '../../../fasteners/index.js'
import { line, value } from '../../run/index.js'
import { utilisation } from '../bolts/fields.js'
import { innerFriction, shearRatio } from '../hip-shaft/fields.js'
import * as seated from './fields.js'
import { axialLoad, moment } from './loads.js'

const radius = line('radius of a rim', { diameter: 'length' }, 'length', 'diameter / 2', (x) => x.diameter / 2)
const alsoAxial = line.sum('force on the screw of a cap', { tipping: 'force', axial: 'force' }, 'force')
const left = line.product('clamp load left', { preload: 'force', share: 'ratio' }, 'force')

/** Force on the screw of the cap, which the tilting ring levers up. Two bearings side by side tilt nothing. */
export const screwForce = value('pivot.screwForce', ['pivot', 'event'], (use): number => {
  const axial = use(axialLoad)
  if (use(seated.pairSpacing) !== undefined) return axial
  const { shoulderDiameter, rimDiameter, edgeDiameter } = seated.cap
  const { screwForce: tipping } = use.run(capCocking, {
    moment: use(moment),
    shoulderRadius: use.run(radius, { diameter: use(shoulderDiameter) }),
    capRadius: use.run(radius, { diameter: use(rimDiameter) }),
    pivotRadius: use.run(radius, { diameter: use(edgeDiameter) }),
  })
  return use.run(alsoAxial, { tipping, axial })
})

/** Preload of the screw of the cap, from its tightening torque. */
export const capPreload = value('pivot.capPreload', ['pivot'], (use) => {
  const friction = use(innerFriction)
  return use.run(preloadFromTorque, {
    torque: use(seated.cap.tighteningTorque),
    thread: use(seated.cap.thread),
    threadFriction: friction,
    headFriction: friction,
    bearingDiameter: use(seated.cap.head).bearingDiameter,
    holeDiameter: use(seated.cap.holeDiameter),
    prevailingTorque: 0,
  }).preload
})
/** Preload at the share of yield that tightening may use, torsion included. */
export const capPreloadAllowed = value('pivot.capPreloadAllowed', ['pivot'], (use) =>
  use.run(preloadAtUtilisation, {
    thread: use(seated.cap.thread),
    yieldStrength: use(seated.cap.steelOf).yieldStrength,
    threadFriction: use(innerFriction),
    utilisation: use(utilisation),
    torsion: 'plastic',
  }),
)
/** Clamp load of the cap that is left of that preload. */
export const capClamp = value('pivot.capClamp', ['pivot'], (use) =>
  use.run(left, { preload: use(capPreload), share: use(seated.clampLeft) }),
)
/** Load up to which the screw of the cap keeps no permanent stretch. */
export const capProof = value(
  'pivot.capProof',
  ['pivot'],
  (use) => use.run(boltStrength, { thread: use(seated.cap.thread), bolt: use(seated.cap.steelOf), shearRatio: use(shearRatio) }).proofLoad,
)
