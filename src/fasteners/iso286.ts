import { formula } from '../formula/index.js'
import { BANDS, DEVIATIONS, GRADES, HOLE_ZONES, MAIN_BAND, SHAFT_ZONES } from './iso286-tables.js'

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
