import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import {
  activatedPretensionLeft,
  arcRecovery,
  arcWindup,
  type CordDriveState,
  cordDrive,
  fibreTautTension,
  loadPath,
  slackTorque,
  slipTorque,
} from '../../src/capstan/index.js'
import { DRIVE } from './demo-drive.js'

// Written by tests/oracles/capstan.py (scipy).
const oracle = JSON.parse(readFileSync(new URL('../oracles/capstan.json', import.meta.url), 'utf8')) as Record<string, number> & {
  chainCycle60um: { loss: number; turning: number[] }
}
const arc = { storedTension: 60, friction: 0.15, centreLineRadius: 0.008, axialRigidity: 20000 }
const fibre = { frictionFactor: 0.25, exponent: 0.9, centreLineRadius: 0.008, wrapAngle: 4 * Math.PI }
const recovery = (tension: number) => arcRecovery.si({ ...arc, peakTension: 90, tension })
const R1: CordDriveState = {
  ...DRIVE,
  friction: 0.15,
  hold: 'frictionOnly',
}
const slip = slipTorque.si({ ...R1, drumFriction: undefined })

test.each([
  ['arcTaut', arcWindup.si({ ...arc, tension: 90, wrapAngle: 6 * Math.PI }).feed],
  ['arcSlack', arcWindup.si({ ...arc, tension: 30, wrapAngle: 6 * Math.PI }).feed],
  ['arcTautAtAnchor', arcWindup.si({ ...arc, tension: 90, wrapAngle: 1 }).feed],
  ['arcSlackAtAnchor', arcWindup.si({ ...arc, tension: 30, wrapAngle: 1 }).feed],
  ['arcUnloadedTo70', recovery(70).remaining],
  ['arcLostMotion', recovery(60).remaining],
  ['slipTorque', slip.torque],
  ['slipTaut', slip.tautTension],
  ['fibre60', fibreTautTension.si({ ...fibre, slackTension: 60 }).tautTension],
  ['fibre1', fibreTautTension.si({ ...fibre, slackTension: 1 }).tautTension],
  [
    'relaxed30Days40C',
    activatedPretensionLeft.si({
      pretension: 100,
      fibreArea: 0.5128205128205128e-6,
      axialRigidity: 37340,
      referenceRate: 1e-9,
      referenceStress: 5e8,
      referenceTemperature: 293.15,
      temperature: 313.15,
      time: 30 * 86400,
      activationEnergy: 1.5 * 1.602176634e-19,
      activationVolume: 4.5e-29,
    }).tension,
  ],
] as const)('%s by scipy', (name, ours) => {
  expect(Math.abs(ours / (oracle[name] ?? Number.NaN) - 1)).toBeLessThan(1e-8)
})

test('a settled load cycle turns where the discretised Coulomb chain turns, and loses what it loses', () => {
  const { loss, turning } = oracle.chainCycle60um
  const peak = 60e-6 / 0.048
  const corners = [0, 1, -1, 1, -1, 1]
  const angles = corners
    .slice(1)
    .flatMap((to, leg) => Array.from({ length: 40 }, (_, i) => peak * ((corners[leg] ?? 0) + ((to - (corners[leg] ?? 0)) * (i + 1)) / 40)))
  const path = loadPath(R1, 'angle', angles)
  turning.forEach((torque, leg) => {
    expect(Math.abs((path[40 * leg + 39]?.torque ?? 0) / torque - 1)).toBeLessThan(2e-5)
  })
  let work = 0
  for (let i = 120; i < 200; i++) {
    const [p, q] = [path[i - 1], path[i]]
    work += 0.5 * ((p?.torque ?? 0) + (q?.torque ?? 0)) * ((q?.windup ?? 0) - (p?.windup ?? 0))
  }
  expect(Math.abs(work / loss - 1)).toBeLessThan(1e-3)
})

test('a drive asked for the loss of its history gives that of the chain', () => {
  // Both add up the loop in straight pieces, 24 to a leg here and 40 there: that is a quarter of a per cent.
  const d = cordDrive({
    pinionRadius: '8 mm',
    drumRadius: '48 mm',
    centreDistance: '60 mm',
    pinionTurns: 2,
    pinionWrap: '3 turn',
    span: '20 mm',
    drumWrap: '0.5 turn',
    axialRigidity: '20 kN',
    pretension: '60 N',
    friction: 0.15,
  })
  const loss = (turns: number) =>
    d.path({ angles: Array.from({ length: turns }, (_, i) => [i % 2 === 0 ? 1.25 : -1.25, 'mrad'] as const) }).atLowFriction.loss.si
  expect(Math.abs((loss(5) - loss(3)) / oracle.chainCycle60um.loss - 1)).toBeLessThan(3e-3)
})

test('beyond the slack limit a clamped cord carries on one branch and comes back as quadrature says', () => {
  const d: CordDriveState = { ...R1, hold: 'clampedMidPinion' }
  expect(slackTorque.si({ ...d, drumFriction: undefined, slackShare: 0 }).torque / (oracle.clampedSlackTorque ?? 0)).toBeCloseTo(1, 9)
  const [beyond, back] = loadPath(d, 'torque', [20, 0])
  expect(beyond?.state).toBe('slackSpan')
  expect((beyond?.windup ?? 0) / (oracle.clampedWindup20 ?? 0)).toBeCloseTo(1, 7)
  expect(back?.state).toBe('tight')
  expect(back?.looseLength).toBe(0)
  expect((back?.tautTension ?? 0) / (oracle.clampedReturnTension ?? 0)).toBeCloseTo(1, 7)
  expect((back?.windup ?? 0) / (oracle.clampedReturnWindup ?? 0)).toBeCloseTo(1, 6)
})
