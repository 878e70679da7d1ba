import { Quantity } from '../units/index.js'
import { type LegCalculation, placeOf } from './calculation.js'
import type { LegModel } from './leg-model.js'
import { footPlay } from './parts/ball-bearings/checks.js'
import { stride } from './parts/motion/values.js'
import { sidePlay } from './parts/pins-and-bosses/loads.js'
import { calculationFor } from './what-if.js'

/** How far the foot gives when it is pushed to the side as on a walk across the slope, the leg standing. */
export interface SidewaysGive {
  /** The push: the largest force to the side of a walk across the slope. */
  readonly push: Quantity<'force'>
  /** Elastic movement of the foot under it, of drives and links; absent where the drives hold no load. */
  readonly deflection: Quantity<'length'> | undefined
  /** The share of links in it: bent to the side and twisted. */
  readonly ofLinks: Quantity<'length'> | undefined
  /** Play to either side that the knee has on its pin or in its ball bearings, at the foot, in ordinary air; absent without a pin. */
  readonly play: Quantity<'length'> | undefined
}

/** How far the foot gives to the side, from its compliance sideways, of drives and links together and of links alone [m/N]. */
export function sidewaysGive(leg: LegModel, compliance: { readonly all: number; readonly links: number } | undefined): SidewaysGive {
  const calculation = calculationFor(leg)
  const { lateralForce } = calculation.get(stride, placeOf(calculation, { leg: 'leg', stance: 'slopeAcross' }) as never)
  const by = (each: number | undefined) => (each === undefined ? undefined : new Quantity(lateralForce * each, 'length'))
  return {
    push: new Quantity(lateralForce, 'force'),
    deflection: by(compliance?.all),
    ofLinks: by(compliance?.links),
    play: playOfKnee(leg, calculation),
  }
}

/** Play to either side at the foot: of the knee's ball bearings, or of its eye on a plain pin. */
function playOfKnee({ x }: LegModel, calculation: LegCalculation): Quantity<'length'> | undefined {
  const { pin, boss } = x.joints.knee
  if (pin === undefined) return undefined
  if (x.pins[pin]?.bearing !== undefined) {
    const where = calculation.instances.implied(placeOf(calculation, { pivot: 'knee', event: 'walk', air: 'normal' }))
    return new Quantity(calculation.get(footPlay, where as never), 'length')
  }
  if (boss === undefined) return undefined
  return new Quantity(calculation.get(sidePlay, placeOf(calculation, { joint: 'knee' }) as never), 'length')
}
