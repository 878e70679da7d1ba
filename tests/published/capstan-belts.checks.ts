import * as c from '../../src/capstan/index.js'
import type { Source } from '../../src/formula/index.js'
import oracle from '../oracles/capstan-belts.json' with { type: 'json' }
import { type Check, printed, published } from './harness.js'

const by = (model: string): Source => ({ level: 'computed', where: `${model}: tests/oracles/capstan-belts.py` })

export const checks: readonly Check[] = [
  ...published(
    c.toothBeltLength,
    {
      what: '20 and 60 teeth of 5.08 mm at 120 mm',
      given: { smallTeeth: 20, largeTeeth: 60, pitch: '5.08 mm', centreDistance: '120 mm' },
      gives: { length: printed(oracle.lengths[0] as string, 'm') },
      source: by('perimeter of the hull of two circles from its support function'),
    },
    {
      what: '18 and 72 teeth of 5 mm at 105 mm',
      given: { smallTeeth: 18, largeTeeth: 72, pitch: '5 mm', centreDistance: '105 mm' },
      gives: { length: printed(oracle.lengths[1] as string, 'm') },
      source: by('perimeter of the hull of two circles from its support function'),
    },
    {
      what: '20 and 40 teeth of 2 mm at 100 mm',
      given: { smallTeeth: 20, largeTeeth: 40, pitch: '2 mm', centreDistance: '100 mm' },
      gives: { teeth: '130.2 1' },
      source: { level: 'published', where: 'worked example of a page on timing belts (machinecalcs.com/timing-belt-calculator), read' },
    },
  ),
  ...published(
    c.beltJumpTorque,
    {
      what: '180 N, trapezoidal teeth',
      given: { pretension: '180 N', largeRadius: '57.3 mm', smallWrap: '150 deg', flankAngle: '20 deg', friction: 0.2 },
      gives: printed(oracle.jumps[0] as string, 'N m'),
      source: by('balance of every tooth of a pulley of 20,000 teeth in the wrap'),
    },
    {
      what: '300 N, steeper flanks',
      given: { pretension: '300 N', largeRadius: '60 mm', smallWrap: '140 deg', flankAngle: '25 deg', friction: 0.15 },
      gives: printed(oracle.jumps[1] as string, 'N m'),
      source: by('balance of every tooth of a pulley of 20,000 teeth in the wrap'),
    },
  ),
]
