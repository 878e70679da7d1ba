import { supplySag } from '../../thermal/index.js'
import { type Kind, Quantity } from '../../units/index.js'
import { reserveOf } from '../assess/compare.js'
import { type CaseId, LOAD_CASES } from '../cases/events.js'
import type { LegModel } from '../leg-model.js'
import type { LegNumbers } from '../leg-numbers.js'
import { phrase } from '../plans/sheet-units.js'
import { caseState } from '../what-if.js'
import type { RobotCheck, RobotGait, RobotSlope, RobotSlopeAcross } from './result.js'

/** Basis of the checks of a robot. */
export interface RobotFindings {
  readonly gaits: { readonly walk: RobotGait; readonly trot: RobotGait }
  readonly slopes: { readonly up: RobotSlope; readonly down: RobotSlope; readonly across: RobotSlopeAcross }
  readonly brakeResistor: number
}

interface Sides {
  readonly id: string
  readonly title: string
  readonly where: string
  readonly kind: Kind
  readonly demand: number
  readonly capacity: number
  readonly required?: number
  readonly demandIs: string
  readonly capacityIs: string
  readonly remedy: string
}

function check(x: LegNumbers, { kind, demand, capacity, required, demandIs, capacityIs, ...rest }: Sides): RobotCheck {
  const reserve = reserveOf(demand, capacity)
  const [needed, has] = [new Quantity(demand, kind), new Quantity(capacity, kind)]
  return {
    id: rest.id,
    title: rest.title,
    where: rest.where,
    remedy: rest.remedy,
    demand: needed,
    capacity: has,
    reserve,
    requiredReserve: required ?? x.usage.requiredReserve,
    sentence: phrase`${rest.title}, ${rest.where}: ${demandIs} is ${needed}, ${capacityIs} ${has}.`,
  }
}

/** Whether the supply feeds all motors in a gait, and takes what they return. */
function busChecks(x: LegNumbers, gait: RobotGait, where: string, brakeResistor: number): RobotCheck[] {
  const { currentLimit, voltage, internalResistance } = x.supply
  const { mostCurrent } = supplySag.si({ openCircuitVoltage: voltage, resistance: internalResistance, power: 0 })
  const most = Math.min(currentLimit, mostCurrent)
  return [
    check(x, {
      id: 'robot.supplyCurrent',
      title: 'Current of the supply',
      where,
      kind: 'current',
      demand: gait.peakCurrent.si,
      capacity: most,
      demandIs: 'the current that all motors need at the hardest instant of a stride',
      capacityIs: gait.state === 'brownOut' ? 'and the supply browns out: it delivers no more than' : 'the supply delivers up to',
      remedy: 'a pack with less resistance, a thicker fuse and leads, or a slower gait',
    }),
    ...(x.supply.takesBack
      ? []
      : [
          check(x, {
            id: 'robot.returnedPower',
            title: 'Power that flows back',
            where,
            kind: 'power',
            demand: gait.peakReturned.si,
            capacity: brakeResistor,
            required: 1,
            demandIs: 'the largest power that all motors together return',
            capacityIs: 'the supply takes none, the brake resistor',
            remedy: 'a battery that takes charge, or a brake resistor',
          }),
        ]),
  ]
}

/** Load cases of everyday walking, whose foot force every part of a leg is calculated for. */
const WALKING = ['walk', 'walkBack', 'slope', 'slopeDown', 'slopeAcross', 'trot'] as const satisfies readonly CaseId[]

/** Whether one charge lasts for the longest walk. */
function chargeChecks(x: LegNumbers, { runningTime }: RobotGait): RobotCheck[] {
  if (runningTime === undefined) return []
  return [
    check(x, {
      id: 'robot.runningTime',
      title: 'Charge of the battery',
      where: 'walking',
      kind: 'time',
      demand: x.usage.walkingTime,
      capacity: runningTime.si,
      required: 1,
      demandIs: 'the longest walk',
      capacityIs: 'one charge lasts',
      remedy: 'a larger battery, a lighter load, or a straighter leg',
    }),
  ]
}

/** Whether the legs are calculated for the largest force that a foot bears as the weight passes from foot to foot. */
function footLoadCheck(leg: LegModel, { corners }: RobotGait): RobotCheck {
  const forceOf = (id: CaseId) => caseState(leg, id).motion?.vertical ?? 0
  const worst = WALKING.reduce<CaseId>((worst, id) => (forceOf(id) > forceOf(worst) ? id : worst), 'walk')
  return check(leg.x, {
    id: 'robot.footLoad',
    title: 'Load of one foot',
    where: 'walking',
    kind: 'force',
    demand: Math.max(...corners.map(({ peakForce }) => peakForce.si)),
    capacity: forceOf(worst),
    required: 1,
    demandIs: 'the largest force on one foot, as the weight passes from foot to foot,',
    capacityIs: `the leg is calculated for, in the load case ${LOAD_CASES[worst].title.toLowerCase()},`,
    remedy: 'a higher duty factor, a centre of mass nearer to the middle, or a trot with a lower duty factor among the load cases',
  })
}

/** The checks of the whole robot. */
export function robotChecks(leg: LegModel, { gaits, slopes, brakeResistor }: RobotFindings): RobotCheck[] {
  const { x } = leg
  const onSlope = (slope: RobotSlope | RobotSlopeAcross, where: string) =>
    check(x, {
      id: 'robot.tipOver',
      title: 'Tipping over',
      where,
      kind: 'angle',
      demand: slope.slope.si,
      capacity: Math.max(0, slope.tipsAt.si),
      demandIs: 'the slope',
      capacityIs: 'it tips at',
      remedy: 'a lower load, a centre of mass nearer to the middle, or a gentler slope',
    })
  const { up, down, across } = slopes
  return [
    ...busChecks(x, gaits.walk, 'walking', brakeResistor),
    ...chargeChecks(x, gaits.walk),
    // The force of a trot is that of its load case by definition.
    footLoadCheck(leg, gaits.walk),
    ...busChecks(x, gaits.trot, 'trotting', brakeResistor),
    ...(across.walk === undefined ? [] : busChecks(x, across.walk, 'walking across a slope', brakeResistor)),
    onSlope(up, 'up a slope'),
    onSlope(down, 'down a slope'),
    onSlope(across, 'across a slope'),
  ]
}
