import type { LegNumbers } from './leg-numbers.js'
import { type DrivenJoint, driveOf, type End, jointWords, partOf } from './numbers.js'
import { SECOND_STAGE } from './second-stage.js'

/** What follows for one cord drive from its data alone. */
export interface DriveNumbers {
  readonly pinionRadius: number
  readonly drumRadius: number
  /** Ratio on the centre lines of the cord. */
  readonly ratio: number
  readonly cord: LegNumbers['cords'][string]
  readonly friction: number
  readonly pretensionLeft: number
}

/** A leg's numbers with what follows from tables. */
export interface LegModel {
  readonly x: LegNumbers
  readonly end: End
  readonly drives: { readonly [J in DrivenJoint]: DriveNumbers }
}

const bandAt = (band: { low: number; typical: number; high: number }, end: End, badIs: 'low' | 'high') =>
  end === 'typical' ? band.typical : (end === 'pessimistic') === (badIs === 'low') ? band.low : band.high

/** One entry for each joint and for the second stage of a knee, looked up at its first use: a leg may be without the part. */
function byJoint<T>(of: (joint: DrivenJoint) => T): { readonly [J in DrivenJoint]: T } {
  const each = {
    get hip() {
      return of('hip')
    },
    get knee() {
      return of('knee')
    },
  }
  // What copies or lists the joints does not meet these, which few legs have.
  for (const name of ['sidewaysHip', SECOND_STAGE] as const) Object.defineProperty(each, name, { get: () => of(name as DrivenJoint) })
  return each as { readonly [J in DrivenJoint]: T }
}

/** Looks up what the numbers name. Cheap enough to repeat for every leg of a sweep. */
export function legModel(x: LegNumbers, end: End = 'typical'): LegModel {
  const drive = (joint: DrivenJoint): DriveNumbers => {
    const { pinion, drum, cord: name, friction } = driveOf(x, joint, 'cord')
    const cord = partOf(x.cords, name, `cord at the ${jointWords(joint)}`)
    const pinionRadius = radius(pinion, cord.diameter)
    const drumRadius = radius(drum, cord.diameter)
    return {
      pinionRadius,
      drumRadius,
      ratio: drumRadius / pinionRadius,
      cord,
      friction: bandAt(friction, end, 'low'),
      pretensionLeft: bandAt(cord.pretensionLeft, end, 'low'),
    }
  }
  return { x, end, drives: byJoint(drive) }
}

const radius = (pulley: { grooveDiameter?: number | undefined; centreLineRadius?: number | undefined }, cordDiameter: number): number =>
  pulley.centreLineRadius ?? ((pulley.grooveDiameter as number) + cordDiameter) / 2
