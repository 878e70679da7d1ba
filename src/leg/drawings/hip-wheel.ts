import { material as pulleyMaterial, width } from '../parts/transmission/belt/fields.js'
import { largeRadius } from '../parts/transmission/belt/values.js'
import { drum } from '../parts/transmission/cord/fields.js'
import { drumRadius } from '../parts/transmission/cord/radii.js'
import { faceWidth, wheelMaterial } from '../parts/transmission/gear/fields.js'
import { gearSetting } from '../plans/gear-setting.js'
import type { Facts } from './facts.js'
import { hasCordDrive, isDriven } from './present.js'
import type { Wheel } from './shaft-section.js'
import type { ShaftSizes } from './shaft-sizes.js'

const at = { joint: 'hip' }

/** Wheel that turns with the hip on its shaft: drum, pulley or gear wheel of its drive; of another drive a wheel of assumed size. */
export function hipWheel(facts: Facts, s: ShaftSizes): Wheel {
  const made = (kind: Wheel['kind'], material: string, length: number, outer: number): Wheel => ({
    kind,
    circle: kind === 'drum' ? 'cord circle' : 'pitch circle',
    length,
    outer,
    name: `${kind}, ${material}`,
    metal: facts.isMetal(material),
    assumed: false,
  })
  if (hasCordDrive(facts, 'hip'))
    return made('drum', facts.named('material', drum.material, at), facts.mm(drum.length, at), 2 * facts.mm(drumRadius, at))
  if (isDriven(facts, 'hip', 'belt'))
    return made('pulley', facts.named('material', pulleyMaterial, at), facts.mm(width, at), 2 * facts.mm(largeRadius, at))
  if (isDriven(facts, 'hip', 'gear'))
    return made(
      'wheel',
      facts.named('material', wheelMaterial, at),
      facts.mm(faceWidth, at),
      1000 * gearSetting(facts.leg, 'hip').wheel.pitch,
    )
  return {
    kind: 'wheel',
    circle: 'diameter',
    length: 1.5 * s.width,
    outer: 2 * s.outer,
    name: 'wheel, assumed',
    metal: false,
    assumed: true,
  }
}
