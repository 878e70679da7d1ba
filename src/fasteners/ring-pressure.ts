import { formula } from '../formula/index.js'
import { bracketRoot } from '../numeric/index.js'
import { BENT, PRESSED, TOUCHING_RING } from './bolt-inputs.js'

/** Force and moment about the middle that a pressure gives on a disc beyond a chord, which grows by one for each metre from the chord. */
function beyond(radius: number, chord: number): { force: number; moment: number } {
  const half = Math.acos(Math.max(-1, Math.min(1, chord / radius)))
  const [sine, cosine] = [Math.sin(half), Math.cos(half)]
  const area = radius ** 2 * (half - sine * cosine)
  const first = (2 / 3) * radius ** 3 * sine ** 3
  const second = (radius ** 4 / 4) * (half - sine * cosine + 2 * sine ** 3 * cosine)
  return { force: first - chord * area, moment: second - chord * first }
}
/** The narrowest edge that still presses, as a share of the outer radius: beyond it the joint counts as tipped. */
const MIN_EDGE_SHARE = 1e-3

/**
 * Pressure at the edge of a clamped ring under a bending moment: the clamp load over the ring and what the moment adds on one side. Beyond the moment
 * at which the joint gapes only part of the ring presses.
 */
export const ringEdgePressure = /* @__PURE__ */ formula('fasteners.ringEdgePressure', {
  title: 'pressure at the edge of a clamped ring',
  inputs: {
    ...PRESSED,
    ...TOUCHING_RING,
    ...BENT,
  },
  output: {
    /** Pressure of the clamp load alone. */
    meanPressure: 'stress',
    /** Largest pressure, at the outer edge; infinite where the joint tips. */
    edgePressure: { kind: 'stress', infinite: true },
    /** Whether the joint is closed at that moment. */
    state: { oneOf: ['closed', 'gaping', 'tips'] },
  },
  assumes: [
    'pressure linear over what touches, as far as it presses: stiff parts with soft faces',
    'the clamp load stays what it is while the joint gapes',
    'no rounding or chamfer at the edge',
  ],
  source: [{ level: 'computed', where: 'balance of force and moment over the part of a ring that presses' }],
  requires: {
    outerDiameter: { accepts: 'must be larger than the inner diameter', holds: (x) => x.outerDiameter > x.innerDiameter },
  },
  si: ({ clampLoad, outerDiameter, innerDiameter, moment }) => {
    const [outer, inner] = [outerDiameter / 2, innerDiameter / 2]
    const area = Math.PI * (outer * outer - inner * inner)
    const meanPressure = clampLoad / area
    const hole = inner / outer
    // In outer radii from here on.
    const arm = moment / clampLoad / outer
    if (arm <= (1 + hole * hole) / 4) {
      const second = (Math.PI / 4) * (outer ** 4 - inner ** 4)
      return { meanPressure, edgePressure: meanPressure + (moment * outer) / second, state: 'closed' as const }
    }
    const pressed = (chord: number) => {
      const [whole, missing] = [beyond(1, chord), hole > 0 ? beyond(hole, chord) : { force: 0, moment: 0 }]
      return { force: whole.force - missing.force, moment: whole.moment - missing.moment }
    }
    const surplus = (chord: number) => {
      const { force, moment: turning } = pressed(chord)
      return turning - arm * force
    }
    if (surplus(1 - MIN_EDGE_SHARE) <= 0) return { meanPressure, edgePressure: Number.POSITIVE_INFINITY, state: 'tips' as const }
    const chord = bracketRoot(surplus, -1, 1 - MIN_EDGE_SHARE)
    return { meanPressure, edgePressure: ((clampLoad / outer ** 2) * (1 - chord)) / pressed(chord).force, state: 'gaping' as const }
  },
})
