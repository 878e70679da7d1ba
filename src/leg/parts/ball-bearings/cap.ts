import { boltStrength, capCocking, preloadFromTorque } from '../../../fasteners/index.js'
import { line, value } from '../../run/index.js'
import { innerFriction, shearRatio } from '../hip-shaft/fields.js'
import * as seated from './fields.js'
import { axialLoad, moment } from './loads.js'

const radius = line('radius of a rim', { diameter: 'length' }, 'length', 'diameter / 2', (x) => x.diameter / 2)
const alsoAxial = line(
  'force on the screw of a cap',
  { tipping: 'force', axial: 'force' },
  'force',
  'tipping + axial',
  (x) => x.tipping + x.axial,
)
const left = line('clamp load left', { preload: 'force', share: 'ratio' }, 'force', 'preload · share', (x) => x.preload * x.share)

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

/** Clamp load of the cap that is left of the preload from its tightening torque. */
export const capClamp = value('pivot.capClamp', ['pivot'], (use) => {
  const friction = use(innerFriction)
  const { preload } = use.run(preloadFromTorque, {
    torque: use(seated.cap.tighteningTorque),
    thread: use(seated.cap.thread),
    threadFriction: friction,
    headFriction: friction,
    bearingDiameter: use(seated.cap.head).bearingDiameter,
    holeDiameter: use(seated.cap.holeDiameter),
    prevailingTorque: 0,
  })
  return use.run(left, { preload, share: use(seated.clampLeft) })
})
/** Load up to which the screw of the cap keeps no permanent stretch. */
export const capProof = value(
  'pivot.capProof',
  ['pivot'],
  (use) => use.run(boltStrength, { thread: use(seated.cap.thread), bolt: use(seated.cap.steelOf), shearRatio: use(shearRatio) }).proofLoad,
)
