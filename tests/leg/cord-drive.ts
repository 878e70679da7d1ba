import type { Leg } from '../../src/leg/index.js'

/** The cord drive of a joint of a leg. */
export function cordDrive({ joints }: Leg, joint: 'hip' | 'knee') {
  const { drive } = joints[joint]
  if (drive.kind === 'cord') return drive
  throw new Error(`the ${joint} has no cord drive`)
}
