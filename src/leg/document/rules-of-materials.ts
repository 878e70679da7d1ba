import type { Family } from '../../materials/index.js'
import { referencesOf } from '../schema/index.js'
import { materialOf } from '../schema/tables.js'
import { documentFields } from './fields.js'
import type { PartlyLeg, Report } from './partly.js'

const NOT_A_PART: { readonly [F in Family]?: string } = {
  adhesive: 'an adhesive, which bonds parts and is none',
  magnet: 'a magnet, which bears no load of a part',
}

/** What each part may be made of: an adhesive makes no part, and a sink conducts heat. */
export function materialRules(data: PartlyLeg, report: Report): void {
  for (const { path, to, name } of referencesOf(documentFields, data)) {
    if (to !== 'materials') continue
    const family = familyOf(name, data.materials)
    if (family === undefined) continue
    const why = NOT_A_PART[family]
    if (why !== undefined) report(path, name, `must be a material that parts are made of; ${name} is ${why}`)
    else if (path.endsWith('.sink.material') && family !== 'metal')
      report(path, name, 'must be a metal: the sink takes the heat from the motor; a plate of print has no sink')
  }
}

/** The family of a material; nothing where its name is in the list of mistakes already. */
export function familyOf(name: string, own: PartlyLeg['materials']): Family | undefined {
  try {
    return materialOf(name, own as never).family
  } catch {
    return undefined
  }
}
