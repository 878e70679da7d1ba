import type { Check } from '../../cases/check.js'
import { constant, line, value } from '../../run/index.js'
import * as supply from './fields.js'
import { sag } from './values.js'

const drawn = line('current drawn', { current: 'current' }, 'current', 'max(current, 0)', ({ current }) => Math.max(current, 0))
const brownOut = line(
  'current that it cannot deliver',
  { share: 'ratio', current: 'current', most: 'current' },
  'current',
  'min(most, share · current)',
  (x) => Math.min(x.most, x.share * x.current),
)
const available = line(
  'current available',
  { limit: 'current', mostPower: 'power', voltage: 'voltage' },
  'current',
  'min(limit, mostPower / (voltage / 2))',
  (x) => Math.min(x.limit, x.mostPower / (x.voltage / 2)),
)

/** A supply that browns out fails, however little is missing. */
const failing = constant('supply.failing', {
  kind: 'ratio',
  typical: 0.999,
  source: { level: 'assumption', where: 'a supply that cannot deliver the power fails' },
})
const demand = value('supply.demand', ['leg', 'event', 'air'], (use) => {
  const { current, state } = use(sag)
  return state === 'brownOut' ? current : use.run(drawn, { current })
})
const capacity = value('supply.capacity', ['leg', 'event', 'air'], (use) => {
  const { current, mostPower, state } = use(sag)
  const most = use.run(available, { limit: use(supply.currentLimit), mostPower, voltage: use(supply.voltage) })
  // A fuse that is too small for the most that the supply can deliver decides there too: a heavier load must not look better.
  return state === 'brownOut' ? use.run(brownOut, { share: use(failing), current, most }) : most
})

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
    capacityIs: 'the current limit of the supply',
    remedy: 'a pack with less resistance, a thicker fuse and leads, or a slower gait',
  },
]
