import { nearNames, refuse } from '../units/index.js'
import * as data from './data/index.js'
import type { MaterialName } from './names.js'
import type { Material } from './record.js'

/** Every material of the table, in the order of its pages. */
export const allMaterials = (): readonly Material[] => [
  data.pla,
  data.plaCf,
  data.petg,
  data.petgCf,
  data.petCf,
  data.petGf,
  data.absPolymer,
  data.absCf,
  data.absGf,
  data.asa,
  data.asaCf,
  data.asaGf,
  data.pa6,
  data.pa12,
  data.paCf,
  data.pa6Gf,
  data.pc,
  data.tpu95a,
  data.tpu85a,
  data.pom,
  data.pp,
  data.peek,
  data.aluminium6061T6,
  data.stainless304,
  data.stainless316,
  data.steel88,
  data.steel109,
  data.steel129,
  data.springSteel,
  data.brass,
  data.ndfeb,
  data.epoxy,
  data.anaerobic,
]

const plain = (name: string) => name.toLowerCase().replaceAll(/[\s_-]+/g, '')

let index: Map<string, Material> | undefined

function indexed(): Map<string, Material> {
  if (index === undefined) {
    index = new Map()
    for (const material of allMaterials())
      for (const name of [material.name, ...(material.aliases ?? [])]) if (!index.has(plain(name))) index.set(plain(name), material)
  }
  return index
}

/** The names of the table's materials. */
export const materialNames = (): string[] => allMaterials().map(({ name }) => name)

/**
 * A material of the table by its name or a common other name; capitals, blanks and dashes do not matter.
 * Importing a material by its export (`pla`, `petg`, …) instead keeps the rest of the table out of a bundle.
 *
 * Throws an `InputError` that lists the nearest names when there is no such material.
 */
export function materialByName(name: MaterialName | (string & {})): Material {
  const found = typeof name === 'string' ? indexed().get(plain(name)) : undefined
  if (found !== undefined) return found
  const names = materialNames()
  const candidates = allMaterials().flatMap(({ name: own, aliases = [] }) => [own, ...aliases])
  const near = typeof name === 'string' ? nearNames(name, candidates) : []
  refuse(
    'materialByName',
    'name',
    name,
    near.length > 0
      ? `is not in the table; near it: ${near.join(', ')}`
      : `must be one of ${names.join(', ')}; a material of your own comes from materialFromCoupons or readMaterial`,
  )
}
