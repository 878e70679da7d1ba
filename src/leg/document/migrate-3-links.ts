import { InputError, type Issue, show } from '../../units/index.js'
import type { OwnMaterial } from '../schema/field.js'
import { materialOf } from '../schema/tables.js'
import { type Document, present, sectionOf, si } from './old-sections.js'

/** Links without what they carry. Throws an `InputError` where a link is lighter than that. */
export function linksOf(links: Document | undefined, whole: Document): unknown {
  if (links === undefined) return whole.links
  const link = (name: 'upper' | 'lower') => {
    const section = sectionOf(links[name])
    if (section === undefined) return links[name]
    const { width, depth, wall, mass = '0.25 kg', ...others } = section
    const box = width === undefined || depth === undefined ? undefined : [width, depth]
    return present({
      ...others,
      mass: name === 'upper' ? bareMass(mass, whole) : mass,
      section: box === undefined && wall === undefined ? undefined : present({ box, wall }),
    })
  }
  return { ...links, upper: link('upper'), lower: link('lower') }
}

/** Mass of a plate or sink, where it can be read. */
function sheetMass(part: unknown, own: Document | undefined): number | undefined {
  const section = sectionOf(part)
  if (section === undefined) return part === undefined ? 0 : undefined
  const sizes = ['width', 'height', 'thickness'].map((name) => si('length', section[name]))
  if (sizes.includes(undefined)) return undefined
  try {
    const { density } = materialOf(String(section.material), own as Record<string, OwnMaterial> | undefined)
    return (sizes as number[]).reduce((product, x) => product * x, 1) * (density?.si ?? Number.NaN)
  } catch {
    return undefined
  }
}

/** Mass of the bare upper link, from a mass that held the knee's motor, plate and sink. */
function bareMass(given: unknown, { motor, plate, sink, materials }: Document): unknown {
  const own = sectionOf(materials)
  const parts = [si('mass', given), si('mass', sectionOf(motor)?.mass), sheetMass(plate, own), sheetMass(sink, own)]
  if (parts.some((part) => part === undefined || Number.isNaN(part))) return given
  const [all, motorMass, plateMass, sinkMass] = parts as [number, number, number, number]
  const bare = all - motorMass - plateMass - sinkMass
  if (bare > 0) return `${Number(bare.toPrecision(12))} kg`
  const grams = (x: number) => `${Number((1000 * x).toPrecision(3))} g`
  const issue: Issue = {
    path: 'links.upper.mass',
    given: show(given),
    accepts: `must be above what the link carries: motor ${grams(motorMass)}, plate ${grams(plateMass)}, sink ${grams(sinkMass)}. From version 4 on, write the mass of the bare link`,
  }
  throw new InputError('describeLeg', [issue])
}
