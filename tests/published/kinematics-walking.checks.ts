import type { Source } from '../../src/formula/index.js'
import { walkingShares } from '../../src/kinematics/index.js'
import oracle from '../oracles/kinematics-walking.json' with { type: 'json' }
import { type Check, printed, published } from './harness.js'

const source: Source = {
  level: 'computed',
  where: 'least squares over forces that push, at hundreds of moments of each twelfth of a stance: tests/oracles/kinematics-walking.py',
}
const body = { legs: 4, dutyFactor: 0.75, spacing: '420 mm', width: '306 mm', stepLength: '120 mm' } as const

/** The oracle misses the end of a part by a share of a moment. */
const within = '0.0002'
const gives = (name: keyof typeof oracle) => ({ shares: oracle[name].map((share) => printed(share, '1')) })

export const checks: Check[] = published(
  walkingShares,
  { what: 'three feet stand', given: body, gives: gives('level'), within, source },
  {
    what: 'centre of mass off the middle',
    given: {
      ...body,
      dutyFactor: 0.85,
      spacing: '360 mm',
      width: '240 mm',
      stepLength: '100 mm',
      weightForward: '10 mm',
      weightLeft: '6 mm',
    },
    gives: gives('slow'),
    within,
    source,
  },
  { what: 'two feet at times', given: { ...body, dutyFactor: 0.65 }, gives: gives('two feet'), within, source },
  { what: 'up a slope', given: { ...body, weightForward: '-72.3 mm' }, gives: gives('uphill'), within, source },
  { what: 'across a slope', given: { ...body, weightLeft: '72.3 mm' }, gives: gives('across'), within, source },
  {
    what: 'six legs',
    given: { ...body, legs: 6, dutyFactor: 0.6, spacing: '500 mm', width: '300 mm' },
    gives: gives('six feet'),
    within,
    source,
  },
  {
    what: 'two legs',
    given: { ...body, legs: 2, dutyFactor: 0.6, spacing: '200 mm', width: '200 mm', stepLength: '100 mm' },
    gives: gives('two legs'),
    within,
    source,
  },
)
