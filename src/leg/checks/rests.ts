import { isPrior } from '../../formula/index.js'
import type { Matter } from '../matter.js'
import type { Rest } from './check.js'

/** The strength of a print, as far as nobody has measured it on this printer. */
export function polymerRest({ material }: Matter, part: string): Rest[] {
  const strength = material.tensileStrength
  if (strength === undefined) return []
  const rests: Rest[] = []
  if (isPrior(strength.source) || strength.high > 1.2 * strength.low)
    rests.push({
      what: `strength of printed ${material.name} (${part})`,
      source: strength.source,
      test: `pull five bars of ${material.name} from your printer, lying and standing`,
    })
  if (material.strengthKept1Year !== undefined && isPrior(material.strengthKept1Year.source))
    rests.push({
      what: `strength of ${material.name} under load for a year`,
      source: material.strengthKept1Year.source,
      test: `hang a known weight on bars of ${material.name} for a month and log when they break`,
    })
  return rests
}

/** Friction of the cord, as far as nobody has measured it on this drum. */
export const frictionRest: Rest = {
  what: 'friction of the cord on its pinion',
  source: { level: 'unverified', where: 'ranges for braided polymer cord on printed and metal drums' },
  test: 'hang two weights over the pinion and read the ratio at which the cord slips, wet and dry',
}
