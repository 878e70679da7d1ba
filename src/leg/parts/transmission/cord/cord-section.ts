import type { Fields } from '../../../schema/index.js'

/** A cord by name. Drives refer to it. */
export const cord = {
  /** Fibre or wire that the cord is made of. */
  fibre: { designation: 'fibre' },
  /** Diameter of the cord under working tension. */
  diameter: { kind: 'length', min: '0.05 mm', max: '20 mm', usual: ['0.2 mm', '5 mm'] },
  /** Breaking strength of the straight cord, new. */
  breakingStrength: { kind: 'force', min: '5 N', max: '200 kN', usual: ['30 N', '25 kN'] },
  /** Axial rigidity EA of the bedded-in cord. */
  axialRigidity: { kind: 'axialRigidity', min: '50 N', max: '10 MN', usual: ['300 N', '1 MN'] },
  /** Thermal expansion of the cord along itself; most strong fibres shorten when heated. Default: -12 ppm/K. */
  thermalExpansion: {
    kind: 'thermalExpansion',
    min: '-60 ppm/K',
    max: '400 ppm/K',
    usual: ['-20 ppm/K', '120 ppm/K'],
    default: '-12 ppm/K',
    because: 'UHMWPE fibre, table of Michigan Technological University',
    level: 'published',
  },
  /** Factor between breaking strength, after ends and bends, and the highest working tension. Default: 5. */
  designFactor: {
    kind: 'ratio',
    min: 1,
    max: 100,
    usual: [1.2, 15],
    default: 5,
    because: 'design factors of 5 to 12 on breaking strength are customary for fibre ropes (Cordage Institute CI 1401)',
    level: 'unverified',
  },
  /** Least ratio of pulley to cord diameter for a long life. Default: 8. */
  leastBendRatio: {
    kind: 'ratio',
    min: 1,
    max: 200,
    usual: [2, 40],
    default: 8,
    because: 'braided cord on small drums, eight diameters or more',
    level: 'commonPractice',
  },
  /** Share of the pretension left after a year at fixed ends, at room temperature. Default: 0.6 to 0.9. */
  pretensionLeft: {
    band: 'ratio',
    max: 1,
    usual: [0.2, 1],
    default: [0.6, 0.75, 0.9],
    because: 'relaxation of a bedded braid with one re-tightening after a week; measure yours',
  },
} as const satisfies Fields

/** A bonded cord end. */
export const cordEnd = {
  /** Bonded length. */
  length: { kind: 'length', above: 0, max: '200 mm', usual: ['3 mm', '80 mm'] },
  /** Bore of the ferrule that the cord is bonded into. */
  socketDiameter: { kind: 'length', above: 0, max: '30 mm', usual: ['0.3 mm', '12 mm'] },
  /** Adhesive, by name or kind. */
  adhesive: { text: true },
  /** Shear modulus of the adhesive. Default: 0.05 GPa. */
  adhesiveShearModulus: {
    kind: 'modulus',
    min: '0.1 MPa',
    max: '20 GPa',
    usual: ['1 MPa', '5 GPa'],
    default: '0.05 GPa',
    because: 'a toughened, flexible adhesive',
  },
  /** Shear strength of the adhesive on this cord. Default: 8 MPa. */
  adhesiveShearStrength: {
    kind: 'stress',
    min: '0.05 MPa',
    max: '200 MPa',
    usual: ['0.5 MPa', '60 MPa'],
    default: '8 MPa',
    because: 'slippery fibres bond badly; pull-test yours',
  },
  /** Whether a cone or a knot in the resin locks the cord as well as the bond. Default: false. */
  mechanicalLock: { flag: true, default: false, because: 'none given' },
} as const satisfies Fields
