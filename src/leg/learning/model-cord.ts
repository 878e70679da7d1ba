import { thermalTension } from '../../capstan/index.js'
import type { LegModel } from '../leg-model.js'
import { driveOf, type Joint } from '../numbers.js'
import { frameOf } from '../plans/bench.js'
import { withNumber } from '../plans/information.js'
import { shareLeft } from '../plans/tensioning.js'
import { line } from '../run/index.js'
import { drivePath } from '../second-stage.js'
import { windups } from '../windup.js'
import { frictionOf, pretensionOf, rigidityOf, shareOf } from './cord-parameters.js'
import { type Accuracy, errorOf, freeZero } from './instrument-errors.js'
import type { LogModel, Parameter, Rows } from './model.js'

/** Windup of a drive with its motor held: hysteresis of the cord, and a frame that gives in proportion to the torque. @internal */
export function windupModel(leg: LegModel, log: string, joint: Joint, accuracy: Accuracy): LogModel {
  const [rigidity, friction, pretension] = [rigidityOf(leg, joint), frictionOf(leg, joint), pretensionOf(leg, joint)]
  const [torqueGain, angleGain, frame] = (['torque gain', 'angle gain', 'frame give'] as const).map((name) =>
    errorOf(log, 'windup', name, accuracy),
  ) as [Parameter, Parameter, Parameter]
  const zero = freeZero(log, 'zero of the angle', 2)
  // The other drives are not read: a leg may have none of them by cord.
  const at = (mu: number, tension: number): LegModel => ({
    ...leg,
    drives: { [joint]: { ...leg.drives[joint], friction: mu } } as unknown as LegModel['drives'],
    x: withNumber(leg.x, `${drivePath(joint)}.pretension`, tension),
  })
  // What the frame gives is a share of the deflection of the drive as specified, per torque.
  const [own] = windups(leg, joint, rigidity.start, [driveOf(leg.x, joint, 'cord').pretension * leg.drives[joint].drumRadius]) as [number]
  const perTorque = own / (driveOf(leg.x, joint, 'cord').pretension * leg.drives[joint].drumRadius)
  return {
    log,
    parameters: [rigidity, friction, pretension, torqueGain, angleGain, frame, zero],
    learns: [rigidity.id],
    channels: 1,
    // Friction of braid on its way round is a law in itself: loops are followed to a hundredth, not closer (assumption).
    closest: 0.01,
    predict: (value, rows) => {
      const torques = rows.map(([torque]) => torque! * (1 - value(torqueGain.id)))
      const drive = windups(at(value(friction.id), value(pretension.id)), joint, value(rigidity.id), torques)
      const [give, gain, offset] = [value(frame.id) * perTorque, 1 + value(angleGain.id), value(zero.id)]
      return drive.map((angle, i) => (angle + give * torques[i]!) * gain + offset)
    },
    measured: ([, angle]) => [angle!],
  }
}

/** Pretension left after a time by a power law of time that keeps a share for a year. */
const powerLaw = line(
  'pretension left by a power law of time',
  { yearShare: 'ratio', time: 'time', from: 'time', year: 'time' },
  'ratio',
  'yearShare ^ (log(time / from) / log(year / from))',
  ({ yearShare, time, from, year }) => yearShare ** (Math.log(time / from) / Math.log(year / from)),
)
const HOUR = 3600
const YEAR = 31_557_600
/** What is still to be lost between the last reading and a year is known to half of itself, 95 of 100 times (assumption). */
const EXTRAPOLATION_SIGMA = 0.5 / 1.96

/** Decay of the pretension, by equal losses per decade of time; its rival is a power law. @internal */
export function pretensionModel(leg: LegModel, log: string, joint: Joint, accuracy: Accuracy): LogModel {
  const [start, share] = [pretensionOf(leg, joint), shareOf(leg, joint)]
  const [gain, zero, drift] = (['force gain', 'force zero', 'temperature drift'] as const).map((name) =>
    errorOf(log, 'pretension', name, accuracy),
  ) as [Parameter, Parameter, Parameter]
  const frame = frameOf(leg, joint)
  const { cord } = leg.drives[joint]
  const perKelvin = thermalTension.si({
    axialRigidity: cord.axialRigidity,
    temperatureRise: 1,
    frameExpansion: frame.thermalExpansion(),
    cordExpansion: cord.thermalExpansion,
  })
  return decayModel({
    log,
    start,
    share,
    others: [gain, zero, drift],
    left: (time, yearShare) => shareLeft(leg, joint, time, yearShare),
    reading: (at, tension, part) => (tension + at(drift.id) * perKelvin * part) * (1 + at(gain.id)) + at(zero.id),
  })
}

/** Data of a fit to the decay of a tension. */
interface Decay {
  readonly log: string
  /** The pretension, the share that a year leaves, and what else the readings depend on. */
  readonly start: Parameter
  readonly share: Parameter
  readonly others: readonly Parameter[]
  /** Share of the tension that is left after a time, for that of a year. */
  readonly left: (time: number, yearShare: number) => number
  /** What is read of a tension; `part` is how much of the log has gone by. */
  readonly reading: (at: (id: string) => number, tension: number, part: number) => number
}

/** Decay of a tension by equal losses per decade of time; its rival is a power law. @internal */
export function decayModel({ log, start, share, others, left: usual, reading }: Decay): LogModel {
  const law = (left: (time: number, yearShare: number) => number): LogModel => ({
    log,
    parameters: [start, share, ...others],
    learns: [start.id, share.id],
    channels: 1,
    predict: (value, rows) => {
      const [tension, kept] = [value(start.id), value(share.id)]
      const whole = Math.max(...rows.map(([time]) => time!), 1)
      return rows.map(([time]) => reading(value, tension * left(time!, kept), time! / whole))
    },
    measured: ([, read]) => [read!],
    beyond: (path, value, rows) => (path === share.id ? EXTRAPOLATION_SIGMA * Math.abs(left(lastOf(rows), value) - value) : 0),
  })
  const power = law((time, yearShare) => powerLaw.si({ yearShare, time: Math.max(time, HOUR), from: HOUR, year: YEAR }))
  return { ...law(usual), rival: power }
}

const lastOf = (rows: Rows) => Math.max(...rows.map(([time]) => time!), HOUR)
