import type { Property } from '../formula/index.js'
import { type Issue, Quantity } from '../units/index.js'
import type { Family, Material, PropertyName } from './record.js'

type Bounds = { readonly [P in PropertyName]?: readonly [low: number, high: number] }

const POLYMER: Bounds = {
  density: [200, 2500],
  modulus: [5e5, 60e9],
  modulusAcrossLayers: [5e5, 40e9],
  tensileStrength: [2e5, 700e6],
  glassTransitionTemperature: [140, 620],
  meltingTemperature: [300, 700],
  thermalConductivity: [0.02, 40],
  specificHeat: [500, 4500],
  thermalExpansion: [-10e-6, 500e-6],
  moistureSaturated: [0, 0.3],
  frictionOnSteel: [0.01, 3],
}
const METAL: Bounds = {
  density: [1500, 23000],
  modulus: [10e9, 500e9],
  yieldStrength: [5e6, 4e9],
  tensileStrength: [10e6, 4e9],
  thermalConductivity: [3, 450],
  specificHeat: [100, 2100],
  thermalExpansion: [-2e-6, 60e-6],
}

/** SI bounds outside which no material of the family lies: a value there has a wrong unit or a slipped digit. */
const POSSIBLE: { readonly [F in Family]?: Bounds } = {
  amorphous: POLYMER,
  semicrystalline: POLYMER,
  elastomer: POLYMER,
  metal: METAL,
}

/** A value that no material of the family has, as an issue; nothing where it may be. */
export function impossible(family: Family, name: PropertyName, value: Property, path: string): Issue | undefined {
  const bounds = POSSIBLE[family]?.[name]
  if (bounds === undefined || (value.low >= bounds[0] && value.high <= bounds[1])) return undefined
  return { path, given: `${value}`, accepts: `no material of the family ${family} has this; check the unit and the digits` }
}

/** How far a value may lie outside the range of the table before it is doubted: a factor, or kelvin for a temperature. */
const FACTOR = 1.5
const KELVIN = 15

const isTemperature = ({ kind }: Property) => kind.toLowerCase().includes('temperature')

/** Whether a value lies far outside the range that the table has for it. */
function isFarFrom(known: Property, value: Property): boolean {
  if (isTemperature(known)) return value.si < known.low - KELVIN || value.si > known.high + KELVIN
  const [low, high] = [Math.min(known.low / FACTOR, known.low * FACTOR), Math.max(known.high / FACTOR, known.high * FACTOR)]
  return value.si < low || value.si > high
}

/** A sentence for each value that lies far outside the range the base material has for it: by half, or 15 K for a temperature. */
export const doubtsAbout = (base: Material, values: { readonly [P in PropertyName]?: Property }): string[] =>
  (Object.entries(values) as [PropertyName, Property][]).flatMap(([name, value]) => {
    const known = base[name] as Property | undefined
    if (known === undefined || !isFarFrom(known, value)) return []
    const text = (p: Property) => `${new Quantity(p.si, p.kind)}`
    return [`${name} is ${text(value)}, far from the ${known.lowest} to ${known.highest} that the table has for ${base.name}: check it`]
  })
