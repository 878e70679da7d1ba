import type { Fields } from '../../../schema/index.js'

/** A gear drive: one pair of spur gears with standard teeth, 20° of pressure angle. The joint turns against the motor. */
export const gearDrive = {
  /** Teeth of the pinion on the motor. */
  pinionTeeth: { integer: true, min: 12, max: 400 },
  /** Teeth of the wheel on the joint. */
  wheelTeeth: { integer: true, min: 12, max: 400 },
  /** Module. */
  module: { kind: 'length', above: 0, max: '20 mm' },
  /** Face width in mesh. */
  faceWidth: { kind: 'length', above: 0, max: '200 mm' },
  /** Material of the pinion. */
  pinionMaterial: { refersTo: 'materials' },
  /** Material of the wheel. */
  wheelMaterial: { refersTo: 'materials' },
  /** Pressure that the flanks of the weaker gear bear for the strides of a season, from a sheet or a standard. Left out: the flanks are not checked. */
  contactStrength: { kind: 'stress', above: 0, optional: true },
  /** Backlash along the pitch circle. Default: 0.15 mm. */
  backlash: { kind: 'length', min: 0, max: '5 mm', default: '0.15 mm', because: 'printed teeth that must not jam' },
  /** Efficiency from motor shaft to joint. Default: 0.92. */
  efficiency: { kind: 'ratio', above: 0, max: 1, default: 0.92, because: 'one stage of dry printed gears' },
} as const satisfies Fields
