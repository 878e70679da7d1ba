import { type Point, polar, type View } from '../../drawing/index.js'
import type { DrivenJoint } from '../numbers.js'
import * as bolts from '../parts/bolts/fields.js'
import type { Facts } from './facts.js'
import { isPattern, motorGroup } from './present.js'

/** Bolts of a motor on a circle, mm. */
export interface BoltCircle {
  readonly circle: number
  readonly count: number
  /** Clearance hole of the bolt. */
  readonly hole: number
  /** Hole of plate and sink round a sleeve; absent without sleeves. */
  readonly sleeve: number | undefined
  /** Middle of a bolt; the turn of the circle is assumed. */
  readonly place: (i: number) => Point
}

/** The bolt circle of the motor of a joint; absent where its bolts stand on none. */
export function boltCircle(facts: Facts, joint: DrivenJoint): BoltCircle | undefined {
  const group = motorGroup(facts, joint)
  if (group === undefined || !isPattern(facts, group, 'circle')) return undefined
  const at = { boltGroup: group }
  const [circle, count] = [facts.mm(bolts.circleDiameter, at), facts.get(bolts.count, at)]
  return {
    circle,
    count,
    hole: facts.mm(bolts.holeDiameter, at),
    sleeve: facts.get(bolts.sleeves, at) ? 1000 * facts.get(bolts.ring, at).outerDiameter : undefined,
    place: (i) => polar([0, 0], circle / 2, Math.PI / 2 + Math.PI / count - (2 * Math.PI * i) / count),
  }
}

/** Draws the circle and its holes: of the bolts, and round their sleeves. */
export function drawHoles(view: View, { circle, count, hole, sleeve, place }: BoltCircle): void {
  view.circle({ centre: [0, 0], radius: circle / 2 }, 'axis')
  for (let i = 0; i < count; i++) {
    if (sleeve !== undefined) view.circle({ centre: place(i), radius: sleeve / 2 }, 'thick', 'paper')
    view.circle({ centre: place(i), radius: hole / 2 }, sleeve === undefined ? 'thick' : 'thin', 'paper')
  }
}

/** Names of the holes. */
export const holeWords = ({ count, hole, sleeve }: BoltCircle, plain: (x: number) => string): readonly string[] =>
  sleeve === undefined ? [`${count} × Ø${plain(hole)}`] : [`${count} × Ø${plain(sleeve)}`, `sleeves Ø${plain(hole)}`]
