import type { Joint } from '../../numbers.js'
import { line, type Of, type Use, value } from '../../run/index.js'
import { from, to } from '../joints/fields.js'
import * as links from '../links/fields.js'
import { mass as loadedMass } from '../links/values.js'
import { stance } from '../load/values.js'
import { rotorAtJoint } from '../motors/rotor.js'
import { mass } from '../robot/fields.js'
import { strideLoads } from './stride.js'

/** Instances of the leg by name: joints in the order hip, knee; links upper, lower. */
export const hipOf = (use: Use<'leg'>, leg: Of<'leg'>) => use.all('joint', { leg })[0] as Of<'joint'>
export const kneeOf = (use: Use<'leg'>, leg: Of<'leg'>) => use.all('joint', { leg })[1] as Of<'joint'>
const upperOf = (use: Use<'leg'>, leg: Of<'leg'>) => use.all('link', { leg })[0] as Of<'link'>
const lowerOf = (use: Use<'leg'>, leg: Of<'leg'>) => use.all('link', { leg })[1] as Of<'link'>

/** Side to which the knee bends, from its limits. */
export const kneeSide = value('motion.kneeSide', ['leg'], (use, at) => {
  const joint = kneeOf(use, at.leg)
  return use.at(from, { joint }) + use.at(to, { joint }) < 0 ? 'backward' : 'forward'
})

/** Forces and torques of the leg over a stride. */
export const stride = value('motion.stride', ['leg', 'stance'], (use, at) => {
  const [upper, lower] = [{ link: upperOf(use, at.leg) }, { link: lowerOf(use, at.leg) }]
  const { height, gravity, legShare, dutyFactor, shape, tractionLowest, tractionHighest, speed, stepLength, clearance, blocked } =
    use(stance)
  return use.run(strideLoads, {
    hipOffset: use(links.hipOffset),
    upperLink: use.at(links.length, upper),
    lowerLink: use.at(links.length, lower),
    upperMass: use.at(loadedMass, upper),
    lowerMass: use.at(loadedMass, lower),
    hipRotorInertia: use.at(rotorAtJoint, { joint: hipOf(use, at.leg) }),
    kneeRotorInertia: use.at(rotorAtJoint, { joint: kneeOf(use, at.leg) }),
    knee: use(kneeSide),
    height,
    mass: use(mass),
    gravity,
    legShare,
    dutyFactor,
    shape,
    tractionLowest,
    tractionHighest,
    speed,
    stepLength,
    clearance,
    blocked,
  })
})

/** What a stance means for one joint. */
export interface JointMotion {
  readonly torque: number
  readonly shaftTorque: number
  readonly shaftRms: number
  readonly speed: number
  readonly loadedSpeed: number
  readonly lowest: number
  readonly highest: number
}
const STILL: JointMotion = { torque: 0, shaftTorque: 0, shaftRms: 0, speed: 0, loadedSpeed: 0, lowest: 0, highest: 0 }

/** Torques, speeds and angles of a joint in a stance. */
export const jointMotion = value('motion.joint', ['joint', 'stance'], (use, at): JointMotion => {
  if (use.nameOf('stance', at.stance) === 'unloaded') return STILL
  const s = use(stride)
  if (!Number.isFinite(s.hipLowest)) throw new RangeError('the leg reaches no point of this stance within the length of its links')
  return (use.nameOf('joint', at.joint) as Joint) === 'hip'
    ? {
        torque: s.hipTorque,
        shaftTorque: s.hipShaftTorque,
        shaftRms: s.hipShaftRms,
        speed: s.hipSpeed,
        loadedSpeed: s.hipLoadedSpeed,
        lowest: s.hipLowest,
        highest: s.hipHighest,
      }
    : {
        torque: s.kneeTorque,
        shaftTorque: s.kneeShaftTorque,
        shaftRms: s.kneeShaftRms,
        speed: s.kneeSpeed,
        loadedSpeed: s.kneeLoadedSpeed,
        lowest: s.kneeLowest,
        highest: s.kneeHighest,
      }
})

/** Joint torque of largest magnitude in an event, with its sign. */
export const jointTorque = value('motion.jointTorque', ['joint', 'event'], (use) => use(jointMotion).torque)

const through = line('angle run through', { lowest: 'angle', highest: 'angle' }, 'angle', 'max(0, highest − lowest)', (x) =>
  Math.max(0, x.highest - x.lowest),
)
/** Angle that a joint runs through under load. */
export const stroke = value('motion.stroke', ['joint', 'event'], (use) => {
  const { lowest, highest } = use(jointMotion)
  return use.run(through, { lowest, highest })
})

/** Largest force of the ground on the foot, across the ground. */
export const footForce = value('motion.footForce', ['leg', 'event'], (use) => (use(isLoaded) ? use(stride).vertical : 0))
/** Whether the foot bears load. */
export const isLoaded = value('motion.isLoaded', ['event'], (use) => use(stance).legShare > 0)
