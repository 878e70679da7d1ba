import { parallelKeySize } from '../../fasteners/index.js'
import { bearingOf, pinOf, threadOf } from '../schema/tables.js'
import { below, entriesOf, millimetres, notAbove, type PartlyLeg, type Report } from './partly.js'

type Pin = NonNullable<NonNullable<PartlyLeg['pins']>[string]>
type Seated = NonNullable<Pin['bearing']>
type Knee = NonNullable<NonNullable<NonNullable<PartlyLeg['joints']>['knee']>['through']>
type Arm = NonNullable<NonNullable<Extract<Knee, { readonly kind?: 'rod' | undefined }>['pivots']>['crank']>

/** Contradictions within ball bearings, the ends of a rod, and the stack on the hip shaft. */
export function bearingRules(data: PartlyLeg, report: Report): void {
  const through = data.joints?.knee?.through
  const rod = through?.kind === 'rod' ? through : undefined
  const rodPin = rod?.pin === undefined ? undefined : data.pins?.[rod.pin]
  for (const [name, pin] of entriesOf(data.pins)) {
    if (pin.bearing === undefined) continue
    seatedRules(`pins.${name}.bearing`, pin.bearing, pin.size, report)
    eyeRules(`pins.${name}`, pin.bearing, pin.lugThickness, report)
    if (name === rod?.pin)
      report(`pins.${name}.bearing`, 'given', 'must be given at joints.knee.through.pivots: each end of the rod has its own')
  }
  for (const arm of ['crank', 'rocker'] as const) {
    const end = rod?.pivots?.[arm]
    if (end !== undefined) armRules(`joints.knee.through.pivots.${arm}`, end, rod?.pin, rodPin, report)
  }
  const drum = rod?.pivots?.drum?.bearing
  if (drum !== undefined) seatedRules('joints.knee.through.pivots.drum.bearing', drum, undefined, report)
  stackRules(data, report)
}

/** One arm of the rod: its bearing, and the eye of the rod beside a cheek that the pin sticks out of. */
function armRules(path: string, end: Arm, pinName: string | undefined, pin: Pin | undefined, report: Report): void {
  if (end.bearing !== undefined) seatedRules(`${path}.bearing`, end.bearing, pin?.size, report)
  else if (end.bearingIn === 'rod') report(`${path}.bearing`, undefined, `is needed because ${path}.bearingIn is rod`)
  const inArm = end.bearing !== undefined && end.bearingIn === 'arm'
  if (end.cheeks !== 1 || inArm || pin?.cheekThickness === undefined || pin.lugThickness === undefined) return
  const min = (pin.cheekThickness.si + pin.lugThickness.si) / 2
  if (end.offset !== undefined && end.offset.si < min)
    report(
      `${path}.offset`,
      end.offset,
      `must be at least ${millimetres(min)}, half the cheek and half the eye of pins.${pinName}: they overlap`,
    )
}

function seatedRules(path: string, seated: Seated, pinSize: string | undefined, report: Report): void {
  const { cap, housingDiameter, pairSpacing, size, own } = seated
  retainedRules(path, seated, report)
  const found = sizesOf(seated)
  if (found === undefined) return
  const { bore, outerDiameter, width } = found
  if (own !== undefined && bore >= outerDiameter)
    report(`${path}.own.bore`, own.bore, `must be smaller than the outer diameter (${millimetres(outerDiameter)})`)
  if (housingDiameter !== undefined && housingDiameter.si <= outerDiameter)
    report(`${path}.housingDiameter`, housingDiameter, `must be larger than the bearing (${millimetres(outerDiameter)})`)
  if (pairSpacing !== undefined && pairSpacing.si < width)
    report(`${path}.pairSpacing`, pairSpacing, `must be at least the width of a bearing (${millimetres(width)}): they overlap`)
  const pin = pinSize === undefined ? undefined : pinOf(pinSize).diameter
  if (pin !== undefined && bore < pin * (1 - 1e-9))
    report(
      `${path}.${size === undefined ? 'own.bore' : 'size'}`,
      size ?? own?.bore,
      `must have a bore of at least the pin (${millimetres(pin)})`,
    )
  if (cap !== undefined) capRules(`${path}.cap`, cap, found, report)
}

/** One bearing, or two side by side, fit in the eye of their link. */
function eyeRules(path: string, seated: Seated, lug: Pin['lugThickness'], report: Report): void {
  const { width } = sizesOf(seated) ?? { width: Number.NaN }
  const needed = (seated.pairSpacing?.si ?? 0) + width
  if (lug !== undefined && needed > lug.si * (1 + 1e-9))
    report(`${path}.lugThickness`, lug, `must hold its ball bearings, which take ${millimetres(needed)} along the pin`)
}

/** A cap is given where it holds the rings, and nowhere else. */
function retainedRules(path: string, { cap, retainedBy }: Seated, report: Report): void {
  if (retainedBy === 'cap' && cap === undefined) report(`${path}.cap`, undefined, `is needed because ${path}.retainedBy is cap`)
  if (retainedBy !== undefined && retainedBy !== 'cap' && cap !== undefined)
    report(`${path}.retainedBy`, retainedBy, `must be cap because ${path}.cap is given`)
}

interface Sizes {
  readonly bore: number
  readonly outerDiameter: number
  readonly width: number
}

/** Sizes of a bearing as far as they could be read; what is missing is not a number, which no rule objects to. */
function sizesOf({ size, own }: Seated): Sizes | undefined {
  if (size !== undefined) return bearingOf(size, undefined)
  const si = (x: { readonly si: number } | undefined) => x?.si ?? Number.NaN
  return own && { bore: si(own.bore), outerDiameter: si(own.outerDiameter), width: si(own.width) }
}

/** Rims of shoulder and cap touch the rings of their bearing. */
function capRules(path: string, cap: NonNullable<Seated['cap']>, { bore, outerDiameter }: Sizes, report: Report): void {
  if (below(cap.edgeDiameter, cap.rimDiameter))
    report(`${path}.edgeDiameter`, cap.edgeDiameter, `must be at least rimDiameter (${cap.rimDiameter})`)
  for (const name of ['shoulderDiameter', 'rimDiameter'] as const) {
    const rim = cap[name]
    if (rim !== undefined && (rim.si <= bore || rim.si > outerDiameter))
      report(
        `${path}.${name}`,
        rim,
        `must be between bore and outer diameter of the bearing (${millimetres(bore)} and ${millimetres(outerDiameter)})`,
      )
  }
}

function stackRules({ shafts }: PartlyLeg, report: Report): void {
  for (const [name, { stack, thread }] of entriesOf(shafts)) {
    if (stack === undefined) continue
    const path = `shafts.${name}.stack`
    if (notAbove(stack.outerDiameter, stack.innerDiameter))
      report(`${path}.outerDiameter`, stack.outerDiameter, `must be larger than innerDiameter (${stack.innerDiameter})`)
    if (thread === undefined) continue
    const { diameter } = threadOf(thread)
    if (stack.innerDiameter !== undefined && stack.innerDiameter.si < diameter * (1 - 1e-9))
      report(`${path}.innerDiameter`, stack.innerDiameter, `must be at least the shaft (${millimetres(diameter)})`)
    const { key } = stack
    flatRules(stack, diameter, path, report)
    if (key?.size === undefined) continue
    const { shaftAbove, shaftUpTo, hubDepth } = parallelKeySize.si(key.size)
    if (diameter <= shaftAbove || diameter > shaftUpTo)
      report(
        `${path}.key.size`,
        key.size,
        `must suit the shaft (${millimetres(diameter)}); this key is for shafts above ${millimetres(shaftAbove)}, up to ${millimetres(shaftUpTo)}`,
      )
    if (key.hubDiameter !== undefined && key.hubDiameter.si <= diameter + 2 * hubDepth)
      report(`${path}.key.hubDiameter`, key.hubDiameter, `must be above ${millimetres(diameter + 2 * hubDepth)}, the shaft with its keyway`)
  }
}

type Stack = NonNullable<NonNullable<NonNullable<PartlyLeg['shafts']>[string]>['stack']>

function flatRules({ flat, key }: Stack, diameter: number, path: string, report: Report): void {
  if (flat === undefined) return
  if (key !== undefined) report(`${path}.flat`, flat, 'must be left out beside a key: one of both carries the torque')
  // As deep as that, it leaves the shaft more than the root of its thread, which its bending counts with.
  if (flat.depth !== undefined && flat.depth.si > diameter / 4)
    report(
      `${path}.flat.depth`,
      flat.depth,
      `must be at most a quarter of the shaft (${millimetres(diameter / 4)}): deeper ones weaken it too much`,
    )
}
