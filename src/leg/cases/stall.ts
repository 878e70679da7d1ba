import { bare } from '../../formula/index.js'
import { motorWarmUp } from '../../thermal/index.js'
import type { Prepared } from '../numbers.js'
import { basisOf } from './balance.js'
import { type CoolingLaws, coolingLaws, heatStores } from './cooling.js'
import { UNLOADED } from './motion.js'

/** A moment of a heating run: copper loss until the next moment, and the air. */
export interface HeatingMoment {
  readonly time: number
  readonly loss: number
  readonly air: number
}

/** Temperatures of the mounting face at the moments of a heating run in still air, from the first one on. */
export function heatingRun(leg: Prepared, moments: readonly HeatingMoment[], initial: number): number[] {
  let mount = initial
  let store = initial
  // The store answers as the plate does over the whole run.
  const whole = (moments.at(-1)?.time ?? 0) - (moments[0]?.time ?? 0)
  const stores = moments.length > 1 ? heatStores(bare, leg, whole) : undefined
  let laws: CoolingLaws | undefined
  return moments.map(({ time, air }, i) => {
    const from = moments[i - 1]
    if (from === undefined || stores === undefined) return mount
    if (laws?.air !== air)
      laws = coolingLaws(bare, leg, basisOf(leg, bare, { joint: 'hip', motion: UNLOADED, air, wind: 0, heating: 'none' }))
    const after = motorWarmUp.si({
      otherLoss: from.loss,
      initial: mount,
      initialStore: store,
      ...laws,
      ...stores,
      time: time - from.time,
    })
    mount = after.mount
    store = after.store
    return mount
  })
}
