import { hexNut, metricThread } from '../../fasteners/index.js'
import { Quantity } from '../../units/index.js'
import type { LegModel } from '../leg-model.js'
import type { LegNumbers } from '../leg-numbers.js'
import { cordJoints, type DrivenJoint, drivenJoints, driveOf, jointOf, jointWords } from '../numbers.js'
import { boltsName } from '../report/instance-words.js'
import type { AssemblyPlan } from './assembly-plan.js'
import { pivotLines } from './pivot-work.js'
import { phrase, shown } from './sheet-units.js'
import type { ShoppingLine } from './shopping-line.js'
import { smallParts } from './small-parts.js'
import { suppliesLines } from './stock.js'

/** Cord to buy over cord to cut: one more of each. */
const SPARE_CORD = 2
/** Cord for the coupon of each drive, m. */
const COUPON_CORD = 0.5

/** Purchases for one leg: motors and controllers, cords, belts, gears and gearboxes, pins, rod, screws with nuts and washers, shaft and bearings, adhesive, material and what is used up. @internal */
export function shoppingList(
  leg: LegModel,
  { cuts, rod, drives, bonds }: Pick<AssemblyPlan, 'cuts' | 'rod' | 'drives' | 'bonds'>,
): ShoppingLine[] {
  const { x } = leg
  return [
    ...counted(x, 'motor').map(([name, joints]) => line('motor', name, joints.length, joints.map(jointWords).join(', '))),
    ...counted(x, 'controller').map(([name, joints]) => line('controller', name, joints.length, joints.map(jointWords).join(', '))),
    ...cuts.cords.map(({ joint, cord, cutLength }) => ({
      item: 'cord',
      size: cord,
      quantity: `${Math.ceil(10 * (SPARE_CORD * cutLength.in('m') + COUPON_CORD)) / 10} m`,
      remark: `${jointWords(joint)}: twice the cut, one of them to spare, and half a metre for the coupon`,
    })),
    ...cordJoints(x).map((joint) => {
      const { thread, travel } = driveOf(x, joint, 'cord').tensioner
      return line(
        'tensioning screw',
        thread,
        1,
        phrase`${jointWords(joint)}: thread over at least ${new Quantity(travel, 'length')} of travel`,
      )
    }),
    ...smallParts(leg, cuts.bolts),
    ...drives.flatMap(({ parts }) => parts),
    ...cuts.pins.map(({ joint, size, catalogue, fit }) => line('pin', sized(size, catalogue), 2, `${joint}: ${fit}; one spare`)),
    ...rodLines(rod),
    ...cuts.bolts.flatMap((bolt) => boltLines(x, bolt)),
    ...shaftLines(x, cuts.shaft),
    ...pivotLines(x),
    ...bonds.map(({ adhesive, joint }) => line('adhesive', adhesive, 1, `cord ends of the ${jointWords(joint)}`)),
    ...suppliesLines(leg, bonds.length > 0),
  ]
}

const line = (item: string, size: string, quantity: number, remark: string): ShoppingLine => ({
  item,
  size,
  quantity: String(quantity),
  remark,
})

const sized = (size: string, length: Quantity<'length'> | undefined) =>
  `${size} x ${length === undefined ? 'to be cut' : length.in('mm')} mm`

/** Names of the motors or controllers of a leg, each with its joints. */
function counted(x: LegNumbers, part: 'motor' | 'controller'): [string, DrivenJoint[]][] {
  const of = (joint: DrivenJoint) => jointOf(x, joint)[part]
  const names = [...new Set(drivenJoints(x).map(of))].filter((name) => name !== undefined)
  return names.map((name) => [name, drivenJoints(x).filter((joint) => of(joint) === name)])
}

function rodLines(rod: AssemblyPlan['rod']): ShoppingLine[] {
  if (rod === undefined) return []
  const bar = line('bar for the rod', phrase`${rod.material}, ${rod.diameter}`, 1, phrase`${rod.betweenPins} from pin to pin, and the eyes`)
  return rod.pin === undefined ? [bar] : [bar, line('pin', sized(rod.pin.size, rod.pin.catalogue), 3, `rod: ${rod.pin.fit}; one spare`)]
}

function boltLines(x: LegNumbers, bolt: AssemblyPlan['cuts']['bolts'][number]): ShoppingLine[] {
  const { group, thread, propertyClass, count, catalogue, mostLength } = bolt
  const { washers, nut } = x.bolts[group] as LegNumbers['bolts'][string]
  const name = boltsName(group)
  const tapped = nut === 'tappedMetal'
  const remark = tapped
    ? phrase`${name}: never longer than ${mostLength}, a longer one shorts the winding; one spare`
    : `${name}; one spare`
  const size = `${thread} x ${catalogue === undefined ? '?' : catalogue.in('mm')} mm, class ${propertyClass}`
  return [
    line('screw', size, count + 1, remark),
    ...(washers ? [line('washer', thread, (tapped ? 1 : 2) * (count + 1), name)] : []),
    ...(tapped ? [] : [line('nut', phrase`${thread}, ${new Quantity(hexNut.si(thread).height, 'length')} high`, count + 1, name)]),
  ]
}

function shaftLines(x: LegNumbers, shaft: AssemblyPlan['cuts']['shaft']): ShoppingLine[] {
  if (shaft === undefined) return []
  const { bearings: name, capThickness } = x.shafts[x.joints.hip.shaft as string] as LegNumbers['shafts'][string]
  const bearings = x.bearings[name] as LegNumbers['bearings'][string]
  const max = new Quantity(capThickness + shaft.threadDepth.si, 'length')
  const pitch = new Quantity(metricThread.si(shaft.innerThread).pitch, 'length')
  return [
    line(
      'hip shaft',
      phrase`${shaft.thread}, class ${shaft.propertyClass}, shank of at least ${shaft.leastLength} to the plane of the leg, and what of the hub is beyond it`,
      1,
      phrase`tap drill ${shaft.tapDrill}`,
    ),
    line(
      'screw',
      phrase`${shaft.innerThread}, at most ${max.minus(pitch)}`,
      1,
      'end cap of the hip shaft: it must not reach the bottom of its hole',
    ),
    line('bearing', bearings.size ?? ownSize(bearings.own), 2, 'hip shaft'),
  ]
}

/** The bearings that a driven sideways hip turns in. */
const ownSize = (own: LegNumbers['bearings'][string]['own']): string =>
  own === undefined ? 'as specified' : [own.bore, own.outerDiameter, own.width].map((x) => shown(new Quantity(x, 'length'))).join(' x ')

/** The shopping list as CSV, with one header line. */
export function shoppingCsv(plan: Pick<AssemblyPlan, 'shopping'>): string {
  const cell = (text: string) => (/[",\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text)
  const rows = plan.shopping.map(({ item, size, quantity, remark }) => [item, size, quantity, remark].map(cell).join(','))
  return `${['item,size,quantity,remark', ...rows].join('\n')}\n`
}
