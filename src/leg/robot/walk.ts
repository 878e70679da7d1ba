import type { Walkable } from '../../kinematics/index.js'
import { refuse } from '../../units/index.js'
import type { LegModel } from '../leg-model.js'
import { type DrivenJoint, drivenJoints } from '../numbers.js'
import { strideOf } from '../stride-of.js'
import type { ShaftPoint } from './bus.js'

/** Samples of the stride of each leg. */
const SAMPLES = 240

/** The stride of one leg of the robot: its motors by the phase of its own stride. */
export interface CornerStride {
  readonly stride: Walkable
  /** Torque and speed of its motors at a phase from 0 (touch-down) to 1. */
  readonly at: (phase: number) => readonly ShaftPoint[]
}

/** How a leg at a corner of the robot walks. */
interface CornerWay {
  readonly mirrored: boolean
  /** Direction in which its foot steps, from forward to the left of the robot, and how far; the leg's own left side is outward. */
  readonly heading: number
  readonly stepLength: number
  readonly force: (stancePhase: number) => number
  readonly traction: number
  /** Force to the leg's own outer side over force across the ground. */
  readonly lateral: number
}

/** The stride of a leg at a corner of the robot. Throws an `InputError` for a gait that the leg cannot follow. */
export function cornerStride(
  leg: LegModel,
  id: 'walk' | 'trot',
  { mirrored, heading, stepLength, force, traction, lateral }: CornerWay,
): CornerStride {
  const stride = strideOf(leg, id, { force, mirrored, heading, stepLength, traction, lateral, lossyBack: true, samples: SAMPLES })
  if (!stride.walkable)
    return refuse('assessRobot', `gaits.${id}`, id, `must be within reach: the foot cannot be put at ${stride.reason} at ${stride.time}`)
  const { samples, motors } = stride
  // Cells of the stride, each with the sample in its middle: torque steps at touch-down and lift-off, and a line across a step would invent a ramp.
  const cells = Array.from(samples.weight, (weight, i) => ({ weight, i })).filter(({ weight }) => weight > 0)
  const ends: number[] = []
  for (const { weight } of cells) ends.push((ends.at(-1) ?? 0) + weight)
  const period = ends.at(-1) as number
  const joints = drivenJoints(leg.x)
  const points = cells.map(({ i }) =>
    joints.map((joint: DrivenJoint): ShaftPoint => {
      const { torque, speed } = motors[joint].cloud
      return { joint, torque: torque[i]!, speed: speed[i]! }
    }),
  )
  const at = (phase: number) => points[cellAt(ends, phase * period)]!
  return { stride, at }
}

/** The first cell that ends after a time. */
function cellAt(ends: readonly number[], time: number): number {
  let [low, high] = [0, ends.length - 1]
  while (low < high) {
    const middle = (low + high) >> 1
    if (ends[middle]! > time) high = middle
    else low = middle + 1
  }
  return low
}
