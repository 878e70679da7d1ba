import { minimiseScalar } from '../numeric/index.js'
import { type Kind, type Note, Quantity } from '../units/index.js'
import { type CordDriveState, mirrored } from './branch.js'
import { atAngle, type DriveLimits, type LoadedPose, travelLimitsOf, type Windup, windupOf } from './drive-results.js'
import { driveWindup } from './stiffness.js'

/** A value at the pose where it is worst. */
export interface AtPose<K extends Kind> {
  readonly value: Quantity<K>
  readonly pose: LoadedPose
}

/** A drive over the whole travel of its joint under a torque of either direction, loaded from rest at each pose. */
export interface TravelSurvey {
  /** Torques at which it stops holding, least over the travel. */
  readonly limits: DriveLimits
  /** Largest windup. */
  readonly windup: AtPose<'angle'>
  /** Least slope of torque over angle; zero where the pinion slips. */
  readonly tangentStiffness: AtPose<'torsionalStiffness'>
  /** Least torque over angle; zero where the pinion slips. */
  readonly secantStiffness: AtPose<'torsionalStiffness'>
  /** Highest tension of the taut span. */
  readonly tautTension: AtPose<'force'>
  /** Least tension of the slack span. */
  readonly slackTension: AtPose<'force'>
  /** The worst state anywhere in the travel: slipping before slack, slack before tight. */
  readonly state: Windup['state']
  /** Windup at equal steps of the travel, from one end to the other, for either direction of torque. */
  readonly poses: readonly {
    readonly jointAngle: Quantity<'angle'>
    readonly positive: Windup
    readonly negative: Windup
  }[]
}

/** Poses at which the extremes are looked for first, to one side of mid travel; the best is refined. */
const TRIAL_POSES = 32

type Wound = ReturnType<typeof driveWindup.si>

type Sign = 1 | -1

/** Finds the pose where a result is worst. `badness` is largest there; `seen` holds the drive at equal steps of the travel. */
function worst(
  seen: readonly Wound[],
  at: (q: number) => Wound,
  travel: number,
  badness: (y: Wound) => number,
): { q: number; most: number } {
  const angle = (i: number) => (travel / 2) * (i / TRIAL_POSES - 1)
  const values = seen.map(badness)
  const best = values.reduce((top, value, i) => (value > (values[top] as number) ? i : top), 0)
  const [from, to] = [angle(Math.max(0, best - 1)), angle(Math.min(2 * TRIAL_POSES, best + 1))]
  const found = from < to ? minimiseScalar((q) => -badness(at(q)), from, to).x : from
  const [refined, sampled] = [badness(at(found)), values[best] as number]
  return refined > sampled ? { q: found, most: refined } : { q: angle(best), most: sampled }
}

/** Limits, windup and stiffness of a drive over its travel, at one end of the friction interval. */
export function surveyOf(
  d: CordDriveState,
  torque: number,
  travel: number,
  poses: number,
  about: (peak: number) => readonly Note[] | undefined,
): TravelSurvey {
  const size = Math.abs(torque)
  const at = (q: number, sign: Sign) => windupOf(atAngle(d, q), sign * size, about)
  const bare = (sign: Sign) => (q: number) => {
    const posed = atAngle(d, q)
    return driveWindup.si({ ...(sign < 0 ? mirrored(posed) : posed), torque: size })
  }
  // Only a tensioner in one of the spans makes the directions differ; else the other one is a mirror image.
  const oneWay = d.compliance === undefined || d.compliance.tautSpan === d.compliance.slackSpan
  const ways = (oneWay ? ([1] as const) : ([1, -1] as const)).map((sign: Sign) => ({
    sign,
    seen: Array.from({ length: 2 * TRIAL_POSES + 1 }, (_, i) => bare(sign)((travel / 2) * (i / TRIAL_POSES - 1))),
  }))
  const extreme = <K extends Kind>(badness: (y: Wound) => number, of: (w: Windup) => Quantity<K>): AtPose<K> => {
    const found = ways.map(({ sign, seen }) => ({ sign, ...worst(seen, bare(sign), travel, badness) }))
    const { q, sign } = found.reduce((a, b) => (b.most > a.most ? b : a))
    return { value: of(at(q, sign)), pose: { jointAngle: new Quantity(q, 'angle'), direction: sign > 0 ? 'positive' : 'negative' } }
  }
  const all = Array.from({ length: poses }, (_, i) => {
    const q = poses === 1 ? 0 : travel * (i / (poses - 1) - 0.5)
    return { jointAngle: new Quantity(q, 'angle'), positive: at(q, 1), negative: at(q, -1) }
  })
  // Both limits fall towards the end of the travel where the taut branch is long: the state there is the worst of its direction.
  const ends = [at(travel / 2, 1).state, at(-travel / 2, -1).state]
  return {
    limits: travelLimitsOf(d, travel, about),
    windup: extreme(
      (y) => y.windup,
      (w) => w.windup,
    ),
    tangentStiffness: extreme(
      (y) => -y.tangentStiffness,
      (w) => w.tangentStiffness,
    ),
    secantStiffness: extreme(
      (y) => -y.secantStiffness,
      (w) => w.secantStiffness,
    ),
    tautTension: extreme(
      (y) => y.tautTension,
      (w) => w.tautTension,
    ),
    slackTension: extreme(
      (y) => -y.slackTension,
      (w) => w.slackTension,
    ),
    state: (['slips', 'slackSpan'] as const).find((state) => ends.includes(state)) ?? 'tight',
    poses: all,
  }
}
