import { formula } from '../formula/index.js'
import { lawCoefficients, lawRange } from './chebyshev-law.js'
import { PLATE_CONDUCTIVITY, PLATE_SIZE, PLATE_THICKNESS, RING, RING_PLACE } from './plate-inputs.js'
import { COMPACT_PLATE, RING_FITS, sourceResistances } from './rectangular-plate.js'

/** Films over which a plate is tabulated, W/(m² K): a bright sink in still air to a storm. */
export const FILMS = /* @__PURE__ */ lawRange(0.5, 200, 9)

/**
 * Resistance of a plate under a motor, tabulated over the film on its faces: Chebyshev coefficients of the logarithm, over the logarithm of the film from 0.3 to 300 W/(m² K).
 *
 * A heat balance needs the plate at dozens of films, and its series are too slow for that. The table is within 0.01 % of `ringOnRectangularPlate`.
 */
export const plateLaw = /* @__PURE__ */ formula('thermal.plateLaw', {
  title: 'thermal resistance of a motor plate over its film',
  inputs: {
    ...RING,
    ...PLATE_SIZE,
    ...RING_PLACE,
    ...PLATE_THICKNESS,
    ...PLATE_CONDUCTIVITY,
    /** Resistance of what covers the free face before its film, such as a printed plate behind a metal one. */
    behind: { kind: 'thermalContactResistance', min: 0, default: '0 m^2 K/W' },
  },
  output: {
    /** Coefficients of the resistance from the ring to the air, K/W. */
    ring: { list: 'ratio' },
    /** Coefficients of the resistance from the mean of the cooled faces to the air, K/W. */
    mean: { list: 'ratio' },
  },
  assumes: ['as ringOnRectangularPlate; the same film on both faces'],
  requires: { ...RING_FITS, height: COMPACT_PLATE },
  source: [
    { level: 'computed', where: 'ringOnRectangularPlate at 12 Chebyshev nodes; any numerical analysis text, "Chebyshev interpolation"' },
  ],
  si: ({ innerRadius, outerRadius, x, y, behind, ...plate }) => {
    const { width, height } = plate
    const facesAt = (film: number) => ({ ...plate, motorFaceCoefficient: film, freeFaceCoefficient: 1 / (behind + 1 / film) })
    const nodes = FILMS.nodes.map(facesAt)
    // Heat leaves through the free face and what the motor does not cover of its own.
    const open = width * height - Math.PI * outerRadius * outerRadius
    const mean = (film: number) => 1 / (open * film + (width * height) / (behind + 1 / film))
    return {
      ring: lawCoefficients(
        FILMS,
        nodes.map((faces) => Math.log(sourceResistances(faces, [{ x, y, innerRadius, outerRadius }], 'covered')[0]!)),
      ),
      mean: lawCoefficients(
        FILMS,
        FILMS.nodes.map((film) => Math.log(mean(film))),
      ),
    }
  },
})
