import { logarithmicPretensionLeft, residualWrap, takeUp, tensionerTakeUp, tensionPerScrewTurn } from '../../capstan/index.js'
import { clearanceHole, metricThread, powerScrew, socketHead } from '../../fasteners/index.js'
import type { Quantity } from '../../units/index.js'
import type { LegModel } from '../leg-model.js'
import { airNamed, type DrivenJoint, driveOf, partOf, rangeOf } from '../numbers.js'
import { SECOND_STAGE } from '../second-stage.js'
import { screwTurns, tensionerMove } from '../workshop-lines.js'
import { angle, benchDrive, count, force, frameOf, length, torque } from './bench.js'
import type { CordCut } from './cord-cut.js'
import { throughGeometry } from './through-geometry.js'

/** How the cord of one drive is laid. Turning sense is seen from the left of the robot (its y axis points at you), from anchor to tangent point. */
export interface Winding {
  /** Joint of the drive. */
  readonly joint: DrivenJoint
  /** Whether the cord crosses between pinion and drum. */
  readonly arrangement: 'crossed' | 'open'
  /** Joint angle at which to lay the cord: the drum is in the middle of its travel. */
  readonly layAt: Quantity<'angle'>
  /** Hip angle to hold meanwhile, where the drum of the knee sits on the hip axis. */
  readonly hipHeldAt: Quantity<'angle'> | undefined
  /** Turns on the pinion, from span to span, and on each side of its middle. */
  readonly pinionTurns: Quantity<'count'>
  /** Turns on each side of the middle of the pinion. */
  readonly halfTurns: Quantity<'count'>
  /** Turns left between clamp and span at an end of travel, on the side that unwinds; negative where the clamp comes off. Absent without a clamp. */
  readonly leastTurns: Quantity<'count'> | undefined
  /** Wrap of each branch on the drum at mid travel, and the least that is left at the ends of travel (negative: the anchor leaves the drum). */
  readonly drumWrap: Quantity<'angle'>
  /** The least wrap that is left on the drum at the ends of travel; negative: the anchor leaves the drum. */
  readonly leastDrumWrap: Quantity<'angle'>
  /** The branch that pulls the joint towards larger angles, and the other one. */
  readonly branches: readonly [BranchWinding, BranchWinding]
}

/** One branch: which way the cord lies. */
export interface BranchWinding {
  readonly pulls: 'towards larger angles' | 'towards smaller angles'
  readonly onDrum: 'clockwise' | 'counter-clockwise'
  readonly onPinion: 'clockwise' | 'counter-clockwise'
}

/** How the tensioner of one drive is set. Positions are counted from backed right out; pulls one cord end. */
export interface TensionerSetting {
  /** Joint of the drive. */
  readonly joint: DrivenJoint
  /** Thread of the tensioner's screw. */
  readonly thread: string
  /** Pretension to set. */
  readonly pretension: Quantity<'force'>
  /** Its place when the slack is just gone. */
  readonly start: Quantity<'length'>
  /** Its place with the pretension on, before the braid beds in. */
  readonly set: Quantity<'length'>
  /** Its place at the end of its life: bedding, creep and cold taken up too. */
  readonly end: Quantity<'length'>
  /** Travel of the tensioner's screw. */
  readonly travel: Quantity<'length'>
  /** Travel less end position: negative means that it runs out. */
  readonly spare: Quantity<'length'>
  /** Turns from backed right out until the slack is gone. */
  readonly turnsToStart: Quantity<'count'>
  /** Turns from there to the pretension. */
  readonly turnsToSet: Quantity<'count'>
  /** Tension that one turn adds near the pretension. */
  readonly tensionPerTurn: Quantity<'force'>
  /** Torque on the screw at the pretension, and whether it stays by itself. */
  readonly screwTorque: Quantity<'torque'>
  /** Whether the screw stays by itself or turns back under the cord's pull. */
  readonly state: 'selfLocking' | 'overhauls'
}

/** Friction of a dry or lightly oiled steel screw. */
export const SCREW_FRICTION = 0.14
const HOUR = 3600
const YEAR = 31_557_600

/** Winding of one drive. @internal */
export function winding(leg: LegModel, joint: DrivenJoint): Winding {
  const { arrangement, hold } = driveOf(leg.x, joint, 'cord')
  const { travel, ratio, pinionWrap, drumWrap } = benchDrive(leg, joint)
  const through = joint === 'knee' ? throughGeometry(leg.x) : undefined
  const middleOf = (of: DrivenJoint) => (rangeOf(leg.x, of).lowest + rangeOf(leg.x, of).highest) / 2
  const turns = pinionWrap / (2 * Math.PI)
  const other = { clockwise: 'counter-clockwise', 'counter-clockwise': 'clockwise' } as const
  // A branch lies on its drum in the sense in which it turns it, and on the pinion in the sense in which the pinion takes it up.
  const branch = (pulls: BranchWinding['pulls'], onDrum: BranchWinding['onDrum']): BranchWinding => ({
    pulls,
    onDrum,
    onPinion: arrangement === 'crossed' ? other[onDrum] : onDrum,
  })
  return {
    joint,
    arrangement,
    layAt: angle(through === undefined ? middleOf((joint as string) === SECOND_STAGE ? 'knee' : joint) : through.middle),
    hipHeldAt: through === undefined ? undefined : angle(middleOf('hip')),
    pinionTurns: count(turns),
    halfTurns: count(turns / 2),
    leastTurns: hold === 'clampedMidPinion' ? count((turns - (ratio * travel) / (2 * Math.PI)) / 2) : undefined,
    drumWrap: angle(drumWrap),
    leastDrumWrap: angle(residualWrap.si({ drumWrap, travel })),
    branches: [branch('towards larger angles', 'counter-clockwise'), branch('towards smaller angles', 'clockwise')],
  }
}

/** Setting of one tensioner. @internal */
export function tensionerSetting(leg: LegModel, { joint, workingLength }: CordCut, beddingStrain: number): TensionerSetting {
  const { pretension, tensioner, centreDistance } = driveOf(leg.x, joint, 'cord')
  const { cord, pretensionLeft } = leg.drives[joint]
  const frame = frameOf(leg, joint)
  const { assemblyTemperature } = leg.x.environment
  const taken = (air: number) =>
    takeUp.si({
      workingLength: workingLength.si,
      pretension,
      axialRigidity: cord.axialRigidity,
      beddingStrain,
      creepStrain: (pretension * (1 - pretensionLeft)) / cord.axialRigidity,
      slack: tensioner.slackAtAssembly,
      temperatureRise: air - assemblyTemperature,
      frameExpansion: frame.thermalExpansion(),
      cordExpansion: cord.thermalExpansion,
    })
  const [cold, hot] = [taken(airNamed(leg.x, 'cold').temperature), taken(airNamed(leg.x, 'hot').temperature)]
  const { elastic, slack } = cold
  const total = Math.max(cold.total, hot.total)
  const { pitch, pitchDiameter } = metricThread.si(tensioner.thread)
  const { gain } = tensionerTakeUp.si({
    method: 'endPull',
    travel: tensioner.travel,
    span: benchDrive(leg, joint).span,
    centreDistance,
  })
  const move = (takeUp: number) => tensionerMove.si({ takeUp: takeUp, gain })
  const turns = (takeUp: number) => count(screwTurns.si({ way: move(takeUp), pitch }))
  const screw = powerScrew.si({
    force: pretension,
    meanDiameter: pitchDiameter,
    lead: pitch,
    halfThreadAngle: Math.PI / 6,
    threadFriction: SCREW_FRICTION,
    collarFriction: SCREW_FRICTION,
    collarDiameter: (socketHead.si(tensioner.thread).bearingDiameter + clearanceHole.si(tensioner.thread).medium) / 2,
  })
  return {
    joint,
    thread: tensioner.thread,
    pretension: force(pretension),
    start: length(move(slack)),
    set: length(move(slack + elastic)),
    end: length(move(total)),
    travel: length(tensioner.travel),
    spare: length(tensioner.travel - move(total)),
    turnsToStart: turns(slack),
    turnsToSet: turns(elastic),
    tensionPerTurn: force(
      tensionPerScrewTurn.si({ lead: pitch, gain, workingLength: workingLength.si, axialRigidity: cord.axialRigidity }),
    ),
    screwTorque: torque(screw.raisingTorque),
    state: screw.state,
  }
}

/**
 * Share of the pretension left after a time. Equal losses per decade of time are assumed from one hour on, down to the share that the
 * specification gives for a year. LCP and aramid relax like this; UHMWPE loses more in the first days. @internal
 */
export function shareLeft(leg: LegModel, joint: DrivenJoint, time: number, yearShare = leg.drives[joint].pretensionLeft): number {
  const { pretension } = driveOf(leg.x, joint, 'cord')
  return decayed(pretension, leg.drives[joint].cord.axialRigidity, time, yearShare)
}

/** The same of a belt. @internal */
export function beltShareLeft({ x }: LegModel, joint: DrivenJoint, time: number, yearShare?: number): number {
  const { belt: name, pretension } = driveOf(x, joint, 'belt')
  const belt = partOf(x.belts, name, 'belt')
  return decayed(pretension, belt.axialRigidity, time, yearShare ?? belt.pretensionLeft.typical)
}

function decayed(pretension: number, axialRigidity: number, time: number, yearShare: number): number {
  const ask = { pretension, axialRigidity, from: HOUR }
  // 1/share - 1 is proportional to the creep per decade: one evaluation gives the creep that leads to the year's share.
  const unit = 1 / logarithmicPretensionLeft.si({ ...ask, perDecade: 1, to: YEAR }).share - 1
  const perDecade = (1 / yearShare - 1) / unit
  return logarithmicPretensionLeft.si({ ...ask, perDecade, to: Math.max(time, HOUR) }).share
}
