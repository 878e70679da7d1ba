import type { LegNumbers } from './leg-numbers.js'
import { isLayered, materialOf } from './schema/tables.js'

/** Whether parts of a material are built of layers. @internal */
export const isPrinted = ({ materials }: LegNumbers, material: string): boolean => isLayered(materialOf(material, materials))

/** Whether a leg has printed parts other than its toes. @internal */
export const hasPrints = (x: LegNumbers): boolean => materialsIn(x).some((material) => isPrinted(x, material))

/** Names of the materials of all parts but the toes: each field that ends in `material`, so that no part is forgotten. */
function materialsIn(part: unknown): string[] {
  if (typeof part !== 'object' || part === null) return []
  return Object.entries(part).flatMap(([key, value]) => {
    if (typeof value === 'string') return /material$/i.test(key) ? [value] : []
    return /^(materials|foot)$/.test(key) ? [] : materialsIn(value)
  })
}
