import { expect, test } from 'vitest'
import { type CordDriveState, historyWindup, loadPath } from '../../src/capstan/index.js'
import { randomStream } from '../../src/numeric/index.js'
import { fit as fitted } from '../../src/study/index.js'

const hip: CordDriveState = {
  axialRigidity: 35000,
  pretension: 140,
  pinionRadius: 0.0075,
  drumRadius: 0.0465,
  span: 0.03046,
  pinionWrap: 24.1,
  drumWrapTaut: 3.49,
  drumWrapSlack: 3.49,
  friction: 0.13,
  hold: 'frictionOnly',
}
const torques = [2, 4, 6, 4, 2, 0, -2, -4, -6, -4, -2, 0, 2, 4, 6, 7, 8, 9, 6, 3, 0, -3, -6, -9, -6, -3, 0, 3, 6, 9]

test('a reading is the point of the load path', () => {
  const path = loadPath(hip, 'torque', torques)
  torques.forEach((_torque, i) => {
    expect(historyWindup.si({ ...hip, torques, reading: i + 1, zeroAngle: 0.001 })).toBe(0.001 + (path[i]?.windup ?? Number.NaN))
  })
  // A list that is changed in place is another history.
  const changed = [...torques]
  const at = () => historyWindup.si({ ...hip, torques: changed, reading: 2, zeroAngle: 0 })
  const before = at()
  changed[1] = 5
  expect(at()).toBeGreaterThan(before)
  // Another history with the same parameters is another history.
  expect(historyWindup.si({ ...hip, torques: [3], reading: 1, zeroAngle: 0 })).toBe(loadPath(hip, 'torque', [3])[0]?.windup)
  expect(historyWindup.si({ ...hip, friction: 0.2, torques, reading: 3, zeroAngle: 0 })).toBe(
    loadPath({ ...hip, friction: 0.2 }, 'torque', torques)[2]?.windup,
  )
})

const truth = { axialRigidity: 35000, friction: 0.13, pretension: 140, zeroAngle: 0.0004 }
const fitTo = (measured: readonly number[]) =>
  fitted(historyWindup, {
    parameters: {
      axialRigidity: '25 kN',
      friction: { start: 0.2, low: 0.02, high: 1 },
      pretension: { start: '100 N', low: '50 N', high: '400 N' },
      zeroAngle: { start: '0 rad', low: '-0.01 rad', high: '0.01 rad' },
    },
    data: { reading: torques.map((_torque, i) => i + 1) },
    measured: { unit: 'rad', values: measured },
    fixed: {
      pinionRadius: '7.5 mm',
      drumRadius: '46.5 mm',
      span: '30.46 mm',
      pinionWrap: '24.1 rad',
      drumWrapTaut: '3.49 rad',
      drumWrapSlack: '3.49 rad',
      torques: torques.map((t) => [t, 'N m'] as const),
    },
    confidence: 0.999,
  })
const exact = loadPath(hip, 'torque', torques).map((p) => p.windup + truth.zeroAngle)

test('rigidity, friction and pretension of a drive come out of a loop of load and deflection', () => {
  // Rounded as an encoder reads them; without any scatter at all a fit ends in rounding.
  const found = fitTo(exact.map((angle) => Math.round(angle * 1e7) / 1e7))
  expect(found.converged).toBe(true)
  for (const { path, value, state } of found.parameters) {
    expect(state).toBe('determined')
    expect(value.si / truth[path as keyof typeof truth]).toBeCloseTo(1, 2)
  }
})

test('a loop with the noise of a dial gauge holds them within its intervals', () => {
  const noise = randomStream(7)
  const found = fitTo(exact.map((angle) => angle + 3e-5 * noise.normal(0, 1)))
  expect(found.converged).toBe(true)
  for (const { path, interval, value } of found.parameters) {
    const [low, high] = [interval?.[0].si ?? Number.NaN, interval?.[1].si ?? Number.NaN]
    expect(truth[path as keyof typeof truth]).toBeGreaterThan(low)
    expect(truth[path as keyof typeof truth]).toBeLessThan(high)
    // Good enough to design with: not an interval that decides nothing.
    expect((high - low) / value.si, path).toBeLessThan(1.5)
  }
})

test('bad input is one clear error', () => {
  const given = {
    torques: ['1 N m', '2 N m'],
    axialRigidity: '35 kN',
    pretension: '140 N',
    pinionRadius: '7.5 mm',
    drumRadius: '46.5 mm',
    span: '30 mm',
    pinionWrap: '3 turn',
    drumWrapTaut: '200 deg',
    drumWrapSlack: '200 deg',
    friction: 0.1,
  } as const
  expect(() => historyWindup({ ...given, reading: 3 })).toThrow('reading is 3; must not exceed the number of torques')
  expect(() => historyWindup({ ...given, reading: 1, friction: 0 })).toThrow('friction is 0; must be above 0 in a history')
  expect(historyWindup({ ...given, reading: 2 }).si).toBeGreaterThan(0)
})
