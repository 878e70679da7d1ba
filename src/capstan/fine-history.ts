import type { CordDriveState } from './branch.js'
import { LoadPath, loadPath } from './load-path.js'
import type { PathPoint } from './path-point.js'

/** A history followed between its given steps too, so that loss and lost motion do not depend on how finely it is given. */
export interface FineHistory {
  /** The state at rest before, then each point. */
  readonly points: readonly PathPoint[]
  /** Index of the point at the end of each given step. */
  readonly ends: readonly number[]
  /** Work put in since the start at the end of each given step: where a history ends as it began, the energy that friction took. */
  readonly work: readonly number[]
}

/** Intervals in a leg, even in number; a leg that passes zero torque has as many on either side. */
const INTERVALS_PER_LEG = 24

/** Follows a history of torque or of angle at one pose. A leg that passes zero torque is parted there: the angle without load is a point. */
export function fineHistory(d: CordDriveState, by: 'torque' | 'angle', steps: ArrayLike<number>): FineHistory {
  // One step is exact however long: it shows which legs pass zero torque.
  const coarse = loadPath(d, by, steps)
  const path = new LoadPath(d)
  const rest: PathPoint = {
    torque: 0,
    windup: 0,
    tautTension: d.pretension,
    slackTension: d.pretension,
    slipped: 0,
    looseLength: 0,
    state: 'tight',
  }
  const points = [rest]
  const ends: number[] = []
  const done: number[] = []
  let work = 0
  const follow = (along: 'torque' | 'angle', to: number) => {
    const last = points.at(-1) as PathPoint
    const from = along === 'torque' ? last.torque : angleOf(last)
    const leg = [last]
    for (let i = 1; i <= INTERVALS_PER_LEG; i++) {
      const x = i === INTERVALS_PER_LEG ? to : from + ((to - from) * i) / INTERVALS_PER_LEG
      leg.push(along === 'torque' ? path.toTorque(x) : path.toAngle(x))
    }
    work += workOf(leg, along)
    points.push(...leg.slice(1))
  }
  for (let i = 0; i < steps.length; i++) {
    const before = i === 0 ? 0 : (coarse[i - 1] as PathPoint).torque
    const after = by === 'torque' ? (steps[i] as number) : (coarse[i] as PathPoint).torque
    if (before * after < 0) follow('torque', 0)
    follow(by, steps[i] as number)
    ends.push(points.length - 1)
    done.push(work)
  }
  return { points, ends, work: done }
}

/** Angle of the joint with what the pinion has slipped. */
export const angleOf = (p: PathPoint): number => p.windup + p.slipped

/**
 * Work over one leg of equal steps, by parabolas through three points: of torque over angle where the angle is given, else of angle over torque
 * and the rest by parts. Where the pinion slips under a given torque nothing moves on and the steps are no longer equal: straight pieces do.
 */
function workOf(leg: readonly PathPoint[], along: 'torque' | 'angle'): number {
  let work = 0
  for (let i = 0; i + 2 < leg.length; i += 2) {
    const [p, q, r] = [leg[i] as PathPoint, leg[i + 1] as PathPoint, leg[i + 2] as PathPoint]
    const [a, b, c] = [angleOf(p), angleOf(q), angleOf(r)]
    if (along === 'angle') work += ((c - a) / 6) * (p.torque + 4 * q.torque + r.torque)
    else if (r.state === 'slips') work += 0.5 * ((q.torque + p.torque) * (b - a) + (r.torque + q.torque) * (c - b))
    else work += r.torque * c - p.torque * a - ((r.torque - p.torque) / 6) * (a + 4 * b + c)
  }
  return work
}
