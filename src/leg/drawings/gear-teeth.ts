import { type Point, polar } from '../../drawing/index.js'

const PRESSURE_ANGLE = (20 * Math.PI) / 180
const involute = (angle: number) => Math.tan(angle) - angle
/** Points on a flank. */
const POINTS = 8

/** A spur gear for its drawing, mm. */
export interface DrawnGear {
  readonly centre: Point
  readonly teeth: number
  readonly module: number
  /** How much thinner than half the pitch its teeth are, along the pitch circle. */
  readonly thinning: number
}

/** Outline of some teeth of a gear with involute flanks; the first is in the middle of them, at a direction from the centre. */
export function toothOutline({ centre, teeth, module, thinning }: DrawnGear, direction: number, count: number): readonly Point[] {
  const pitch = (module * teeth) / 2
  const [base, tip, root] = [pitch * Math.cos(PRESSURE_ANGLE), pitch + module, pitch - 1.25 * module]
  const half = (radius: number) =>
    ((Math.PI * module) / 2 - thinning) / (2 * pitch) + involute(PRESSURE_ANGLE) - involute(Math.acos(Math.min(1, base / radius)))
  const first = Math.max(base, root)
  const flank = Array.from({ length: POINTS }, (_, i) => first + ((tip - first) * i) / (POINTS - 1))
  const step = (2 * Math.PI) / teeth
  return Array.from({ length: count }, (_, k) => direction + (k - (count - 1) / 2) * step).flatMap((at) => [
    polar(centre, root, at - half(first)),
    ...flank.map((radius) => polar(centre, radius, at - half(radius))),
    ...[...flank].reverse().map((radius) => polar(centre, radius, at + half(radius))),
    polar(centre, root, at + half(first)),
  ])
}
