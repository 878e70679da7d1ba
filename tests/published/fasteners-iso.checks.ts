import { isoFit, isoTolerance } from '../../src/fasteners/index.js'
import { type Check, published, publishedValue } from './harness.js'

/** Rows of ISO 286-2 in µm, upper/lower, for sizes in the bands to 3, 6, 10, 18, 30 and 50 mm. */
const ISO_ROWS: Record<string, string> = {
  g6: '-2/-8 -4/-12 -5/-14 -6/-17 -7/-20 -9/-25',
  h6: '0/-6 0/-8 0/-9 0/-11 0/-13 0/-16',
  h8: '0/-14 0/-18 0/-22 0/-27 0/-33 0/-39',
  k6: '6/0 9/1 10/1 12/1 15/2 18/2',
  m6: '8/2 12/4 15/6 18/7 21/8 25/9',
  n6: '10/4 16/8 19/10 23/12 28/15 33/17',
  p6: '12/6 20/12 24/15 29/18 35/22 42/26',
  js6: '3/-3 4/-4 4.5/-4.5 5.5/-5.5 6.5/-6.5 8/-8',
  f7: '-6/-16 -10/-22 -13/-28 -16/-34 -20/-41 -25/-50',
  H6: '6/0 8/0 9/0 11/0 13/0 16/0',
  H7: '10/0 12/0 15/0 18/0 21/0 25/0',
  H8: '14/0 18/0 22/0 27/0 33/0 39/0',
  H9: '25/0 30/0 36/0 43/0 52/0 62/0',
  H11: '60/0 75/0 90/0 110/0 130/0 160/0',
  F8: '20/6 28/10 35/13 43/16 53/20 64/25',
  G7: '12/2 16/4 20/5 24/6 28/7 34/9',
  K7: '0/-10 3/-9 5/-10 6/-12 6/-15 7/-18',
  M7: '-2/-12 0/-12 0/-15 0/-18 0/-21 0/-25',
  N7: '-4/-14 -4/-16 -4/-19 -5/-23 -7/-28 -8/-33',
  P7: '-6/-16 -8/-20 -9/-24 -11/-29 -14/-35 -17/-42',
  R7: '-10/-20 -11/-23 -13/-28 -16/-34 -20/-41 -25/-50',
  S7: '-14/-24 -15/-27 -17/-32 -21/-39 -27/-48 -34/-59',
  c11: '-60/-120 -70/-145 -80/-170 -95/-205 -110/-240 -130/-290',
  d9: '-20/-45 -30/-60 -40/-76 -50/-93 -65/-117 -80/-142',
  e8: '-14/-28 -20/-38 -25/-47 -32/-59 -40/-73 -50/-89',
  h9: '0/-25 0/-30 0/-36 0/-43 0/-52 0/-62',
  h11: '0/-60 0/-75 0/-90 0/-110 0/-130 0/-160',
  r6: '16/10 23/15 28/19 34/23 41/28 50/34',
  s6: '20/14 27/19 32/23 39/28 48/35 59/43',
  u6: '24/18 31/23 37/28 44/33 61/48 86/70',
  C11: '120/60 145/70 170/80 205/95 240/110 290/130',
  D10: '60/20 78/30 98/40 120/50 149/65 180/80',
  E9: '39/14 50/20 61/25 75/32 92/40 112/50',
  K6: '0/-6 2/-6 2/-7 2/-9 2/-11 3/-13',
  K8: '0/-14 5/-13 6/-16 8/-19 10/-23 12/-27',
  M6: '-2/-8 -1/-9 -3/-12 -4/-15 -4/-17 -4/-20',
  M8: '-2/-16 2/-16 1/-21 2/-25 4/-29 5/-34',
  N6: '-4/-10 -5/-13 -7/-16 -9/-20 -11/-24 -12/-28',
  N8: '-4/-18 -2/-20 -3/-25 -3/-30 -3/-36 -3/-42',
  P6: '-6/-12 -9/-17 -12/-21 -15/-26 -18/-31 -21/-37',
  R6: '-10/-16 -12/-20 -16/-25 -20/-31 -24/-37 -29/-45',
  S6: '-14/-20 -16/-24 -20/-29 -25/-36 -31/-44 -38/-54',
  U7: '-18/-28 -19/-31 -22/-37 -26/-44 -40/-61 -61/-86',
}
/** Lower limits in µm at the upper end of each band and just above it: the main bands by m6, those in between by u7 and c11. */
const EDGES: readonly (readonly [edge: number, zone: 'm6' | 'u7' | 'c11', at: number, beyond: number])[] = [
  [3, 'm6', 2, 4],
  [6, 'm6', 4, 6],
  [10, 'm6', 6, 7],
  [18, 'm6', 7, 8],
  [24, 'u7', 41, 48],
  [30, 'm6', 8, 9],
  [40, 'u7', 60, 70],
  [40, 'c11', -280, -290],
]
/** Limits of larger sizes in µm, upper/lower, as reproductions of the tables print them: a size in mm, then zones. */
const LARGER: Readonly<Record<number, string>> = {
  62:
    'f6 -30/-49 f7 -30/-60 f8 -30/-76 g5 -10/-23 g6 -10/-29 h5 0/-13 h6 0/-19 h7 0/-30 h8 0/-46 h9 0/-74 js5 6.5/-6.5 js6 9.5/-9.5 js7 15/-15 ' +
    'k5 15/2 k6 21/2 m5 24/11 m6 30/11 n6 39/20 r6 60/41 s6 72/53 u6 106/87 d9 -100/-174 ' +
    'K6 4/-15 K7 9/-21 K8 14/-32 M6 -5/-24 M7 0/-30 M8 5/-41 N6 -14/-33 N7 -9/-39 N8 -4/-50 R7 -30/-60 H11 190/0 H12 300/0 H13 460/0 JS6 9.5/-9.5 JS9 37/-37',
  72: 'r6 62/43 R7 -32/-62',
  90:
    'f6 -36/-58 f7 -36/-71 g5 -12/-27 g6 -12/-34 h5 0/-15 h6 0/-22 h7 0/-35 h8 0/-54 h9 0/-87 h10 0/-140 h11 0/-220 h12 0/-350 ' +
    'K6 4/-18 K7 10/-25 K8 16/-38 M6 -6/-28 M7 0/-35 M8 6/-48 N6 -16/-38 N7 -10/-45 N8 -4/-58 R7 -38/-73 G7 47/12 E8 126/72 F7 71/36',
  110: 'R7 -41/-76 h6 0/-22 H7 35/0 H8 54/0',
}

const largerRows = (): Check[] =>
  Object.entries(LARGER).flatMap(([size, row]) => {
    const words = row.split(' ')
    return words.flatMap((zone, i) => {
      if (i % 2 === 1) return []
      const limits = words[i + 1]!.split('/')
      return (['upper', 'lower'] as const).map((which, j) =>
        publishedValue(
          'fasteners.isoTolerance',
          `${zone} at ${size} mm, ${which}`,
          () => isoTolerance({ diameter: `${Number(size)} mm`, zone: zone as 'H7' })[which],
          `${limits[j]!} um`,
          { level: 'standard', where: 'ISO 286-2 and JIS B 0401 tables, 50 to 120 mm (read in reproductions)' },
          '0.0001 um',
        ),
      )
    })
  })

const READ_IN_REPRODUCTION = ['m6', 'h6', 'h8', 'H7', 'H8', 'H9', 'H11']
const SIZES = [2, 4, 8, 12, 25, 45]

const isoRows = (): Check[] =>
  Object.entries(ISO_ROWS).flatMap(([zone, row]) =>
    row.split(' ').flatMap((pair, i) => {
      const [upper = '', lower = ''] = pair.split('/')
      const limit = (which: 'upper' | 'lower', text: string) =>
        publishedValue(
          'fasteners.isoTolerance',
          `${zone} at ${SIZES[i]} mm, ${which}`,
          () => isoTolerance({ diameter: `${SIZES[i]!} mm`, zone: zone as 'H7' })[which],
          `${text} um`,
          { level: READ_IN_REPRODUCTION.includes(zone) ? 'standard' : 'unverified', where: 'ISO 286-2:2010, row of this size' },
          '0.0001 um',
        )
      return [limit('upper', upper), limit('lower', lower)]
    }),
  )

export const checks: Check[] = [
  ...isoRows(),
  ...largerRows(),
  ...EDGES.flatMap(([edge, zone, at, beyond]) =>
    ([['', at] as const, ['.001', beyond] as const] as const).map(([more, text]) =>
      publishedValue(
        'fasteners.isoTolerance',
        `${zone} at ${edge}${more} mm: the band's upper end belongs to it`,
        () => isoTolerance({ diameter: `${edge}${more} mm` as '3 mm', zone }).lower,
        `${text} um`,
        { level: 'unverified', where: 'ISO 286-2:2010, "over … up to and including"' },
        '0.0001 um',
      ),
    ),
  ),
  ...published(isoFit, {
    what: '4 mm H7/m6',
    given: { diameter: '4 mm', hole: 'H7', shaft: 'm6' },
    gives: { largestInterference: '12 um', smallestInterference: '-8 um', fit: 'transition' },
    within: '0.0001 um',
    source: { level: 'standard', where: 'limits of ISO 286-2:2010 subtracted' },
  }),
]
