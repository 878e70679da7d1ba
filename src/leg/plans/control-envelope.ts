import { type Comparison, comparisonAt } from '../assess/compare.js'
import { calculationOf, placeOf } from '../calculation.js'
import { appliesTo, type Check } from '../cases/check.js'
import type { AgeId, AirId } from '../cases/events.js'
import type { LegModel } from '../leg-model.js'
import { airNamed, type DriveKind, type DrivenJoint, driveKindOf, driveOf, type Joint } from '../numbers.js'
import { CHECKS } from '../parts/index.js'
import { driveLoad, driveMotion, groundForce, jointMotion, pinLoad } from '../parts/motion/values.js'
import { heat, temperatures } from '../parts/motors/heat.js'
import { pretension as beltPretension } from '../parts/transmission/belt/values.js'
import { pretensionSet } from '../parts/transmission/cord/fields.js'
import { pretension as cordPretension } from '../parts/transmission/cord/values.js'
import type { Cell } from '../run/index.js'
import { beltOrCordOf } from '../second-stage.js'
import { type Blocked, blocked } from './control-blocked.js'
import { type Limit, leastOf, limitOf } from './control-limits.js'
import { wordsOfKind } from './drive-facts.js'

/** Checks that heat or a lasting torque decides; touching the can is left out: it wants a guard, not a current limit. */
const HOT = [
  ...['motor.winding', 'motor.magnet', 'motor.plate', 'motor.runaway', 'cord.heat', 'controller.heat'],
  ...['belt.heat', 'gear.pinionBending', 'gear.wheelBending', 'gearbox.rated'],
]
/** Whether a joint has the part of a check. */
const isMade = ({ x }: LegModel, check: Check, joint: DrivenJoint): boolean => typeof check.of?.(x, joint as Joint) !== 'string'

/** Joint torque that may be held continuously in hot still air, one phase carrying its peak, and what limits it. @internal */
export function continuousTorque(leg: LegModel, joint: DrivenJoint, mostTorque: number): Limit {
  const calculation = calculationOf(leg.x)
  const held = { event: 'stand', air: 'hot', age: 'new' } as const
  const comparisons = CHECKS.filter((check) => HOT.includes(check.id) && isMade(leg, check, joint)).map((check) =>
    comparisonAt(calculation, check, joint as Joint, 'stand', held),
  )
  const here = calculation.instances.implied(placeOf(calculation, { joint, ...held })) as never
  const load = (torque: number) => {
    const motion = { torque, shaftTorque: torque, shaftRms: torque, speed: 0, loadedSpeed: 0, lowest: 0, highest: 0 }
    calculation.pin(jointMotion, here, motion)
    calculation.pin(driveMotion, here, motion)
    const { unsettled } = calculation.get(heat, here)
    return unsettled === undefined ? undefined : `motor: temperatures do not converge (${unsettled})`
  }
  return limitOf(
    calculation,
    comparisons,
    mostTorque,
    load,
    `still air of ${celsius(airNamed(leg.x, 'hot').temperature)}, until temperatures settle`,
  )
}

/** Air, age, and setting of a cord, of one corner of the envelope. */
interface Corner {
  readonly air: AirId
  readonly age: AgeId
  readonly setting: number
}

const AIRS = ['cold', 'normalStill', 'hot'] as const
const AGES = ['new', 'year'] as const

/** A limit in one corner, with the temperature of its air. */
export interface CornerLimit extends Limit {
  readonly air: number
}

/**
 * Joint torques at which something in the drive, or the pin or bearing of the joint, fails for a moment: one for each combination of air, age of what ages,
 * and setting of the pretension of a cord. The scatter of a belt's pretension is a range of its own. The foot force grows with the torque on the arm that it has in walking. `max` is the largest torque for an air temperature,
 * `setting` how far the pretension may be off, as a share. @internal
 */
export function mechanicalTorques(leg: LegModel, joint: DrivenJoint, max: (air: number) => number, setting: number): CornerLimit[] {
  const kind = driveKindOf(leg.x, joint)
  const stage = joint === 'knee' ? beltOrCordOf(leg.x) : undefined
  const ages = kind === 'cord' || kind === 'belt' || stage !== undefined ? AGES : AGES.slice(0, 1)
  const air = (name: string) => airNamed(leg.x, name).temperature
  const airs = { cold: air('cold'), normalStill: air('normal'), hot: air('hot') }
  const shares = setting === 0 || (kind !== 'cord' && stage?.kind !== 'cord') ? [1] : [1 - setting, 1 + setting]
  const drive = blocked(leg, joint)
  return AIRS.flatMap((corner) =>
    ages.flatMap((age) =>
      shares.map((share) => ({
        ...inCorner(drive, max(airs[corner]), { air: corner, age, setting: share }, airs[corner]),
        air: airs[corner],
      })),
    ),
  )
}

function inCorner(drive: Blocked, mostTorque: number, { air, age, setting }: Corner, airTemperature: number): Limit {
  const { leg, joint, calculation, here, stage, along, load } = drive
  const kind = driveKindOf(leg.x, joint)
  if (kind === 'cord') calculation.set(pretensionSet, here, setting * driveOf(leg.x, joint, 'cord').pretension)
  stage?.set(setting)
  load(mostTorque)
  const place = { event: 'drop', air, age } as const
  const comparisons = CHECKS.filter((check) => check.scope === 'joint' && appliesTo(check, 'drop') && isMade(leg, check, joint)).map(
    (check) => comparisonAt(calculation, check, joint as Joint, 'drop', place),
  )
  leastOf(calculation, comparisons)
  const momentary = [
    ...comparisons.filter(BEARS[kind === 'cord' ? 'cord' : 'other']),
    ...along.map((check) => comparisonAt(calculation, check, joint as Joint, 'drop', place)),
  ]
  const condition = `air of ${celsius(airTemperature)}${ageText(kind, age)}${settingText(setting)}`
  return limitOf(calculation, momentary, mostTorque, load, condition)
}

const ageText = (kind: DriveKind, age: AgeId) => {
  const { ages } = wordsOfKind(kind)
  return ages === undefined ? '' : `, ${ages} ${age === 'new' ? 'new' : 'a year old'}`
}

const settingText = (share: number) =>
  share === 1 ? '' : `, pretension set ${Math.round(Math.abs(100 * (share - 1)))} % too ${share < 1 ? 'low' : 'high'}`

const celsius = (kelvin: number) => `${Number((kelvin - 273.15).toFixed(1))} °C`

/** Whether a comparison is of what bears the torque of a drive, and not of the heat of its motor. */
const BEARS = {
  cord: ({ demand, capacity }: Comparison): boolean => {
    const read = readsOf([demand, capacity])
    return read.has(cordPretension) && !read.has(temperatures)
  },
  other: ({ check, demand, capacity }: Comparison): boolean => {
    const read = readsOf([demand, capacity])
    return BY_TORQUE.some((value) => read.has(value)) && !/^(motor|controller)\./.test(check.id)
  },
} as const
const BY_TORQUE = [beltPretension, driveLoad, groundForce, pinLoad]

/** All values that some cells read. */
function readsOf(cells: readonly Cell[]): Set<unknown> {
  const seen = new Set<Cell>()
  const open = [...cells]
  for (let cell = open.pop(); cell !== undefined; cell = open.pop())
    if (!seen.has(cell)) {
      seen.add(cell)
      open.push(...cell.reads)
    }
  return new Set([...seen].map(({ of }) => of))
}
