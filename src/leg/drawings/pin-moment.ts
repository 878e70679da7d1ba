import { type Figure, type Point, plain, plotBlock } from '../../drawing/index.js'
import { clevisPinBending } from '../../fasteners/index.js'
import { amount } from './words.js'

/** A pin in a clevis under its load, mm and N. */
export interface LoadedPin {
  readonly diameter: number
  readonly cheek: number
  readonly gap: number
  readonly lug: number
  readonly force: number
}

const CURVE_POINTS = 12

/** The bending moment along a pin, from one end to the other: its arch is that of the loads which the check takes. */
export function momentLine(figure: Figure, { diameter, cheek, gap, lug, force }: LoadedPin): void {
  const { moment } = clevisPinBending.si({
    force,
    diameter: diameter / 1000,
    cheekThickness: cheek / 1000,
    gap: gap / 1000,
    lugThickness: lug / 1000,
  })
  const middle = 1000 * moment
  const at = (x: number): number => {
    if (x <= lug / 2) return middle - (force * x ** 2) / (2 * lug)
    const beyond = x - lug / 2 - gap
    if (beyond <= 0) return (force / 2) * (cheek / 2 - beyond)
    return (force / 2) * (cheek / 2 - beyond + beyond ** 2 / (2 * cheek))
  }
  const half = [
    ...Array.from({ length: CURVE_POINTS }, (_, i) => (i / CURVE_POINTS) * (lug / 2)),
    lug / 2,
    ...Array.from({ length: CURVE_POINTS + 1 }, (_, i) => lug / 2 + gap + (i / CURVE_POINTS) * cheek),
  ]
  const right = half.map((x): Point => [x, at(x)])
  const points = [
    ...right
      .slice(1)
      .map(([x, y]): Point => [-x, y])
      .reverse(),
    ...right,
  ]
  figure.block('Bending moment along the pin, load spread over eye and cheeks', (y) =>
    plotBlock(
      {
        x: { title: 'mm from the middle' },
        y: { title: 'N mm', from: 0 },
        curves: [{ points, line: 'force', label: `${plain(middle, 4)} N mm`, labelAt: [0, middle], ink: 'force' }],
        height: 70,
      },
      y,
    ),
  )
  figure.rows(amount('bending moment in the middle of the pin', middle, 'N mm'))
}
