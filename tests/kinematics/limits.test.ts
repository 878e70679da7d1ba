// The edges of what is accepted and noted, and results that other tests only use.
import { describe, expect, test } from 'vitest'
import {
  cantileverToe,
  chainFromScrews,
  dipoleOffsetError,
  driveCoupling,
  footError,
  legDynamics,
  matchedSwingPeaks,
  notchHinge,
  threeJointLeg,
  torqueSpeedChart,
} from '../../src/kinematics/index.js'
import { withinTurns } from '../../src/kinematics/leg-limits.js'
import { merged } from '../../src/kinematics/longest-sum.js'
import { bezierInto } from '../../src/kinematics/swing.js'
import { legPlaneOutlineSi } from '../../src/kinematics/workspace-section.js'

interface Noted {
  readonly notes?: readonly { readonly text: string }[] | undefined
}
const notes = ({ notes }: Noted) => notes?.map(({ text }) => text).join() ?? ''

describe('notes on toes', () => {
  test('a toe of at least eight thicknesses, bent by less than a tenth of its length, has none', () => {
    const toe = { modulus: '2 GPa', width: '10 mm', thickness: '2 mm', allowableStrain: '2 %' } as const
    const noteOf = (length: '16.1 mm' | '15.9 mm', tipForce: '1 N' | '100 N') =>
      notes(cantileverToe({ ...toe, length, tipForce }).stiffness)
    expect(noteOf('16.1 mm', '1 N')).toBe('')
    expect(noteOf('15.9 mm', '1 N')).toContain('eight thicknesses')
    expect(noteOf('16.1 mm', '100 N')).toContain('a tenth of the length')
  })

  test('a hinge thinner than a tenth of its notch has none', () => {
    const hinge = { modulus: '2 GPa', width: '10 mm', notchRadius: '10 mm', angle: '5 deg', allowableStrain: '2 %' } as const
    expect(notes(notchHinge({ ...hinge, thickness: '0.99 mm' }).stiffness)).toBe('')
    expect(notes(notchHinge({ ...hinge, thickness: '1.01 mm' }).stiffness)).toContain('a tenth of the notch radius')
  })
})

test('a far magnet is read up to the offset where its field stands still: distance over √2', () => {
  const at = (offset: '7.05 mm' | '7.08 mm') => dipoleOffsetError({ offset, distance: '10 mm' })
  // Sum of a field that turns forwards and a smaller one that turns backwards.
  expect(at('7.05 mm').worstError.in('deg')).toBeGreaterThan(80)
  expect(() => at('7.08 mm')).toThrow(/offset is '7.08 mm'; must be below 0.7 of the distance/)
})

test('a short step is fastest where the foot meets the ground', () => {
  const swing = { swingTime: '0.2 s', bodySpeed: '1 m/s' } as const
  // 1.875 (stride + v T)/T − v exceeds v from a stride of v T/15 on.
  expect(matchedSwingPeaks({ ...swing, stride: '0 mm' }).peakSpeed.in('m/s')).toBe(1)
  expect(matchedSwingPeaks({ ...swing, stride: '13 mm' }).peakSpeed.in('m/s')).toBe(1)
  expect(matchedSwingPeaks({ ...swing, stride: '14 mm' }).peakSpeed.in('m/s')).toBeCloseTo(1.00625, 12)
})

test('a rotor of the knee that the hip turns as well stores energy when the hip alone moves', () => {
  const leg = threeJointLeg({ hipOffset: '58 mm', upperLink: '165 mm', lowerLink: '180 mm' })
  const rotors = { knee: { rotorInertia: '70 kg mm^2', ratio: 6 } } as const
  const link = { mass: '100 g', centreOfMass: { x: '0 mm', y: '0 mm', z: '-80 mm' } } as const
  const links = { hipLink: link, upperLink: link, lowerLink: link }
  const energy = (more: object) =>
    legDynamics(leg, { ...links, ...more }).si.kineticEnergy(Float64Array.of(0, 0.3, -0.6), Float64Array.of(0, 5, 0))
  const bare = energy({})
  expect(energy({ rotors })).toBeCloseTo(bare, 12)
  const coupling = driveCoupling({ knee: 'cordFromHip', ratio: 0.8 })
  // With the knee held the drum on the hip axis turns with the thigh.
  expect(energy({ rotors, coupling }) - bare).toBeCloseTo(0.5 * 70e-6 * 36 * 5 ** 2, 9)
})

test('the positive one of two half turns', () => {
  expect(withinTurns(Math.PI, -10, 10)).toBe(Math.PI)
  expect(withinTurns(-Math.PI, -10, 10)).toBe(Math.PI)
  expect(withinTurns(-Math.PI, -10, 0)).toBe(-Math.PI)
})

test('opposite causes along one line add in size, also where the line has no part along an axis', () => {
  expect(merged([[1, 0, 2], [-2, 0, -4], [0, 1, 0]])).toEqual([[3, 0, 6], [0, 1, 0]]) // biome-ignore format: rows
  expect(merged([[0, 0, 2], [0, 0, 0], [0, 0, -1]])).toEqual([[0, 0, 3]]) // biome-ignore format: rows
})

test('a parabola has one second derivative, a line none', () => {
  const out = new Float64Array(3)
  bezierInto(out, 0, [0, 1, 4], 0.25, new Float64Array(3))
  // (1 − u)² 0 + 2 u (1 − u) 1 + u² 4, by hand at a quarter.
  expect([...out]).toEqual([0.625, 3, 4])
  bezierInto(out, 0, [1, 4], 0.5, new Float64Array(2))
  expect([...out]).toEqual([2.5, 3, 0])
})

test('the outline of the leg plane lies on the circles of its knee limits and of its hip limits', () => {
  const limits = { hip: { lowest: '-60 deg', highest: '60 deg' }, knee: { lowest: '30 deg', highest: '120 deg' } } as const
  const leg = threeJointLeg({ hipOffset: '0 mm', upperLink: '165 mm', lowerLink: '180 mm', limits })
  const [l1, l2] = [0.165, 0.18]
  const outline = legPlaneOutlineSi(leg, 8)
  expect(outline).toHaveLength(33)
  expect(outline[32]).toEqual(outline[0])
  const [low, high] = [Math.PI / 6, (2 * Math.PI) / 3]
  for (const [x, z] of outline.slice(0, 9))
    expect(Math.hypot(x, z)).toBeCloseTo(Math.sqrt(l1 * l1 + l2 * l2 + 2 * l1 * l2 * Math.cos(low)), 12)
  for (const [x, z] of outline.slice(16, 25))
    expect(Math.hypot(x, z)).toBeCloseTo(Math.sqrt(l1 * l1 + l2 * l2 + 2 * l1 * l2 * Math.cos(high)), 12)
  // With the hip at a limit the foot goes round the knee.
  const knee = (hip: number) => [-l1 * Math.sin(hip), -l1 * Math.cos(hip)] as const
  for (const [x, z] of outline.slice(8, 17)) expect(Math.hypot(x - knee(Math.PI / 3)[0], z - knee(Math.PI / 3)[1])).toBeCloseTo(l2, 12)
})

test('a cause that is no record is named', () => {
  const leg = threeJointLeg({ hipOffset: '58 mm', upperLink: '165 mm', lowerLink: '180 mm' })
  const angles = { sidewaysHip: '0 deg', hip: '30 deg', knee: '-60 deg' } as const
  for (const source of [null, 3]) expect(() => footError(leg, { angles, sources: [source] as never })).toThrow(/sources/)
})

test('a nearest point is called so when a quarter of twenty searches agree on it', () => {
  const axis = { x: 0, y: 1, z: 0 }
  const chain = chainFromScrews({
    screws: [
      { axis: { x: 1, y: 0, z: 0 }, point: { x: '0 mm', y: '0 mm', z: '0 mm' } },
      { axis, point: { x: '0 mm', y: '58 mm', z: '0 mm' } },
      { axis, point: { x: '0 mm', y: '58 mm', z: '-165 mm' } },
    ],
    tool: { position: { x: '0 mm', y: '58 mm', z: '-345 mm' } },
  })
  const limits = [
    { lowest: '-35 deg', highest: '40 deg' },
    { lowest: '-75 deg', highest: '60 deg' },
    { lowest: '12 deg', highest: '140 deg' },
  ] as const
  const agreed: number[] = []
  // Out of reach, at ends of the joints that only some of the searches come to.
  for (const [x, y, z] of [
    [-222, 451, 265],
    [-245, 511, 214],
    [-360, -298, 221],
    [-297, 522, 275],
  ] as const) {
    const position = { x: [x, 'mm'], y: [y, 'mm'], z: [z, 'mm'] } as const
    const { ended, agreeing, searches } = chain.inverse({ position, seed: ['0 deg', '0 deg', '30 deg'], limits, restarts: 19 })
    expect(searches).toBe(20)
    expect(ended).toBe(agreeing >= 5 ? 'nearestFound' : 'localStop')
    agreed.push(agreeing)
  }
  expect(agreed.some((count) => count === 3 || count === 4)).toBe(true)
  expect(agreed.some((count) => count >= 5)).toBe(true)
})

test('the chart of torque and speed draws what the motor gives, in revolutions per minute', () => {
  const demand = { cloud: { speed: [10], torque: [1] }, peakTorque: { si: 2 }, peakSpeed: { si: 20 }, rmsTorque: { si: 1.6 } } as never
  const name = 'what the motor gives'
  expect(JSON.stringify(torqueSpeedChart(demand))).not.toContain(name)
  const limit = [
    [0, 3],
    [100, 0],
  ] as const
  // 30/π revolutions per minute for each radian per second.
  const points = JSON.stringify(torqueSpeedChart(demand, limit)).match(/\{"x":[^{}]*"what the motor gives"\}/g) as string[]
  expect(points[0]).toContain('"x":0,"y":3,')
  expect(points[1]).toMatch(/"x":954\.9296585\d*,"y":0,/)
})
