import { formula } from '../formula/index.js'
import { BOLTS, PLACE } from './bolt-inputs.js'

/** Area of the bolts, its centre, and its second moments about the centre: xx = Σ A x², yy = Σ A y², xy = Σ A x y. */
function secondMoments(bolts: readonly { readonly x: number; readonly y: number; readonly area: number }[]) {
  // From the first bolt on: a bolt by itself is its own centre to the last bit, and has no arm.
  const { x: firstX, y: firstY } = bolts[0]!
  let [area, dx, dy] = [0, 0, 0]
  for (const bolt of bolts) {
    area += bolt.area
    dx += bolt.area * (bolt.x - firstX)
    dy += bolt.area * (bolt.y - firstY)
  }
  const [x0, y0] = [firstX + dx / area, firstY + dy / area]
  let [xx, yy, xy] = [0, 0, 0]
  for (const bolt of bolts) {
    xx += bolt.area * (bolt.x - x0) ** 2
    yy += bolt.area * (bolt.y - y0) ** 2
    xy += bolt.area * (bolt.x - x0) * (bolt.y - y0)
  }
  return { area, x0, y0, xx, yy, xy }
}

/**
 * Forces of each bolt of a group under a force and a moment in the plane of the joint: direct share by area, twist share by distance from the centre of the areas.
 *
 * The plane has axes x and y; the moment is positive from x to y. Bolts carry shear (or the same slip share of a friction joint).
 */
export const boltGroupShear = /* @__PURE__ */ formula('fasteners.boltGroupShear', {
  inputs: {
    ...BOLTS,
    /** Force along x. */
    forceX: 'force',
    /** Force along y. */
    forceY: 'force',
    /** Where the force acts. */
    atX: 'length',
    /** Where the force acts. */
    atY: 'length',
    /** Moment besides the force's own. */
    moment: { kind: 'torque', default: '0 N m' },
  },
  output: {
    /** Force on each bolt along x. */
    alongX: { list: 'force' },
    /** Force on each bolt along y. */
    alongY: { list: 'force' },
    /** Size of the force on each bolt. */
    sizes: { list: 'force' },
    /** The largest of them. */
    largest: 'force',
    /** Moment about the centre of the areas. */
    centreMoment: 'torque',
  },
  assumes: ['rigid plates', 'elastic bolts: force in proportion to area and distance'],
  source: [{ level: 'published', where: 'Shigley 9th ed., section 8-12, eq. 8-56 and 8-57' }],
  requires: {
    bolts: {
      accepts: 'must not all be at one place',
      holds: ({ bolts }) => bolts.length === 1 || bolts.some(({ x, y }) => x !== bolts[0]!.x || y !== bolts[0]!.y),
    },
  },
  valid: { 'a single bolt carries no moment': ({ bolts }, { centreMoment }) => bolts.length > 1 || Math.abs(centreMoment) < 1e-9 },
  si: ({ bolts, forceX, forceY, atX, atY, moment }) => {
    const { area, x0, y0, xx, yy } = secondMoments(bolts)
    const polar = xx + yy
    const centreMoment = moment + (atX - x0) * forceY - (atY - y0) * forceX
    const twist = polar === 0 ? 0 : centreMoment / polar
    const alongX = bolts.map((bolt) => bolt.area * (forceX / area - twist * (bolt.y - y0)))
    const alongY = bolts.map((bolt) => bolt.area * (forceY / area + twist * (bolt.x - x0)))
    const sizes = alongX.map((x, i) => Math.hypot(x, alongY[i]!))
    return { alongX, alongY, sizes, largest: Math.max(...sizes), centreMoment }
  },
})

/**
 * Shear and tension of each bolt of a group under any force and moment in space, for a joint that its preload keeps closed.
 *
 * The joint lies in the plane of x and y; z points from the base to the part that is bolted on, so a force along z pulls the bolts. Moments turn from y to z, z to x, x to y.
 * A tension is the outside load of that bolt, before the load factor (`jointLoads`); where it is negative the joint is pressed together there.
 */
export const boltGroupLoads = /* @__PURE__ */ formula('fasteners.boltGroupLoads', {
  inputs: {
    ...BOLTS,
    /** Force. */
    force: {
      fields: {
        /** Along x. */
        x: 'force',
        /** Along y. */
        y: 'force',
        /** Along z: away from the base. */
        z: 'force',
      },
    },
    /** Where the force acts; the joint's face is at z = 0. */
    at: {
      fields: {
        ...PLACE,
        /** Height over the joint's face. */
        z: 'length',
      },
    },
    /** Moment besides the force's own. */
    moment: {
      fields: {
        /** About x, from y to z. */
        x: { kind: 'torque', default: '0 N m' },
        /** About y, from z to x. */
        y: { kind: 'torque', default: '0 N m' },
        /** About z, from x to y. */
        z: { kind: 'torque', default: '0 N m' },
      },
    },
  },
  output: {
    /** Sideways force on each bolt. */
    shears: { list: 'force' },
    /** Tension of each bolt by the outside load; negative where the joint is pressed. */
    tensions: { list: 'force' },
    /** Largest sideways force. */
    largestShear: 'force',
    /** Largest tension. */
    largestTension: 'force',
  },
  assumes: [
    'rigid parts, faces that stay closed: turns about the centre of the areas (`boltGroupTipping` once an edge gapes)',
    'elastic bolts: force in proportion to area and distance',
  ],
  source: [
    { level: 'published', where: 'Shigley 9th ed., section 8-12, as fasteners.boltGroupShear' },
    { level: 'published', where: 'any strength-of-materials text: skew bending of a section made of areas at points' },
  ],
  requires: {
    bolts: {
      accepts: 'must be three or more that are not in one line, since bolts in one line hold no moment about it',
      holds: ({ bolts }) => {
        const { xx, yy, xy } = secondMoments(bolts)
        return xx * yy - xy * xy > 1e-9 * (xx + yy) ** 2
      },
    },
  },
  si: ({ bolts, force, at, moment }) => {
    const { sizes, largest } = boltGroupShear.si({
      bolts,
      forceX: force.x,
      forceY: force.y,
      atX: at.x,
      atY: at.y,
      moment: moment.z,
    })
    const { area, x0, y0, xx, yy, xy } = secondMoments(bolts)
    const aboutX = moment.x + (at.y - y0) * force.z - at.z * force.y
    const aboutY = moment.y + at.z * force.x - (at.x - x0) * force.z
    // Tension per area rises by a along x and by b along y: Σ T (y − y0) is the moment about x, −Σ T (x − x0) the one about y.
    const whole = xx * yy - xy * xy
    const a = (-aboutY * yy - aboutX * xy) / whole
    const b = (aboutX * xx + aboutY * xy) / whole
    const tensions = bolts.map((bolt) => bolt.area * (force.z / area + a * (bolt.x - x0) + b * (bolt.y - y0)))
    return { shears: sizes, tensions, largestShear: largest, largestTension: Math.max(...tensions) }
  },
})

/** Tension of each bolt where a moment tips a stiff bracket about its edge; distances are from that edge. */
export const boltGroupTipping = /* @__PURE__ */ formula('fasteners.boltGroupTipping', {
  title: 'bolt tension of a bracket that tips',
  inputs: {
    /** Distance of each bolt from the tipping edge. */
    distances: { list: { kind: 'length', above: 0 } },
    /** Moment about the edge. */
    moment: { kind: 'torque', min: 0 },
    /** Tension that pulls straight off, shared equally. */
    tension: { kind: 'force', min: 0, default: '0 N' },
  },
  output: {
    /** Tension of each bolt beyond its preload, before the load factor. */
    tensions: { list: 'force' },
    /** The largest of them. */
    largest: 'force',
  },
  equation: ['tensions = tension / count(distances) + moment * distances / sum(distances .^ 2)', 'largest = max(tensions)'],
  assumes: ['rigid bracket that turns about its edge', 'equal bolts'],
  source: [{ level: 'published', where: 'any machine-design text: bracket under an overhung load' }],
  si: ({ distances, moment, tension }) => {
    let squares = 0
    for (const distance of distances) squares += distance * distance
    const tensions = distances.map((distance) => tension / distances.length + (moment * distance) / squares)
    return { tensions, largest: Math.max(...tensions) }
  },
})
