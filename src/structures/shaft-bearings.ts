import { formula } from '../formula/index.js'

/**
 * Forces of two bearings on a shaft under loads in several planes, as vectors: cord branches, a rod, the foot's force through the link.
 *
 * Give every branch of a cord in its own plane: branches that are apart along the shaft make couples that the bearings must take. Two loads at right
 * angles never add as numbers.
 */
export const shaftBearings = /* @__PURE__ */ formula('structures.shaftBearings', {
  inputs: {
    /** Place of the first bearing along the shaft. */
    firstBearing: 'length',
    /** Place of the second bearing along the shaft. */
    secondBearing: 'length',
    /** Loads on the shaft. */
    loads: {
      list: {
        fields: {
          /** Part of the load along the first axis across the shaft. */
          first: 'force',
          /** Part of the load along the second axis across the shaft. */
          second: 'force',
          /** Place of its plane along the shaft. */
          plane: 'length',
        },
      },
    },
  },
  output: {
    /** Force of the first bearing on the shaft. */
    firstForce: 'force',
    /** Components along the two axes. */
    firstParts: { list: 'force' },
    /** Force of the second bearing on the shaft. */
    secondForce: 'force',
    /** Components along the two axes. */
    secondParts: { list: 'force' },
  },
  assumes: ['bearings that take no moment', 'rigid frame'],
  source: [{ level: 'computed', where: 'forces and moments about one bearing, in two planes' }],
  requires: {
    secondBearing: { accepts: 'must be at another place than the first', holds: (x) => x.secondBearing !== x.firstBearing },
  },
  si: ({ firstBearing, secondBearing, loads }) => {
    const sums = [0, 0, 0, 0]
    for (const { first, second, plane } of loads) {
      const share = (plane - firstBearing) / (secondBearing - firstBearing)
      sums[0]! -= first * (1 - share)
      sums[1]! -= second * (1 - share)
      sums[2]! -= first * share
      sums[3]! -= second * share
    }
    const [a, b, c, d] = sums as [number, number, number, number]
    return { firstForce: Math.hypot(a, b), firstParts: [a, b], secondForce: Math.hypot(c, d), secondParts: [c, d] }
  },
})
