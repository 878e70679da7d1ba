import { property, type Source } from '../formula/index.js'
import { refuse } from '../units/index.js'

const sheet = (where: string): Source => ({ level: 'published', where })

/** How cord ends are made. */
export type CordEnd = 'resinSocket' | 'swagedSleeve' | 'splice' | 'bowline' | 'bowlineUHMWPE' | 'bondedFerrule'

/** Share of the cord's strength an end keeps, with range and source. */
export function endEfficiency(end: CordEnd) {
  const of = (low: number, typical: number, high: number, source: Source, conditions: string) =>
    property('ratio', { low, typical, high, source, conditions })
  switch (end) {
    case 'resinSocket':
      return of(
        0.95,
        1,
        1,
        sheet(
          'TM 5-3810-305-10, table 4 (spelter socket 100 %); J. Eng. Mater. Technol. 103 (1981) 164, abstract: true values lie below those on catalogue strength',
        ),
        'wire rope',
      )
    case 'swagedSleeve':
      return of(0.9, 0.95, 0.95, sheet('TM 5-3810-305-10, table 4 (swaged socket 95 %)'), 'wire rope')
    case 'splice':
      return of(0.8, 0.9, 0.95, sheet('Practical Sailor 27, no. 17, a magazine test: a neat splice costs about 10 %'), 'fibre rope')
    case 'bowline':
      return of(0.6, 0.7, 0.75, sheet('Cordage Institute, 67-75 %, as cited in Practical Sailor 27, no. 17'), 'conventional fibre rope')
    case 'bowlineUHMWPE':
      return of(
        0.25,
        0.33,
        0.4,
        sheet(
          'a thesis on synthetic rope in logging (Oregon State University), about a third, as cited on a private break-test page; Yachting Monthly, November 2017, p. 73, a magazine test: below 40 %',
        ),
        'slippery fibre',
      )
    case 'bondedFerrule':
      return of(
        0.2,
        0.5,
        0.9,
        {
          level: 'assumption',
          where:
            'range is ours; Hartter and Garland, Int. J. Forest Eng. 17 (2006), abstract: adhesive ends on UHMWPE rope vary and are not recommended. Pull-test yours',
        },
        'potted polymer cord',
      )
    default:
      refuse('capstan.endEfficiency', 'end', end, 'must be one of resinSocket, swagedSleeve, splice, bowline, bowlineUHMWPE, bondedFerrule')
  }
}
