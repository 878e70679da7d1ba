import { branchPlanes, cordPull, kneeDrumTravel, linkCord } from '../../src/capstan/index.js'
import type { Source } from '../../src/formula/index.js'
import oracle from '../oracles/structures-shafts.json' with { type: 'json' }
import { type Check, printed, published } from './harness.js'

const by = (model: string): Source => ({ level: 'computed', where: `${model}: tests/oracles/structures-shafts.py` })
const tangents = by('tangents of two circles found numerically')
const { stack, link, travel, planes } = oracle

export const checks: Check[] = [
  ...published(
    cordPull,
    ...(['crossed', 'open'] as const).flatMap((arrangement) =>
      (['positive', 'negative'] as const).map((tautSide) => {
        const { taut, slack, couples } = stack[`${arrangement} ${tautSide}`]
        return {
          what: `${arrangement}, taut branch on the ${tautSide} side`,
          given: {
            tautTension: '150 N' as const,
            slackTension: '60 N' as const,
            arrangement,
            pinionRadius: '8 mm' as const,
            drumRadius: '40 mm' as const,
            centreDistance: '60 mm' as const,
            tautSide,
            tautPlane: '10 mm' as const,
            slackPlane: '20 mm' as const,
          },
          gives: {
            tautAlong: printed(taut[0], 'N'),
            tautAcross: printed(taut[1], 'N'),
            slackAlong: printed(slack[0], 'N'),
            slackAcross: printed(slack[1], 'N'),
            coupleAlong: printed(couples[0], 'N m'),
            coupleAcross: printed(couples[1], 'N m'),
          },
          source: tangents,
        }
      }),
    ),
  ),
  ...published(branchPlanes, {
    given: { groovePitch: '1.2 mm', pinionWrap: '3 turn', pinionAngle: '0.5 turn', middle: '5 mm' },
    gives: { near: printed(planes[0], 'mm'), far: printed(planes[1], 'mm'), apart: printed(planes[2], 'mm') },
    source: by('points of a helix'),
  }),
  ...published(
    kneeDrumTravel,
    ...(
      [
        ['body', -1.25],
        ['thigh', 1.25],
      ] as const
    ).map(([motorOn, kneeRatio]) => ({
      what: `motor on the ${motorOn}`,
      given: {
        motorOn,
        kneeRatio,
        hipLowest: '-1 rad' as const,
        hipHighest: '0.7 rad' as const,
        kneeLowest: '0.2 rad' as const,
        kneeHighest: '2 rad' as const,
      },
      gives: {
        lowest: printed(travel[motorOn][0], 'rad'),
        highest: printed(travel[motorOn][1], 'rad'),
        travel: printed(travel[motorOn][2], 'rad'),
      },
      source: by('every pose of hip and knee'),
    })),
  ),
  ...published(
    linkCord,
    ...(['open', 'crossed'] as const).map((arrangement) => ({
      what: arrangement,
      given: {
        arrangement,
        hipRadius: '16 mm' as const,
        kneeRadius: '20 mm' as const,
        linkLength: '150 mm' as const,
        restTension: '120 N' as const,
        kneeTorque: '3 N m' as const,
      },
      gives: {
        tautTension: printed(link[arrangement].taut, 'N'),
        slackTension: printed(link[arrangement].slack, 'N'),
        pulleyForce: printed(link[arrangement].force, 'N'),
        compression: printed(link[arrangement].compression, 'N'),
        leastRestTension: printed(link[arrangement].least, 'N'),
        state: 'tight' as const,
      },
      source: tangents,
    })),
  ),
]
