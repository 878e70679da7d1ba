import { fourBarDeadPoint } from '../../kinematics/index.js'
import { millimetres, type PartlyLeg, type Report } from './partly.js'
import { beltOverlap } from './rules-of-belts.js'
import { centreLine, cordRules } from './rules-of-cords.js'

type Through = NonNullable<NonNullable<NonNullable<PartlyLeg['joints']>['knee']>['through']>
type Kind<K> = Extract<Through, { readonly kind?: K | undefined }>
const THROUGH_PATH = 'joints.knee.through'

/** Travel of a joint between its limits. */
export function jointTravel(data: PartlyLeg, joint: 'sidewaysHip' | 'hip' | 'knee'): number | undefined {
  const { lowest, highest } = data.joints?.[joint]?.range ?? {}
  return lowest === undefined || highest === undefined ? undefined : highest.si - lowest.si
}

/** Turns of the pulley on the hip axis for one of the knee, without sign; 1 with a rod, and where the document does not state it. */
export function pulleyRatio(data: PartlyLeg): number {
  const through = data.joints?.knee?.through
  if (through?.kind === 'belt') {
    const { hipTeeth, kneeTeeth } = through as Kind<'belt'>
    return hipTeeth === undefined || kneeTeeth === undefined ? 1 : kneeTeeth / hipTeeth
  }
  if (through?.kind !== 'cord') return 1
  const { cord, hipDrum, kneeDrum } = through as Kind<'cord'>
  const diameter = cord === undefined ? undefined : data.cords?.[cord]?.diameter
  const [hip, knee] = [centreLine(hipDrum, diameter), centreLine(kneeDrum, diameter)]
  return hip === undefined || knee === undefined ? 1 : knee / hip
}

/** A knee driven through the hip has its motor off the upper link; what drives it must fit between hip and knee. */
export function throughRules(data: PartlyLeg, report: Report): void {
  const knee = data.joints?.knee
  const { through } = knee ?? {}
  const plate = knee?.plate === undefined ? undefined : data.plates?.[knee.plate]
  if (through !== undefined && plate?.mountedOn !== undefined && plate.mountedOn !== 'body')
    report(
      `plates.${knee?.plate}.mountedOn`,
      plate.mountedOn,
      'must be body: joints.knee.through drives the knee from a drum on the hip axis',
    )
  if (through === undefined && plate?.mountedOn === 'body' && knee?.drive?.kind !== 'held')
    report(THROUGH_PATH, undefined, `is needed because the knee's motor sits on the body (plates.${knee?.plate}.mountedOn)`)
  if (through?.kind === 'rod') rodRules(data, through as Kind<'rod'>, report)
  const centreDistance = data.links?.upper?.length
  if (through?.kind === 'belt') {
    const { belt, hipTeeth, kneeTeeth } = through as Kind<'belt'>
    beltOverlap(data, { belt, teeth: [hipTeeth, kneeTeeth], centreDistance, path: 'links.upper.length' }, report)
  }
  if (through?.kind === 'cord') {
    const { hipDrum: pinion, kneeDrum: drum, cord, ends, end } = through as Kind<'cord'>
    const pulleys = { pinion, drum, cord, ends, end, centreDistance, names: { pinion: 'hipDrum', drum: 'kneeDrum' }, reduces: false }
    cordRules(data, { ...pulleys, path: THROUGH_PATH, axesPath: 'links.upper.length', travel: jointTravel(data, 'knee') }, report)
  }
}

/** A rod must close at every angle of the knee. */
function rodRules(data: PartlyLeg, through: Kind<'rod'>, report: Report): void {
  const knee = data.joints?.knee
  const { crank, rocker, rod } = through
  const link = data.links?.upper?.length
  if (crank === undefined || rocker === undefined || rod === undefined || link === undefined) return
  const longest = Math.max(crank.si, rocker.si, rod.si, link.si)
  if (2 * longest >= crank.si + rocker.si + rod.si + link.si)
    report(
      `${THROUGH_PATH}.rod`,
      rod,
      `must close with crank, rocker and upper link: the longest of the four (${millimetres(longest)}) must be shorter than the others together`,
    )
  if (knee?.range?.lowest === undefined || knee.range.highest === undefined || through.rockerAngle === undefined) return
  const { lowest, highest } = knee.range
  const { margin, kneeAngle, state } = fourBarDeadPoint.si({
    ground: link.si,
    crank: crank.si,
    coupler: rod.si,
    rocker: rocker.si,
    rockerAngleAtStraightKnee: through.rockerAngle.si,
    crankSide: Math.sin(through.rockerAngle.si + (lowest.si + highest.si) / 2) >= 0 ? 'positive' : 'negative',
    kneeLowest: lowest.si,
    kneeHighest: highest.si,
  })
  const degrees = (x: number) => `${Number(((x * 180) / Math.PI).toPrecision(4))} deg`
  if (state === 'apart') report(`${THROUGH_PATH}.rod`, rod, `must reach the rocker at every angle of the knee; at ${lowest} it does not`)
  else if (margin === 0)
    report(
      `${THROUGH_PATH}.rockerAngle`,
      through.rockerAngle,
      `must keep the knee away from dead points: at ${degrees(kneeAngle)} ${state === 'crankDeadPoint' ? 'crank' : 'rocker'} and rod are in line`,
    )
}
