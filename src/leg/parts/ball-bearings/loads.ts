import { bearingEquivalentLoad, bearingStaticSafety, rodCocking, worstBallLoad } from '../../../fasteners/index.js'
import { harderOfTwo } from '../../lines.js'
import { line, type Of, type Use, value } from '../../run/index.js'
import { borne } from '../hip-shaft/bearings.js'
import { axialFactor, balls, isShock } from '../hip-shaft/fields.js'
import { thrust } from '../hip-shaft/loads.js'
import * as links from '../links/fields.js'
import { hipOf, kneeOf, lowerOf } from '../motion/instances.js'
import { stride } from '../motion/values.js'
import { hipHasShaft } from '../pins-and-bosses/fields.js'
import { couple, pinForce } from '../pins-and-bosses/loads.js'
import { shaftForce } from '../transmission/questions.js'
import { force as rodForce } from '../transmission/through-hip/checks.js'
import * as rod from '../transmission/through-hip/fields.js'
import * as seated from './fields.js'
import type { Pivot } from './pivots.js'
import { alongPair, nearerOfPair } from './sideways-hip.js'

const ofBoth = line.sum('force of rod and cord on the drum', { rod: 'force', cord: 'force' }, 'force')
const meanOf = line(
  'pitch diameter of the balls',
  { bore: 'length', outer: 'length' },
  'length',
  '(bore + outer) / 2',
  (x) => (x.bore + x.outer) / 2,
)
/** Diameter of the circle of the balls. */
export const pitchDiameter = value('pivot.pitchDiameter', ['pivot'], (use) =>
  use.run(meanOf, { bore: use(seated.bearing.bore), outer: use(seated.bearing.outerDiameter) }),
)
const larger = line.largest('larger load', { one: 'force', other: 'force' }, 'force')
type Loaded = Use<'pivot' | 'event' | 'air' | 'age'>
type Moved = Use<'pivot' | 'event'>
const pivotOf = (use: Use<'pivot'>, of: Of<'pivot'>) => use.nameOf('pivot', of) as Pivot
export const legOf = (use: Use<never>) => use.all('leg')[0] as Of<'leg'>
/** The joint of a pin. */
export const jointOfPin = (use: Use<'pivot'>, of: Of<'pivot'>): Of<'joint'> =>
  pivotOf(use, of) === 'hip' ? hipOf(use, legOf(use)) : kneeOf(use, legOf(use))
const isPin = (pivot: Pivot): pivot is 'hip' | 'knee' => pivot === 'hip' || pivot === 'knee'

/** Load across the axis. */
export const radialLoad = value('pivot.radialLoad', ['pivot', 'event', 'air', 'age'], (use, at): number => {
  const pivot = pivotOf(use, at.pivot)
  if (isPin(pivot)) return use.at(pinForce, { joint: jointOfPin(use, at.pivot) })
  if (pivot === 'sidewaysHip') return use(nearerOfPair)
  if (pivot !== 'drum') return use(rodForce)
  return use.run(ofBoth, { rod: use(rodForce), cord: use.at(shaftForce, { joint: kneeOf(use, legOf(use)) }) })
})

const cocking = (use: Moved) =>
  use.run(rodCocking, {
    rodForce: use(rodForce),
    planeOffset: use(seated.offset),
    pinPlanesApart: use(rod.pinPlanesApart),
    pinDistance: use(rod.length),
  })

/** Length of leg from a pin to the foot, which a sideways force of the foot tilts. */
export const legBelow = value('pivot.legBelow', ['pivot', 'event'], (use, at): number =>
  pivotOf(use, at.pivot) === 'hip' ? use(stride).farthest : use.at(links.length, { link: lowerOf(use, legOf(use)) }),
)

/** Moment that tilts what turns there. */
export const moment = value('pivot.moment', ['pivot', 'event'], (use, at): number => {
  // The pair of the sideways hip shares every moment: its nearer bearing has it in its load.
  if (use(seated.isInEye) || pivotOf(use, at.pivot) === 'sidewaysHip') return 0
  if (!isPin(pivotOf(use, at.pivot))) return cocking(use).moment
  const joint = jointOfPin(use, at.pivot)
  // Link and crank sit on the hip shaft, where there is one: it takes both couples.
  if (pivotOf(use, at.pivot) === 'hip' && use(hipHasShaft)) return 0
  return use.at(couple, { joint })
})

/** Load along the axis. The drum bears none: the cord keeps its plane, and the rod pulls on its pins. */
export const axialLoad = value('pivot.axialLoad', ['pivot', 'event'], (use, at): number => {
  const pivot = pivotOf(use, at.pivot)
  if (isPin(pivot)) return use(thrust)
  if (pivot === 'sidewaysHip') return use(alongPair)
  return pivot === 'drum' ? 0 : cocking(use).axialPull
})

/** Load across the harder of a pair; of one bearing alone its whole load. */
export const ownLoad = value('pivot.ownLoad', ['pivot', 'event', 'air', 'age'], (use, at): number => {
  if (pivotOf(use, at.pivot) === 'sidewaysHip') return use(radialLoad)
  const spacing = use(seated.pairSpacing)
  return spacing === undefined ? use(radialLoad) : use.run(harderOfTwo, { force: use(radialLoad), moment: use(moment), distance: spacing })
})

/** Radial load alone that would load a ball as much as all loads of one bearing do. */
export const ballLoad = value(
  'pivot.ballLoad',
  ['pivot', 'event', 'air', 'age'],
  (use): number =>
    use.run(worstBallLoad, {
      radialLoad: use(radialLoad),
      axialLoad: use(axialLoad),
      moment: use(moment),
      balls: use(balls),
      pitchDiameter: use(pitchDiameter),
      contactAngle: use(seated.contactAngle),
    }).equivalentRadial,
)

const equivalent = value('pivot.equivalentLoad', ['pivot', 'event', 'air', 'age'], (use) => {
  const { staticLoad, dynamicLoad } = use.run(bearingEquivalentLoad, {
    radialLoad: use(ownLoad),
    axialLoad: use(axialLoad),
    staticRating: use(seated.bearing.staticRating),
    axialFactor: use(axialFactor),
  })
  return { staticLoad, dynamicLoad }
})
/** Equivalent static load of the harder bearing. */
export const staticLoad = value('pivot.staticLoad', ['pivot', 'event', 'air', 'age'], (use) => use(equivalent).staticLoad)
/** Equivalent dynamic load; of one bearing that a moment cocks, that of its worst ball. */
export const dynamicLoad = value('pivot.dynamicLoad', ['pivot', 'event', 'air', 'age'], (use): number => {
  const one = use(equivalent).dynamicLoad
  if (use(seated.pairSpacing) !== undefined || use(moment) === 0) return one
  return use.run(larger, { one, other: use(ballLoad) })
})

const borneOf = (use: Loaded, load: number): number => {
  const { safety, requiredSafety } = use.run(bearingStaticSafety, {
    staticRating: use(seated.bearing.staticRating),
    staticLoad: load,
    duty: use(isShock) ? 'shock' : 'quiet',
  })
  return use.run(borne, { load, safety, required: requiredSafety })
}
/** Static load that the bearing bears, with the safety for its duty. */
export const staticBorne = value('pivot.staticBorne', ['pivot', 'event', 'air', 'age'], (use) => borneOf(use, use(staticLoad)))
/** The same beside the load of the worst ball. */
export const ballBorne = value('pivot.ballBorne', ['pivot', 'event', 'air', 'age'], (use) => borneOf(use, use(ballLoad)))
