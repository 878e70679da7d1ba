import { formula } from '../formula/index.js'
import { FREE_FACE, PLATE_CONDUCTIVITY, PLATE_RADIUS, PLATE_THICKNESS, RING } from './plate-inputs.js'
import { plateModel } from './plate-model.js'

/**
 * Thermal resistance of a plate under a ring-shaped metal motor base, both faces and the rim cooled, with or without a metal insert: from the ring to the air.
 *
 * The base holds the ring at one temperature, and no air cools the face that the motor covers. `ringOnPlate` is the case of even heat entry,
 * some 13 % higher for a printed plate.
 */
export const mountPlate = /* @__PURE__ */ formula('thermal.mountPlate', {
  inputs: {
    ...RING,
    ...PLATE_RADIUS,
    ...PLATE_THICKNESS,
    ...PLATE_CONDUCTIVITY,
    /** Density of the plate. */
    density: { kind: 'density', above: 0, default: '1070 kg/m^3' },
    /** Specific heat of the plate. */
    specificHeat: { kind: 'specificHeat', above: 0, default: '1300 J/(kg K)' },
    /** Coefficient of the motor's face outside the motor, film and radiation together. */
    motorFaceCoefficient: { kind: 'heatTransferCoefficient', min: 0 },
    ...FREE_FACE,
    /** A metal disc sunk flush into the motor's face, under the motor. */
    insert: {
      fields: {
        /** Radius of the insert. */
        radius: { kind: 'length', above: 0 },
        /** Thickness of the insert. */
        thickness: { kind: 'length', above: 0 },
        /** Conductivity of the insert. */
        conductivity: { kind: 'thermalConductivity', above: 0, default: '167 W/(m K)' },
        /** Density of the insert. */
        density: { kind: 'density', above: 0, default: '2700 kg/m^3' },
        /** Specific heat of the insert. */
        specificHeat: { kind: 'specificHeat', above: 0, default: '896 J/(kg K)' },
        /** Contact coefficient between insert and plate. */
        contact: { kind: 'heatTransferCoefficient', above: 0, default: '1500 W/(m^2 K)' },
      },
      optional: true,
    },
  },
  output: {
    /** From the ring to the air. */
    resistance: 'thermalResistance',
    /** Mean rise of the free face over the rise of the ring: how far the plate is from one temperature. */
    meanOfFreeFace: 'ratio',
    /** Mass of plate and insert. */
    mass: 'mass',
  },
  assumes: [
    'round plate, one conductivity along its faces and one through it, steady',
    'the motor base is metal: the ring is at one temperature, and its gap inside the ring carries nothing',
    'one coefficient per face outside what the motor covers',
  ],
  requires: {
    innerRadius: { accepts: 'must be smaller than the outer radius of the ring', holds: (x) => x.innerRadius < x.outerRadius },
    plateRadius: { accepts: 'must be larger than the outer radius of the ring', holds: (x) => x.plateRadius > x.outerRadius },
    'insert.radius': {
      accepts: 'must be at least the outer radius of the ring and at most the radius of the plate',
      holds: ({ insert, outerRadius, plateRadius }) =>
        insert === undefined || (insert.radius >= outerRadius && insert.radius <= plateRadius * 1.000001),
    },
    'insert.thickness': {
      accepts: 'must be below the thickness of the plate',
      holds: ({ insert, thickness }) => insert === undefined || insert.thickness < thickness,
    },
  },
  valid: {
    'film coefficients up to 300 W/(m² K)': (x) => Math.max(x.motorFaceCoefficient, x.freeFaceCoefficient) <= 300,
  },
  source: [{ level: 'computed', where: 'finite volumes of the heat equation; any numerical heat transfer text (Patankar 1980)' }],
  si: (x) => {
    const model = plateModel({ ...x, entry: 'isothermal', underMotor: 'covered' })
    const answer = model.at(x.motorFaceCoefficient, x.freeFaceCoefficient, { conductance: 0, motorFace: 0, freeFace: 0 })
    return { resistance: 1 / answer.conductance, meanOfFreeFace: answer.freeFace, mass: model.mass }
  },
})
