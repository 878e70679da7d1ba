import { formula, property } from '../formula/index.js'
import { headBearing } from './head-bearing.js'
import { jointLoads } from './joint-loads.js'
import { interferenceChange, pressFit, pressFitGrip, releaseTemperature } from './press-fit.js'

/**
 * The share of a ring's interference that a stiff metal housing passes into the bearing's internal clearance.
 *
 * A printed housing gives way itself and passes a few per cent only: `bearingSeat` works it out. Never carry this figure over to a print.
 */
export const metalHousingTransfer = /* @__PURE__ */ property('ratio', {
  typical: 0.7,
  low: 0.5,
  high: 0.9,
  source: { level: 'memory', where: "rolling-bearing makers' rule for rings in steel or iron housings" },
  conditions: 'small ball bearing, steel ring in a thick steel or iron housing',
})

/**
 * The seat of a ball bearing's outer ring in a housing that may be printed: what heat and moisture leave of the fit, what the fit takes of the internal clearance, whether the ring creeps.
 *
 * The internal clearance is the whole radial travel of one ring in the other, as catalogues give it; what the raceway shrinks in diameter comes off it.
 */
export const bearingSeat = /* @__PURE__ */ formula('fasteners.bearingSeat', {
  inputs: {
    /** Outside diameter of the bearing. */
    outsideDiameter: { kind: 'length', above: 0 },
    /** Diameter of the outer raceway; near (outside + bore)/2 + 0.3 × (outside − bore) when the maker is silent. */
    racewayDiameter: { kind: 'length', above: 0 },
    /** Width of the bearing. */
    width: { kind: 'length', above: 0 },
    /** Outside diameter minus seat diameter as assembled; negative is clearance. */
    diametralInterference: 'length',
    /** Radial internal clearance before mounting. */
    internalClearance: { kind: 'length', min: 0 },
    /** Growth of the inner raceway by its own fit on the shaft. */
    innerRacewayGrowth: { kind: 'length', min: 0, default: '0 mm' },
    /** Housing. */
    housing: {
      fields: {
        /** Outer diameter, or twice the shortest way from the axis to a free surface (`effectiveBossDiameter`). */
        diameter: { kind: 'length', above: 0 },
        /** Modulus at the temperature and time asked about. */
        modulus: { kind: 'modulus', above: 0 },
        /** Poisson's ratio. */
        poissonRatio: { kind: 'ratio', min: 0, max: 0.5 },
        /** Thermal expansion around the seat. */
        thermalExpansion: 'thermalExpansion',
      },
    },
    /** The ring. */
    ring: {
      fields: {
        /** Modulus. */
        modulus: { kind: 'modulus', above: 0, default: '207 GPa' },
        /** Poisson's ratio. */
        poissonRatio: { kind: 'ratio', min: 0, max: 0.5, default: 0.3 },
        /** Thermal expansion. */
        thermalExpansion: { kind: 'thermalExpansion', default: '12 ppm/K' },
      },
    },
    /** Temperature minus temperature of assembly. */
    temperatureChange: 'temperatureDifference',
    /** How much warmer the inner ring runs than the outer. */
    innerRingWarmer: { kind: 'temperatureDifference', min: 0, default: '0 K' },
    /** Swelling strain of the housing by moisture taken up since assembly. */
    swelling: { kind: 'strain', default: 0 },
    /** Share of the interference passed into the clearance, if measured; worked out from ring and housing otherwise. */
    transfer: { kind: 'ratio', min: 0, max: 1, optional: true },
    /** Coefficient of friction of ring on housing: the lowest. */
    friction: { kind: 'ratio', min: 0 },
    /** How the load lies to the outer ring: standing still on one spot of it, or going round. */
    load: { oneOf: ['standsStill', 'goesRound'] },
  },
  output: {
    /** Interference then; negative is clearance. */
    diametralInterference: 'length',
    /** Pressure of ring on housing; none when loose. */
    pressure: 'stress',
    /** Hoop tension of the housing at the seat. */
    housingHoopStress: 'stress',
    /** Share of the interference that comes off the internal clearance; none when loose. */
    transfer: 'ratio',
    /** Radial internal clearance left; negative is preload. */
    clearanceLeft: 'length',
    /** Torque that turns the ring in its seat. */
    gripTorque: 'torque',
    /** Change of temperature since assembly at which a dry fit lets go; infinite when it never does, zero when it is loose from the start. */
    releaseChange: { kind: 'temperatureDifference', infinite: true },
    /** How the ring sits: a loose one may stay where the load stands still, and creeps round where the load does. */
    seat: { oneOf: ['tight', 'looseAllowed', 'ringCreeps'] },
    /** How the balls run. */
    clearance: { oneOf: ['runsFree', 'preloaded'] },
  },
  assumes: [
    'ring and housing as thick rings in plane stress, equally long',
    'housing and outer ring at one temperature',
    'no relaxation of the housing but what its modulus says',
  ],
  source: [
    { level: 'published', where: 'Lamé; Shigley 9th ed., eq. 3-50 to 3-57, as fasteners.pressFit' },
    { level: 'commonPractice', where: 'a ring under a load that stands still to it may be loose, one under a turning load must be tight' },
  ],
  requires: {
    racewayDiameter: {
      accepts: 'must be smaller than the outside diameter',
      holds: ({ racewayDiameter, outsideDiameter }) => racewayDiameter < outsideDiameter,
    },
    housing: {
      accepts: 'must be wider than the bearing',
      holds: ({ housing, outsideDiameter }) => housing.diameter > outsideDiameter,
    },
  },
  si: (x) => {
    const { outsideDiameter, racewayDiameter, housing, ring } = x
    const expansions = { diameter: outsideDiameter, bossExpansion: housing.thermalExpansion, pinExpansion: ring.thermalExpansion }
    const { diametralInterference, state } = interferenceChange.si({
      ...expansions,
      diametralInterference: x.diametralInterference,
      temperatureChange: x.temperatureChange,
      swelling: x.swelling,
    })
    const tight = state === 'tight'
    const fit = pressFit.si({
      diameter: outsideDiameter,
      diametralInterference: tight ? diametralInterference : 0,
      bossDiameter: housing.diameter,
      pinBore: racewayDiameter,
      boss: housing,
      pin: ring,
    })
    const worked = tight ? (-fit.pinHoopStress * racewayDiameter) / (ring.modulus * diametralInterference) : 0
    const transfer = tight ? (x.transfer ?? worked) : 0
    const taken = tight ? transfer * diametralInterference : 0
    const clearanceLeft = x.internalClearance - taken - x.innerRacewayGrowth - ring.thermalExpansion * racewayDiameter * x.innerRingWarmer
    const dry = Math.max(0, x.diametralInterference)
    return {
      diametralInterference,
      pressure: fit.pressure,
      housingHoopStress: fit.boreHoopStress,
      transfer,
      clearanceLeft,
      gripTorque: pressFitGrip.si({ pressure: fit.pressure, diameter: outsideDiameter, length: x.width, friction: x.friction }).torque,
      releaseChange: releaseTemperature.si({ ...expansions, diametralInterference: dry }).temperatureChange,
      seat: tight ? ('tight' as const) : x.load === 'standsStill' ? ('looseAllowed' as const) : ('ringCreeps' as const),
      clearance: clearanceLeft >= 0 ? ('runsFree' as const) : ('preloaded' as const),
    }
  },
})

/** A lip that holds a bearing along its axis (shoulder of the housing, or inner edge of its cap): crushing under the ring, shear and bending at its root. */
export const bearingShoulder = /* @__PURE__ */ formula('fasteners.bearingShoulder', {
  inputs: {
    /** Axial load on the ring towards the lip. */
    thrust: { kind: 'force', min: 0 },
    /** Clamp load that runs through ring and lip: of all cap screws where the cap presses on the ring, none where it sits on the housing. */
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
    /** Axial force, thrust and clamp load together, that the lip bears. */
    capacity: 'force',
    /** Capacity over thrust and clamp load; infinite without either. */
    reserve: { kind: 'ratio', infinite: true },
    /** What gives first. */
    governedBy: { oneOf: ['crushing', 'shear', 'bending'] },
  },
  assumes: [
    'ring pressed flat on the lip',
    'bending as a strip rooted at the seat: what the lip gains by being a ring is left out, so the stress is an upper bound',
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

/** The screwed cap that holds a bearing along its axis: load of its screws, and the thrust at which it lifts or a screw gives way. */
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
    /** What one screw bears: the smallest of proof load, stripping of its thread and pull-out of its insert or nut. */
    screwCapacity: { kind: 'force', above: 0 },
  },
  output: {
    /** Load of one screw. */
    screwLoad: 'force',
    /** Clamp load left between cap and housing, of one screw. */
    faceLoad: 'force',
    /** Thrust at which the cap lifts. */
    liftThrust: 'force',
    /** Thrust the cap bears without lifting or overloading a screw. */
    capacity: 'force',
    /** Capacity over thrust; infinite without thrust. */
    reserve: { kind: 'ratio', infinite: true },
    /** What limits it. */
    governedBy: { oneOf: ['lifting', 'screws'] },
    /** Whether the cap stays on its face. */
    state: { oneOf: ['closed', 'lifts'] },
  },
  assumes: ['screws evenly around the bearing, sharing the thrust', 'stiff cap: no prying (`prying` otherwise)'],
  source: [{ level: 'published', where: 'Shigley 9th ed., section 8-7 and eq. 8-24 to 8-30, as fasteners.jointLoads' }],
  valid: { 'clamp load below what a screw bears': ({ clampLoad, screwCapacity }) => clampLoad <= screwCapacity },
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
