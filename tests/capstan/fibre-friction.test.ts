import { readFileSync } from 'node:fs'
import * as fc from 'fast-check'
import { expect, test } from 'vitest'
import { type CordDriveState, cordDrive, driveWindup, loadPath, slackTorque, slipTorque, travelLimits } from '../../src/capstan/index.js'
import { brokenStatements } from '../../src/formula/index.js'

// Written by tests/oracles/capstan-fibre.py (scipy): the law integrated along every arc.
const oracle = JSON.parse(readFileSync(new URL('../oracles/capstan-fibre.json', import.meta.url), 'utf8')) as {
  mu: number
  n: number
  pinion: number
  taut: number
  slack: number
  torque: number
  tension: number
  windup: number
  slip: number
}[]

test.each(oracle)('exponent $n, by integration', (row) => {
  const d: CordDriveState = {
    axialRigidity: 20000,
    pretension: 60,
    pinionRadius: 0.008,
    drumRadius: 0.048,
    span: 0.02,
    pinionWrap: row.pinion,
    drumWrapTaut: row.taut,
    drumWrapSlack: row.slack,
    friction: row.mu,
    frictionExponent: row.n,
    hold: 'frictionOnly',
  }
  const wound = driveWindup.si({ ...d, torque: row.torque })
  expect(wound.state).toBe('tight')
  expect(wound.tautTension / row.tension).toBeCloseTo(1, 8)
  expect(wound.windup / row.windup).toBeCloseTo(1, 8)
  expect(slipTorque.si(d).torque / row.slip).toBeCloseTo(1, 8)
})

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const drives = fc.record({
  axialRigidity: between(5e3, 1e5),
  pretension: between(10, 400),
  pinionRadius: between(0.004, 0.012),
  drumRadius: between(0.02, 0.08),
  span: between(0.005, 0.1),
  pinionWrap: between(2, 20),
  drumWrapTaut: between(0.2, 7),
  drumWrapSlack: between(0.2, 7),
  friction: between(0.05, 0.4),
  frictionExponent: between(0.67, 0.99),
  hold: fc.constantFrom('frictionOnly' as const, 'clampedMidPinion' as const),
})
const limitOf = (d: CordDriveState) => {
  const { slip, slack } = { slip: slipTorque.si(d).torque, slack: slackTorque.si({ ...d, slackShare: 0.01 }).torque }
  return d.hold === 'clampedMidPinion' ? slack : Math.min(slip, slack)
}

test('an exponent next to 1 is Coulomb friction', () => {
  fc.assert(
    fc.property(drives, between(0.1, 0.9), (x, share) => {
      const coulomb = { ...x, frictionExponent: undefined, drumFriction: x.friction }
      const near = { ...x, frictionExponent: 1 - 1e-7, drumFriction: x.friction }
      const torque = share * limitOf(coulomb)
      expect(driveWindup.si({ ...near, torque }).windup / driveWindup.si({ ...coulomb, torque }).windup).toBeCloseTo(1, 5)
      expect(slipTorque.si(near).torque / slipTorque.si(coulomb).torque).toBeCloseTo(1, 5)
    }),
  )
})

test('the tangent is the slope, and the state changes at the limit', () => {
  fc.assert(
    fc.property(drives, between(0.1, 0.9), (d, share) => {
      const limit = limitOf(d)
      const torque = share * limit
      const at = (t: number) => driveWindup.si({ ...d, torque: t })
      const step = 1e-4 * torque
      expect((2 * step) / (at(torque + step).windup - at(torque - step).windup) / at(torque).tangentStiffness).toBeCloseTo(1, 2)
      expect(at(0.9995 * limit).state).toBe('tight')
      expect(at(1.0005 * limit).state).not.toBe('tight')
    }),
  )
})

test('a drive takes the exponent; histories and an elastic contact reject it by name', () => {
  const given = {
    pinionRadius: '7.5 mm',
    drumRadius: '46.5 mm',
    centreDistance: '62 mm',
    pinionTurns: 3,
    drumWrap: '200 deg',
    travel: '110 deg',
    axialRigidity: '35 kN',
    pretension: '140 N',
    friction: 0.1,
  } as const
  const fibre = cordDrive({ ...given, frictionExponent: 0.8 })
  const d = fibre.si.atLowFriction
  expect(fibre.limits().atLowFriction.slipTorque?.si).toBe(
    travelLimits.si({ ...d, drumWrap: d.drumWrapTaut, travel: (110 * Math.PI) / 180 }).slipTorque,
  )
  // The drum presses less on its cord, so that it grips better than the pinion.
  expect(fibre.windup('6 N m').atLowFriction.windup.si).toBeLessThan(cordDrive(given).windup('6 N m').atLowFriction.windup.si)
  expect(cordDrive({ ...given, frictionExponent: 1 }).windup('6 N m').atLowFriction.windup.si).toBe(
    cordDrive(given).windup('6 N m').atLowFriction.windup.si,
  )
  expect(() => fibre.path({ torques: ['1 N m'] })).toThrow('capstan.cordDrive.path: frictionExponent is 0.8; must be omitted')
  expect(() => loadPath(d, 'torque', [1])).toThrow('frictionExponent')
  expect(() => cordDrive({ ...given, frictionExponent: 0.8, contactStiffness: '5e6 N/m^2' })).toThrow(
    'must be omitted with a friction exponent below 1',
  )
  // Below 2/3, the exponent of round elastic contacts, the friction of the slack branch has no measurement behind it.
  const told = (n: number) =>
    cordDrive({ ...given, frictionExponent: n })
      .limits()
      .atLowFriction.slipTorque?.notes?.map(({ text }) => text)
      .join() ?? ''
  expect(told(0.67)).not.toContain('exponent')
  expect(told(0.3)).toContain('friction exponent of 0.3 is below 0.66')
  for (const each of [slipTorque, slackTorque, driveWindup, travelLimits]) {
    const statements = (n: number) => brokenStatements(each, { ...d, frictionExponent: n }, { state: 'tight', tautTension: 0 })
    expect(statements(0.67).join()).not.toContain('exponent')
    expect(statements(0.3).join()).toContain('friction exponent of at least 0.66')
  }
})
