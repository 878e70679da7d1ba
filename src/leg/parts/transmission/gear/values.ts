import {
  backlashAngle,
  lewisFormFactor,
  lewisRootStress,
  spurContactPressure,
  spurContactRatio,
  spurMeshForce,
} from '../../../../capstan/index.js'
import { discInertia, discMass } from '../../../lines.js'
import { line, type Of, type Use, type Value, value } from '../../../run/index.js'
import { densityOf } from '../../links/values.js'
import { cycles, duration } from '../../load/durations.js'
import { airTemperature, moment, walks } from '../../load/fields.js'
import { allowableStress, poissonRatio, relaxedModulus } from '../../materials/values.js'
import { driveLoad, stroke } from '../../motion/values.js'
import { heat } from '../../motors/heat.js'
import { loadedMotorSpeed } from '../../motors/values.js'
import * as gear from './fields.js'

const pitchRadius = line(
  'pitch radius',
  { module: 'length', teeth: 'count' },
  'length',
  'module · teeth / 2',
  (x) => (x.module * x.teeth) / 2,
)
const tipRadius = line.sum('tip radius', { pitchRadius: 'length', module: 'length' }, 'length')
const axes = line.sum('distance of the axes', { pinion: 'length', wheel: 'length' }, 'length')
const quotient = line.quotient('ratio of the teeth', { wheel: 'count', pinion: 'count' }, 'ratio')
const pitchSpeed = line.product('speed at the pitch circle', { radius: 'length', speed: 'angularVelocity' }, 'velocity')
const passes = line(
  'load cycles of a tooth of the pinion',
  { cycles: 'count', ratio: 'ratio', stroke: 'angle' },
  'count',
  'cycles · (1 + ratio · stroke / (2 · π))',
  (x) => x.cycles * (1 + (x.ratio * x.stroke) / (2 * Math.PI)),
)
const warmer = line.largest('warmer of now and after a walk', { now: 'temperature', walked: 'temperature' }, 'temperature')
const both = line.sum('mass of both gears', { pinion: 'mass', wheel: 'mass' }, 'mass')

const radiusOf = (id: string, teeth: Value<number, 'joint'>) =>
  value(id, ['joint'], (use) => use.run(pitchRadius, { module: use(gear.module), teeth: use(teeth) }))
/** Pitch radii. */
export const pinionRadius = radiusOf('gear.pinionRadius', gear.pinionTeeth)
export const wheelRadius = radiusOf('gear.wheelRadius', gear.wheelTeeth)
/** Turns of the motor for one of the joint. */
export const ratio = value('gear.ratio', ['joint'], (use) =>
  use.run(quotient, { wheel: use(gear.wheelTeeth), pinion: use(gear.pinionTeeth) }),
)

/** Pairs of teeth in contact on the average. */
export const contactRatio = value('gear.contactRatio', ['joint'], (use) => {
  const [pinion, wheel, module] = [use(pinionRadius), use(wheelRadius), use(gear.module)]
  return use.run(spurContactRatio, {
    pinionTeeth: use(gear.pinionTeeth),
    wheelTeeth: use(gear.wheelTeeth),
    module,
    pinionTipRadius: use.run(tipRadius, { pitchRadius: pinion, module }),
    wheelTipRadius: use.run(tipRadius, { pitchRadius: wheel, module }),
    centreDistance: use.run(axes, { pinion, wheel }),
  }).contactRatio
})

/** Forces between the teeth under the largest torque of an event. */
export const mesh = value('gear.mesh', ['joint', 'event'], (use) =>
  use.run(spurMeshForce, { torque: use(driveLoad), pitchRadius: use(wheelRadius), pressureAngle: use(gear.pressureAngle) }),
)
/** Angle of free play at the joint. */
export const freePlay = value('gear.freePlay', ['joint'], (use) =>
  use.run(backlashAngle, { backlash: use(gear.backlash), pitchRadius: use(wheelRadius) }),
)

const rootStress = (id: string, teeth: Value<number, 'joint'>) =>
  value(
    id,
    ['joint', 'event'],
    (use) =>
      use.run(lewisRootStress, {
        tangentialForce: use(mesh).tangential,
        module: use(gear.module),
        faceWidth: use(gear.faceWidth),
        formFactor: use.run(lewisFormFactor, { teeth: use(teeth) }),
        pitchSpeed: use.run(pitchSpeed, { radius: use(pinionRadius), speed: use(loadedMotorSpeed) }),
      }).rootStress,
  )
/** Bending stress at the roots of the teeth. */
export const pinionRootStress = rootStress('gear.pinionRootStress', gear.pinionTeeth)
export const wheelRootStress = rootStress('gear.wheelRootStress', gear.wheelTeeth)

/** Temperature of the pinion: that of the motor's mount, now or after a walk either way, since a landing comes in the middle of one. */
const pinionTemperature = value('gear.pinionTemperature', ['joint', 'event', 'air'], (use) =>
  use(walks).reduce((now, event) => use.run(warmer, { now, walked: use.at(heat, { event }).mount }), use(heat).mount),
)
type At = Use<'joint' | 'event' | 'air'>
const strengthOf = (id: string, material: Value<Of<'material'>, 'joint'>, temperature: (use: At) => number) =>
  value(id, ['joint', 'event', 'air'], (use) =>
    allowableStress(use, use(material), { direction: 'alongLayers', temperature: temperature(use), duration: use(duration) }),
  )
const enduringOf = (id: string, material: Value<Of<'material'>, 'joint'>, temperature: (use: At) => number, loads: (use: At) => number) =>
  value(id, ['joint', 'event', 'air'], (use) =>
    allowableStress(use, use(material), {
      direction: 'alongLayers',
      temperature: temperature(use),
      duration: use(moment),
      cycles: loads(use),
    }),
  )
const onPinion = (use: At) => use(pinionTemperature)
const inAir = (use: At) => use(airTemperature)

/** Strengths of the teeth for the time under load, and after the strides of a season. */
export const pinionStrength = strengthOf('gear.pinionStrength', gear.pinionMaterial, onPinion)
export const wheelStrength = strengthOf('gear.wheelStrength', gear.wheelMaterial, inAir)
export const pinionEnduring = enduringOf('gear.pinionEnduring', gear.pinionMaterial, onPinion, (use) =>
  use.run(passes, { cycles: use(cycles), ratio: use(ratio), stroke: use(stroke) }),
)
export const wheelEnduring = enduringOf('gear.wheelEnduring', gear.wheelMaterial, inAir, (use) => use(cycles))

/** Largest pressure between the flanks. Cold teeth are stiffer, so that they press harder. */
export const contactPressure = value('gear.contactPressure', ['joint', 'event', 'air'], (use) => {
  const [pinion, wheel] = [use(gear.pinionMaterial), use(gear.wheelMaterial)]
  return use.run(spurContactPressure, {
    tangentialForce: use(mesh).tangential,
    faceWidth: use(gear.faceWidth),
    pinionRadius: use(pinionRadius),
    wheelRadius: use(wheelRadius),
    pinionModulus: relaxedModulus(use, pinion, use(airTemperature), use(moment)),
    wheelModulus: relaxedModulus(use, wheel, use(airTemperature), use(moment)),
    pinionPoissonRatio: use.at(poissonRatio, { material: pinion }),
    wheelPoissonRatio: use.at(poissonRatio, { material: wheel }),
  })
})

const massOf = (id: string, material: Value<Of<'material'>, 'joint'>, radius: Value<number, 'joint'>) =>
  value(id, ['joint'], (use) =>
    use.run(discMass, { density: densityOf(use, use(material)), width: use(gear.faceWidth), radius: use(radius) }),
  )
const pinionMass = massOf('gear.pinionMass', gear.pinionMaterial, pinionRadius)
const wheelMass = massOf('gear.wheelMass', gear.wheelMaterial, wheelRadius)
/** Mass of both gears, as solid discs. */
export const mass = value('gear.mass', ['joint'], (use) => use.run(both, { pinion: use(pinionMass), wheel: use(wheelMass) }))
/** Inertia of the pinion at the motor, and of the wheel at the joint. */
export const inertia = value('gear.inertia', ['joint'], (use) => ({
  atMotor: use.run(discInertia, { mass: use(pinionMass), radius: use(pinionRadius) }),
  atJoint: use.run(discInertia, { mass: use(wheelMass), radius: use(wheelRadius) }),
}))
