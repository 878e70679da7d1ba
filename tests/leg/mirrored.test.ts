import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { assess, checkReserves, describeLeg, type Leg, legNumbers, withFields } from '../../src/leg/index.js'

const read = (name: string) => describeLeg(readFileSync(new URL(`../../examples/${name}.yaml`, import.meta.url), 'utf8'))

/** The same leg turned front to back: its knee bends the other way, and the slopes up and down change places. */
function turned(leg: Leg): Leg {
  const { joints, loadCases } = leg
  const range = (joint: 'hip' | 'knee') => ({
    lowest: joints[joint].range.highest.times(-1),
    highest: joints[joint].range.lowest.times(-1),
  })
  const angleOf = (name: 'slopeUp' | 'slopeDown') => (loadCases.events[name] as { readonly angle: { times(x: number): unknown } }).angle
  const { through } = joints.knee
  return withFields(leg, {
    'joints.hip.range': range('hip'),
    'joints.knee.range': range('knee'),
    'loadCases.events.slopeUp.angle': angleOf('slopeDown').times(-1),
    'loadCases.events.slopeDown.angle': angleOf('slopeUp').times(-1),
    ...(through?.kind === 'rod' ? { 'joints.knee.through.rockerAngle': through.rockerAngle.times(-1) } : {}),
  })
}

describe('a leg turned front to back is as strong and as exact', () => {
  // The walk pushes as hard as it brakes, so that either direction has the loads of the other.
  test.each(['mudflat-leg-revised', 'heath-leg-revised', 'shingle-leg-revised'])('%s', (name) => {
    const leg = read(name)
    const other = turned(leg)
    const cases = ['stand', 'walk', 'walkBack', 'slope', 'slopeDown', 'landing'] as const
    const [one, two] = [leg, other].map((each) => checkReserves(legNumbers(each), cases)) as [Map<string, number>, Map<string, number>]
    for (const [key, reserve] of one) expect((two.get(key) as number) / reserve, key).toBeCloseTo(1, 9)
    const [foot, back] = [leg, other].map((each) => assess(each, { cases: ['stand'] }).foot) as [
      ReturnType<typeof assess>['foot'],
      ReturnType<typeof assess>['foot'],
    ]
    expect(back.error.together.worstCorner.si / foot.error.together.worstCorner.si).toBeCloseTo(1, 9)
    expect(back.usableBandwidth!.si / foot.usableBandwidth!.si).toBeCloseTo(1, 9)
    expect(back.deflection!.z.si / foot.deflection!.z.si).toBeCloseTo(1, 9)
  })
})
