import type { LegNumbers } from './leg-numbers.js'
import { NoValueError } from './no-value.js'

/** The second stage of a knee that belt or cord drives through the hip: one more drive besides those of the joints, from the pulley on the hip axis to the knee. */
export const SECOND_STAGE = 'throughHip'

/** Where the document holds the drive of a joint, or the second stage of the knee. */
export const drivePath = (joint: string): string => (joint === SECOND_STAGE ? 'joints.knee.through' : `joints.${joint}.drive`)

type Knee = LegNumbers['joints']['knee']
type Through = NonNullable<Knee['through']>
type Kind<K extends Through['kind']> = Extract<Through, { readonly kind: K }>
type Drive<K extends Knee['drive']['kind']> = Extract<Knee['drive'], { readonly kind: K }>

/** A belt along the upper link. */
export type ThroughBelt = Kind<'belt'>
/** A cord along the upper link. */
export type ThroughCord = Kind<'cord'>

/** Belt or cord that drives the knee from a pulley on the hip axis; absent with a rod, or with a motor on the upper link. */
export function beltOrCordOf({ joints: { knee } }: LegNumbers): Kind<'belt' | 'cord'> | undefined {
  const { through } = knee
  return through === undefined || through.kind === 'rod' ? undefined : through
}

/** Whether the pulley on the lower link has at least the teeth of that on the hip axis. */
export const kneePulleyIsLarge = ({ hipTeeth, kneeTeeth }: Kind<'belt'>): boolean => kneeTeeth >= hipTeeth

/** The belt along the upper link as a belt drive: its axes are those of hip and knee. */
const beltStage = (x: LegNumbers, through: Kind<'belt'>): Drive<'belt'> => ({
  kind: 'belt',
  get belt() {
    return through.belt
  },
  get smallTeeth() {
    return Math.min(through.hipTeeth, through.kneeTeeth)
  },
  get largeTeeth() {
    return Math.max(through.hipTeeth, through.kneeTeeth)
  },
  get centreDistance() {
    return x.links.upper.length
  },
  get adjustment() {
    return through.adjustment
  },
  get pretension() {
    return through.pretension
  },
  get pretensionScatter() {
    return through.pretensionScatter
  },
  get material() {
    return through.material
  },
  get efficiency() {
    return through.efficiency
  },
})

/** The cord along the upper link as a cord drive: its pinion is the drum on the hip axis, its drum that on the lower link. */
const cordStage = (x: LegNumbers, through: Kind<'cord'>): Drive<'cord'> =>
  new Proxy(through, {
    get: (target, name) => {
      if (name === 'pinion') return target.hipDrum
      if (name === 'drum') return target.kneeDrum
      return name === 'centreDistance' ? x.links.upper.length : Reflect.get(target, name)
    },
  }) as unknown as Drive<'cord'>

/** The second stage as a drive of its kind. Throws a `NoValueError` where there is none. */
export function secondStage(x: LegNumbers): Drive<'belt' | 'cord'> {
  const through = beltOrCordOf(x)
  if (through === undefined) throw new NoValueError('neither belt nor cord drives the knee through the hip')
  return through.kind === 'belt' ? beltStage(x, through) : cordStage(x, through)
}
