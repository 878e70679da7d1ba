import type { LegNumbers } from '../leg-numbers.js'
import { drivenBy, drivenJoints, driveOf, JOINTS, jointOf, jointWords } from '../numbers.js'
import { seatedOf } from '../parts/ball-bearings/fields.js'
import { PIVOTS } from '../parts/ball-bearings/pivots.js'
import { isPrinted } from '../printed.js'
import { listed } from '../report/amounts.js'
import { beltOrCordOf } from '../second-stage.js'
import type { ShoppingLine } from './shopping-line.js'

type Made = readonly [material: string, part: string]

/** Parts that are made, not bought, each with its material; a rod, gears and pulleys of metal have lines of their own. */
function madeParts(x: LegNumbers): readonly Made[] {
  const links = (['upper', 'lower'] as const).flatMap((link): Made[] => {
    const { material } = x.links[link]
    return material === undefined ? [] : [[material, `${link} link`]]
  })
  const bosses = JOINTS.flatMap((joint): Made[] => {
    const boss = x.bosses[x.joints[joint].boss ?? '']
    return boss === undefined ? [] : [[boss.material, `boss of the ${joint}`]]
  })
  const plates = drivenJoints(x).flatMap((joint): Made[] => {
    const plate = x.plates[jointOf(x, joint).plate ?? '']
    return plate === undefined ? [] : [[plate.material, `motor plate of the ${jointWords(joint)}`]]
  })
  const drums = drivenBy(x, 'cord').map((joint): Made => [driveOf(x, joint, 'cord').drum.material, `drum of the ${jointWords(joint)}`])
  const pulleys = drivenBy(x, 'belt')
    .map((joint): Made => [driveOf(x, joint, 'belt').material, `large pulley of the ${jointWords(joint)}`])
    .filter(([material]) => isPrinted(x, material))
  const through = throughHip(x)
  const toes: Made[] = x.foot?.kind === 'toes' ? [[x.foot.material, 'toes']] : []
  return [...links, ...bosses, ...plates, ...drums, ...pulleys, ...through, ...toes]
}

/** Pulleys or drums of the belt or cord along the upper link. */
function throughHip(x: LegNumbers): Made[] {
  const through = beltOrCordOf(x)
  if (through === undefined) return []
  if (through.kind === 'belt') return isPrinted(x, through.material) ? [[through.material, 'pulleys along the upper link']] : []
  return [[through.kneeDrum.material, 'drum of the cord along the upper link']]
}

/** Filament of each polymer and stock of each other material, with the parts that are made of it. */
function stockLines(x: LegNumbers): ShoppingLine[] {
  const parts = madeParts(x)
  return [...new Set(parts.map(([material]) => material))].map((material) => {
    const of = listed(parts.filter(([one]) => one === material).map(([, part]) => part))
    return isPrinted(x, material)
      ? { item: 'filament', size: material, quantity: 'as the slicer counts it', remark: `${of}; some more for coupons` }
      : { item: 'stock', size: material, quantity: 'as the drawings need', remark: of }
  })
}

const LITTLE = 'a little'

/** What is used up in the work: thread lock, grease of gears, retaining compound and degreaser. */
function usedUp(x: LegNumbers, bonded: boolean): ShoppingLine[] {
  const screwed = [...drivenBy(x, 'belt'), ...drivenBy(x, 'gear'), ...drivenBy(x, 'direct')]
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

/** What to buy besides parts: material to make them of, and what is used up. @internal */
export const suppliesLines = (x: LegNumbers, bonded: boolean): ShoppingLine[] => [...stockLines(x), ...usedUp(x, bonded)]
