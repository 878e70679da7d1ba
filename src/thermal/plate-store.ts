import { formula } from '../formula/index.js'
import { PLATE_CONDUCTIVITY, PLATE_SIZE, PLATE_THICKNESS, RING, RING_PLACE } from './plate-inputs.js'
import { COMPACT_PLATE, RING_FITS, sourceResistances } from './rectangular-plate.js'

/** Rates of growth at which the store answers as the plate does, over the required time. */
const SLOW = 0.3
const QUICK = 3

/**
 * What a plate takes up from a motor that warms for a time: a heat capacity behind a conductance, in parallel with the path to the air.
 *
 * A printed plate takes heat only as deep as it has come: the shorter the time, the less of the plate counts. Capacity and conductance answer as the whole
 * plate does for temperatures that grow ten times slower to three times faster than the time.
 */
export const plateStore = /* @__PURE__ */ formula('thermal.plateStore', {
  title: 'heat stored in a motor plate',
  inputs: {
    ...RING,
    ...PLATE_SIZE,
    ...RING_PLACE,
    ...PLATE_THICKNESS,
    ...PLATE_CONDUCTIVITY,
    /** Density of the plate. */
    density: { kind: 'density', above: 0 },
    /** Specific heat of the plate. */
    specificHeat: { kind: 'specificHeat', above: 0 },
    /** Resistance of what covers the free face before its film, such as a printed plate behind a metal one. */
    behind: { kind: 'thermalContactResistance', min: 0, optional: true },
    /** Resistance of the contact between motor and plate. */
    contact: { kind: 'thermalResistance', min: 0, default: '0 K/W' },
    /** Film on both faces; the store hardly depends on it. */
    film: { kind: 'heatTransferCoefficient', above: 0, default: '12 W/(m^2 K)' },
    /** How long the motor warms. */
    time: { kind: 'time', above: 0 },
  },
  output: {
    /** Heat capacity of the store. */
    capacity: 'heatCapacity',
    /** Conductance between mounting face and store. */
    conductance: 'thermalConductance',
  },
  assumes: ['as ringOnRectangularPlate'],
  requires: { ...RING_FITS, height: COMPACT_PLATE },
  source: [
    { level: 'computed', where: 'series of the plate with its storage at two rates of growth (Laplace transform), less its steady part' },
  ],
  si: ({ innerRadius, outerRadius, x, y, density, specificHeat, behind = 0, contact, film, time, ...plate }) => {
    const source = [{ x, y, innerRadius, outerRadius }]
    const faces = { ...plate, motorFaceCoefficient: film, freeFaceCoefficient: 1 / (behind + 1 / film) }
    const admittance = (rate: number) =>
      1 / (contact + sourceResistances({ ...faces, storage: (rate * density * specificHeat) / plate.conductivity }, source, 'covered')[0]!)
    const steady = admittance(0)
    // Rate over extra admittance is a straight line in the rate: one over the capacity, and one over the conductance.
    const slow = SLOW / time
    const quick = QUICK / time
    const atSlow = slow / (admittance(slow) - steady)
    const atQuick = quick / (admittance(quick) - steady)
    const perConductance = (atQuick - atSlow) / (quick - slow)
    return { capacity: 1 / (atSlow - slow * perConductance), conductance: 1 / perConductance }
  },
})
