import { isRecord } from '../../formula/index.js'
import { materialOf } from '../schema/tables.js'
import { entriesOf, type PartlyLeg, type Report } from './partly.js'

/**
 * A plate of metal without a sink must give its emissivity: bare aluminium radiates a tenth of what a print does, anodised or painted nearly as much, and
 * nobody can know which it is. `given` is the document as it was written, `open` lists what
 * an earlier reading filled in: a print whose material is changed to metal must give it too.
 */
export function metalPlateRules({ plates, materials }: PartlyLeg, report: Report, given: unknown, open: ReadonlySet<string>): void {
  const written = isRecord(given) && isRecord(given.plates) ? given.plates : {}
  for (const [name, plate] of entriesOf(plates)) {
    const own = written[name]
    if (plate.material === undefined || plate.sink !== undefined || !isRecord(own)) continue
    if (own.emissivity !== undefined && !open.has(`plates.${name}.emissivity`)) continue
    if (isMetal(plate.material, materials))
      report(
        `plates.${name}.emissivity`,
        undefined,
        'is needed because the plate is of metal without a sink: about 0.09 for bare aluminium sheet, 0.8 anodised, 0.9 painted',
      )
  }
}

function isMetal(name: string, materials: PartlyLeg['materials']): boolean {
  try {
    return materialOf(name, materials as never).family === 'metal'
  } catch {
    // The name is in the list of mistakes already.
    return false
  }
}
