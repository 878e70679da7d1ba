import type { LegNumbers } from '../leg-numbers.js'
import { type DriveKind, drivenBy, JOINTS } from '../numbers.js'
import { hasPrints } from '../printed.js'
import { beltOrCordOf } from '../second-stage.js'
import { CAUTIONS } from './content.js'

/** Hazards of each kind of drive. A cord's stands first in every report. */
const OF_KIND: { readonly [K in DriveKind]?: string } = {
  belt: 'A tensioned belt pulls fingers in where it runs on to its pulleys, and throws a broken pulley. Guard it, and turn the joint by its link, never by the belt.',
  gear: 'Gears pull in fingers, hair and sleeves, and a broken tooth flies. Cover the pair before power is on.',
  gearbox:
    'A gearbox turns on under load when its motor lets go, or holds when you expect it to yield. Support the leg before you loosen anything.',
  direct: 'A direct drive holds nothing without current: the leg falls at once. Support it before you switch off.',
}

const OF_SPRING =
  'A spring beside a joint stores energy with the supply off: the leg moves as soon as nothing holds it, and a spring or pin that breaks flies. Take it off before you work on the joint, and wear eye protection.'
const OF_COUNTERWEIGHT =
  'A counterweight swings on the far side of its joint and pinches there. Screw it on: one that comes off in a landing flies, and the leg drops or leaps.'

const OF_PRINTS = 'Motors and their mounts soften prints: look at the prints near them after every hot run.'

/** Cautions for the work on a leg: those of its kinds of drive first. @internal */
export function cautionsOf(x: LegNumbers): readonly string[] {
  const [ofCord, ...others] = CAUTIONS
  const own = (Object.keys(OF_KIND) as DriveKind[]).flatMap((kind) => (drivenBy(x, kind).length > 0 ? (OF_KIND[kind] ?? []) : []))
  const along = beltOrCordOf(x)?.kind
  if (along === 'belt' && drivenBy(x, 'belt').length === 0) own.push(OF_KIND.belt as string)
  const ofCords = drivenBy(x, 'cord').length > 0 || along === 'cord'
  const balanced = (['upper', 'lower'] as const).some((link) => x.links[link].counterweight !== undefined)
  if (balanced) own.push(OF_COUNTERWEIGHT)
  if (JOINTS.some((joint) => x.joints[joint].spring !== undefined)) own.push(OF_SPRING)
  if (hasPrints(x)) own.push(OF_PRINTS)
  return [...(ofCords && ofCord !== undefined ? [ofCord] : []), ...own, ...others]
}
