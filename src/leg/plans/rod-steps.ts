import type { Quantity } from '../../units/index.js'
import type { LegModel } from '../leg-model.js'
import { hasCord, rangeOf } from '../numbers.js'
import { rodOf } from '../parts/transmission/through-hip/fields.js'
import { angle, length } from './bench.js'
import { driveWords } from './drive-facts.js'
import { type PinCut, pinCut } from './pin-cut.js'
import { rodGeometry } from './rod-geometry.js'
import { phrase } from './sheet-units.js'

/** A rod that drives the knee from a drum on the hip axis: what to make, and how to set it. */
export interface RodCut {
  /** Material to make it of. */
  readonly material: string
  /** Its outer diameter. */
  readonly diameter: Quantity<'length'>
  /** Distance of its pins. */
  readonly betweenPins: Quantity<'length'>
  /** How far that may be off, so that the knee is off by half a degree at most. */
  readonly tolerance: Quantity<'length'>
  /** Length of the crank on the hip axis. */
  readonly crank: Quantity<'length'>
  /** Length of the rocker on the lower link. */
  readonly rocker: Quantity<'length'>
  /** The pin at each end; absent where the leg has none. */
  readonly pin: PinCut | undefined
  /** Rod and rocker at both limits of the knee: the smaller angle between them. Near zero the rod no longer moves the knee. */
  readonly transmissionAngles: readonly [Quantity<'angle'>, Quantity<'angle'>]
  /** Making it, setting it, and the check before the drive is joined. */
  readonly steps: readonly string[]
}

/** The knee may be off by this much through the length of its rod. */
const KNEE_OFF = (0.5 * Math.PI) / 180

/** A calliper reads a hundredth of a millimetre, m. */
const STEP = 1e-5

/** The rod of a leg; absent where the motor of the knee sits on the upper link. @internal */
export function rodCut(leg: LegModel): RodCut | undefined {
  const [rod, geometry] = [rodOf(leg.x), rodGeometry(leg.x)]
  if (rod === undefined || geometry === undefined) return undefined
  const pin = rod.pin === undefined ? undefined : leg.x.pins[rod.pin]
  const tolerance = KNEE_OFF / geometry.most((knee) => Math.abs(geometry.kneePerLength(knee)))
  const transmission = (knee: number) => angle(geometry.pose(knee).transmissionAngle)
  const cut = {
    material: rod.material,
    diameter: length(rod.diameter),
    betweenPins: length(rod.rod),
    tolerance: length(Math.floor(tolerance / STEP) * STEP),
    crank: length(rod.crank),
    rocker: length(rod.rocker),
    pin: pin && pinCut('knee', pin.size, pin.lugThickness + 2 * pin.gap, pin.cheekThickness),
    transmissionAngles: [transmission(geometry.lowest), transmission(geometry.highest)] as const,
  }
  const laid = geometry.pose(geometry.middle)
  const hip = rangeOf(leg.x, 'hip')
  const { output } = driveWords(leg.x, 'knee')
  const same = Math.abs(rod.rod - leg.x.links.upper.length) < 1e-9 && Math.abs(rod.crank - rod.rocker) < 1e-9
  const held = phrase`the hip at ${angle((hip.lowest + hip.highest) / 2)} and the knee at ${angle(geometry.middle)}`
  return {
    ...cut,
    steps: [
      phrase`Drill both eyes of the rod in one clamping: pin to pin ${cut.betweenPins}, within ${cut.tolerance}. Every ${cut.tolerance} turns the knee by half a degree. A flat bar with two pins at that distance is the gauge.${same ? ' The upper link has the same distance from hip to knee: drill both over one gauge, and they are alike even if the gauge is a little off.' : ''}`,
      phrase`Measure crank (${cut.crank}) and rocker (${cut.rocker}) from axis to pin${same ? '; equal to each other matters more than either figure' : ''}. The eyes must turn freely on their pins, without play that can be felt.`,
      `Join crank and ${output} on the hip axis, key or clamp loose: with ${held} the crank points ${seen(laid.crankAngle)} and the rocker ${seen(laid.rockerAngle)}. Both lie on the same side of the upper link. ${hasCord(leg.x, 'knee') ? 'Turn the drum until its anchors lie opposite the pinion, then tighten key or clamp' : 'Then tighten key or clamp'}.`,
      phrase`Before the drive is joined, swing hip and knee by hand through all their corners. Rod and rocker enclose ${cut.transmissionAngles[0]} at the lower limit of the knee and ${cut.transmissionAngles[1]} at the upper one. A tight spot, or a knee that snaps over to the other side, means a wrong length or a crank on the wrong side: stop. Fingers out of the linkage: it closes like scissors.`,
      rod.pinPlanesApart === 0
        ? 'Keep the rod in the plane of crank and rocker: washers of the same thickness on both sides of each eye. A rod that is out of that plane bends its pins.'
        : phrase`The pins of the rod stand in planes ${length(rod.pinPlanesApart)} apart, no more: the rod pulls them along their axes.`,
    ],
  }
}

/** A direction from the line hip to knee in words; positive angles are right-handed about the axis that points to the robot's left. */
function seen(direction: number): string {
  const turn = Math.atan2(Math.sin(direction), Math.cos(direction))
  return phrase`${angle(Math.abs(turn))} ${turn < 0 ? 'towards the front' : 'towards the back'} from the line hip to knee`
}
