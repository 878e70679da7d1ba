import { clearanceHole, isoTolerance, metricThread, preloadFromTorque, pressFit, pressFitGrip, socketHead } from '../../fasteners/index.js'
import { Quantity } from '../../units/index.js'
import { clampLoadAt } from '../clamp-load-at.js'
import type { LegModel } from '../leg-model.js'
import type { LegNumbers } from '../leg-numbers.js'
import { materialState, steelOf } from '../material-state.js'
import {
  bondedEndOf,
  bossAt,
  cordJoints,
  type DrivenJoint,
  drivenJoints,
  type Joint,
  jointOf,
  jointWords,
  partOf,
  pinAt,
  pinSizeAt,
  shaftOf,
} from '../numbers.js'
import { isPrinted } from '../printed.js'
import { force, length, ratio, torque } from './bench.js'
import { pressedJoints } from './cut-list.js'
import { SCREW_FRICTION } from './tensioning.js'

/** One group of screws, in the order of tightening. */
export interface TighteningStep {
  /** The group of screws. */
  readonly what: string
  /** Thread of the screws. */
  readonly thread: string
  /** Number of screws for one leg. */
  readonly count: number
  /** Tightening torque of the last pass. */
  readonly torque: Quantity<'torque'>
  /** Torques of the passes, crosswise where there are more than two screws. */
  readonly passes: readonly Quantity<'torque'>[]
  /** Preload of one screw at that torque. */
  readonly preload: Quantity<'force'>
  /** Shares of the preload left after a day and a week at room temperature; absent for a screw that clamps metal only. */
  readonly afterDay: Quantity<'ratio'> | undefined
  /** Share of the preload left after a week at room temperature; absent for a screw that clamps metal only. */
  readonly afterWeek: Quantity<'ratio'> | undefined
  /** Caution for this group. */
  readonly remark: string
}

/** A pin pressed into its bosses. */
export interface PressStep {
  /** Joint of the pin. */
  readonly joint: Joint
  /** Standard designation of the pin. */
  readonly pin: string
  /** Diameter of the hole in the boss before pressing. */
  readonly hole: Quantity<'length'>
  /** Pin minus hole, diametral: mean of the pin's tolerance zone. */
  readonly interference: Quantity<'length'>
  /** Force at the end of pressing into one boss, with the friction at the top of its range. */
  readonly pressingForce: Quantity<'force'>
  /** Hoop stress at the bore of the boss after pressing. */
  readonly boreHoopStress: Quantity<'stress'>
  /** Whether the boss is printed. */
  readonly printed: boolean
}

/** A cord end bonded into its ferrule. */
export interface BondStep {
  /** Joint of the drive whose cord ends are bonded. */
  readonly joint: DrivenJoint
  /** Name of the adhesive in the document. */
  readonly adhesive: string
  /** Bonded length of the cord. */
  readonly bondedLength: Quantity<'length'>
  /** Gap between cord and bore on each side. */
  readonly gap: Quantity<'length'>
  /** Whether the end also holds by its shape, such as a knot or a bead. */
  readonly mechanicalLock: boolean
}

const PASSES = [0.5, 0.8, 1] as const
const ROOM = 296.15

/** Screws in the order of tightening. @internal */
export function tightening(leg: LegModel): TighteningStep[] {
  const group = (name: string, what: string): TighteningStep => {
    const bolts = partOf(leg.x.bolts, name, 'group of bolts')
    const { preload: clamp, after: left } = clampLoadAt(leg, name)
    const after = (days: number) => ratio(left(days, ROOM) / clamp)
    return {
      what,
      thread: bolts.thread,
      count: bolts.count,
      torque: torque(bolts.tighteningTorque),
      passes: PASSES.map((share) => torque(share * bolts.tighteningTorque)),
      preload: force(clamp),
      afterDay: after(1),
      afterWeek: after(7),
      remark: bolts.sleeves
        ? 'the sleeves carry the clamp load: check that no sleeve is below the face of its part'
        : bolts.stack.some(({ material }) => isPrinted(leg.x, material))
          ? 'the print creeps under the heads: tighten again as below'
          : 'rough faces flatten under the heads: tighten again as below',
    }
  }
  const ofMotors = drivenJoints(leg.x).flatMap((joint) => {
    const name = jointOf(leg.x, joint).motorBolts
    return name === undefined ? [] : [group(name, `motor on its plate, ${jointWords(joint)}`)]
  })
  const stack = leg.x.plates[leg.x.joints.hip.plate ?? '']?.bolts
  return [
    ...ofMotors,
    ...(stack === undefined ? [] : [group(stack, 'stack of plate and hip housing')]),
    ...(leg.x.joints.hip.shaft === undefined ? [] : [endCap(leg.x)]),
  ]
}

function endCap(x: LegNumbers): TighteningStep {
  const shaft = shaftOf(x)
  const { preload } = preloadFromTorque.si({
    torque: shaft.innerTighteningTorque,
    thread: metricThread.si(shaft.innerThread),
    threadFriction: SCREW_FRICTION,
    headFriction: SCREW_FRICTION,
    bearingDiameter: socketHead.si(shaft.innerThread).bearingDiameter,
    holeDiameter: clearanceHole.si(shaft.innerThread).medium,
    prevailingTorque: 0,
  })
  return {
    what: 'end cap of the hip shaft',
    thread: shaft.innerThread,
    count: 1,
    torque: torque(shaft.innerTighteningTorque),
    passes: [torque(shaft.innerTighteningTorque)],
    preload: force(preload),
    afterDay: undefined,
    afterWeek: undefined,
    remark: 'hold the shaft, not the leg',
  }
}

/** Pins in the order of pressing. @internal */
export function presses(leg: LegModel): PressStep[] {
  return pressedJoints(leg.x).map((joint) => {
    const pin = pinSizeAt(leg.x, joint)
    const boss = bossAt(leg.x, joint)
    const state = materialState(leg, boss.material)
    const { upper, lower } = isoTolerance.si({ diameter: pin.diameter, zone: pin.zone })
    const interference = pin.diameter + (upper + lower) / 2 - boss.hole
    const { pressure, boreHoopStress } = pressFit.si({
      diameter: pin.diameter,
      diametralInterference: Math.max(0, interference),
      bossDiameter: boss.outerDiameter,
      pinBore: 0,
      boss: state.elastic(),
      pin: materialState(leg, steelOf(leg)).elastic(),
    })
    const { axialForce } = pressFitGrip.si({
      pressure,
      diameter: pin.diameter,
      length: boss.engagement,
      friction: state.frictionOnSteel().high,
    })
    return {
      joint,
      pin: pinAt(leg.x, joint).size,
      hole: length(boss.hole),
      interference: length(interference),
      pressingForce: force(axialForce),
      boreHoopStress: new Quantity(boreHoopStress, 'stress'),
      printed: isPrinted(leg.x, boss.material),
    }
  })
}

/** Cord ends that are bonded. @internal */
export const bonds = ({ x, drives }: LegModel): BondStep[] =>
  cordJoints(x).flatMap((joint) => {
    const bonded = bondedEndOf(x, joint)
    if (bonded === undefined) return []
    const { adhesive, length: bondedLength, socketDiameter, mechanicalLock } = bonded
    const gap = length((socketDiameter - drives[joint].cord.diameter) / 2)
    return [{ joint, adhesive, bondedLength: length(bondedLength), gap, mechanicalLock }]
  })
