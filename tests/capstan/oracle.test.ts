import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { activatedPretensionLeft, arcRecovery, arcWindup, fibreTautTension, slipTorque } from '../../src/capstan/index.js'

// Written by tests/oracles/capstan.py (scipy).
const oracle = JSON.parse(readFileSync(new URL('../oracles/capstan.json', import.meta.url), 'utf8')) as Record<string, number>
const arc = { storedTension: 60, friction: 0.15, centreLineRadius: 0.008, axialRigidity: 20000 }
const fibre = { frictionFactor: 0.25, exponent: 0.9, centreLineRadius: 0.008, wrapAngle: 4 * Math.PI }
const recovery = (tension: number) => arcRecovery.si({ ...arc, peakTension: 90, tension })
const slip = slipTorque.si({
  axialRigidity: 20000,
  pretension: 60,
  pinionRadius: 0.008,
  drumRadius: 0.048,
  span: 0.02,
  pinionWrap: 6 * Math.PI,
  drumWrapTaut: Math.PI,
  drumWrapSlack: Math.PI,
  friction: 0.15,
  drumFriction: undefined,
})

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
