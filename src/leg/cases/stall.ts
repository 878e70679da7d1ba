import { bare, type Evaluator } from '../../formula/index.js'
import { lumpedResponse, steadyWindingTemperature } from '../../thermal/index.js'
import { known } from '../matter.js'
import type { Prepared } from '../numbers.js'
import { type Basis, basisOf, canPathAt, type Excitation, excitationAt, type Paths, pathsFrom } from './balance.js'
import { UNLOADED } from './motion.js'
import { recordMount } from './mount.js'

/** Motor and mount at the end of a stall. */
export interface Stalled {
  readonly mount: number
  readonly excitation: Excitation
  readonly paths: Paths
  /** Copper loss, and the mean temperature of the winding. */
  readonly loss: number
  readonly windingMean: number
}

/** Steps of a stall to begin with; each is the exact course of one body while films and loss stand still, taken at its middle. */
const STALL_STEPS = 6
const MOST_STALL_STEPS = 768
/** Steps are doubled until the end of the stall moves by less than this, K. */
const STALL_TOLERANCE = 0.25
/** Rise of the can over that of the mount to begin with. */
export const COLD_CAN_SHARE = 0.8

/**
 * A motor held still from cold for a time: motor and sink warm up as one body, the winding (whose own lag is seconds) rides on it. What the
 * printed plate stores is left out. Nothing where the winding runs away or the mount passes `limit`.
 */
export function stalled(leg: Prepared, of: Evaluator, basis: Basis, time: number, steps: number, limit: number): Stalled | undefined {
  const heatCapacity = heatCapacityOf(leg)
  const step = time / steps
  const course = (initial: number, body: Body, duration: number) => ({
    initial,
    final: body.final,
    heatCapacity,
    thermalResistance: 1 / body.paths.total,
    time: duration,
  })
  let mount = basis.air
  let body = bodyAt(leg, bare, basis, mount, COLD_CAN_SHARE)
  let last = { from: mount, body }
  for (let i = 0; i < steps; i++) {
    if (body === undefined) return undefined
    // What the body was heading for in the middle of the last step says well enough where the middle of this one is.
    body = bodyAt(leg, bare, basis, lumpedResponse.si(course(mount, body, step / 2)).temperature, body.paths.canShare)
    if (body === undefined) return undefined
    last = { from: mount, body }
    mount = lumpedResponse.si(course(mount, body, step)).temperature
    if (mount > limit) return undefined
  }
  const share = body?.paths.canShare ?? COLD_CAN_SHARE
  // The end is worked out on the sheet, with the last step before it.
  if (of !== bare && last.body !== undefined) of(lumpedResponse, course(last.from, last.body, step))
  const end = bodyAt(leg, of, basis, mount, share)
  if (end === undefined) return undefined
  if (of !== bare) recordMount(leg, of, basis.air + 0.4 * (mount - basis.air), basis)
  const { excitation, paths, loss, windingMean } = end
  return { mount, excitation, paths, loss, windingMean }
}

/** The same with steps fine enough: a motor near running away wants many, any other few. */
export function stalledFinely(
  leg: Prepared,
  of: Evaluator,
  basis: Basis,
  time: number,
  limit: number,
): { readonly end: Stalled | undefined; readonly steps: number } {
  let steps = STALL_STEPS
  let end = stalled(leg, bare, basis, time, steps, limit)
  let moved: number
  do {
    const coarse = end
    steps *= 2
    end = stalled(leg, bare, basis, time, steps, limit)
    // A motor that runs away under fine steps does so under finer ones too; one that only does under coarse ones may not.
    moved = end === undefined ? 0 : Math.abs(end.mount - (coarse?.mount ?? Number.POSITIVE_INFINITY))
  } while (moved > STALL_TOLERANCE && steps < MOST_STALL_STEPS)
  return { end: of === bare ? end : stalled(leg, of, basis, time, steps, limit), steps }
}

/** A moment of a heating run: copper loss until the next moment, and the air. */
export interface HeatingMoment {
  readonly time: number
  readonly loss: number
  readonly air: number
}

/** Temperatures of the mounting face at the moments of a heating run in still air, from the first one on. */
export function heatingRun(leg: Prepared, moments: readonly HeatingMoment[], initial: number): number[] {
  const heatCapacity = heatCapacityOf(leg)
  let mount = initial
  let share = COLD_CAN_SHARE
  return moments.map(({ time, air }, i) => {
    const from = moments[i - 1]
    if (from === undefined) return mount
    const still = basisOf(leg, bare, { joint: 'hip', motion: UNLOADED, air, wind: 0, heating: 'none' })
    const conductance = (at: number) => {
      const paths = pathsFrom(leg, bare, still, at, canPathAt(leg, bare, still, air + share * (at - air)))
      share = paths.canShare
      return paths.total
    }
    const after = (total: number, duration: number) =>
      lumpedResponse.si({ initial: mount, final: air + from.loss / total, heatCapacity, thermalResistance: 1 / total, time: duration })
        .temperature
    const duration = time - from.time
    // Films as they are half way.
    mount = after(conductance(after(conductance(mount), duration / 2)), duration)
    return mount
  })
}

/** Motor and mount with the mounting face at a temperature, and what temperature it is heading for. */
interface Body {
  readonly final: number
  readonly excitation: Excitation
  readonly paths: Paths
  readonly loss: number
  readonly windingMean: number
}

/** Nothing where the winding runs away from a mount this hot. */
function bodyAt(leg: Prepared, of: Evaluator, basis: Basis, mount: number, canShare: number): Body | undefined {
  const can = basis.air + canShare * (mount - basis.air)
  const excitation = excitationAt(leg, of, basis, can)
  const paths = pathsFrom(leg, of, basis, mount, canPathAt(leg, of, basis, can))
  const steady = of(steadyWindingTemperature, {
    lossAt20: excitation.lossAt20,
    thermalResistance: leg.x.motor.windingToMount,
    ambient: mount,
  })
  if (steady.state !== 'steady') return undefined
  const { loss, temperature: windingMean } = steady
  return { final: basis.air + (loss + basis.ironLoss) / paths.total, excitation, paths, loss, windingMean }
}

/** Heat that motor and sink take per kelvin. */
function heatCapacityOf({ x, sink }: Prepared): number {
  const own = x.motor.mass * x.motor.specificHeat
  if (x.sink === undefined || sink === undefined) return own
  const { width, height, thickness } = x.sink
  return own + width * height * thickness * known(sink.material, 'density') * known(sink.material, 'specificHeat')
}
