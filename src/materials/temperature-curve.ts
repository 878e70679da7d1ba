import type { Source } from '../formula/index.js'
import { type Issue, issue } from '../units/index.js'
import type { RangeEnd } from './range-ends.js'

/** How strength or stiffness falls with temperature, as shares of the value at 23 °C. */
export interface TemperatureCurve {
  /** Temperature in degrees Celsius, then low, typical and high share; temperatures rise. */
  readonly points: readonly (readonly [celsius: number, low: number, typical: number, high: number])[]
  /** Where the curve comes from. */
  readonly source: Source
  /** Conditions of the curve. */
  readonly conditions: string
}

const COLUMN = { low: 1, typical: 2, high: 3 } as const

/** Temperatures in kelvin and the shares at one end of the ranges. */
export const columnOf = (
  curve: TemperatureCurve,
  end: RangeEnd,
): { readonly temperatures: readonly number[]; readonly shares: readonly number[] } => ({
  temperatures: curve.points.map(([celsius]) => celsius + 273.15),
  shares: curve.points.map((point) => point[COLUMN[end]]),
})

/** The points of a curve: in order, falling, shares of one. Adds an issue for each that is not. */
export function checkCurve(path: string, curve: TemperatureCurve | undefined, issues: Issue[]): void {
  curve?.points.forEach(([celsius, low, typical, high], i) => {
    const before = curve.points[i - 1]
    const ordered = 0 <= low && low <= typical && typical <= high && high <= 1
    const falls = before === undefined || (celsius > before[0] && low <= before[1] && typical <= before[2] && high <= before[3])
    if (!ordered || !falls)
      issues.push(
        issue(
          `${path}.points[${i}]`,
          [celsius, low, typical, high],
          'temperatures must rise, shares fall, and low ≤ typical ≤ high lie from 0 to 1',
        ),
      )
  })
}
