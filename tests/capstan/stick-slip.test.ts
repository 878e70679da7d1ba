import * as fc from 'fast-check'
import { expect, test } from 'vitest'
import { driveWindup, loadPath, slipTorque, stickSlip } from '../../src/capstan/index.js'
import { DRIVE } from './demo-drive.js'

const x = DRIVE
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true })

test('one coefficient is the slip torque, without a drop; two keep it between the two slip torques', () => {
  fc.assert(
    fc.property(between(0.05, 0.4), between(0.3, 1), (staticFriction, share) => {
      const kineticFriction = share * staticFriction
      const one = stickSlip.si({ ...x, staticFriction, kineticFriction: staticFriction })
      expect(one.slidingTorque).toBe(slipTorque.si({ ...x, friction: staticFriction }).torque)
      expect(one.torqueDrop).toBe(0)
      expect(one.jump).toBe(0)
      const two = stickSlip.si({ ...x, staticFriction, kineticFriction })
      expect(two.slidingTorque).toBe(slipTorque.si({ ...x, friction: kineticFriction }).torque)
      expect(two.breakawayTorque).toBeLessThanOrEqual(one.slidingTorque * (1 + 1e-9))
      expect(two.breakawayTorque).toBeGreaterThanOrEqual(two.slidingTorque)
      expect(two.leastTorque).toBeCloseTo(2 * two.slidingTorque - two.breakawayTorque, 12)
    }),
  )
})

test('the jump is that of a slider on a spring, integrated', () => {
  const y = stickSlip.si({ ...x, staticFriction: 0.15, kineticFriction: 0.12 })
  const d = { ...x, friction: 0.12, drumFriction: 0.12, hold: 'frictionOnly' as const }
  const stiffness = driveWindup.si({ ...d, torque: 0.99999 * y.slidingTorque }).tangentStiffness
  // Spring torque falls from breakaway as the load moves on against the sliding torque; semi-implicit steps over half an oscillation.
  const inertia = 0.01
  let [angle, speed] = [0, 0]
  const step = 1e-5 * Math.sqrt(inertia / stiffness)
  do {
    speed += ((y.breakawayTorque - stiffness * angle - y.slidingTorque) / inertia) * step
    angle += speed * step
  } while (speed > 0)
  expect(angle / y.jump).toBeCloseTo(1, 3)
  // A slow load reaches the sliding torque only, as the slip arcs spread at the kinetic coefficient.
  expect(loadPath(d, 'angle', [0.1])[0]?.torque).toBeCloseTo(y.slidingTorque, 9)
  expect(() => stickSlip({ ...given, staticFriction: 0.1, kineticFriction: 0.2 })).toThrow('must not exceed the static coefficient')
})

const given = {
  axialRigidity: '20 kN',
  pretension: '60 N',
  pinionRadius: '8 mm',
  drumRadius: '48 mm',
  span: '20 mm',
  pinionWrap: '3 turn',
  drumWrapTaut: '180 deg',
  drumWrapSlack: '180 deg',
} as const
