import { describe, expect, test } from 'vitest'
import type { CaseId, Leg } from '../../src/leg/index.js'
import { legModel } from '../../src/leg/leg-model.js'
import { legNumbers } from '../../src/leg/numbers.js'
import { caseState } from '../../src/leg/what-if.js'
import { plain } from './sprung-legs.js'

const metres = (of: string) => Number.parseFloat(of) / 1000

/** Force of two crossed spans on a shaft: along the line of centres they add, across it they differ. Statics of a crossed belt, worked out here. */
function crossed(leg: Leg, joint: 'hip' | 'knee', taut: number, slack: number): number {
  const drive = leg.joints[joint]?.drive as unknown as {
    pinion: { grooveDiameter: unknown }
    drum: { grooveDiameter: unknown }
    centreDistance: unknown
  }
  const cord = 1.6e-3
  const radii = (metres(String(drive.pinion.grooveDiameter)) + metres(String(drive.drum.grooveDiameter))) / 2 + cord
  const slope = Math.asin(radii / metres(String(drive.centreDistance)))
  return Math.hypot((taut + slack) * Math.cos(slope), (taut - slack) * Math.sin(slope))
}

describe('pins, shafts and motor bolts bear the cord of a landing as the cord itself does', () => {
  const leg = legModel(legNumbers(plain))
  test.each<[CaseId, 'peak' | 'taut']>([
    ['drop', 'peak'],
    ['hotDrop', 'peak'],
    ['hop', 'peak'],
    ['stall', 'peak'],
    ['walk', 'taut'],
    ['trot', 'taut'],
  ])('%s: %s', (id, which) => {
    for (const joint of ['hip', 'knee'] as const) {
      const { drive } = caseState(leg, id).joints[joint]
      const taut = drive[which]
      // Travel under load shifts both spans alike: their difference is the torque over the radius of the drum.
      expect(drive.shaftForce).toBeCloseTo(crossed(plain, joint, taut, taut - (drive.taut - drive.slack)), 6)
    }
  })
})
