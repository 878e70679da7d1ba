import { JOINTS, type Joint, type Prepared } from '../numbers.js'
import type { Sheet } from '../sheet.js'
import type { CaseState, JointState } from '../state.js'
import { CASES, type CaseId } from './catalogue.js'
import { driveState } from './drive.js'
import { heatOf } from './heat.js'
import { type Motion, motionOver, type Stance, UNLOADED } from './motion.js'

/** The stage names of one load case's shared work; checks list them as what their chain starts from. */
export const stageOf = (stage: 'motion' | 'drive' | 'heat', id: CaseId, joint: Joint): string =>
  stage === 'motion' ? `${id}/motion` : `${id}/${joint}/${stage}`

/** Works out one load case: forces and poses, then temperatures, then cord tensions at those temperatures. */
export function workOut(leg: Prepared, sheet: Sheet, id: CaseId): CaseState {
  const loadCase = CASES[id]
  if (sheet.recording) sheet.open(stageOf('motion', id, 'hip'))
  const stance = loadCase.stance(leg, sheet.of)
  const motion = stance === undefined ? undefined : sheet.recording ? motionOver(leg, sheet, stance) : motionOnce(leg, sheet, stance)
  const air = loadCase.air(leg)
  const joints = {} as Record<Joint, JointState>
  for (const joint of JOINTS) joints[joint] = jointState(leg, sheet, id, joint, motion, air)
  return { case: loadCase, motion, joints, air, duration: loadCase.duration(leg), cycles: loadCase.cycles(leg) }
}

/** Motions of the leg worked out last: most load cases walk alike. */
let lastLeg: Prepared | undefined
let known: { readonly stance: Stance; readonly motion: Motion }[] = []

function motionOnce(leg: Prepared, sheet: Sheet, stance: Stance): Motion {
  if (lastLeg !== leg) {
    lastLeg = leg
    known = []
  }
  for (const one of known) if (alike(one.stance, stance)) return one.motion
  const motion = motionOver(leg, sheet, stance)
  known.push({ stance, motion })
  return motion
}

const alike = (a: Stance, b: Stance) =>
  a.legShare === b.legShare &&
  a.dutyFactor === b.dutyFactor &&
  a.traction === b.traction &&
  a.speed === b.speed &&
  a.stepLength === b.stepLength &&
  a.clearance === b.clearance &&
  a.height === b.height &&
  a.shape === b.shape &&
  a.blocked === b.blocked &&
  a.gravity === b.gravity &&
  a.mass === b.mass

function jointState(leg: Prepared, sheet: Sheet, id: CaseId, joint: Joint, motion: Motion | undefined, air: number): JointState {
  const loadCase = CASES[id]
  const moved = motion?.[joint] ?? UNLOADED
  if (sheet.recording) sheet.open(stageOf('heat', id, joint))
  const heat = heatOf(leg, sheet.of, {
    joint,
    motion: moved,
    air,
    wind: loadCase.wind(leg),
    heating: loadCase.heating,
    heldFor: loadCase.heldFor?.(leg),
  })
  if (sheet.recording) sheet.open(stageOf('drive', id, joint))
  const drive = driveState(leg, sheet.of, {
    joint,
    torque: Math.abs(moved.torque),
    stroke: Math.max(0, moved.highest - moved.lowest),
    footForce: motion?.vertical ?? 0,
    air,
    age: loadCase.age,
  })
  return { joint, motion: moved, drive, heat }
}
