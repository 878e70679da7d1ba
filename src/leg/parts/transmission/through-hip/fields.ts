import { parallelPin } from '../../../../fasteners/index.js'
import { field, record, reference, word } from '../../../leaves.js'
import type { LegNumbers } from '../../../leg-numbers.js'
import { NoValueError } from '../../../no-value.js'
import { constant, leaf } from '../../../run/index.js'
import { pinOf } from '../../../schema/tables.js'

/** The rod that drives the knee from a drum on the hip axis; absent where the knee's motor sits on the upper link. */
export const rodOf = ({ joints: { knee } }: LegNumbers) => (knee.through?.kind === 'rod' ? knee.through : undefined)
const rodIn = (x: LegNumbers) => {
  const rod = rodOf(x)
  if (rod === undefined) throw new NoValueError('no rod drives the knee')
  return rod
}

/** The four-bar of crank, rod and rocker. The crank lies on the side of the rocker. */
function fourBarOf(x: LegNumbers) {
  const rod = rodIn(x)
  const { lowest, highest } = x.joints.knee.range
  const side = Math.sin(rod.rockerAngle + (lowest + highest) / 2)
  return {
    crank: rod.crank,
    coupler: rod.rod,
    rocker: rod.rocker,
    rockerAngleAtStraightKnee: rod.rockerAngle,
    crankSide: side >= 0 ? ('positive' as const) : ('negative' as const),
  }
}
/** The four-bar with the upper link as its ground. Throws where no rod drives the knee. */
export const kneeLinkage = (x: LegNumbers) => ({ ...fourBarOf(x), ground: x.links.upper.length })
/** The four-bar but for the upper link; absent without a rod. */
export const linkage = record('rod.linkage', [], (x) => (rodOf(x) === undefined ? undefined : fourBarOf(x)))
export const length = field('rod.length', [], 'length', (x) => rodIn(x).rod)
/** Distance of the plane of the rod from the plane of the links, of either sign. */
export const planeOffset = field('rod.planeOffset', [], 'length', (x) => rodIn(x).planeOffset)
export const pinPlanesApart = field('rod.pinPlanesApart', [], 'length', (x) => rodIn(x).pinPlanesApart)
export const step = field('rod.step', [], 'length', (x) => rodIn(x).step)
export const mass = field('rod.mass', [], 'mass', (x) => rodIn(x).mass)
export const diameter = field('rod.diameter', [], 'length', (x) => rodIn(x).diameter)
/** Why no eye of the rod turns on a plain pin; absent where one does. */
export const onBearings = word('rod.onBearings', [], (x) => {
  const { crank, rocker } = rodIn(x).pivots ?? {}
  return crank?.bearing === undefined || rocker?.bearing === undefined ? undefined : 'ball bearings carry both ends of the rod'
})
export const material = reference('rod.material', [], 'material', (x) => rodIn(x).material)
/** The pin at each end of the rod. */
const pinIn = (x: LegNumbers) => {
  const { pin } = rodIn(x)
  const found = pin === undefined ? undefined : x.pins[pin]
  if (found === undefined) throw new NoValueError('the rod has no pins')
  return found
}
export const pin = {
  diameter: field('rodPin.diameter', [], 'length', (x) => pinOf(pinIn(x).size).diameter, {
    title: 'diameter of the pins of the rod',
    table: parallelPin,
  }),
  strength: field('rodPin.strength', [], 'stress', (x) => pinIn(x).strength),
  cheekThickness: field('rodPin.cheekThickness', [], 'length', (x) => pinIn(x).cheekThickness),
  lugThickness: field('rodPin.lugThickness', [], 'length', (x) => pinIn(x).lugThickness),
  gap: field('rodPin.gap', [], 'length', (x) => pinIn(x).gap),
}

/** Least distance from a dead point within the limits of the knee. */
export const leastMargin = constant('rod.leastMargin', {
  title: 'least angle of the rod from a dead point',
  kind: 'angle',
  typical: (10 * Math.PI) / 180,
  source: { level: 'assumption', where: 'ten degrees for play, windup and links that give' },
})
/** Largest error of the distance of two pins, of either sign. What a workshop says of it is known to a factor of two. */
export const lengthError = leaf<LegNumbers, number>('rod.lengthError', [], {
  title: 'error of the distance of two pins on crank, rod, rocker and upper link',
  kind: 'length',
  read: (x: LegNumbers) => rodIn(x).lengthError,
  range: (x: LegNumbers) => {
    const { lengthError: given } = rodIn(x)
    if (given === 0) return undefined
    return {
      low: given / 2,
      high: 2 * given,
      source: { level: 'assumption', where: 'half and twice the error of two pins that the specification gives' },
      measuredBy: 'measure the distances of the pins on all four with a calliper',
    }
  },
})
