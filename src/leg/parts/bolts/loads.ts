import { boltGroupTipping, headBearing, jointReserves, jointSlip } from '../../../fasteners/index.js'
import { line, type Use, value } from '../../run/index.js'
import { airTemperature, day } from '../load/fields.js'
import { allowableStress, frictionOnSteel, softening } from '../materials/values.js'
import { hipOf } from '../motion/instances.js'
import { footForce, groundForce } from '../motion/values.js'
import { heat } from '../motors/heat.js'
import { plateSoftens } from '../plates/checks.js'
import { motorForce } from '../transmission/questions.js'
import {
  clampLeft,
  clampWarm,
  motorBoltHottest,
  motorBoltTemperature,
  sinceAssembly,
  stackBoltHottest,
  stackBoltTemperature,
} from './clamp.js'
import * as bolts from './fields.js'
import { bearingDiameter, loadFactor, proofLoad, weakestLayer } from './values.js'

const moment = line.product('moment on the bracket', { force: 'force', arm: 'length' }, 'torque')
const borne = line(
  'external load that is borne',
  { load: 'force', reserve: 'ratio', most: 'ratio' },
  'force',
  'load · max(0, min(reserve, most))',
  (x) => x.load * Math.max(0, Math.min(x.reserve, x.most)),
)
const across = line(
  'force across the motor bolts',
  { torque: 'torque', diameter: 'length', drive: 'force' },
  'force',
  'torque / (diameter / 2) + drive',
  (x) => x.torque / (x.diameter / 2) + x.drive,
)
const each = line.quotient('force across each bolt', { force: 'force', count: 'count' }, 'force')
const nearSoftening = line.difference(
  'temperature near softening',
  { softening: 'temperature', margin: 'temperatureDifference' },
  'temperature',
)

/** Pull on each bolt of the stack: the foot force tips the bracket about its edge. */
export const stackPulls = value('bolts.stackPulls', ['boltGroup', 'event'], (use) =>
  use.run(boltGroupTipping, {
    distances: use(bolts.distances),
    moment: use.run(moment, { force: use(footForce), arm: use(bolts.leverArm) }),
    tension: 0,
  }),
)
/** Pull on the hardest loaded bolt of the stack. */
export const stackPull = value('bolts.stackPull', ['boltGroup', 'event'], (use) => use(stackPulls).largest)

const reserves = (use: Use<'boltGroup'>, clampLoad: number, externalLoad: number) =>
  use.run(jointReserves, { clampLoad, externalLoad, loadFactor: use(loadFactor), proofLoad: use(proofLoad) })

/** Pull at which the remaining clamp load is used up. */
export const separationPull = value('bolts.separationPull', ['boltGroup', 'event', 'air', 'age'], (use) => {
  const load = use(stackPull)
  const reserve = reserves(use, clampLeft(use, use(sinceAssembly), use(stackBoltHottest), use(airTemperature)), load).separationReserve
  return use.run(borne, { load, reserve, most: use(bolts.largestReserve) })
})
/** Pull that takes a bolt from its preload, and what warm layers add to it, to its proof load. */
export const overloadPull = value('bolts.overloadPull', ['boltGroup', 'event', 'air'], (use) => {
  const load = use(stackPull)
  const reserve = reserves(use, clampWarm(use, use(stackBoltTemperature)), load).overloadReserve
  return use.run(borne, { load, reserve, most: use(bolts.largestReserve) })
})

/** Force across each bolt of the stack. */
export const stackShear = value('bolts.stackShear', ['boltGroup', 'event'], (use) =>
  use.run(each, { force: use(groundForce), count: use(bolts.count) }),
)
/** Force across each bolt of a motor: its torque and the force of its drive on the shaft. */
export const motorShear = value('bolts.motorShear', ['joint', 'boltGroup', 'event', 'air', 'age'], (use) => {
  const force = use.run(across, { torque: use(heat).motorTorque, diameter: use(bolts.circleDiameter), drive: use(motorForce) })
  return use.run(each, { force, count: use(bolts.count) })
})

const slip = (use: Use<'boltGroup' | 'air' | 'age'>, temperature: number, shearForce: number): number => {
  const friction = use.at(frictionOnSteel, { material: weakestLayer(use) })
  return use.run(jointSlip, {
    faceLoad: clampLeft(use, use(sinceAssembly), temperature, use(airTemperature)),
    friction,
    faces: 1,
    shearForce,
  }).slipForce
}
/** Force across a bolt at which the clamped parts slide. */
export const stackSlip = value('bolts.stackSlip', ['boltGroup', 'event', 'air', 'age'], (use) =>
  slip(use, use(stackBoltHottest), use(stackShear)),
)
export const motorSlip = value('bolts.motorSlip', ['joint', 'boltGroup', 'event', 'air', 'age'], (use) =>
  slip(use, use(motorBoltHottest), use(motorShear)),
)

/** Pressure that the print under the heads bears for a day: clamp load fades as it creeps, so its first day decides. */
const allowedPressure = (use: Use<'boltGroup'>, temperature: number): number =>
  allowableStress(use, weakestLayer(use), { direction: 'alongLayers', temperature, duration: use(day) })

export const stackPressureAllowed = value('bolts.stackPressureAllowed', ['boltGroup', 'event', 'air'], (use) =>
  allowedPressure(use, use(stackBoltTemperature)),
)
export const motorPressureAllowed = value('bolts.motorPressureAllowed', ['joint', 'boltGroup', 'event', 'air'], (use) =>
  allowedPressure(use, use(motorBoltTemperature)),
)
const pressure = (use: Use<'boltGroup'>, temperature: number, allowablePressure: number): number =>
  use.run(headBearing, {
    force: clampWarm(use, temperature),
    bearingDiameter: use(bearingDiameter),
    holeDiameter: use(bolts.holeDiameter),
    allowablePressure,
  }).pressure
/** Pressure under head or washer at full preload, and what warm layers add to it. */
export const stackPressure = value('bolts.stackPressure', ['boltGroup', 'event', 'air'], (use) =>
  pressure(use, use(stackBoltTemperature), use(stackPressureAllowed)),
)
export const motorPressure = value('bolts.motorPressure', ['joint', 'boltGroup', 'event', 'air'], (use) =>
  pressure(use, use(motorBoltTemperature), use(motorPressureAllowed)),
)

const SLEEVED_REASON = 'metal sleeves carry the clamp load'
const SOFTENED_REASON = 'the print is softened, which is a failure of the plate itself'
/** Only where the check of the plate fails: another layer may soften, or nearly soften, under a plate that holds. */
const notPressed = (use: Use<'boltGroup'>, temperature: number, plateFails: boolean): string | undefined => {
  if (use(bolts.sleeves)) return SLEEVED_REASON
  if (!plateFails) return undefined
  const limit = use.at(softening, { material: weakestLayer(use) })
  return temperature > use.run(nearSoftening, { softening: limit, margin: use(bolts.softeningMargin) }) ? SOFTENED_REASON : undefined
}
const hipPlateSoftens = value('bolts.hipPlateSoftens', ['leg', 'event', 'air'], (use, at) =>
  use.at(plateSoftens, { joint: hipOf(use, at.leg) }),
)
/** Why pressure under the heads is no failure of its own. */
export const stackNotPressed = value('bolts.stackNotPressed', ['boltGroup', 'event', 'air'], (use) =>
  notPressed(use, use(stackBoltTemperature), use(hipPlateSoftens)),
)
export const motorNotPressed = value('bolts.motorNotPressed', ['joint', 'boltGroup', 'event', 'air'], (use) =>
  notPressed(use, use(motorBoltTemperature), use(plateSoftens)),
)
