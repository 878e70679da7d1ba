import type { Fields } from '../../../schema/index.js'

/** A closed tooth belt by name. Drives refer to it. */
export const belt = {
  /** Pitch of the teeth. */
  pitch: { kind: 'length', above: 0, max: '50 mm', usual: ['1 mm', '14 mm'] },
  /** Teeth of the belt all round. */
  teeth: { integer: true, min: 20, max: 4000 },
  /** Width of the belt. */
  width: { kind: 'length', above: 0, max: '200 mm', usual: ['2 mm', '80 mm'] },
  /** Allowable tension of this belt at this width, from its sheet. */
  allowableTension: { kind: 'force', min: '1 N', max: '100 kN', usual: ['10 N', '20 kN'] },
  /** Breaking strength of this belt at this width, from its sheet. */
  breakingStrength: { kind: 'force', min: '2 N', max: '400 kN', usual: ['30 N', '80 kN'] },
  /** Force along the belt that one tooth bears at this width, from its sheet. */
  toothForce: { kind: 'force', min: '0.1 N', max: '20 kN', usual: ['1 N', '2 kN'] },
  /** Most teeth that count as sharing the load, from its sheet. Default: 6. */
  mostTeeth: {
    integer: true,
    min: 1,
    max: 60,
    default: 6,
    because: 'a sheet of polyurethane belts counts 6 teeth of a welded and 12 of an endless belt',
    level: 'published',
  },
  /** Least teeth of a pulley that this belt bends around, from its sheet. Default: 16. */
  leastTeeth: { integer: true, min: 6, max: 200, default: 16, because: 'a sheet of belts of 3 mm pitch', level: 'published' },
  /** Axial rigidity EA of this belt at this width. */
  axialRigidity: { kind: 'axialRigidity', min: '100 N', max: '100 MN', usual: ['1 kN', '10 MN'] },
  /** Thermal expansion of the belt along itself. Default: 5 ppm/K. */
  thermalExpansion: {
    kind: 'thermalExpansion',
    min: '-60 ppm/K',
    max: '400 ppm/K',
    usual: ['-20 ppm/K', '120 ppm/K'],
    default: '5 ppm/K',
    because: 'cords of glass fibre; aramid shortens, steel has 12 ppm/K',
    level: 'commonPractice',
  },
  /** Mass per length of this belt at this width. Default: 0.02 kg/m. */
  massPerLength: {
    kind: 'massPerLength',
    min: 0,
    max: '10 kg/m',
    usual: ['1 g/m', '1 kg/m'],
    default: '0.02 kg/m',
    because: 'a narrow belt of small pitch',
  },
  /** Width of a tooth at its root, along the belt. */
  toothRootWidth: { kind: 'length', above: 0, max: '30 mm', usual: ['0.5 mm', '12 mm'] },
  /** Height of a tooth. */
  toothHeight: { kind: 'length', above: 0, max: '20 mm', usual: ['0.3 mm', '8 mm'] },
  /** Angle of the flank of a tooth from the radius. Default: 20 deg. */
  flankAngle: {
    kind: 'angle',
    min: 0,
    max: '60 deg',
    usual: ['5 deg', '45 deg'],
    default: '20 deg',
    because: 'trapezoidal teeth of 40 deg',
    level: 'commonPractice',
  },
  /** Friction of the belt on its pulleys, which keeps it from climbing. Default: 0.1 to 0.4. */
  friction: {
    band: 'ratio',
    max: 1,
    usual: [0.05, 0.9],
    default: [0.1, 0.2, 0.4],
    because: 'polyurethane or fabric on a pulley',
    level: 'unverified',
  },
  /** Clearance of a tooth in its groove, along the belt. Default: 0.05 mm. */
  clearance: {
    kind: 'length',
    min: 0,
    max: '5 mm',
    usual: ['0.003 mm', '1 mm'],
    default: '0.05 mm',
    because: 'grooves of the pulleys wider than the teeth of the belt',
  },
  /** Share of the pretension left after a year at fixed axes, at room temperature. Default: 0.6 to 0.95. */
  pretensionLeft: {
    band: 'ratio',
    max: 1,
    usual: [0.2, 1],
    default: [0.6, 0.8, 0.95],
    because: 'teeth and cords of a belt bed in within the first days, and polymer frames creep; measure yours',
  },
  /** Highest temperature of the belt. Default: 80 degC. */
  highestTemperature: {
    kind: 'temperature',
    min: '0 degC',
    max: '300 degC',
    usual: ['50 degC', '150 degC'],
    default: '80 degC',
    because: 'polyurethane belts; rubber bears some more',
    level: 'commonPractice',
  },
} as const satisfies Fields

/** What a belt is set to, on a joint or along the upper link. */
export const beltTension = {
  /** Tension of both spans at rest. */
  pretension: { kind: 'force', min: '0.5 N', max: '50 kN', usual: ['3 N', '5 kN'] },
  /** How far the pretension may be off after setting, as a share. Default: 0.2. */
  pretensionScatter: {
    kind: 'ratio',
    min: 0,
    below: 1,
    usual: [0.01, 0.6],
    default: 0.2,
    because: 'plucked by hand, within a fifth',
    level: 'commonPractice',
  },
} as const satisfies Fields

/** A belt drive: a small pulley on the motor, a large one on the joint. */
export const beltDrive = {
  /** Name of the belt, from the section belts. */
  belt: { refersTo: 'belts' },
  /** Teeth of the pulley on the motor. */
  smallTeeth: { integer: true, min: 6, max: 400 },
  /** Teeth of the pulley on the joint. */
  largeTeeth: { integer: true, min: 6, max: 400 },
  /** Distance between the axes, in the middle of its adjustment. */
  centreDistance: { kind: 'length', above: 0, max: '2 m', usual: ['12 mm', '600 mm'] },
  /** How far the distance of the axes can be set either way, to lay the belt on and to tension it. */
  adjustment: { kind: 'length', above: 0, max: '100 mm', usual: ['0.3 mm', '25 mm'] },
  ...beltTension,
  /** Material of the large pulley. */
  material: { refersTo: 'materials' },
  /** Efficiency from motor shaft to joint. Default: 0.96. */
  efficiency: {
    kind: 'ratio',
    above: 0,
    max: 1,
    usual: [0.5, 1],
    default: 0.96,
    because: 'one stage of tooth belt',
    level: 'commonPractice',
  },
} as const satisfies Fields
