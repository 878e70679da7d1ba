import type { Fields } from '../../../schema/index.js'

/** A gear drive: one external pair of spur gears, or a planetary stage with a fixed ring. */
export const gearDrive = {
  /** An external pair turns the joint against the motor; a planetary stage with a fixed ring turns it with the motor. */
  arrangement: { oneOf: ['externalPair', 'planetary'] },
  /** Teeth of the pinion on the motor, or of the sun. */
  pinionTeeth: { integer: true, min: 12, max: 400 },
  /** Teeth of the wheel on the joint, or of the ring. */
  wheelTeeth: { integer: true, min: 12, max: 400 },
  /** Module. */
  module: { kind: 'length', above: 0, max: '20 mm' },
  /** Face width. */
  faceWidth: { kind: 'length', above: 0, max: '200 mm' },
  /** Planets that share the load. Default: 3. */
  planets: { integer: true, min: 1, max: 6, default: 3, because: 'three planets', level: 'commonPractice' },
  /** Material of the weaker gear. */
  material: { refersTo: 'materials' },
  /** Backlash along the pitch circle. Default: 0.15 mm. */
  backlash: { kind: 'length', min: 0, max: '5 mm', default: '0.15 mm', because: 'printed teeth that must not jam' },
  /** Efficiency from motor shaft to joint. Default: 0.92. */
  efficiency: { kind: 'ratio', above: 0, max: 1, default: 0.92, because: 'one stage of dry printed gears' },
} as const satisfies Fields
