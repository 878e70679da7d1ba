import { describe, expect, test } from 'vitest'
import {
  driveCoupling,
  footPath,
  INSIDE_OFFSET,
  LegKernel,
  NOT_A_NUMBER,
  REACHED,
  strideDemand,
  TOO_FAR,
  threeJointLeg,
} from '../../src/kinematics/index.js'

const leg = threeJointLeg({ hipOffset: '58 mm', upperLink: '165 mm', lowerLink: '180 mm' })
const path = footPath({
  midStance: { x: '0 mm', y: '58 mm', z: '-285 mm' },
  stanceSweep: '110 mm',
  stridePeriod: '0.55 s',
  dutyFactor: 0.5,
  lift: '40 mm',
})

describe('a number that is not a number never counts as reached, regular or assembled', () => {
  const point = [0.02, 0.058, -0.29] as const
  test.each([0, 1, 2])('coordinate %i of the target, on every branch', (axis) => {
    for (const kernel of [leg.si, new LegKernel(0, 0.2, 0.2)])
      for (let branch = 0; branch < 4; branch++) {
        const [x, y, z] = point.map((p, i) => (i === axis ? Number.NaN : p)) as [number, number, number]
        const q = Float64Array.of(7, 7, 7)
        expect(kernel.jointAnglesInto(q, 0, x, y, z, branch)).toBe(NOT_A_NUMBER)
        expect([...q]).toEqual([7, 7, 7])
      }
  })

  test.each([0, 1, 2])('coordinate %i of a point whose nearest pose is searched: nothing is written, the miss is infinite', (axis) => {
    const at = point.map((p, i) => (i === axis ? Number.NaN : p)) as [number, number, number]
    const out = new Float64Array(6).fill(7)
    expect(leg.si.nearestInto(out, 0, leg.limitsSi, ...at)).toBe(Infinity)
    expect([...out]).toEqual([7, 7, 7, 7, 7, 7])
    expect(leg.si.nearestInto(out, 0, leg.limitsSi, ...point)).toBeLessThan(1e-12)
  })

  test('infinite targets are too far, and one inside the offset keeps its reason', () => {
    const q = new Float64Array(3)
    const targets: [number, number, number][] = [
      [Infinity, 0.058, -0.29],
      [0.02, -Infinity, -0.29],
      [0.02, 0.058, -Infinity],
      [-1e200, 1e200, 1e200],
    ]
    for (const target of targets) expect(leg.si.jointAnglesInto(q, 0, ...target, 0)).toBe(TOO_FAR)
    expect(leg.si.jointAnglesInto(q, 0, 0.1, 0.01, -0.01, 0)).toBe(INSIDE_OFFSET)
  })

  test('a pose is not regular', () => {
    expect(leg.si.singularityAt([0, 0.2, 0.8])).toBe(0)
    for (const [q2, q3, tolerance] of [
      [Number.NaN, 0.8, 1e-8],
      [0.2, Number.NaN, 1e-8],
      [0.2, 0.8, Number.NaN],
    ] as const)
      expect(leg.si.singularityAt([0, q2, q3], tolerance)).toBe(NOT_A_NUMBER)
  })

  test('the loop of the guide holds its last command at a time that is not a number', () => {
    const foot = new Float64Array(9)
    expect(path.si.stateInto(foot, 0, Number.NaN)).toBe(false)
    expect(leg.si.jointAnglesInto(new Float64Array(3), 0, foot[0]!, foot[1]!, foot[2]!, 0)).not.toBe(REACHED)
  })

  test('a drive does not assemble at a knee angle that is not a number', () => {
    for (const coupling of [driveCoupling({ knee: 'motorAtKnee' }), driveCoupling({ knee: 'cordFromHip', ratio: -0.8 })]) {
      expect(coupling.si.assemblesAt(0.4)).toBe(true)
      expect(coupling.si.assemblesAt(Number.NaN)).toBe(false)
    }
  })
})

test('a ground force that is not a number is refused by name, with what it gave and when', () => {
  const drive = { ratio: 6 }
  const walk = (z: (phase: number) => number) => () =>
    strideDemand({
      leg,
      path,
      drives: { sidewaysHip: drive, hip: drive, knee: drive },
      groundReactionSi: (out, phase) => out.set([0, 0, z(phase)]),
    })
  expect(walk(() => 20)().walkable).toBe(true)
  expect(walk((phase) => (phase > 0.5 ? Number.NaN : 20))).toThrow(
    /groundReactionSi is \[0, 0, NaN\] N at \d.*must write three finite numbers/,
  )
  expect(walk(() => Infinity)).toThrow(/groundReactionSi/)
})
