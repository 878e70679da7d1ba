import { isRecord } from '../../formula/index.js'
import { materialOf } from '../schema/tables.js'
import { entriesOf, type PartlyLeg, type Report } from './partly.js'

const EMISSIVITY_HINT = 'about 0.09 for bare aluminium sheet, 0.8 anodised, 0.9 painted'

/**
 * Metal that cools a motor must give its emissivity: bare aluminium radiates a tenth of what a print does, anodised or painted nearly as much, and nobody
 * can know which it is. `given` is the document as it was written, `open` lists what an earlier reading filled in: a print whose material is changed to metal
 * must give it too. A sink covers its plate.
 */
export function metalPlateRules({ plates, materials }: PartlyLeg, report: Report, given: unknown, open: ReadonlySet<string>): void {
  const written = isRecord(given) && isRecord(given.plates) ? given.plates : {}
  const leaves = (section: unknown, path: string) =>
    isRecord(section) && (section.emissivity === undefined || open.has(`${path}.emissivity`))
  for (const [name, { material, sink }] of entriesOf(plates)) {
    const [own, path] = [written[name], `plates.${name}`]
    if (!isRecord(own)) continue
    if (sink !== undefined) {
      if (leaves(own.sink, `${path}.sink`) && isMetal(sink.material, materials))
        report(`${path}.sink.emissivity`, undefined, `is needed because the sink is of metal: ${EMISSIVITY_HINT}`)
    } else if (leaves(own, path) && isMetal(material, materials))
      report(`${path}.emissivity`, undefined, `is needed because the plate is of metal without a sink: ${EMISSIVITY_HINT}`)
  }
}

function isMetal(name: string | undefined, materials: PartlyLeg['materials']): boolean {
  if (name === undefined) return false
  try {
    return materialOf(name, materials as never).family === 'metal'
  } catch {
    // The name is in the list of mistakes already.
    return false
  }
}
