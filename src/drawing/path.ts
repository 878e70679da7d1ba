import type { Point } from './geometry.js'

/** Steps in a unit of the page: lines end on a tenth of a unit, a fortieth of a millimetre on paper. */
const GRID = 10

/** A number of tenths as it stands in a path: `0.5` is `.5`. */
const tenths = (n: number): string => String(n / GRID).replace(/^(-?)0\./, '$1.')

/**
 * The `d` of a path through some lines of points. Its first point is absolute, every other one relative to the point before it; points lie on a grid, so
 * that rounding does not add up.
 */
export function pathData(lines: readonly (readonly Point[])[], closed = false): string {
  let [x, y] = [0, 0]
  let started = false
  return lines
    .map((points) => {
      let [text, open] = ['', '']
      points.forEach((point, i) => {
        const at = point.map((one) => Math.round(one * GRID)) as [number, number]
        const [dx, dy] = [at[0] - x, at[1] - y]
        const name = i > 0 ? (dy === 0 ? 'h' : dx === 0 ? 'v' : 'l') : started ? 'm' : 'M'
        if (i > 0 && dx === 0 && dy === 0 && points.length > 2) return
        const numbers = (name === 'h' ? [dx] : name === 'v' ? [dy] : [dx, dy]).map(tenths)
        const goesOn = name === 'l' && open === 'l'
        const pieces = numbers.map((one, k) => (one.startsWith('-') || (k === 0 && !goesOn) ? one : `,${one}`))
        text += `${goesOn ? '' : name}${pieces.join('')}`
        open = name
        ;[x, y] = at
        started = true
      })
      // Closing a line leads back to its first point.
      if (closed && points[0] !== undefined) [x, y] = points[0].map((one) => Math.round(one * GRID)) as [number, number]
      return closed ? `${text}z` : text
    })
    .join('')
}
