import { formula } from '../formula/index.js'

/** Upper ends of the size bands in metres; a band includes its upper end and not its lower one. */
const BANDS = [0.003, 0.006, 0.01, 0.014, 0.018, 0.024, 0.03, 0.04, 0.05, 0.065, 0.08, 0.1, 0.12] as const
/** Which column of the main bands (3, 6, 10, 18, 30, 50, 80, 120 mm) each of those belongs to. */
const MAIN_BAND = [0, 1, 2, 3, 3, 4, 4, 5, 5, 6, 6, 7, 7] as const

/** Width of the tolerance zone by grade, µm, by main band (ISO 286-1:2010 table 1). */
const GRADES: Readonly<Record<number, readonly number[]>> = {
  5: [4, 5, 6, 8, 9, 11, 13, 15],
  6: [6, 8, 9, 11, 13, 16, 19, 22],
  7: [10, 12, 15, 18, 21, 25, 30, 35],
  8: [14, 18, 22, 27, 33, 39, 46, 54],
  9: [25, 30, 36, 43, 52, 62, 74, 87],
  10: [40, 48, 58, 70, 84, 100, 120, 140],
  11: [60, 75, 90, 110, 130, 160, 190, 220],
  12: [100, 120, 150, 180, 210, 250, 300, 350],
  13: [140, 180, 220, 270, 330, 390, 460, 540],
}

/** Distance of a shaft's nearer limit from the basic size, µm, by band (ISO 286-1:2010 tables 4 and 5): upper limit for c to h, lower for k to u. */
const DEVIATIONS: Readonly<Record<string, readonly number[]>> = {
  c: [-60, -70, -80, -95, -95, -110, -110, -120, -130, -140, -150, -170, -180],
  d: [-20, -30, -40, -50, -50, -65, -65, -80, -80, -100, -100, -120, -120],
  e: [-14, -20, -25, -32, -32, -40, -40, -50, -50, -60, -60, -72, -72],
  f: [-6, -10, -13, -16, -16, -20, -20, -25, -25, -30, -30, -36, -36],
  g: [-2, -4, -5, -6, -6, -7, -7, -9, -9, -10, -10, -12, -12],
  h: [0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0],
  k: [0, 1, 1, 1, 1, 2, 2, 2, 2, 2, 2, 3, 3],
  m: [2, 4, 6, 7, 7, 8, 8, 9, 9, 11, 11, 13, 13],
  n: [4, 8, 10, 12, 12, 15, 15, 17, 17, 20, 20, 23, 23],
  p: [6, 12, 15, 18, 18, 22, 22, 26, 26, 32, 32, 37, 37],
  r: [10, 15, 19, 23, 23, 28, 28, 34, 34, 41, 43, 51, 54],
  s: [14, 19, 23, 28, 28, 35, 35, 43, 43, 53, 59, 71, 79],
  u: [18, 23, 28, 33, 33, 41, 48, 60, 70, 87, 102, 124, 144],
}

/** Tolerance zones of shafts that the table holds. */
export const SHAFT_ZONES = [
  'c11',
  'd9',
  'e8',
  'f6',
  'f7',
  'f8',
  'g5',
  'g6',
  'h5',
  'h6',
  'h7',
  'h8',
  'h9',
  'h10',
  'h11',
  'h12',
  'h13',
  'js5',
  'js6',
  'js7',
  'js9',
  'k5',
  'k6',
  'k7',
  'm5',
  'm6',
  'm7',
  'n5',
  'n6',
  'n7',
  'p5',
  'p6',
  'p7',
  'r6',
  'r7',
  's6',
  's7',
  'u6',
  'u7',
] as const
/** Tolerance zones of holes that the table holds. */
export const HOLE_ZONES = [
  'C11',
  'D9',
  'D10',
  'E8',
  'E9',
  'F7',
  'F8',
  'G6',
  'G7',
  'H5',
  'H6',
  'H7',
  'H8',
  'H9',
  'H10',
  'H11',
  'H12',
  'H13',
  'JS6',
  'JS7',
  'JS8',
  'JS9',
  'K6',
  'K7',
  'K8',
  'M6',
  'M7',
  'M8',
  'N6',
  'N7',
  'N8',
  'P6',
  'P7',
  'R6',
  'R7',
  'S6',
  'S7',
  'U7',
] as const
const ALL_ZONES = [...SHAFT_ZONES, ...HOLE_ZONES] as const

/** Metres per micrometre, written so that whole micrometres stay the nearest number. */
const MICROMETRES_PER_METRE = 1e6
const limits: Record<string, { upper: number; lower: number }[]> = {}

function limitsOf(zone: string, nominal: number): { upper: number; lower: number } {
  limits[zone] ??= BANDS.map((_, band) => zoneLimits(zone, band))
  let band = 0
  while (band < BANDS.length - 1 && nominal > BANDS[band]! * (1 + 1e-9)) band++
  return limits[zone]![band]!
}

function zoneLimits(zone: string, band: number): { upper: number; lower: number } {
  const [, letters = '', digits = ''] = /^([a-zA-Z]+)(\d+)$/.exec(zone)!
  const grade = Number(digits)
  const width = GRADES[grade]![MAIN_BAND[band]!]!
  const letter = letters.toLowerCase()
  const isHole = letters !== letter
  const between = (lower: number) => ({ lower: lower / MICROMETRES_PER_METRE, upper: (lower + width) / MICROMETRES_PER_METRE })
  if (letter === 'js') return { lower: -width / 2 / MICROMETRES_PER_METRE, upper: width / 2 / MICROMETRES_PER_METRE }
  const nearer = DEVIATIONS[letter]![band]!
  const isClearance = letter <= 'h'
  if (!isHole) return between(isClearance ? nearer - width : nearer)
  if (isClearance) return between(-nearer)
  // Above 3 mm a hole of grade n meets a shaft of grade n - 1 with the same fit as in the hole system: the deviation moves by the
  // difference of the grades (ISO 286-1:2010, 4.1.6), for K, M, N up to grade 8 and for P and beyond up to grade 7.
  const upTo = letter <= 'n' ? 8 : 7
  const shift = band > 0 && grade <= upTo ? width - GRADES[grade - 1]![MAIN_BAND[band]!]! : 0
  return between(-nearer + shift - width)
}

/**
 * The limits of a machined size from its ISO tolerance zone: how far a 4 mm m6 pin or a 4 mm H7 hole may lie from 4 mm.
 *
 * Bands include their upper end (exactly 3 mm belongs to the band up to 3 mm). Sizes from 1 to 120 mm.
 */
export const isoTolerance = /* @__PURE__ */ formula('fasteners.isoTolerance', {
  inputs: {
    /** Nominal diameter. */
    diameter: { kind: 'length', min: '1 mm', max: '120 mm' },
    /** Tolerance zone: small letters for shafts and pins, capitals for holes. */
    zone: { oneOf: ALL_ZONES },
  },
  output: {
    /** Upper deviation: largest diameter minus nominal diameter. */
    upper: 'length',
    /** Lower deviation: smallest diameter minus nominal diameter. */
    lower: 'length',
  },
  assumes: ['20 °C', 'limits of size of machined parts; a printed hole does not keep them'],
  source: [
    {
      level: 'standard',
      where: 'ISO 286-2:2010 for m6, h6, h8, H7, H8, H9, H11, and most zones from 50 to 120 mm (read in reproductions)',
    },
    { level: 'unverified', where: 'ISO 286-1:2010 tables 1, 4, 5 and its rule for holes K to U, for the other zones' },
  ],
  si: ({ diameter, zone }) => {
    const { upper, lower } = limitsOf(zone, diameter)
    return { upper, lower }
  },
})

/** The clearance and interference a pin or shaft can meet in a hole, both machined to ISO tolerance zones. */
export const isoFit = /* @__PURE__ */ formula('fasteners.isoFit', {
  inputs: {
    /** Nominal diameter of both. */
    diameter: { kind: 'length', min: '1 mm', max: '120 mm' },
    /** Tolerance zone of the hole. */
    hole: { oneOf: HOLE_ZONES },
    /** Tolerance zone of the pin or shaft. */
    shaft: { oneOf: SHAFT_ZONES },
  },
  output: {
    /** Largest diametral interference (negative: always loose). */
    largestInterference: 'length',
    /** Smallest diametral interference (negative: the largest clearance). */
    smallestInterference: 'length',
    /** Kind of fit. */
    fit: { oneOf: ['clearance', 'transition', 'interference'] },
  },
  assumes: ['20 °C'],
  source: [{ level: 'standard', where: 'ISO 286-1:2010, 3.4 and 4.3 (clearance, transition and interference fit)' }],
  si: ({ diameter, hole, shaft }) => {
    const bore = limitsOf(hole, diameter)
    const pin = limitsOf(shaft, diameter)
    const largest = pin.upper - bore.lower
    const smallest = pin.lower - bore.upper
    return {
      largestInterference: largest,
      smallestInterference: smallest,
      fit: largest <= 1e-12 ? ('clearance' as const) : smallest >= 0 ? ('interference' as const) : ('transition' as const),
    }
  },
})
