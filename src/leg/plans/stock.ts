import { significant } from '../../units/index.js'
import { placeOf } from '../calculation.js'
import type { LegModel } from '../leg-model.js'
import type { LegNumbers } from '../leg-numbers.js'
import { drivenBy, jointWords } from '../numbers.js'
import { seatedOf } from '../parts/ball-bearings/fields.js'
import { PIVOTS } from '../parts/ball-bearings/pivots.js'
import { density } from '../parts/materials/fields.js'
import { hasPrints, isPrinted } from '../printed.js'
import { listed } from '../report/amounts.js'
import { calculationFor } from '../what-if.js'
import type { Assumed } from './bench.js'
import { type MadePart, madeParts } from './made-parts.js'
import type { ShoppingLine } from './shopping-line.js'

/** Filament beyond the parts themselves: supports, purged material and prints that fail. Common practice: a quarter. */
const FILAMENT_SPARE = 0.25
/** Steps in which filament is counted, kg. */
const STEP = 0.01

const DRUMS_IN_LINKS =
  ', which includes the drum that turns with them. A drum of the same polymer counts in its link alone. One of another material, or heavier than its link, counts in both, so that no spool runs short'

const densitiesOf = (leg: LegModel) => {
  const calculation = calculationFor(leg)
  return (material: string) => calculation.get(density, calculation.instances.implied(placeOf(calculation, { material })) as never)
}
const counted = ({ count, part }: MadePart) => (count === 1 ? part : `${count} ${part}`)
/** Mass of all that are alike, kg. */
const massOfAll = ({ count, mass }: MadePart) => Array.from({ length: count }, () => mass ?? 0).reduce((sum, x) => sum + x, 0)

/** Whether the mass of a link of the same polymer includes a drum: not where the drum, printed solid, weighs more than the link. */
const isInLink = ({ inLink, mass = 0 }: MadePart, alike: readonly MadePart[]) =>
  alike.some((link) => link.part === inLink && (link.mass ?? 0) >= mass)

/** Filament of a polymer: the mass of its parts with what is lost, and what of it is not counted. Of all parts, for the drums of links. */
function filament(material: string, of: readonly MadePart[], all: readonly MadePart[]): ShoppingLine {
  const parts = of.filter((part) => !isInLink(part, of))
  const drumIn = ({ part }: MadePart) => {
    const drum = all.find(({ inLink }) => inLink === part)
    if (drum === undefined || parts.includes(drum)) return ''
    return drum.material === material ? `, with the ${drum.part}` : `, with the mass of the ${drum.part}, which is of ${drum.material}`
  }
  const [known, unknown] = [parts.filter(({ mass }) => mass !== undefined), parts.filter(({ mass }) => mass === undefined)]
  const kilograms = (1 + FILAMENT_SPARE) * known.reduce((sum, part) => sum + massOfAll(part), 0)
  const grams = 1000 * STEP * Math.ceil(kilograms / STEP - 1e-9)
  const each = known.map((part) => `${counted(part)} ${significant(1000 * massOfAll(part), 2)} g${drumIn(part)}`)
  const not = unknown.length === 0 ? '' : `; not counted, for want of sizes: ${listed(unknown.map(counted))}`
  return {
    item: 'filament',
    size: material,
    quantity: known.length === 0 ? 'as the slicer counts it' : `${grams.toFixed(0)} g`,
    remark: `${each.length === 0 ? listed(parts.map(counted)) : each.join('; ')}${each.length === 0 ? '' : not}`,
  }
}

/** Stock of a metal, line by line: pieces of one size together. */
function metal(material: string, parts: readonly MadePart[]): ShoppingLine[] {
  const sizes = [...new Set(parts.map(({ stock }) => stock))]
  return sizes.map((size) => {
    const alike = parts.filter(({ stock }) => stock === size)
    return {
      item: 'stock',
      size: size === undefined ? material : `${material}, ${size}`,
      quantity: size === undefined ? 'as the drawings need' : String(alike.reduce((sum, { count }) => sum + count, 0)),
      remark: listed(alike.map(counted)),
    }
  })
}

/** Filament of each polymer and stock of each other material, with the parts that are made of it. */
function stockLines(leg: LegModel): ShoppingLine[] {
  const parts = madeParts(leg, densitiesOf(leg))
  return [...new Set(parts.map(({ material }) => material))].flatMap((material) => {
    const of = parts.filter((part) => part.material === material)
    return isPrinted(leg.x, material) ? [filament(material, of, parts)] : metal(material, of)
  })
}

/** Basis of the amounts of material. @internal */
export function assumedOfStock(leg: LegModel): Assumed[] {
  const parts = madeParts(leg, densitiesOf(leg))
  const polymer = parts.some(({ material }) => isPrinted(leg.x, material))
  const metal = parts.some(({ material }) => !isPrinted(leg.x, material))
  return [
    ...(hasPrints(leg.x)
      ? [
          {
            what: 'filament of plates, bosses, drums, pulleys and toes',
            value: 'solid',
            why: `infill weighs less, and the slicer gives the true mass. Links have the mass of the document${parts.some(({ inLink }) => inLink !== undefined) ? DRUMS_IN_LINKS : ''}`,
          },
        ]
      : []),
    ...(polymer
      ? [
          {
            what: 'filament beyond the parts',
            value: `${100 * FILAMENT_SPARE} %`,
            why: 'common practice: coupons, supports, purged material and a failed piece',
          },
        ]
      : []),
    ...(metal ? [{ what: 'stock of metal', value: 'finished sizes', why: 'add what your saw, clamps and facing take' }] : []),
  ]
}

const LITTLE = 'a little'

/** Consumables of the work: thread lock, grease of gears, retaining compound and degreaser. */
function usedUp(x: LegNumbers, bonded: boolean): ShoppingLine[] {
  const screwed = [...drivenBy(x, 'cord'), ...drivenBy(x, 'belt'), ...drivenBy(x, 'gear'), ...drivenBy(x, 'direct')]
  const geared = drivenBy(x, 'gear')
  const rings = PIVOTS.some((pivot) => seatedOf(x, pivot)?.retainedBy === 'bond')
  const line = (item: string, size: string, remark: string): ShoppingLine => ({ item, size, quantity: LITTLE, remark })
  return [
    ...(screwed.length === 0
      ? []
      : [line('thread lock', 'medium strength', `set screws and rotor screws: ${listed(screwed.map(jointWords))}; keep it off plastics`)]),
    ...(geared.length === 0 ? [] : [line('grease', 'for gears, one that plastics bear', `teeth: ${listed(geared.map(jointWords))}`)]),
    ...(rings ? [line('retaining compound', 'for the gap of the seats', 'bearings that are bonded in')] : []),
    ...(bonded || rings ? [line('degreaser', 'one that the parts bear', 'what is bonded')] : []),
  ]
}

/** Purchases besides parts: stock material and consumables. @internal */
export const suppliesLines = (leg: LegModel, bonded: boolean): ShoppingLine[] => [...stockLines(leg), ...usedUp(leg.x, bonded)]
