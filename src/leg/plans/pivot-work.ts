import { parallelKeySize } from '../../fasteners/index.js'
import { Quantity } from '../../units/index.js'
import type { LegNumbers } from '../leg-numbers.js'
import { inEye, seatedOf } from '../parts/ball-bearings/fields.js'
import { PIVOT_WORDS, PIVOTS, type Pivot } from '../parts/ball-bearings/pivots.js'
import { bearingOf } from '../schema/tables.js'
import { length, torque } from './bench.js'
import { phrase, shown } from './sheet-units.js'
import type { ShoppingLine } from './shopping-line.js'

type Seated = NonNullable<ReturnType<typeof seatedOf>>

/** Places of a leg that turn on ball bearings, each with its bearing. */
const seatedPlaces = (x: LegNumbers): readonly (readonly [Pivot, Seated])[] =>
  PIVOTS.flatMap((pivot) => {
    const seated = seatedOf(x, pivot)
    return seated === undefined ? [] : [[pivot, seated] as const]
  })

const sizes = ({ size, own }: Seated): string =>
  size ??
  (own === undefined
    ? 'as specified'
    : [own.bore, own.outerDiameter, own.width].map((size) => shown(new Quantity(size, 'length'))).join(' x '))

/** Bearings, screws of their caps and the key of the shaft, as a shop lists them. @internal */
export function pivotLines(x: LegNumbers): ShoppingLine[] {
  const key = x.shafts[x.joints.hip.shaft ?? '']?.stack?.key
  return [
    ...seatedPlaces(x).flatMap(([pivot, seated]): ShoppingLine[] => [
      { item: 'bearing', size: sizes(seated), quantity: seated.pairSpacing === undefined ? '1' : '2', remark: PIVOT_WORDS[pivot] },
      ...(seated.cap === undefined
        ? []
        : [
            {
              item: 'screw',
              size: `${seated.cap.thread}, class ${seated.cap.propertyClass}`,
              quantity: '1',
              remark: `cap of the bearing, ${PIVOT_WORDS[pivot]}: as long as the thread is deep`,
            },
          ]),
    ]),
    ...(key === undefined
      ? []
      : [
          {
            item: 'parallel key',
            size: phrase`${key.size} x ${new Quantity(key.length, 'length')}`,
            quantity: '2',
            remark: 'stack on the hip shaft: one for drum and link each, or one that both share and a spare',
          },
        ]),
  ]
}

const HOLD: { readonly [K in Seated['retainedBy']]: string } = {
  press: 'pressed in',
  bond: 'bonded in: degrease, one drop all round, and none in the bearing',
  cap: 'against its shoulder',
}

/** Seats, caps and the stack on the shaft, in the order of work. @internal */
export function pivotSteps(x: LegNumbers): string[] {
  const stack = x.shafts[x.joints.hip.shaft ?? '']?.stack
  return [
    'Seat the bearings by their outer rings; put shoulder and cap on.',
    ...seatedPlaces(x).map(([pivot, seated]) => bearingStep(x, pivot, seated)),
    ...(stack === undefined ? [] : [stackStep(stack)]),
  ]
}

function bearingStep(x: LegNumbers, pivot: Pivot, seated: Seated): string {
  const { outerDiameter } = bearingOf(seated.size, seated.own) ?? { outerDiameter: Number.NaN }
  const hole = length(outerDiameter - seated.seatInterference)
  const where = inEye(x, pivot) ? `${PIVOT_WORDS[pivot]}, in the eye of the rod` : PIVOT_WORDS[pivot]
  const pair =
    seated.pairSpacing === undefined
      ? ''
      : phrase` Two of them, ${length(seated.pairSpacing)} from middle to middle, with a tube between their inner rings.`
  const { cap } = seated
  const screw =
    cap === undefined
      ? ''
      : phrase` Cap on, its ${cap.thread} screw to ${torque(cap.tighteningTorque)}; its rim touches the ring and nothing else.`
  return phrase`Bearing ${sizes(seated)} of the ${where}: seat of ${hole}, ${HOLD[seated.retainedBy]}. Push on the outer ring only.${pair}${screw} It must turn by hand as lightly as before: a tight bearing has lost its clearance in a seat that is too small.`
}

function stackStep({ tighteningTorque, key, flat }: NonNullable<LegNumbers['shafts'][string]['stack']>): string {
  const keyed =
    flat !== undefined
      ? phrase`Each bore, of drum and link, fits the flat of the shaft, ${length(flat.depth)} deep and ${length(flat.length)} long, without play that can be felt: an edge that moves wears round. File no radius on its edges.`
      : key === undefined
        ? 'Faces clean, dry and without burrs: friction alone drives.'
        : phrase`The key of ${key.size} (${length(parallelKeySize.si(key.size).shaftDepth)} deep in the shaft) must not rattle. Drum and link share it, or each has its own.`
  return phrase`Stack on the hip shaft: ${keyed} Nut to ${torque(tighteningTorque)}, marked with a line of paint over nut and shaft. Tighten again after a day and a week: a printed spacer gives.`
}
