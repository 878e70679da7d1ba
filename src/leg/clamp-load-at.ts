import type { LegModel } from './leg-model.js'
import { boltTemperature, clampLoadAtTemperature } from './parts/bolts/clamp.js'
import { retightened } from './parts/bolts/fields.js'
import { preload as boltPreload } from './parts/bolts/values.js'
import { day, days, season, walkingTime as walkedPerDay } from './parts/load/fields.js'
import { at, calculationFor } from './what-if.js'

/** Preload of the bolts of a group, and their clamp load some days after tightening: at a temperature while walking, walked on or not. */
export function clampLoadAt(leg: LegModel, group: string) {
  const calculation = calculationFor(leg)
  const here = at(calculation, { boltGroup: group }) as never
  const { walkingTime: usual } = leg.x.usage
  return {
    preload: calculation.get(boltPreload, here),
    /** Not tightened again where it is not walked on. */
    after: (dayCount: number, temperature: number, walkingTime = 0) => {
      calculation.set(days, here, dayCount)
      calculation.set(season, here, dayCount * calculation.get(day, here))
      calculation.set(walkedPerDay, here, walkingTime)
      if (walkingTime !== usual) calculation.set(retightened, here, false)
      calculation.set(boltTemperature, here, temperature)
      try {
        return calculation.get(clampLoadAtTemperature, here)
      } finally {
        for (const leaf of [days, season, walkedPerDay, retightened, boltTemperature])
          calculation.restore(calculation.cell(leaf as typeof days, here))
      }
    },
  }
}
