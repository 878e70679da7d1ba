import { chebyshev } from '../numeric/index.js'
import { lawCoefficients, lawPlace, lawRange } from './chebyshev-law.js'
import type { PlateNumbers } from './plate-grid.js'
import { plateShape, rectangleResistances } from './plate-sources.js'

/** Films over which the difference is tabulated, W/(m² K): those of air. Weaker and stronger ones are worked out one by one, which is slow. */
const FILMS = /* @__PURE__ */ lawRange(0.5, 300, 7)

/** A film that is as good as none: it changes no digit that is printed, and the mean of the plate, which cancels, stays finite. */
const NO_FILM = 1e-5

/**
 * How much more a rectangular plate resists than the round one of equal area, over the films of both faces, K/W. Heat enters through the ring, or through the insert where
 * there is one.
 */
export function rectangleExcess(plate: PlateNumbers): (motorFaceCoefficient: number, freeFaceCoefficient: number) => number {
  const { rectangle, insert } = plate
  if (rectangle === undefined) return () => 0
  const source = insert === undefined ? { ...plate, x: 0, y: 0 } : { x: 0, y: 0, innerRadius: 0, outerRadius: insert.radius }
  const shape = plateShape(rectangle.width, rectangle.height, [source])
  const nodes = FILMS.nodes
  const covered = plate.underMotor === 'covered' && insert === undefined
  // Row by row of the motor's face: coefficients over the film of the free face.
  const exact = (motorFaceCoefficient: number, freeFaceCoefficient: number) =>
    rectangleResistances(shape, { ...plate, motorFaceCoefficient, freeFaceCoefficient }, covered)[0]!
  const rows = nodes.map((motor) =>
    lawCoefficients(
      FILMS,
      nodes.map((free) => exact(motor, free)),
    ),
  )
  // Columns become expansions over the film of the motor's face.
  const columns = rows[0]!.map((_, k) =>
    lawCoefficients(
      FILMS,
      rows.map((row) => row[k]!),
    ),
  )
  const isTabulated = (film: number) => film >= FILMS.low && film <= FILMS.high
  return (motor, free) => {
    if (!isTabulated(motor) || !isTabulated(free)) return exact(Math.max(motor, NO_FILM), Math.max(free, NO_FILM))
    const place = lawPlace(FILMS, motor)
    return chebyshev(
      columns.map((column) => chebyshev(column, place)),
      lawPlace(FILMS, free),
    )
  }
}
