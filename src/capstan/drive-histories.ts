import { type Note, Quantity } from '../units/index.js'
import type { CordDriveState } from './branch.js'
import type { Read } from './drive-specification.js'
import { angleOf, type FineHistory } from './fine-history.js'
import type { PathPoint } from './path-point.js'
import { staysThrough, type TravelPath } from './travel-path.js'
import type { TravelEnd } from './travel-point.js'

/** A load history at one pose. */
export interface LoadHistory {
  readonly points: readonly {
    readonly torque: Quantity<'torque'>
    readonly windup: Quantity<'angle'>
    readonly tautTension: Quantity<'force'>
    readonly slackTension: Quantity<'force'>
    /** Length by which a span of a clamped cord is loose. */
    readonly looseLength: Quantity<'length'>
    readonly state: PathPoint['state']
  }[]
  /** Work put in over the history: where it ends as it began, the energy that friction took. */
  readonly loss: Quantity<'energy'>
  /**
   * Angle between the extremes of the windup at zero torque; the start, at rest, is one of them. After load and release it is the angle that
   * is left. Absent where the history never comes back to zero torque.
   */
  readonly lostMotion: Quantity<'angle'> | undefined
  /** Angle at the joint that the pinion has slipped through. Absent where a given torque is above slip: the pinion then slides on without limit. */
  readonly slipped: Quantity<'angle'> | undefined
}

/** Travel of a drive under load. */
export interface TravelResult {
  readonly points: readonly {
    readonly jointAngle: Quantity<'angle'>
    readonly pinionAngle: Quantity<'angle'>
    readonly torque: Quantity<'torque'>
    readonly tautTension: Quantity<'force'>
    readonly slackTension: Quantity<'force'>
  }[]
  /** Whether all steps were followed, or the end of the travel: the last point then holds the angle and torque of that end, short of its step. */
  readonly end: TravelEnd
  /**
   * Judged on the last cycle. `elementStays`: some cord element rests on the pinion throughout, so that the registry settles.
   * `everyElementPasses`: the pinion travel exceeds the wrap. `between`: the wrap would hold the travel but not the slip arcs as well.
   */
  readonly regime: 'elementStays' | 'between' | 'everyElementPasses'
  /** Highest tension in the last cycle. */
  readonly peakTension: Quantity<'force'>
  /** Lowest tension of a span in the last cycle, between its steps too. */
  readonly leastTension: Quantity<'force'>
  /** Mean of both spans at the end of the last cycle: the pretension on the return. */
  readonly pretensionAtEnd: Quantity<'force'>
  /** Change of the pinion's angle against the joint (the ratio times its angle) over the last cycle, whichever of the two drives. */
  readonly driftPerCycle: Quantity<'angle'>
  /** Axial walk of the wraps along the groove over the last cycle; absent without a groove pitch. */
  readonly walkPerCycle: Quantity<'length'> | undefined
  /** Least wrap left before an anchor. */
  readonly leastDrumWrap: Quantity<'angle'>
}

/** Angle between the extremes of the windup found without load, the start at rest among them; `undefined` where only the start is without load. */
function lostMotionOf(points: readonly PathPoint[]): number | undefined {
  const largest = points.reduce((max, p) => Math.max(max, Math.abs(p.torque)), 0)
  // A torque this small is rounding of an angle history.
  const unloaded = points.filter((p) => Math.abs(p.torque) <= 1e-10 * largest).map(angleOf)
  return unloaded.length < 2 ? undefined : Math.max(...unloaded) - Math.min(...unloaded)
}

/** A history as quantities. */
export function historyOf(
  { points, ends, work }: FineHistory,
  by: 'torque' | 'angle',
  about: (peak: number) => readonly Note[] | undefined,
): LoadHistory {
  const notes = about(points.reduce((max, p) => Math.max(max, p.tautTension, p.slackTension), 0))
  const lost = lostMotionOf(points)
  // A torque above slip would slide the pinion on without limit: how far is not known.
  const runsAway = by === 'torque' && points.some((p) => p.state === 'slips')
  return {
    points: ends.map((end) => {
      const p = points[end] as PathPoint
      return {
        torque: new Quantity(p.torque, 'torque', undefined, notes),
        windup: new Quantity(angleOf(p), 'angle', undefined, notes),
        tautTension: new Quantity(p.tautTension, 'force', undefined, notes),
        slackTension: new Quantity(p.slackTension, 'force', undefined, notes),
        looseLength: new Quantity(p.looseLength, 'length', undefined, notes),
        state: p.state,
      }
    }),
    loss: new Quantity(work.at(-1) ?? 0, 'energy', undefined, notes),
    lostMotion: lost === undefined ? undefined : new Quantity(lost, 'angle', undefined, notes),
    slipped: runsAway ? undefined : new Quantity(points.at(-1)?.slipped ?? 0, 'angle', undefined, notes),
  }
}

export function travelOf(
  d: CordDriveState,
  path: TravelPath,
  stepsPerCycle: number,
  x: Read,
  about: (peak: number) => readonly Note[] | undefined,
): TravelResult {
  const last = path.points.slice(-stepsPerCycle)
  const end = last.at(-1)
  const before = path.points.at(-1 - stepsPerCycle)
  const peak = Math.max(...last.map((p) => p.peakTension))
  // The notes stand on every point, and earlier cycles may have pulled harder than the last.
  const notes = about(path.points.reduce((max, p) => Math.max(max, p.peakTension), 0))
  const q = <K extends 'angle' | 'force' | 'torque' | 'length'>(si: number, kind: K) => new Quantity(si, kind, undefined, notes)
  const ratio = d.drumRadius / d.pinionRadius
  const register = (p: { pinionAngle: number; jointAngle: number } | undefined) =>
    p === undefined ? 0 : p.pinionAngle - ratio * p.jointAngle
  const drift = register(end) - register(before)
  const angles = last.map((p) => p.jointAngle)
  const pinionTravel = (Math.max(...angles, 0) - Math.min(...angles, 0)) * ratio
  return {
    points: path.points.map((p) => ({
      jointAngle: q(p.jointAngle, 'angle'),
      pinionAngle: q(p.pinionAngle, 'angle'),
      torque: q(p.torque, 'torque'),
      tautTension: q(p.tautTension, 'force'),
      slackTension: q(p.slackTension, 'force'),
    })),
    end: path.end,
    regime: staysThrough(d, last) ? 'elementStays' : pinionTravel > d.pinionWrap ? 'everyElementPasses' : 'between',
    peakTension: q(peak, 'force'),
    leastTension: q(Math.min(...last.map((p) => p.leastTension)), 'force'),
    pretensionAtEnd: q(end === undefined ? d.pretension : 0.5 * (end.tautTension + end.slackTension), 'force'),
    driftPerCycle: q(drift, 'angle'),
    walkPerCycle: x.groovePitch === undefined ? undefined : q((Math.abs(drift) * x.groovePitch) / (2 * Math.PI), 'length'),
    leastDrumWrap: q(path.leastDrumWrap, 'angle'),
  }
}
