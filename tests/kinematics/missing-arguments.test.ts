import { describe, expect, test } from 'vitest'
import {
  chainFromScrews,
  driveCoupling,
  footError,
  footStiffness,
  strideDemand,
  strideTable,
  threeJointLeg,
} from '../../src/kinematics/index.js'
import { InputError } from '../../src/units/index.js'

const leg = threeJointLeg({ hipOffset: '40 mm', upperLink: '150 mm', lowerLink: '160 mm' })
const chain = chainFromScrews({
  screws: [{ axis: { x: 0, y: 0, z: 1 }, point: { x: '0 m', y: '0 m', z: '0 m' } }],
  tool: { position: { x: '1 m', y: '0 m', z: '0 m' } },
})
const coupling = driveCoupling({ knee: 'parallelogram' })

/** Calls as plain JavaScript can make them. */
const CALLS: readonly (readonly [string, (nothing: never) => unknown])[] = [
  ['inverse of a chain', (nothing) => chain.inverse(nothing)],
  ['inverse dynamics of a chain', (nothing) => chain.inverseDynamics(nothing)],
  ['forward dynamics of a chain', (nothing) => chain.forwardDynamics(nothing)],
  ['limits of the drums', (nothing) => coupling.actuatorLimits(nothing)],
  ['error of the foot', (nothing) => footError(leg, nothing)],
  ['stiffness of the foot', (nothing) => footStiffness(leg, nothing)],
  ['demand of a stride', (nothing) => strideDemand(nothing)],
  ['table of a stride', (nothing) => strideTable(nothing)],
]

describe.each(CALLS)('%s', (_, call) => {
  test.each([undefined, null, 5])('without its argument (%s) is one clear error', (nothing) => {
    expect(() => call(nothing as never)).toThrow(InputError)
  })
})
