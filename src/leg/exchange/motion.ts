import {
  type DriveCoupling,
  driveCoupling,
  type FootPath,
  footPath,
  type LegDynamics,
  legDynamics,
  type ParallelTorqueSi,
  strideTable,
  type ThreeJointLeg,
  threeJointLeg,
} from '../../kinematics/index.js'
import { Table } from '../../study/index.js'
import { type In, type Kind, oneOfNames, Quantity, quantity, refuse } from '../../units/index.js'
import { calculationOf, placeOf } from '../calculation.js'
import { couplingOf } from '../coupling.js'
import type { Leg } from '../document/describe.js'
import { legModel } from '../leg-model.js'
import { JOINTS, legNumbers } from '../numbers.js'
import { parallelTorqueOf } from '../parallel-torque.js'
import { signedRatio } from '../parts/transmission/questions.js'
import { branchOf } from '../pose.js'
import { linkBodies } from './link-bodies.js'

/** A leg and one of its gaits as objects of `limbwright/kinematics`. */
export interface LegMotion {
  readonly leg: ThreeJointLeg
  readonly path: FootPath
  /** Both links with what is mounted on them, as the load cases take them. The hip link and the rotors have no mass there. */
  readonly dynamics: LegDynamics
  /** How the knee is driven: by a motor on the upper link, or through a rod from a drum on the hip axis. */
  readonly coupling: DriveCoupling
  /** The side to which the knee bends, from its limits. */
  readonly kneeBend: 'forward' | 'backward'
  /** Torques of the springs in parallel with the drives; absent without springs. */
  readonly parallelTorqueSi?: ParallelTorqueSi
}

/** Options of `legMotion`. */
export interface LegMotionOptions {
  /** Name of the gait in the document. Default: `walk`. */
  readonly gait?: string
  /** Time of one stride. Default: step length over speed and duty factor. */
  readonly stridePeriod?: In<'time'>
}

const where = 'legMotion'

/**
 * The kinematics of a leg's document in one call: lengths and joint limits as a `threeJointLeg`, a gait as a `footPath` below the sideways hip's axis at
 * standing height, links as masses. Every function of `limbwright/kinematics` takes them.
 *
 * Throws an `InputError` for a gait that the document does not have.
 */
export function legMotion(leg: Leg, options: LegMotionOptions = {}): LegMotion {
  const { gait: name = 'walk', stridePeriod } = options
  const { links, joints, robot, gaits } = leg
  const gait = Object.hasOwn(gaits, name) ? gaits[name] : undefined
  if (gait === undefined) refuse(where, 'gait', name, oneOfNames(Object.keys(gaits), name))
  const limits = ({ range }: { readonly range: { readonly lowest: Quantity<'angle'>; readonly highest: Quantity<'angle'> } }) => range
  const made = threeJointLeg({
    hipOffset: links.hipOffset,
    upperLink: links.upper.length,
    lowerLink: links.lower.length,
    limits: {
      ...(joints.sidewaysHip === undefined ? {} : { sidewaysHip: limits(joints.sidewaysHip) }),
      hip: limits(joints.hip),
      knee: limits(joints.knee),
    },
  })
  const prepared = legModel(legNumbers(leg))
  const parallelTorqueSi = parallelTorqueOf(prepared)
  const stance = gait.stepLength.over(gait.speed).as('time')
  const path = footPath({
    midStance: { x: '0 mm', y: links.hipOffset, z: robot.standHeight.times(-1) },
    stanceSweep: gait.stepLength,
    stridePeriod: stridePeriod ?? stance.over(gait.dutyFactor).as('time'),
    dutyFactor: gait.dutyFactor,
    lift: gait.clearance,
  })
  return {
    leg: made,
    path,
    dynamics: legDynamics(made, massesOf(leg)),
    coupling: couplingOf(prepared) ?? driveCoupling({ knee: 'motorAtKnee' }),
    kneeBend: branchOf(prepared) === 0 ? 'forward' : 'backward',
    ...(parallelTorqueSi === undefined ? {} : { parallelTorqueSi }),
  }
}

function massesOf(leg: Leg) {
  const bodies = linkBodies(leg)
  const link = (of: 'upper' | 'lower') => {
    const { mass, centre, inertia } = bodies[of]
    const across = new Quantity(inertia, 'momentOfInertia')
    return {
      mass: new Quantity(mass, 'mass'),
      centreOfMass: { x: '0 mm', y: '0 mm', z: new Quantity(-centre, 'length') },
      inertia: { xx: across, yy: across },
    } as const
  }
  const nothing = { mass: '0 kg', centreOfMass: { x: '0 mm', y: '0 mm', z: '0 mm' } } as const
  return { hipLink: nothing, upperLink: link('upper'), lowerLink: link('lower') }
}

/** Options of `strideTrajectory`. */
export interface StrideTrajectoryOptions {
  /** Name of the gait in the document. Default: `walk`. */
  readonly gait?: string
  /** Rows a second. Default: 1 kHz. */
  readonly rate?: In<'frequency'>
}

/**
 * One stride of a gait at a fixed rate for a controller: foot, joint angles, angles, rates and torques of drums and of motors, and the force of the ground.
 * `toCSV()` of the table is the file. The stride is rounded to whole ticks, which changes the speed by less than one tick a stride.
 *
 * The ground carries the robot's weight divided by its legs, as half a sine over the stance. Ratios and signs of the motors are those of their transmissions.
 * Check the signs with the leg hung up and a low current limit: a leg with a wrong sign moves hard and pinches.
 *
 * Throws an `InputError` for an unknown gait, a rate that leaves no tick, or a foot path that the leg cannot reach.
 */
export function strideTrajectory(leg: Leg, options: StrideTrajectoryOptions = {}): Table {
  const { gait = 'walk' } = options
  const rate = quantity('frequency', options.rate ?? '1 kHz').si
  const { path } = legMotion(leg, { gait })
  const ticks = Math.round(path.si.period * rate)
  if (!(ticks >= 1)) refuse('strideTrajectory', 'rate', options.rate, 'must leave at least one row a stride')
  const parts = legMotion(leg, { gait, stridePeriod: new Quantity(ticks / rate, 'time') })
  const stride = strideTable({
    ...parts,
    load: { mass: leg.robot.mass, legShare: 1 / leg.robot.legs, shape: 'halfSine' },
    rate: new Quantity(rate, 'frequency'),
  })
  if (!stride.walkable)
    return refuse('strideTrajectory', 'gait', gait, `must be within reach: the foot cannot be put at ${stride.reason} at ${stride.time}`)
  const columns = stride.columns.map((title, i) =>
    column(
      title,
      Float64Array.from(stride.rows, (row) => row[i] as number),
    ),
  )
  return new Table('leg.stride', [...columns, ...motorColumns(leg, columns)], stride.rows.length)
}

const KINDS: Readonly<Record<string, Kind>> = {
  s: 'time',
  m: 'length',
  rad: 'angle',
  'rad/s': 'angularVelocity',
  'N m': 'torque',
  N: 'force',
}

interface Numbers {
  readonly name: string
  readonly kind: Kind
  readonly unit: string
  readonly values: Float64Array
}

/** A title such as `drum angle knee [rad]` as a column. */
function column(title: string, values: Float64Array): Numbers {
  const [, name, unit] = title.match(/^(.*) \[(.*)\]$/) as unknown as [string, string, string]
  const kind = KINDS[unit]
  return kind === undefined ? { name, kind: 'ratio', unit: '1', values } : { name, kind, unit, values }
}

/** Angles, rates and torques of the motors: those of the drums, or of the joints, by ratio and sign of their transmissions. */
function motorColumns(leg: Leg, columns: readonly Numbers[]): Numbers[] {
  const calculation = calculationOf(legNumbers(leg))
  return JOINTS.flatMap((joint) => {
    const ratio = calculation.get(signedRatio, calculation.instances.implied(placeOf(calculation, { joint })) as never)
    const turned = (what: string, factor: number): Numbers[] =>
      columns
        .filter(({ name }) => name === `drum ${what} ${joint}`)
        .map((drum) => ({ ...drum, name: `motor ${what} ${joint}`, values: drum.values.map((x) => x * factor) }))
    return [...turned('angle', ratio), ...turned('rate', ratio), ...turned('torque', 1 / ratio)]
  })
}
