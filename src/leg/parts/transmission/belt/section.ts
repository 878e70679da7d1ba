import type { Fields } from '../../../schema/index.js'

/** A tooth belt by name. Drives refer to it. */
export const belt = {
  /** Pitch of the teeth. */
  pitch: { kind: 'length', above: 0, max: '50 mm' },
  /** Width of the belt. */
  width: { kind: 'length', above: 0, max: '200 mm' },
  /** Allowable tension of this belt at this width, from its sheet. */
  allowableTension: { kind: 'force', above: 0 },
  /** Axial rigidity EA of this belt at this width. */
  axialRigidity: { kind: 'axialRigidity', above: 0 },
  /** Mass per length of this belt at this width. Default: 0.02 kg/m. */
  massPerLength: { kind: 'massPerLength', min: 0, default: '0.02 kg/m', because: 'a narrow belt of small pitch' },
  /** Width of a tooth at its root, along the belt. */
  toothRootWidth: { kind: 'length', above: 0, max: '30 mm' },
  /** Height of a tooth. */
  toothHeight: { kind: 'length', above: 0, max: '20 mm' },
  /** Clearance of a tooth in its groove, along the belt. Default: 0.05 mm. */
  clearance: { kind: 'length', min: 0, max: '5 mm', default: '0.05 mm', because: 'printed pulleys with opened grooves' },
} as const satisfies Fields

/** A belt drive: a small pulley on the motor, a large one on the joint. */
export const beltDrive = {
  /** Name of the belt, from the section belts. */
  belt: { refersTo: 'belts' },
  /** Teeth of the pulley on the motor. */
  smallTeeth: { integer: true, min: 6, max: 400 },
  /** Teeth of the pulley on the joint. */
  largeTeeth: { integer: true, min: 6, max: 400 },
  /** Distance between the axes. */
  centreDistance: { kind: 'length', above: 0, max: '2 m' },
  /** Tension of both spans at rest. */
  pretension: { kind: 'force', above: 0 },
  /** How far the pretension may be off after setting, as a share. Default: 0.2. */
  pretensionScatter: { kind: 'ratio', min: 0, below: 1, default: 0.2, because: 'plucked by hand, within a fifth', level: 'commonPractice' },
  /** Material of the large pulley. */
  material: { refersTo: 'materials' },
  /** Efficiency from motor shaft to joint. Default: 0.96. */
  efficiency: { kind: 'ratio', above: 0, max: 1, default: 0.96, because: 'one stage of tooth belt', level: 'commonPractice' },
} as const satisfies Fields
