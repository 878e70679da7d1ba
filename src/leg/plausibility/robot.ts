import type { PartlyLeg } from '../document/partly.js'
import { STANDARD_GRAVITY } from '../gravity.js'
import { type Relation, type Relations, ratio, si } from './relation.js'

// The ranges are common practice: proportions of small walking robots.

/** The whole robot: its sizes and masses, its supply, and how far its joints move. */
export const robotRelations: Relations = (leg, add) => {
  for (const one of [...robotOf(leg), ...legsOf(leg), ...heldOf(leg), ...supplyOf(leg), ...rangesOf(leg)]) add(one)
}

/** The legs, which the mass of the robot includes. */
function legsOf({ robot, links, joints, motors }: PartlyLeg): Relation[] {
  const names = (['sidewaysHip', 'hip', 'knee'] as const).flatMap((joint) => joints?.[joint]?.motor ?? [])
  const masses = [
    ...(['upper', 'lower'] as const).map((link) => [`links.${link}.mass`, links?.[link]?.mass] as const),
    ...names.map((name) => [`motors.${name}.mass`, motors?.[name]?.mass] as const),
  ]
  return [
    {
      path: 'robot.mass',
      value: robot?.mass,
      others: [...new Set(masses.map(([path]) => path))],
      what: 'the mass of the links and motors of all legs over that of the robot, which includes them,',
      is: ((robot?.legs ?? Number.NaN) * masses.reduce((sum, [, mass]) => sum + si(mass), 0)) / si(robot?.mass),
      kind: 'ratio',
      usual: [0.06, 0.95],
      // The other legs may be lighter.
      possible: [0, 1.5],
    },
  ]
}

function robotOf({ robot }: PartlyLeg): Relation[] {
  const { mass, standHeight, hipSpacing, hipTrack, centreOfMassHeight } = robot ?? {}
  const height = ['robot.standHeight', standHeight] as const
  return [
    {
      path: 'robot.mass',
      value: mass,
      others: ['robot.standHeight', 'robot.hipSpacing', 'robot.hipTrack'],
      what: 'the mass of the robot over the room between its hips and the ground',
      is: si(mass) / (si(standHeight) * si(hipSpacing) * si(hipTrack)),
      kind: 'density',
      usual: [30, 2500],
      possible: [0.3, 1e5],
    },
    ratio(['robot.hipSpacing', hipSpacing], height, 'the distance of the hips over the standing height', [0.25, 8]),
    ratio(['robot.hipTrack', hipTrack], height, 'the track of the hips over the standing height', [0.1, 5]),
    ratio(
      ['robot.centreOfMassHeight', centreOfMassHeight],
      height,
      'the height of the centre of mass over the standing height',
      [0.25, 2.5],
    ),
  ]
}

/** What holds the sideways hip bears about the weight of the robot at some part of the leg. */
function heldOf({ robot, joints }: PartlyLeg): Relation[] {
  const drive = joints?.sidewaysHip?.drive
  if (drive?.kind !== 'held') return []
  const { torque } = drive as { readonly torque?: Parameters<typeof si>[0] }
  return [
    {
      path: 'joints.sidewaysHip.drive.torque',
      value: torque,
      others: ['robot.mass', 'robot.standHeight'],
      what: 'the torque over the weight of the robot times the standing height',
      is: si(torque) / (si(robot?.mass) * STANDARD_GRAVITY * si(robot?.standHeight)),
      kind: 'ratio',
      usual: [0.06, 3.5],
    },
  ]
}

function supplyOf({ supply }: PartlyLeg): Relation[] {
  const { voltage, internalResistance, currentLimit } = supply ?? {}
  if (internalResistance?.si === 0) return []
  return [
    {
      path: 'supply.internalResistance',
      value: internalResistance,
      others: ['supply.voltage', 'supply.currentLimit'],
      what: 'the current of the supply in a short circuit over its current limit',
      is: si(voltage) / (si(internalResistance) * si(currentLimit)),
      kind: 'ratio',
      usual: [1.1, 45],
    },
  ]
}

/** How far each joint moves. */
const rangesOf = ({ joints }: PartlyLeg): Relation[] =>
  (['sidewaysHip', 'hip', 'knee'] as const).map((joint) => {
    const range = joints?.[joint]?.range
    return {
      path: `joints.${joint}.range`,
      value: range?.lowest === undefined || range.highest === undefined ? undefined : `${range.lowest} to ${range.highest}`,
      others: [],
      what: 'the travel of the joint',
      is: si(range?.highest) - si(range?.lowest),
      kind: 'angle',
      usual: [0.26, 5.8],
    }
  })
