import { formula } from '../formula/index.js'

/**
 * Forces of each bolt of a group under a force and a moment in the plane of the joint: direct share by area, twist share by distance from the centre of the areas.
 *
 * The plane has axes x and y; the moment is positive from x to y. Bolts carry shear (or the same slip share of a friction joint).
 */
export const boltGroupShear = /* @__PURE__ */ formula('fasteners.boltGroupShear', {
  inputs: {
    /** Bolts. */
    bolts: {
      list: {
        fields: {
          /** Place. */
          x: 'length',
          /** Place. */
          y: 'length',
          /** Shear area; equal numbers for equal bolts. */
          area: { kind: 'area', above: 0 },
        },
      },
    },
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
      accepts: 'must not all stand at one place',
      holds: ({ bolts }) => bolts.length === 1 || bolts.some(({ x, y }) => x !== bolts[0]!.x || y !== bolts[0]!.y),
    },
  },
  valid: { 'a single bolt carries no moment': ({ bolts }, { centreMoment }) => bolts.length > 1 || Math.abs(centreMoment) < 1e-9 },
  si: ({ bolts, forceX, forceY, atX, atY, moment }) => {
    let area = 0
    let x0 = 0
    let y0 = 0
    for (const bolt of bolts) {
      area += bolt.area
      x0 += bolt.area * bolt.x
      y0 += bolt.area * bolt.y
    }
    x0 /= area
    y0 /= area
    let polar = 0
    for (const bolt of bolts) polar += bolt.area * ((bolt.x - x0) ** 2 + (bolt.y - y0) ** 2)
    const centreMoment = moment + (atX - x0) * forceY - (atY - y0) * forceX
    const twist = polar === 0 ? 0 : centreMoment / polar
    const alongX = bolts.map((bolt) => bolt.area * (forceX / area - twist * (bolt.y - y0)))
    const alongY = bolts.map((bolt) => bolt.area * (forceY / area + twist * (bolt.x - x0)))
    const sizes = alongX.map((x, i) => Math.hypot(x, alongY[i]!))
    return { alongX, alongY, sizes, largest: Math.max(...sizes), centreMoment }
  },
})

/** Tension of each bolt where a moment tips a stiff bracket about its edge; distances are from that edge. */
export const boltGroupTipping = /* @__PURE__ */ formula('fasteners.boltGroupTipping', {
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
  assumes: ['rigid bracket that turns about its edge', 'equal bolts'],
  source: [{ level: 'published', where: 'any machine-design text: bracket under an overhung load' }],
  si: ({ distances, moment, tension }) => {
    let squares = 0
    for (const distance of distances) squares += distance * distance
    const tensions = distances.map((distance) => tension / distances.length + (moment * distance) / squares)
    return { tensions, largest: Math.max(...tensions) }
  },
})

/** Prying: a flange that heels on its toe pulls the bolt harder than the load does (upper bound of a stiff flange), and what the flange must bear. */
export const prying = /* @__PURE__ */ formula('fasteners.prying', {
  inputs: {
    /** Load per bolt. */
    load: { kind: 'force', min: 0 },
    /** Distance from the load's line to the bolt. */
    loadToBolt: { kind: 'length', min: 0 },
    /** Distance from the bolt to the toe. */
    boltToToe: { kind: 'length', above: 0 },
    /** Width of flange per bolt. */
    width: { kind: 'length', above: 0 },
    /** Thickness of the flange. */
    thickness: { kind: 'length', above: 0 },
    /** Hole diameter. */
    holeDiameter: { kind: 'length', min: 0 },
  },
  output: {
    /** Tension of the bolt. */
    boltTension: 'force',
    /** Force at the toe. */
    toeForce: 'force',
    /** Bending stress of the flange at the bolt line, across the net width. */
    flangeStress: 'stress',
  },
  assumes: ['stiff flange on its toe: the most prying there can be; a flange that bends between load and bolt pries less'],
  source: [{ level: 'computed', where: 'lever about the toe' }],
  requires: { holeDiameter: { accepts: 'must be smaller than the width', holds: ({ holeDiameter, width }) => holeDiameter < width } },
  si: ({ load, loadToBolt, boltToToe, width, thickness, holeDiameter }) => {
    const toeForce = (load * loadToBolt) / boltToToe
    return {
      boltTension: load + toeForce,
      toeForce,
      flangeStress: (6 * load * loadToBolt) / ((width - holeDiameter) * thickness * thickness),
    }
  },
})
