import { anchorPull, cordToCut, takeUp } from '../../../../capstan/index.js'
import { lugTearOut, pinBearing, pottedFerrule } from '../../../../fasteners/index.js'
import type { Check } from '../../../cases/check.js'
import { field, word } from '../../../leaves.js'
import { shareOfStress } from '../../../lines.js'
import { bondedEndOf } from '../../../numbers.js'
import { constant, line, value } from '../../../run/index.js'
import { isLoaded } from '../../motion/values.js'
import { drumStrength } from './drum.js'
import * as cord from './fields.js'
import { drumRadius, pinionRadius } from './radii.js'
import { geometry, pretension, pretensionAsSet, windup } from './values.js'

const ferruleWall = line(
  'axial rigidity of the ferrule',
  { modulus: 'modulus', socket: 'length', wall: 'length' },
  'axialRigidity',
  'modulus · (π · socket · wall)',
  (x) => x.modulus * (Math.PI * x.socket * x.wall),
)
const creepOf = line(
  'creep of the cord in a year',
  { pretension: 'force', left: 'ratio', rigidity: 'axialRigidity' },
  'strain',
  'pretension · (1 − left) / rigidity',
  (x) => (x.pretension * (1 - x.left)) / x.rigidity,
)

/** Shear yield over tensile strength (von Mises). */
export const shearShare = constant('material.shearShare', {
  title: 'shear yield strength over tensile yield strength',
  kind: 'ratio',
  typical: 0.577,
  source: { level: 'commonPractice', where: 'shear yield 0.577 of tensile yield (von Mises)' },
})
const leastWrap = constant('anchor.leastWrap', {
  title: 'least wrap between tangent point and cord anchor',
  kind: 'angle',
  typical: Math.PI / 2,
  source: { level: 'assumption', where: 'a quarter turn is left between tangent point and anchor at the end of travel' },
})
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
/** Stretch of a new braid that stays. */
export const beddingStrain = constant('cord.beddingStrain', {
  title: 'permanent stretch of a new cord',
  kind: 'strain',
  typical: 0.01,
  low: 0.005,
  high: 0.02,
  source: { level: 'assumption', where: 'one per cent for a new braid' },
  measuredBy: 'load a metre of cord ten times to a third of its strength and measure what stays',
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

/** Tension that reaches the anchor: what friction on the drum leaves of the taut span, or the pretension stored there. */
const pull = value('anchor.pull', ['joint', 'event', 'air', 'age'], (use) =>
  use.run(anchorPull, {
    spanTension: use(isLoaded) ? use(windup).tautTension : use(pretension),
    storedTension: use(pretension),
    friction: use(cord.friction),
    wrapAngle: use(leastWrap),
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

const takenUp = value('tensioner.takenUp', ['joint'], (use) => {
  const { span, drumWrapAngle, pinionWrap } = use(geometry)
  const [set, axialRigidity] = [use(pretensionAsSet), use(cord.axialRigidity)]
  const { workingLength } = use.run(cordToCut, {
    span,
    drumRadius: use(drumRadius),
    drumWrapTotal: drumWrapAngle,
    pinionRadius: use(pinionRadius),
    pinionWrap,
    groovePitch: use(cord.drum.groovePitch),
    endLength: 0,
    tailLength: 0,
    strain: 0,
  })
  return use.run(takeUp, {
    workingLength,
    pretension: set,
    axialRigidity,
    beddingStrain: use(beddingStrain),
    creepStrain: use.run(creepOf, { pretension: set, left: use(cord.pretensionLeft), rigidity: axialRigidity }),
    slack: use(cord.tensioner.slackAtAssembly),
    temperatureRise: 0,
    frameExpansion: 0,
    cordExpansion: 0,
  }).total
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
    demandIs: 'the pressure of the post on the drum',
    capacityIs: 'the strength of the polymer for the time under load',
    remedy: 'a thicker or longer post, or half a turn more cord on the drum before the anchor',
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
    demandIs: 'the shear stress from post to edge',
    capacityIs: 'the shear strength of the polymer for the time under load',
    remedy: 'more edge distance, a longer post, or half a turn more cord on the drum',
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
    demandIs: 'the tension that reaches the ferrule',
    capacityIs: 'the load at which the bond begins to yield at its loaded end (uniformly, where a cone or knot locks it)',
    remedy: 'a cone or a knot in the resin, a softer adhesive, or half a turn more cord on the drum before the anchor',
  },
  {
    id: 'tensioner.travel',
    part: 'tensioner',
    mode: 'runs out of travel',
    consequence: 'fails to work',
    kind: 'length',
    scope: 'joint',
    when: ['repeats'],
    demand: takenUp,
    capacity: cord.tensioner.travel,
    demandIs: 'the cord to take up: slack of assembly, stretch, bedding and creep',
    capacityIs: 'the travel of the tensioner (pulling one end)',
    remedy: 'a longer tensioner, or stretch the cord before it is built in',
  },
]
