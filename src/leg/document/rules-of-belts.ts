import type { Quantity } from '../../units/index.js'
import { millimetres, type PartlyLeg, type Report } from './partly.js'

/** A belt around two pulleys. */
interface BeltPulleys {
  readonly belt: string | undefined
  readonly teeth: readonly [number | undefined, number | undefined]
  readonly centreDistance: Quantity | undefined
  /** Where the document gives the distance of the axes. */
  readonly path: string
}

/** Pulleys of a belt that overlap. */
export function beltOverlap(data: PartlyLeg, { belt: name, teeth: [one, other], centreDistance, path }: BeltPulleys, report: Report): void {
  const belt = name === undefined ? undefined : data.belts?.[name]
  if (belt?.pitch === undefined || one === undefined || other === undefined || centreDistance === undefined) return
  const min = (belt.pitch.si * (one + other)) / (2 * Math.PI)
  if (centreDistance.si <= min)
    report(path, centreDistance, `must be above ${millimetres(min)}, the pitch radii of both pulleys; they overlap`)
}
