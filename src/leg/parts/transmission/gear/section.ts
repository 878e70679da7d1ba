import type { Fields } from '../../../schema/index.js'

/** A gear drive: one pair of spur gears with standard teeth, 20° of pressure angle. The joint turns against the motor. */
export const gearDrive = {
  /** Teeth of the pinion on the motor. */
  pinionTeeth: { integer: true, min: 12, max: 400 },
  /** Teeth of the wheel on the joint. */
  wheelTeeth: { integer: true, min: 12, max: 400 },
  /** Module. */
  module: { kind: 'length', above: 0, max: '20 mm', usual: ['0.2 mm', '5 mm'] },
  /** Face width in mesh. */
  faceWidth: { kind: 'length', above: 0, max: '200 mm', usual: ['1.5 mm', '60 mm'] },
  /** Material of the pinion. */
  pinionMaterial: { refersTo: 'materials' },
  /** Material of the wheel. */
  wheelMaterial: { refersTo: 'materials' },
  /** Pressure that the flanks of the weaker gear bear for the strides of a season, from a sheet or a standard. Left out: the flanks are not checked. */
  contactStrength: { kind: 'stress', min: '0.5 MPa', max: '5 GPa', usual: ['5 MPa', '2 GPa'], optional: true },
  /** Backlash along the pitch circle. Default: 0.15 mm. */
  backlash: {
    kind: 'length',
    min: 0,
    max: '5 mm',
    usual: ['0.005 mm', '0.6 mm'],
    default: '0.15 mm',
    because: 'printed teeth that must not jam',
  },
  /** Efficiency from motor shaft to joint. Default: 0.92. */
  efficiency: { kind: 'ratio', above: 0, max: 1, usual: [0.5, 1], default: 0.92, because: 'one stage of dry printed gears' },
} as const satisfies Fields
