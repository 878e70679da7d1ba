import {
  boltCompliance as boltComplianceOf,
  boltStrength,
  loadFactor as loadFactorOf,
  memberCompliance as memberComplianceOf,
  preloadFromTorque,
} from '../../../fasteners/index.js'
import { line, type Of, type Use, value } from '../../run/index.js'
import { strength } from '../materials/strength-fields.js'
import { modulus } from '../materials/values.js'
import * as bolts from './fields.js'

const total = line('grip', { thicknesses: { list: 'length' } }, 'length', 'sum(thicknesses)', (x) =>
  x.thicknesses.reduce((sum, thickness) => sum + thickness, 0),
)
const clampedLength = line(
  'clamped length with washers',
  { grip: 'length', washers: 'count', thickness: 'length' },
  'length',
  'grip + washers · thickness',
  (x) => x.grip + x.washers * x.thickness,
)
const wideOf = line.product('diameter that counts as an infinite plate', { wide: 'ratio', head: 'length' }, 'length')
const wider = line.largest('nut bearing', { outerDiameter: 'length', headBearing: 'length' }, 'length')

/** Preload from the tightening torque. */
export const preload = value('bolts.preload', ['boltGroup'], (use) => {
  const friction = use(bolts.friction)
  return use.run(preloadFromTorque, {
    torque: use(bolts.tighteningTorque),
    thread: use(bolts.thread),
    threadFriction: friction,
    headFriction: friction,
    bearingDiameter: use(bolts.head).bearingDiameter,
    holeDiameter: use(bolts.holeDiameter),
    prevailingTorque: 0,
  }).preload
})

/** Diameter on which the head, or its washer, presses. */
export const bearingDiameter = value('bolts.headBearing', ['boltGroup'], (use) =>
  use(bolts.washers) ? use(bolts.ring).outerDiameter : use(bolts.head).bearingDiameter,
)

const end = (use: Use<'boltGroup'>) => (use(bolts.nut) === 'tappedMetal' ? 'tapped' : 'nut')

/** Stretch of a bolt per load. */
export const boltCompliance = value('bolts.boltCompliance', ['boltGroup'], (use) => {
  const grip = use.run(total, { thicknesses: use(bolts.thicknesses) })
  const into = end(use)
  return use.run(boltComplianceOf, {
    thread: use(bolts.thread),
    modulus: use(bolts.boltModulus),
    shankLength: 0,
    // A bolt in tapped metal has a washer under its head only.
    threadLength: use(bolts.washers)
      ? use.run(clampedLength, { grip, washers: into === 'nut' ? 2 : 1, thickness: use(bolts.ring).thickness })
      : grip,
    head: 'socket',
    end: into,
    tappedModulus: into === 'tapped' ? use(bolts.tappedModulus) : undefined,
  })
})

/** Shortening of the clamped parts per load. */
export const memberCompliance = value('bolts.memberCompliance', ['boltGroup'], (use) => {
  const [sleeves, washers, holeDiameter] = [use(bolts.sleeves), use(bolts.washers), use(bolts.holeDiameter)]
  const [thicknesses, materials] = [use(bolts.thicknesses), use(bolts.layers)]
  const own = use(bearingDiameter)
  const outerDiameter = sleeves
    ? use(bolts.ring).outerDiameter
    : (use(bolts.bossDiameter) ?? use.run(wideOf, { wide: use(bolts.wideBoss), head: use(bolts.head).headDiameter }))
  const nutBearing = washers ? use(bolts.ring).outerDiameter : use(bolts.nutSizes).bearingDiameter
  return use.run(memberComplianceOf, {
    layers: thicknesses.map((thickness, i) => ({
      thickness,
      // A sleeve carries the clamp load through its own wall.
      modulus: sleeves ? use(bolts.boltModulus) : use.at(modulus, { material: materials[i] as Of<'material'> }),
      outerDiameter,
      holeDiameter,
    })),
    headBearing: own,
    nutBearing: washers ? use.run(wider, { outerDiameter: nutBearing, headBearing: own }) : nutBearing,
    end: end(use),
    halfAngle: use(bolts.coneAngle),
  }).compliance
})

/** Share of an external load that the bolt takes. */
export const loadFactor = value('bolts.loadFactor', ['boltGroup'], (use) =>
  use.run(loadFactorOf, { boltCompliance: use(boltCompliance), memberCompliance: use(memberCompliance) }),
)

/** Load up to which a bolt keeps no permanent stretch. */
export const proofLoad = value(
  'bolts.proofLoad',
  ['boltGroup'],
  (use) => use.run(boltStrength, { thread: use(bolts.thread), bolt: use(bolts.steelOf), shearRatio: use(bolts.shearRatio) }).proofLoad,
)

/** The clamped layer that fails first under pressure: the one of least strength. */
export function weakestLayer(use: Use<'boltGroup'>): Of<'material'> {
  const layers = use(bolts.layers)
  const of = (material: Of<'material'>) => use.at(strength, { material })
  return layers.reduce((weakest, layer) => (of(layer) < of(weakest) ? layer : weakest))
}
