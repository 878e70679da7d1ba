import { atLeast, atMost, type Given, type Proposals, proposalsOf, readInputs } from '../formula/index.js'
import { Quantity, refuse } from '../units/index.js'
import { type DriveSizes, sizesOf, turnsUnderClamp } from './propose-sizes.js'
import { CORD, type CordGiven, type CordStock, type DriveWishNumbers, WISH } from './propose-wish.js'

/** Task of a drive, the space that it must fit, and the cords at hand by name. */
export type DriveWish = Given<typeof WISH> & {
  /** Cords at hand, by name. */
  readonly cords: { readonly [name: string]: CordGiven }
}

/** A drive that was proposed. */
export interface ProposedDrive {
  readonly cord: string
  readonly hold: 'clampedMidPinion' | 'frictionOnly'
  readonly arrangement: 'crossed' | 'open'
  readonly ratio: Quantity<'ratio'>
  readonly bendRatio: Quantity<'ratio'>
  readonly pinionRadius: Quantity<'length'>
  readonly drumRadius: Quantity<'length'>
  readonly centreDistance: Quantity<'length'>
  /** Full turns on the pinion besides the part turn between the spans. */
  readonly pinionTurns: number
  /** Wrap on the drum from tangent point to anchor at mid travel, each side. */
  readonly drumWrap: Quantity<'angle'>
  /** Pretension to set: what is left after the shelf in the cold still holds the torque. */
  readonly pretension: Quantity<'force'>
  readonly groovePitch: Quantity<'length'>
  readonly grooveDepth: Quantity<'length'>
  readonly pinionLength: Quantity<'length'>
  readonly drumLength: Quantity<'length'>
  /** Cord to cut from the spool, without tails. */
  readonly cutLength: Quantity<'length'>
  /** Take-up that the tensioner must have. */
  readonly tensionerTravel: Quantity<'length'>
  readonly span: Quantity<'length'>
  /** Angle of contact on the pinion, all turns counted. */
  readonly pinionWrap: Quantity<'angle'>
}

/** Pulleys this much larger than the least bend ratio are tried. */
const PULLEY_FACTORS = [1, 1.1, 1.25, 1.4, 1.6, 2]
const MAX_TURNS = 8

/**
 * Drives for a ratio, a torque and a travel from the cords at hand in the space there is: pinion by bend ratio, drum by ratio, turns by slip, pretension
 * by slack and by what shelf and cold leave, grooves, lengths and tensioner. Every design listed keeps all limits, the smallest drum first; `governing`
 * is the limit that it uses most. Where none keeps them, the refusal says which are broken, by how much, and the nearest wish that can be met.
 *
 * Throws one `InputError` that lists every bad input. A tensioned cord stores energy: guard it, and tension it step by step.
 */
export function proposeDrive(wish: DriveWish): Proposals<ProposedDrive> {
  const where = 'capstan.proposeDrive'
  const { cords, ...rest } = (wish ?? {}) as DriveWish
  if (typeof cords !== 'object' || cords === null || Object.keys(cords).length === 0)
    refuse(where, 'cords', cords, 'must have at least one cord by its name')
  const stock = Object.fromEntries(Object.keys(cords).map((name) => [name, { fields: CORD }]))
  const read = readInputs(where, { ...WISH, cords: { fields: stock } }, { ...rest, cords } as never) as unknown as DriveWishNumbers & {
    cords: Record<string, CordStock>
  }
  for (const [name, { friction }] of Object.entries(read.cords))
    if (friction.low > friction.high)
      refuse(where, `cords.${name}.friction.low`, friction.low, `must be at most the high end, ${friction.high}`)
  return proposalsOf(read, (x) => designsFor(x, read.cords), [
    { input: 'torque', kind: 'torque', easiest: 1e-6 * read.torque },
    { input: 'ratio', kind: 'ratio', easiest: 1.01 },
    { input: 'travel', kind: 'angle', easiest: 1e-3 },
    { input: 'drumSpace', kind: 'length', easiest: 100 * read.drumSpace },
    { input: 'axialSpace', kind: 'length', easiest: 100 * read.axialSpace },
  ])
}

function designsFor(x: DriveWishNumbers, cords: Record<string, CordStock>) {
  const holds = x.hold === 'either' ? (['clampedMidPinion', 'frictionOnly'] as const) : [x.hold]
  return Object.entries(cords).flatMap(([name, cord]) =>
    PULLEY_FACTORS.flatMap((larger) =>
      holds.flatMap((hold) => {
        const turns = hold === 'clampedMidPinion' ? [turnsUnderClamp(x)] : Array.from({ length: MAX_TURNS }, (_, i) => i + 1)
        return turns.map((pinionTurns) =>
          candidate(x, name, cord, sizesOf(x, cord, { bendRatio: larger * cord.leastBendRatio, hold, pinionTurns })),
        )
      }),
    ),
  )
}

function candidate(x: DriveWishNumbers, name: string, cord: CordStock, s: DriveSizes) {
  const limits = [
    atLeast('bend ratio of the pinion', 'ratio', s.bendRatio, cord.leastBendRatio),
    atMost('outer diameter of the drum', 'length', 2 * s.drumRadius + cord.diameter, x.drumSpace),
    atMost('grooved length of the pinion', 'length', s.pinionLength, x.axialSpace),
    atMost('grooved length of the drum', 'length', s.drumLength, x.axialSpace),
    atMost('centre distance', 'length', s.centreDistance, x.centreSpace),
    atLeast('torque held after shelf and cold', 'torque', s.heldTorque, x.requiredReserve * x.torque, true),
    atMost('highest tension of the cord', 'force', s.peakTension, s.workingTension),
    atMost('force on the shaft of the motor', 'force', s.shaftForce, x.shaftForce),
    atMost('take-up of the tensioner', 'length', s.takeUp, x.tensionerSpace),
  ]
  return { design: designOf(x, name, s), limits, cost: s.drumRadius ** 2 * s.drumLength + s.pinionRadius ** 2 * s.pinionLength }
}

function designOf(x: DriveWishNumbers, cord: string, s: DriveSizes): ProposedDrive {
  const length = (l: number) => new Quantity(l, 'length')
  return {
    cord,
    hold: s.hold,
    arrangement: x.arrangement,
    ratio: new Quantity(x.ratio, 'ratio'),
    bendRatio: new Quantity(s.bendRatio, 'ratio'),
    pinionRadius: length(s.pinionRadius),
    drumRadius: length(s.drumRadius),
    centreDistance: length(s.centreDistance),
    pinionTurns: s.pinionTurns,
    drumWrap: new Quantity(s.drumWrap, 'angle'),
    pretension: new Quantity(s.pretension, 'force'),
    groovePitch: length(s.groovePitch),
    grooveDepth: length(s.grooveDepth),
    pinionLength: length(s.pinionLength),
    drumLength: length(s.drumLength),
    cutLength: length(s.cutLength),
    tensionerTravel: length(s.takeUp),
    span: length(s.span),
    pinionWrap: new Quantity(s.pinionWrap, 'angle'),
  }
}
