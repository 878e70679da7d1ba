import { torqueConstants } from '../../thermal/index.js'
import { entriesOf, type PartlyLeg } from '../document/partly.js'
import { centreLine } from '../document/rules-of-cords.js'
import { STANDARD_GRAVITY } from '../gravity.js'
import { pinOf } from '../schema/tables.js'
import { type AnyDrive, quantityOf } from './any-drive.js'
import { type Relation, type Relations, ratio, si } from './relation.js'

// The ranges are common practice: walking robots from 2 to 60 kg lie well inside.

/** Numbers of one part against what another part needs of it: what a slip in either moves out of proportion. */
export const relationsAcross: Relations = (leg, add) => {
  for (const joint of ['hip', 'knee'] as const) for (const one of [...standingOf(leg, joint), ...pressedOf(leg, joint)]) add(one)
  for (const one of [...controllersOf(leg), ...supplyOf(leg), ...eventsOf(leg), ...gaitsOf(leg), ...agesOf(leg)]) add(one)
}

type Numbers = { readonly [name: string]: number | undefined }

/** How many times the drive turns the torque of its motor up, and the radius that the cord or belt pulls at. */
function gearing(drive: AnyDrive | undefined, { cords, belts }: PartlyLeg): { readonly ratio: number; readonly radius: number } {
  const teeth = (drive ?? {}) as unknown as Numbers
  const none = { ratio: Number.NaN, radius: Number.NaN }
  switch (drive?.kind) {
    case 'cord': {
      const thick = cords?.[drive.cord ?? '']?.diameter
      const [small, large] = [centreLine(drive.pinion, thick) ?? Number.NaN, centreLine(drive.drum, thick) ?? Number.NaN]
      return { ratio: large / small, radius: large }
    }
    case 'belt': {
      const [small, large] = [teeth.smallTeeth ?? Number.NaN, teeth.largeTeeth ?? Number.NaN]
      return { ratio: large / small, radius: (large * si(belts?.[drive.belt ?? '']?.pitch)) / (2 * Math.PI) }
    }
    case 'direct':
      return { ...none, ratio: 1 }
    default:
      return none
  }
}

/** What a joint bears in standing: the weight on one leg at half of the upper link. */
function standingOf(leg: PartlyLeg, joint: 'hip' | 'knee'): Relation[] {
  const { robot, links, joints, motors, controllers } = leg
  const { motor = '', controller = '' } = joints?.[joint] ?? {}
  const drive = joints?.[joint]?.drive as AnyDrive | undefined
  const { ratio: turns, radius } = gearing(drive, leg)
  const torque = ((si(robot?.mass) * STANDARD_GRAVITY) / (robot?.legs ?? Number.NaN)) * (si(links?.upper?.length) / 2)
  const perAmpere = torqueConstants.si({ backEmfConstant: 1 / si(motors?.[motor]?.speedConstant) }).peakPhase
  const limit = controllers?.[controller]?.currentLimit
  const { noLoadCurrent } = motors?.[motor] ?? {}
  const found: Relation[] = [
    {
      path: `controllers.${controller}.currentLimit`,
      value: limit,
      others: ['robot.mass', `motors.${motor}.speedConstant`, `joints.${joint}.drive`],
      what: `the current limit of the ${joint} over the current that holds the standing robot`,
      is: si(limit) / (torque / (turns * perAmpere)),
      kind: 'ratio',
      usual: [2.5, 100],
    },
    {
      path: `joints.${joint}.drive.pretension`,
      value: drive === undefined ? undefined : quantityOf(drive, 'pretension'),
      others: ['robot.mass', `joints.${joint}.drive`],
      what: `the pretension over the pull of the standing robot on the drive of the ${joint}`,
      is: (si(drive === undefined ? undefined : quantityOf(drive, 'pretension')) * radius) / torque,
      kind: 'ratio',
      usual: [0.9, 45],
    },
  ]
  if ((noLoadCurrent?.si ?? 0) > 0)
    found.push({
      path: `motors.${motor}.noLoadCurrent`,
      value: noLoadCurrent,
      others: [`controllers.${controller}.currentLimit`],
      what: `the no-load current over the current limit of the ${joint}`,
      is: si(noLoadCurrent) / si(limit),
      kind: 'ratio',
      usual: [0.0018, 0.08],
    })
  return found
}

/** Voltage that a bridge loses, for the heat of a controller. */
const BRIDGE_DROP = 0.1

/** A controller sheds what it loses at its limit, and its loop is faster than its motor. */
function controllersOf({ controllers, joints, motors }: PartlyLeg): Relation[] {
  const heat = entriesOf(controllers).map(
    ([name, { currentLimit, toAir }]): Relation => ({
      path: `controllers.${name}.toAir`,
      value: toAir,
      others: [`controllers.${name}.currentLimit`],
      what: 'the rise of the controller in temperature at its current limit, with 0.1 V lost in its bridge,',
      is: si(currentLimit) * si(toAir) * BRIDGE_DROP,
      kind: 'temperatureDifference',
      usual: [7, 250],
    }),
  )
  const loops = (['hip', 'knee'] as const).map((joint): Relation => {
    const { motor = '', controller = '' } = joints?.[joint] ?? {}
    const { rotorInertia, terminalResistance, speedConstant } = motors?.[motor] ?? {}
    const loopRate = controllers?.[controller]?.loopRate
    return {
      path: `controllers.${controller}.loopRate`,
      value: loopRate,
      others: ['rotorInertia', 'terminalResistance', 'speedConstant'].map((field) => `motors.${motor}.${field}`),
      what: `turns of the loop in the mechanical time constant of the motor of the ${joint}`,
      is: si(loopRate) * si(rotorInertia) * si(terminalResistance) * si(speedConstant) ** 2,
      kind: 'ratio',
      usual: [0.25, 400],
    }
  })
  return [...heat, ...loops]
}

/** The supply feeds the controllers. */
const supplyOf = ({ supply, controllers }: PartlyLeg): Relation[] =>
  entriesOf(controllers).map(([name, { currentLimit }]) =>
    ratio(
      ['supply.currentLimit', supply?.currentLimit],
      [`controllers.${name}.currentLimit`, currentLimit],
      'the current limit of the supply over that of a controller',
      [0.15, 12],
    ),
  )

/** Slopes of one ground, and falls of one robot. */
function eventsOf({ loadCases }: PartlyLeg): Relation[] {
  const events = loadCases?.events ?? {}
  const of = (name: string, field: string) =>
    [`loadCases.events.${name}.${field}`, quantityOf((events[name] ?? {}) as AnyDrive, field)] as const
  const [up, down] = [of('slopeUp', 'angle'), of('slopeDown', 'angle')]
  return [
    {
      path: up[0],
      value: up[1],
      others: [down[0]],
      what: 'the slope up over the slope down',
      is: Math.abs(si(up[1]) / si(down[1])),
      kind: 'ratio',
      usual: [0.25, 4],
    },
    ratio(of('drop', 'height'), of('hop', 'height'), 'the drop over the hop', [0.25, 12]),
  ]
}

/** A gait whose feet are less on the ground is the faster one. */
function gaitsOf({ gaits }: PartlyLeg): Relation[] {
  const all = entriesOf(gaits).filter(([, { dutyFactor }]) => dutyFactor !== undefined)
  const [long, short] = [...all]
    .sort(([, a], [, b]) => si(b.dutyFactor) - si(a.dutyFactor))
    .filter((_, i, { length }) => i === 0 || i === length - 1)
  if (long === undefined || short === undefined || si(long[1].dutyFactor) === si(short[1].dutyFactor)) return []
  return [
    ratio(
      [`gaits.${short[0]}.speed`, short[1].speed],
      [`gaits.${long[0]}.speed`, long[1].speed],
      'the speed of the gait whose feet are least on the ground over that of the one whose feet are most',
      [0.6, 9],
    ),
  ]
}

/** A season is some part of the life of a leg. */
function agesOf({ loadCases }: PartlyLeg): Relation[] {
  const { season, aged } = loadCases?.ages ?? {}
  const time = ['loadCases.ages.season.time', season?.time] as const
  return [ratio(['loadCases.ages.aged.time', aged?.time], time, 'the age of the leg over its season', [0.9, 30])]
}

/** The holes of a boss scatter by less than the interference of its pin. */
function pressedOf(leg: PartlyLeg, joint: 'hip' | 'knee'): Relation[] {
  const { pin = '', boss: name = '' } = leg.joints?.[joint] ?? {}
  const [size, boss] = [leg.pins?.[pin]?.size, leg.bosses?.[name]]
  const interference = size === undefined ? Number.NaN : pinOf(size).diameter - si(boss?.hole)
  if (!(interference > 0)) return []
  return [
    ratio(
      [`bosses.${name}.holeScatter`, boss?.holeScatter],
      [`bosses.${name}.hole`, interference],
      'the scatter of the hole over the interference of its pin',
      [0, 1.5],
    ),
  ]
}
