import { formula, property } from '../formula/index.js'
import { interferenceChange, releaseTemperature } from './fit-change.js'
import { CHANGE_SINCE_ASSEMBLY, POISSON_RATIO } from './fit-inputs.js'
import { pressFit } from './press-fit.js'
import { pressFitGrip } from './press-fit-grip.js'

/**
 * The share of a ring's interference that a stiff metal housing passes into the bearing's internal clearance.
 *
 * A printed housing is so soft that it passes a few per cent only, which `bearingSeat` calculates. Do not use this figure for a print.
 */
export const metalHousingTransfer = /* @__PURE__ */ property('ratio', {
  typical: 0.7,
  low: 0.5,
  high: 0.9,
  source: { level: 'unverified', where: "rolling-bearing makers' rule for rings in steel or iron housings" },
  conditions: 'small ball bearing, steel ring in a thick steel or iron housing',
})

/**
 * The seat of a ball bearing's outer ring in a housing that may be printed: the fit after heat and moisture, the internal clearance that the fit leaves, and creep of the ring.
 *
 * The housing is most likely to split in the cold, when it contracts on the ring: compare its hoop stress at the lowest temperature with its strength.
 * `allowableInterference` with the raceway as bore of the pin returns the largest interference.
 *
 * The internal clearance is the whole radial travel of one ring in the other, as catalogues state it. The contraction of the raceway in diameter comes off it.
 */
export const bearingSeat = /* @__PURE__ */ formula('fasteners.bearingSeat', {
  inputs: {
    /** Outside diameter of the bearing. */
    outsideDiameter: { kind: 'length', above: 0 },
    /** Diameter of the outer raceway; near (outside + bore)/2 + 0.3 × (outside − bore) if the manufacturer does not state it. */
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
        /** Modulus at the temperature and for the duration of the fit. */
        modulus: { kind: 'modulus', above: 0 },
        ...POISSON_RATIO,
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
    ...CHANGE_SINCE_ASSEMBLY,
    /** How much warmer the inner ring runs than the outer. */
    innerRingWarmer: { kind: 'temperatureDifference', min: 0, default: '0 K' },
    /** Swelling strain of the housing by moisture taken up since assembly. */
    swelling: { kind: 'strain', default: 0 },
    /** Share of the interference passed into the clearance, if measured; worked out from ring and housing otherwise. */
    transfer: { kind: 'ratio', min: 0, max: 1, optional: true },
    /** Coefficient of friction of ring on housing: the lowest. */
    friction: { kind: 'ratio', min: 0 },
    /** Direction of the load relative to the outer ring: stationary, or rotating round it. */
    load: { oneOf: ['stationary', 'rotating'] },
  },
  output: {
    /** Interference then; negative is clearance. */
    diametralInterference: 'length',
    /** Pressure of ring on housing; zero when loose. */
    pressure: 'stress',
    /** Hoop tension of the housing at the seat. */
    housingHoopStress: 'stress',
    /** Share of the interference that comes off the internal clearance; zero when loose. */
    transfer: 'ratio',
    /** Radial internal clearance left; negative is preload. */
    clearanceLeft: 'length',
    /** Torque that turns the ring in its seat. */
    gripTorque: 'torque',
    /** Change of temperature since assembly at which a dry fit lets go, negative for a housing that grows less than the ring; infinite when it never does, zero when it is loose from the start. */
    releaseChange: { kind: 'temperatureDifference', infinite: true },
    /** How the ring sits: a loose one may stay under a load that is stationary relative to it, and creeps round under a rotating load. */
    seat: { oneOf: ['tight', 'looseAllowed', 'ringCreeps'] },
    /** How the balls run. */
    clearance: { oneOf: ['runsFree', 'preloaded'] },
  },
  assumes: [
    'ring and housing as thick rings in plane stress, equally long',
    'housing and outer ring at one temperature',
    'relaxation of the housing only as its modulus states it',
  ],
  source: [
    { level: 'published', where: 'Lamé; Shigley 9th ed., eq. 3-50 to 3-57, as fasteners.pressFit' },
    { level: 'commonPractice', where: 'a ring under a stationary load may be loose, one under a rotating load must be tight' },
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
    const dry = releaseTemperature.si({ ...expansions, diametralInterference: Math.max(0, x.diametralInterference) })
    return {
      diametralInterference,
      pressure: fit.pressure,
      housingHoopStress: fit.boreHoopStress,
      transfer,
      clearanceLeft,
      gripTorque: pressFitGrip.si({ pressure: fit.pressure, diameter: outsideDiameter, length: x.width, friction: x.friction }).torque,
      releaseChange: dry.releases === 'onCooling' ? -dry.temperatureChange : dry.temperatureChange,
      seat: tight ? ('tight' as const) : x.load === 'stationary' ? ('looseAllowed' as const) : ('ringCreeps' as const),
      clearance: clearanceLeft >= 0 ? ('runsFree' as const) : ('preloaded' as const),
    }
  },
})
