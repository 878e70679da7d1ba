import type { StanceId } from '../../cases/events.js'
import { type At, type Use, value } from '../../run/index.js'
import { from, to } from '../joints/fields.js'
import * as links from '../links/fields.js'
import { body } from '../links/values.js'
import { stance } from '../load/stance.js'
import { kneeRotor, rotorAtJoint } from '../motors/rotor.js'
import { mass } from '../robot/fields.js'
import { springLaw } from '../springs/values.js'
import { linkage } from '../transmission/through-hip/fields.js'
import { hipOf, kneeOf, lowerOf, upperOf } from './instances.js'
import { kneePulleys } from './knee-pulleys.js'
import { strideLoads } from './stride.js'

/** Side to which the knee bends, from its limits. */
export const kneeSide = value('motion.kneeSide', ['leg'], (use, at) => {
  const joint = kneeOf(use, at.leg)
  return use.at(from, { joint }) + use.at(to, { joint }) < 0 ? 'backward' : 'forward'
})

/** Stances of a landing, in which a spring breaks if ever. */
const LANDINGS: readonly StanceId[] = ['hop', 'hopEnd', 'drop', 'dropEnd']

/** Runs a stride with the springs of the leg, or without them. */
function strideWith(use: Use<'leg' | 'stance'>, at: At<'leg' | 'stance'>, springs: 'with' | 'without') {
  const [upper, lower] = [{ link: upperOf(use, at.leg) }, { link: lowerOf(use, at.leg) }]
  const {
    height,
    gravity,
    legShare,
    dutyFactor,
    shape,
    shares,
    tractionLowest,
    tractionHighest,
    lateral,
    speed,
    stepLength,
    clearance,
    blocked,
  } = use(stance)
  const [thigh, shank] = [use.at(body, upper), use.at(body, lower)]
  const rotor = use.at(kneeRotor, { joint: kneeOf(use, at.leg) })
  return use.run(strideLoads, {
    hipOffset: use(links.hipOffset),
    upperLink: use.at(links.length, upper),
    lowerLink: use.at(links.length, lower),
    upperMass: thigh.mass,
    lowerMass: shank.mass,
    upperCentre: thigh.centre,
    lowerCentre: shank.centre,
    upperInertia: thigh.inertia,
    lowerInertia: shank.inertia,
    hipRotorInertia: use.at(rotorAtJoint, { joint: hipOf(use, at.leg) }),
    kneeRotorInertia: rotor.knee,
    kneeRotorAtHip: rotor.hip,
    rotorCoupling: rotor.coupling,
    knee: use(kneeSide),
    height,
    mass: use(mass),
    gravity,
    legShare,
    dutyFactor,
    shape,
    shares,
    tractionLowest,
    tractionHighest,
    lateral,
    speed,
    stepLength,
    clearance,
    blocked,
    linkage: use(linkage),
    kneePulleys: use(kneePulleys),
    hipSpring: springs === 'with' ? use.at(springLaw, { joint: hipOf(use, at.leg) }) : undefined,
    mayBreak: springs === 'with' && LANDINGS.includes(use.nameOf('stance', at.stance) as StanceId),
    kneeSpring: springs === 'with' ? use.at(springLaw, { joint: kneeOf(use, at.leg) }) : undefined,
  })
}
/** The same of a leg whose springs are broken. */
export const strideAlone = value('motion.strideAlone', ['leg', 'stance'], (use, at) => strideWith(use, at, 'without'))

/** Forces and torques of the leg over a stride. In a landing a spring may break: drives, rod and knee pin bear the larger of with it and without it. */
export const stride = value('motion.stride', ['leg', 'stance'], (use, at) => strideWith(use, at, 'with'))
