import { formula } from '../formula/index.js'
import { headBearing } from './head-bearing.js'
import { jointLoads } from './joint-loads.js'

/** A lip that holds a bearing along its axis (shoulder of the housing, or inner edge of its cap): crushing under the ring, shear and bending at its root. */
export const bearingShoulder = /* @__PURE__ */ formula('fasteners.bearingShoulder', {
  inputs: {
    /** Axial load on the ring towards the lip. */
    thrust: { kind: 'force', min: 0 },
    /** Clamp load through ring and lip: of all cap screws where the cap presses on the ring, zero where the cap sits on the housing. */
    clampLoad: { kind: 'force', min: 0, default: '0 N' },
    /** Diameter of the seat, where the lip is rooted. */
    seatDiameter: { kind: 'length', above: 0 },
    /** Largest diameter on which the ring's face touches: its outside less its rounded edges. */
    contactDiameter: { kind: 'length', above: 0 },
    /** Bore of the lip; it must clear the inner ring. */
    lipBore: { kind: 'length', above: 0 },
    /** Thickness of the lip along the axis. */
    thickness: { kind: 'length', above: 0 },
    /** Compressive strength at that temperature, for that time. */
    compressiveStrength: { kind: 'stress', above: 0 },
    /** Shear strength at the root; between layers where they lie across the axis. */
    shearStrength: { kind: 'stress', above: 0 },
    /** Bending strength of the lip, in the direction from bore to root. */
    bendingStrength: { kind: 'stress', above: 0 },
  },
  output: {
    /** Pressure under the ring. */
    pressure: 'stress',
    /** Shear at the root. */
    shearStress: 'stress',
    /** Bending stress at the root. */
    bendingStress: 'stress',
    /** Axial force, thrust and clamp load together, at which the lip fails. */
    capacity: 'force',
    /** Capacity over thrust and clamp load; infinite without either. */
    reserve: { kind: 'ratio', infinite: true },
    /** Governing mode of failure. */
    governedBy: { oneOf: ['crushing', 'shear', 'bending'] },
  },
  equation: [
    'force = thrust + clampLoad',
    'pressure = force / (pi / 4 * (contactDiameter^2 - lipBore^2))',
    'shearStress = force / (pi * seatDiameter * thickness)',
    'arm = (seatDiameter - (contactDiameter + lipBore) / 2) / 2',
    'bendingStress = 6 * force * arm / (pi * seatDiameter * thickness^2)',
  ],
  assumes: [
    'ring pressed flat on the lip',
    'bending as a strip rooted at the seat',
    'stress at most 3 % below that of an annular plate clamped at the seat, for Poisson ratios up to 0.38 (5 % up to 0.45)',
  ],
  source: [{ level: 'computed', where: 'bearing area, root cylinder and cantilever strip of a circular lip' }],
  requires: {
    contactDiameter: {
      accepts: 'must be larger than the bore of the lip and no larger than the seat',
      holds: ({ contactDiameter, lipBore, seatDiameter }) => contactDiameter > lipBore && contactDiameter <= seatDiameter,
    },
  },
  si: (x) => {
    const force = x.thrust + x.clampLoad
    const ring = { bearingDiameter: x.contactDiameter, holeDiameter: x.lipBore, allowablePressure: x.compressiveStrength }
    const bearing = headBearing.si({ force, ...ring })
    const root = Math.PI * x.seatDiameter
    const arm = (x.seatDiameter - (x.contactDiameter + x.lipBore) / 2) / 2
    const shearArea = root * x.thickness
    const bendingArea = (root * x.thickness * x.thickness) / (6 * arm)
    const shear = x.shearStrength * shearArea
    const bending = x.bendingStrength * bendingArea
    const capacity = Math.min(bearing.allowableForce, shear, bending)
    return {
      pressure: bearing.pressure,
      shearStress: force / shearArea,
      bendingStress: force / bendingArea,
      capacity,
      reserve: force === 0 ? Number.POSITIVE_INFINITY : capacity / force,
      governedBy:
        capacity === bearing.allowableForce ? ('crushing' as const) : capacity === shear ? ('shear' as const) : ('bending' as const),
    }
  },
})

/** The screwed cap that holds a bearing along its axis: load of its screws, and the thrust at which the cap lifts or a screw fails. */
export const bearingCap = /* @__PURE__ */ formula('fasteners.bearingCap', {
  inputs: {
    /** Axial load towards the cap. */
    thrust: { kind: 'force', min: 0 },
    /** Number of screws. */
    screws: { kind: 'count', min: 2, whole: true },
    /** Clamp load of one screw, left at that time and temperature. */
    clampLoad: { kind: 'force', min: 0 },
    /** Load factor of the joint; near 0.9 in clamped polymer. */
    loadFactor: { kind: 'ratio', min: 0, below: 1 },
    /** Capacity of one screw: the smallest of proof load, stripping of its thread and pull-out of its insert or nut. */
    screwCapacity: { kind: 'force', above: 0 },
  },
  output: {
    /** Load of one screw. */
    screwLoad: 'force',
    /** Clamp load left between cap and housing, of one screw. */
    faceLoad: 'force',
    /** Thrust at which the cap lifts. */
    liftThrust: 'force',
    /** Largest thrust without lifting of the cap or overload of a screw. */
    capacity: 'force',
    /** Capacity over thrust; infinite without thrust. */
    reserve: { kind: 'ratio', infinite: true },
    /** Limit that governs: the cap lifts, or a screw is overloaded. */
    governedBy: { oneOf: ['lifting', 'screws'] },
    /** Whether the cap stays on its face. */
    state: { oneOf: ['closed', 'lifts'] },
  },
  assumes: ['screws at equal angles around the bearing, sharing the thrust equally', 'stiff cap: no prying (`prying` otherwise)'],
  source: [{ level: 'published', where: 'Shigley 9th ed., section 8-7 and eq. 8-24 to 8-30, as fasteners.jointLoads' }],
  valid: { 'clamp load at most the capacity of a screw': ({ clampLoad, screwCapacity }) => clampLoad <= screwCapacity },
  si: ({ thrust, screws, clampLoad, loadFactor, screwCapacity }) => {
    const joint = jointLoads.si({ clampLoad, externalLoad: thrust / screws, loadFactor })
    const liftThrust = screws * joint.separationLoad
    const spare = Math.max(0, screwCapacity - clampLoad)
    const screwThrust = loadFactor === 0 ? Number.POSITIVE_INFINITY : (screws * spare) / loadFactor
    const capacity = Math.min(liftThrust, screwThrust)
    return {
      screwLoad: joint.boltLoad,
      faceLoad: joint.faceLoad,
      liftThrust,
      capacity,
      reserve: thrust === 0 ? Number.POSITIVE_INFINITY : capacity / thrust,
      governedBy: screwThrust < liftThrust ? ('screws' as const) : ('lifting' as const),
      state: joint.state === 'closed' ? ('closed' as const) : ('lifts' as const),
    }
  },
})
