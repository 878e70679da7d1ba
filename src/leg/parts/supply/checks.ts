import type { Check } from '../../cases/check.js'
import { line, value } from '../../run/index.js'
import * as supply from './fields.js'
import { sag } from './values.js'

const drawn = line('current drawn', { current: 'current' }, 'current', 'max(current, 0)', ({ current }) => Math.max(current, 0))
const available = line.smallest('current available', { limit: 'current', most: 'current' }, 'current')

// Beyond the most power the current that it would need keeps growing: a deeper brown-out has the lower reserve.
const demand = value('supply.demand', ['leg', 'event', 'air'], (use) => use.run(drawn, { current: use(sag).neededCurrent }))
const capacity = value('supply.capacity', ['leg', 'event', 'air'], (use) =>
  use.run(available, { limit: use(supply.currentLimit), most: use(sag).mostCurrent }),
)

/** Checks of the supply of all legs. */
export const supplyChecks: readonly Check[] = [
  {
    id: 'supply.current',
    part: 'supply',
    mode: 'is overloaded',
    consequence: 'fails to work',
    kind: 'current',
    scope: 'leg',
    when: ['moves'],
    demand,
    capacity,
    remark: value('supply.remark', ['leg', 'event', 'air'], (use) =>
      use(sag).state === 'brownOut' ? 'the supply browns out: it cannot deliver the power' : undefined,
    ),
    demandIs: 'the current that all legs draw when their drives are at their peak together',
    capacityIs: 'the current limit of the supply, or less where its resistance lets no more power through',
    remedy: 'a pack with less resistance, a thicker fuse and leads, or a slower gait',
  },
]
