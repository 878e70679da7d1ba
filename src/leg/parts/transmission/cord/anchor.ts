import { anchorPull, residualWrap } from '../../../../capstan/index.js'
import { lugTearOut, pinBearing, pottedFerrule } from '../../../../fasteners/index.js'
import type { Check } from '../../../cases/check.js'
import { field, word } from '../../../leaves.js'
import { shareOfStress } from '../../../lines.js'
import { bondedEndOf } from '../../../numbers.js'
import { constant, line, type Use, value } from '../../../run/index.js'
import { shearShare } from '../../materials/fields.js'
import { isLoaded } from '../../motion/values.js'
import { drumStrength } from './drum.js'
import * as cord from './fields.js'
import { tensionerCheck } from './tensioner.js'
import { branchArc, hardestTension, pretension, travel } from './values.js'

const ferruleWall = line(
  'axial rigidity of the ferrule',
  { modulus: 'modulus', socket: 'length', wall: 'length' },
  'axialRigidity',
  'modulus · (π · socket · wall)',
  (x) => x.modulus * (Math.PI * x.socket * x.wall),
)
const ferruleModulus = constant('ferrule.modulus', {
  title: 'modulus of elasticity of the ferrule',
  kind: 'modulus',
  typical: 100e9,
  source: { level: 'commonPractice', where: 'brass; steel is stiffer, and both are rigid compared with the cord' },
})
/** Wall of a ferrule. */
export const ferruleThickness = constant('ferrule.wall', {
  title: 'wall thickness of the ferrule',
  kind: 'length',
  typical: 0.5e-3,
  source: { level: 'assumption', where: 'a thin tube' },
})
/** A bonded cord end. */
export const bond = {
  length: field('bondedEnd.length', ['joint'], 'length', (x, { joint }) => bondedEndOf(x, joint)?.length ?? Number.NaN),
  socketDiameter: field(
    'bondedEnd.socketDiameter',
    ['joint'],
    'length',
    (x, { joint }) => bondedEndOf(x, joint)?.socketDiameter ?? Number.NaN,
  ),
  shearModulus: field(
    'bondedEnd.adhesiveShearModulus',
    ['joint'],
    'modulus',
    (x, { joint }) => bondedEndOf(x, joint)?.adhesiveShearModulus ?? Number.NaN,
  ),
  shearStrength: field(
    'bondedEnd.adhesiveShearStrength',
    ['joint'],
    'stress',
    (x, { joint }) => bondedEndOf(x, joint)?.adhesiveShearStrength ?? Number.NaN,
  ),
  mechanicalLock: word('bondedEnd.mechanicalLock', ['joint'], (x, { joint }) => bondedEndOf(x, joint)?.mechanicalLock ?? false),
}
/** Whether a joint's cord ends in bonded ferrules. */
export const bonded = word('drive.bonded', ['joint'], (x, { joint }) => bondedEndOf(x, joint) !== undefined)

/** Tension of the taut span: as the cord itself is judged, in a rare load after the joint has travelled under it. */
const spanTension = (use: Use<'joint' | 'event' | 'air' | 'age'>) => (use(isLoaded) ? use(hardestTension) : use(pretension))
/** Wrap between tangent point and anchor that an end of travel leaves. */
const wrapLeft = value('anchor.wrapLeft', ['joint'], (use) => use.run(residualWrap, { drumWrap: use(branchArc), travel: use(travel) }))
/** Tension that reaches the anchor: what friction on the drum leaves of the taut span, or the pretension stored there. */
const pull = value('anchor.pull', ['joint', 'event', 'air', 'age'], (use) =>
  use.run(anchorPull, {
    spanTension: spanTension(use),
    storedTension: use(pretension),
    friction: use(cord.friction),
    wrapAngle: use(wrapLeft),
  }),
)
const bearing = value(
  'anchor.bearing',
  ['joint', 'event', 'air', 'age'],
  (use) =>
    use.run(pinBearing, {
      force: use(pull),
      diameter: use(cord.anchor.postDiameter),
      thickness: use(cord.anchor.postLength),
    }).projectedPressure,
)
const tearOut = value(
  'anchor.tearOut',
  ['joint', 'event', 'air', 'age'],
  (use) =>
    use.run(lugTearOut, {
      force: use(pull),
      edgeDistance: use(cord.anchor.edgeDistance),
      diameter: use(cord.anchor.postDiameter),
      thickness: use(cord.anchor.postLength),
      planes: 'front',
    }).shearStress,
)
const drumShear = value('anchor.shearStrength', ['joint', 'event', 'air'], (use) =>
  use.run(shareOfStress, { share: use(shearShare), strength: use(drumStrength) }),
)
const bondLimit = value('ferrule.bondLimit', ['joint', 'event', 'air', 'age'], (use) => {
  const found = use.run(pottedFerrule, {
    force: use(pull),
    cordDiameter: use(cord.diameter),
    boreDiameter: use(bond.socketDiameter),
    length: use(bond.length),
    cordRigidity: use(cord.axialRigidity),
    socketRigidity: use.run(ferruleWall, {
      modulus: use(ferruleModulus),
      socket: use(bond.socketDiameter),
      wall: use(ferruleThickness),
    }),
    shearModulus: use(bond.shearModulus),
    shearStrength: use(bond.shearStrength),
    held: 'mouth',
  })
  // A cone or a knot in the resin lets the bond yield and share; a bare bond peels from its loaded end.
  return use(bond.mechanicalLock) ? found.plasticLimit : found.elasticLimit
})

const HELD = ['bearsLoad', 'stored'] as const
/** Checks of the cord's ends, anchors and tensioner. */
export const anchorChecks: readonly Check[] = [
  {
    id: 'anchor.bearing',
    part: 'cord anchor',
    mode: 'presses into the drum',
    consequence: 'breaks',
    kind: 'stress',
    scope: 'joint',
    when: HELD,
    demand: bearing,
    capacity: drumStrength,
    demandIs: 'the pressure of the post on the drum, under the tension that reaches it at an end of travel',
    capacityIs: 'the strength of the polymer for the time under load',
    remedy: 'a thicker or longer post, less travel, or crossed spans, which lie further round the drum',
  },
  {
    id: 'anchor.tearOut',
    part: 'cord anchor',
    mode: 'tears out of the drum',
    consequence: 'breaks',
    kind: 'stress',
    scope: 'joint',
    when: HELD,
    demand: tearOut,
    capacity: drumShear,
    demandIs: 'the shear stress from post to edge, under the tension that reaches the post at an end of travel',
    capacityIs: 'the shear strength of the polymer for the time under load',
    remedy: 'more edge distance, a longer post, less travel, or crossed spans',
  },
  {
    id: 'ferrule.bond',
    part: 'bonded ferrule',
    mode: 'pulls off the cord',
    consequence: 'breaks',
    kind: 'force',
    scope: 'joint',
    when: HELD,
    demand: pull,
    capacity: bondLimit,
    unless: value('ferrule.unlessOther', ['joint'], (use) => (use(bonded) ? undefined : 'the cord has no bonded ferrule')),
    demandIs: 'the tension that reaches the ferrule at an end of travel',
    capacityIs: 'the load at which the bond begins to yield at its loaded end (uniformly, where a cone or knot locks it)',
    remedy: 'a cone or a knot in the resin, a softer adhesive, less travel, or crossed spans',
  },
  tensionerCheck,
]
