import { tiltedSeat, worstBallLoad } from '../../src/fasteners/index.js'
import type { Source } from '../../src/formula/index.js'
import oracle from '../oracles/fasteners-balls.json' with { type: 'json' }
import { type Check, printed, published } from './harness.js'

const { ball, seat } = oracle
const by = (model: string): Source => ({ level: 'computed', where: `${model}: tests/oracles/fasteners-balls.py` })

export const checks: Check[] = [
  ...published(
    worstBallLoad,
    {
      what: 'rod of 150 N, 6 mm beside a bearing of 6 by 13 mm',
      given: { radialLoad: '150 N', axialLoad: '2 N', moment: '0.9 N m', balls: 8, pitchDiameter: '9.5 mm', contactAngle: '0.2 rad' },
      gives: {
        radialPart: printed(ball.radial, 'N'),
        axialPart: printed(ball.axial, 'N'),
        momentPart: printed(ball.moment, 'N'),
        ballForce: printed(ball.sum, 'N'),
        equivalentRadial: printed(ball.equivalent, 'N'),
      },
      source: by('balls in 400,000 positions'),
    },
    {
      what: 'Qmax = 4.37 F/(Z cos α) and Q = F/(Z sin α), 1000 N and 100 N on 10 balls at 60°',
      given: { radialLoad: '1000 N', axialLoad: '0 N', moment: '0 N m', balls: 10, pitchDiameter: '20 mm', contactAngle: '60 deg' },
      gives: { radialPart: '874 N', axialPart: '0 N', equivalentRadial: '1000 N' },
      source: {
        level: 'published',
        where: 'a rolling-bearing maker’s technical report, section 5.1, equation 4 (no clearance, point contact)',
      },
    },
  ),
  ...published(tiltedSeat, {
    what: 'ring of 13 by 5 mm, 150 N 6 mm beside its middle',
    given: { force: '150 N', moment: '0.9 N m', diameter: '13 mm', length: '5 mm' },
    gives: { averagePressure: printed(seat.average, 'Pa'), peakPressure: printed(seat.peak, 'Pa'), endPressure: printed(seat.end, 'Pa') },
    source: by('a row of springs'),
  }),
]
