import { property } from '../formula/index.js'
import { type In, InputError, Quantity, refuse, show } from '../units/index.js'
import { wireRopeRigidity } from './cord.js'

const INCH = 0.0254

/** Nominal size in inches, construction, breaking strength in lbf of carbon and of corrosion-resistant steel. */
const CABLES = [
  ['1/32', '3x7', 1 / 32, 110, 110],
  ['3/64', '7x7', 3 / 64, 270, 270],
  ['1/16', '7x7', 1 / 16, 480, 480],
  ['1/16', '7x19', 1 / 16, 480, 480],
  ['3/32', '7x7', 3 / 32, 920, 920],
  ['3/32', '7x19', 3 / 32, 1000, 920],
  ['1/8', '7x19', 1 / 8, 2000, 1760],
  ['5/32', '7x19', 5 / 32, 2800, 2400],
  ['3/16', '7x19', 3 / 16, 4200, 3700],
] as const

const STRETCH = { '7x7': { carbon: 1.07e-5, stainless: 1.2e-5 }, '7x19': { carbon: 1.4e-5, stainless: 1.62e-5 } } as const

type Row = (typeof CABLES)[number]
/** Which control cable is meant, as the standard names it. */
export interface SteelCable {
  /** Nominal diameter in inches. */
  readonly size: Row[0]
  /** Number of strands by wires in each. */
  readonly construction: Row[1]
  /** Galvanised or tinned carbon steel, or corrosion-resistant steel. */
  readonly steel: 'carbon' | 'stainless'
}

/** Every size of the table. */
export const steelCables = (): SteelCable[] =>
  CABLES.flatMap(([size, construction]) => (['carbon', 'stainless'] as const).map((steel) => ({ size, construction, steel })))

/**
 * Properties of a small control cable of steel, with range and source. The rigidity is absent for 3x7, because no stretch constant was found. Throws an `InputError` for a size that is not in the table in this construction.
 */
export function steelCable(cable: SteelCable) {
  if (typeof cable !== 'object' || cable === null) refuse('capstan.steelCable', 'cable', cable, 'must name size, construction and steel')
  const { size, construction, steel } = cable
  const row = CABLES.find((each) => each[0] === size && each[1] === construction)
  if (row === undefined || (steel !== 'carbon' && steel !== 'stainless'))
    throw new InputError('capstan.steelCable', [
      {
        path: row === undefined ? 'size' : 'steel',
        given: row === undefined ? `${show(size)} in ${show(construction)}` : show(steel),
        accepts:
          row === undefined ? `must be one of ${CABLES.map((each) => `${each[0]} ${each[1]}`).join(', ')}` : 'must be carbon or stainless',
      },
    ])
  const diameter = row[2] * INCH
  const strength: In<'force'> = [steel === 'carbon' ? row[3] : row[4], 'lbf']
  const stretchConstant = row[1] === '3x7' ? undefined : STRETCH[row[1]][steel]
  const expansion = steel === 'carbon' ? ([11, 11.7, 12.5] as const) : ([16, 17, 18] as const)
  return {
    diameter: new Quantity(diameter, 'length'),
    /** Minimum breaking strength of the straight cable, new. */
    breakingStrength: property('force', {
      low: strength,
      typical: strength,
      high: strength,
      source: { level: 'published', where: 'FAA AC 43.13-1B, table 7-3 (MIL-DTL-83420)' },
      conditions: 'minimum, new, straight',
    }),
    /** Axial rigidity with the constructional stretch pulled out. */
    axialRigidity: stretchConstant === undefined ? undefined : rigidityOf(diameter, stretchConstant),
    /** Constructional stretch that comes out as the cable beds in. */
    beddingStrain: property('strain', {
      low: [0.1, '%'],
      typical: [0.5, '%'],
      high: [1, '%'],
      source: { level: 'published', where: "a wire-rope maker's page: below 1 % of the length; the rest of the range is ours" },
      conditions: 'not prestretched',
    }),
    expansion: property('thermalExpansion', {
      low: [expansion[0], 'ppm/K'],
      typical: [expansion[1], 'ppm/K'],
      high: [expansion[2], 'ppm/K'],
      source: { level: 'unverified', where: 'handbook tables of steels' },
      conditions: '20 to 100 °C',
    }),
    friction: property('ratio', {
      low: 0.12,
      typical: 0.16,
      high: 0.2,
      source: { level: 'unverified', where: 'wide range of cord-on-drum figures; measure yours' },
      conditions: 'on aluminium; not known on printed polymer, which it cuts',
    }),
  }
}

function rigidityOf(diameter: number, stretchConstant: number) {
  const rigidity = wireRopeRigidity.si({ diameter, stretchConstant }).axialRigidity
  return property('axialRigidity', {
    low: [0.9 * rigidity, 'N'],
    typical: [rigidity, 'N'],
    high: [1.1 * rigidity, 'N'],
    source: { level: 'published', where: `a wire-rope maker's table of stretch constants: ${stretchConstant}; range of a tenth is ours` },
    conditions: 'prestretched',
  })
}
