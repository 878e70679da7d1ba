import {
  backlashAngle,
  beltJumpTorque,
  beltTeethInMesh,
  beltToothShear,
  shaftForce as shaftForceOf,
  thermalTension,
  toothBeltLength,
} from '../../../../capstan/index.js'
import { discInertia, discMass, shareOfStress, temperatureRise } from '../../../lines.js'
import { type Use, value } from '../../../run/index.js'
import { densityOf } from '../../links/values.js'
import { cycles } from '../../load/durations.js'
import { airTemperature, assemblyTemperature, moment } from '../../load/fields.js'
import { shearShare } from '../../materials/fields.js'
import { strengthInAir } from '../../materials/in-air.js'
import { allowableStress, thermalExpansion } from '../../materials/values.js'
import { driveLoad } from '../../motion/values.js'
import { frameMaterial } from '../cord/fields.js'
import * as belt from './fields.js'
import * as of from './lines.js'

const radius = (id: string, teeth: typeof belt.smallTeeth) =>
  value(id, ['joint'], (use) => use.run(of.pitchRadius, { pitch: use(belt.pitch), teeth: use(teeth) }))
/** Pitch radii of the pulleys. */
export const smallRadius = radius('belt.smallRadius', belt.smallTeeth)
export const largeRadius = radius('belt.largeRadius', belt.largeTeeth)
const isLarge = (use: Use<'joint'>) => use(belt.jointPulley) === 'large'
/** Pitch radius of the pulley on the joint, and of the other one. */
export const jointRadius = value('belt.jointRadius', ['joint'], (use) => (isLarge(use) ? use(largeRadius) : use(smallRadius)))
export const otherRadius = value('belt.otherRadius', ['joint'], (use) => (isLarge(use) ? use(smallRadius) : use(largeRadius)))
/** Turns of the motor, or of the pulley on the hip axis, for one of the joint. */
export const ratio = value('belt.ratio', ['joint'], (use) =>
  use.run(isLarge(use) ? of.quotient : of.inverse, { large: use(belt.largeTeeth), small: use(belt.smallTeeth) }),
)

const pulleys = (use: Use<'joint'>) => ({
  smallTeeth: use(belt.smallTeeth),
  largeTeeth: use(belt.largeTeeth),
  pitch: use(belt.pitch),
  centreDistance: use(belt.centreDistance),
})
/** Spans, wraps and length around the pulleys at the stated distance of the axes. */
export const geometry = value('belt.geometry', ['joint'], (use) => use.run(toothBeltLength, pulleys(use)))
/** Whole teeth in mesh on the small pulley. */
const inMesh = value('belt.teethInMesh', ['joint'], (use) => use.run(beltTeethInMesh, pulleys(use)).teethInMesh)
/** Teeth that count as sharing the load. */
export const loadedTeeth = value('belt.loadedTeeth', ['joint'], (use) =>
  use.run(of.fewer, { inMesh: use(inMesh), most: use(belt.mostTeeth) }),
)

const asSet = value('belt.pretensionAsSet', ['joint'], (use) =>
  use.run(of.asSet, { pretension: use(belt.pretensionSet), scatter: use(belt.settingScatter) }),
)
const aged = value('belt.agedPretension', ['joint', 'age'], (use, at) => {
  const set = use(asSet)
  return use.nameOf('age', at.age) === 'new' ? set : use.run(of.aged, { set, left: use(belt.pretensionLeft) })
})
/** Pretension of both spans at a temperature and age. */
export const pretension = value('belt.pretension', ['joint', 'air', 'age'], (use) =>
  use.run(of.kept, {
    aged: use(aged),
    change: use.run(thermalTension, {
      axialRigidity: use(belt.axialRigidity),
      temperatureRise: use.run(temperatureRise, { air: use(airTemperature), assembly: use(assemblyTemperature) }),
      frameExpansion: use.at(thermalExpansion, { material: use(frameMaterial) }),
      cordExpansion: use(belt.thermalExpansion),
    }),
  }),
)

/** Force along the belt under the largest torque of an event. */
export const pull = value('belt.pull', ['joint', 'event'], (use) => use.run(of.pull, { torque: use(driveLoad), radius: use(jointRadius) }))
/** Tensions of both spans. A span that hangs slack leaves all of the pull to the other. */
export const spans = value('belt.spans', ['joint', 'event', 'air', 'age'], (use) => {
  const [rest, force] = [use(pretension), use(pull)]
  return { taut: use.run(of.taut, { rest, pull: force }), slack: use.run(of.slack, { rest, pull: force }) }
})
/** Torque at which the belt jumps. */
export const jumpTorque = value('belt.jumpTorque', ['joint', 'air', 'age'], (use) =>
  use.run(beltJumpTorque, {
    pretension: use(pretension),
    largeRadius: use(jointRadius),
    smallWrap: use(geometry).smallWrap,
    flankAngle: use(belt.flankAngle),
    friction: use(belt.friction),
  }),
)
const axes = (use: Use<'joint'>, taut: number, slack: number) =>
  use.run(shaftForceOf, {
    arrangement: 'open',
    tautTension: taut,
    slackTension: slack,
    pinionRadius: use(smallRadius),
    drumRadius: use(largeRadius),
    centreDistance: use(belt.centreDistance),
  })
/** Force of the belt on the axes of both pulleys, and its part along their line. */
const axisForces = value('belt.axisForces', ['joint', 'event', 'air', 'age'], (use) => {
  const { taut, slack } = use(spans)
  return axes(use, taut, slack)
})
export const shaftForce = value('belt.shaftForce', ['joint', 'event', 'air', 'age'], (use) => use(axisForces).force)
export const alongAxes = value('belt.alongAxes', ['joint', 'event', 'air', 'age'], (use) => use(axisForces).alongCentres)
/** The same part at rest. */
export const alongAtRest = value('belt.alongAtRest', ['joint', 'air', 'age'], (use) => {
  const rest = use(pretension)
  return axes(use, rest, rest).alongCentres
})

const stretch = (use: Use<'joint'>) => ({ rigidity: use(belt.axialRigidity), radius: use(jointRadius), span: use(geometry).span })
/** Stiffness at the joint with both spans taut. */
export const stiffnessAtRest = value('belt.stiffnessAtRest', ['joint'], (use) => use.run(of.stiffness, stretch(use)))
/** Stiffness under load: half of it once a span hangs slack. */
export const stiffness = value('belt.stiffness', ['joint', 'event', 'air', 'age'], (use) =>
  use(spans).slack > 0 ? use(stiffnessAtRest) : use.run(of.softer, { stiffness: use(stiffnessAtRest) }),
)
/** Turn of the joint with its motor held. */
export const windup = value('belt.windup', ['joint', 'event', 'air', 'age'], (use) =>
  use.run(of.windup, { taut: use(spans).taut, rest: use(pretension), ...stretch(use) }),
)
/** Turn of the joint within the clearances of teeth on both pulleys. */
export const freePlay = value('belt.freePlay', ['joint'], (use) =>
  use.run(backlashAngle, { backlash: use.run(of.both, { clearance: use(belt.clearance) }), pitchRadius: use(jointRadius) }),
)

/** How far the axes must be moved from their stated distance until the belt has its tension. */
export const shift = value('belt.shift', ['joint'], (use) => {
  const { length, span } = use(geometry)
  return use.run(of.shift, {
    teeth: use(belt.teeth),
    pitch: use(belt.pitch),
    tension: use(asSet),
    rigidity: use(belt.axialRigidity),
    path: length,
    span,
    axes: use(belt.centreDistance),
  })
})

const groove = value('belt.pulleyTooth', ['joint'], (use) =>
  use.run(of.between, { pitch: use(belt.pitch), tooth: use(belt.toothRootWidth) }),
)
/** Shear in the teeth of the large pulley, which has at least the teeth in mesh of the small one. */
export const pulleyShear = value('belt.pulleyShear', ['joint', 'event'], (use) =>
  use.run(beltToothShear, { tangentialForce: use(pull), teethInMesh: use(loadedTeeth), width: use(belt.width), rootWidth: use(groove) }),
)
/** Bending at their roots, the force in the middle of their height. */
export const pulleyBending = value('belt.pulleyBending', ['joint', 'event'], (use) =>
  use.run(of.bending, {
    force: use(pull),
    teeth: use(loadedTeeth),
    height: use(belt.toothHeight),
    width: use(belt.width),
    root: use(groove),
  }),
)
export const pulleyStrength = value('belt.pulleyStrength', ['joint', 'event', 'air'], (use) =>
  use.at(strengthInAir.alongLayers, { material: use(belt.material) }),
)
export const pulleyEnduring = value('belt.pulleyEnduring', ['joint', 'event', 'air'], (use) =>
  allowableStress(use, use(belt.material), {
    direction: 'alongLayers',
    temperature: use(airTemperature),
    duration: use(moment),
    cycles: use(cycles),
  }),
)
export const pulleyShearStrength = value('belt.pulleyShearStrength', ['joint', 'event', 'air'], (use) =>
  use.run(shareOfStress, { share: use(shearShare), strength: use(pulleyStrength) }),
)

const discOf = (use: Use<'joint'>, of: typeof jointRadius, density: number) =>
  use.run(discMass, { density, width: use(belt.width), radius: use(of) })
const otherMass = value('belt.smallPulleyMass', ['joint'], (use) =>
  discOf(use, otherRadius, use(belt.onMotor) ? use(belt.pinionDensity) : densityOf(use, use(belt.material))),
)
/** Mass of the pulley on the joint, as a solid disc. */
const jointPulleyMass = value('belt.largePulleyMass', ['joint'], (use) => discOf(use, jointRadius, densityOf(use, use(belt.material))))
/** Mass of belt and pulleys, as solid discs. */
export const mass = value('belt.mass', ['joint'], (use) =>
  use.run(of.together, {
    small: use(otherMass),
    large: use(jointPulleyMass),
    perLength: use(belt.massPerLength),
    length: use(geometry).length,
  }),
)
/** Mass of the pulley on the joint and of the belt, each for itself. */
export const massByPlace = value('belt.massByPlace', ['joint'], (use) => ({
  atJoint: use(jointPulleyMass),
  between: use.run(of.ofBelt, { perLength: use(belt.massPerLength), length: use(geometry).length }),
}))
/** Inertia of the pulley on the motor or on the hip axis, and of the one on the joint. */
export const inertia = value('belt.inertia', ['joint'], (use) => ({
  atMotor: use.run(discInertia, { mass: use(otherMass), radius: use(otherRadius) }),
  atJoint: use.run(discInertia, { mass: use(jointPulleyMass), radius: use(jointRadius) }),
}))
