import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  driveCoupling,
  drumTorques,
  fourBarClearance,
  fourBarDeadPoint,
  fourBarKneePose,
  kneeDriveAccelerationTorque,
  kneeDriveInertia,
  kneeDrumMotion,
  kneePinForce,
  rodForce,
  rotorGyroscopicTorque,
  sidewaysHipTorque,
} from '../../src/kinematics/index.js'

const within = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const motorOn = fc.constantFrom('body' as const, 'thigh' as const)
const kneeRatio = within(0.2, 3).chain((n) => fc.constantFrom(n, -n))
const linkage = { ground: 0.15, crank: 0.03, coupler: 0.148, rocker: 0.026, rockerAngleAtStraightKnee: 1.9 }
const fourBarCoupling = driveCoupling({
  knee: 'fourBar',
  fourBar: {
    ground: '150 mm',
    crank: '30 mm',
    coupler: '148 mm',
    rocker: '26 mm',
    rockerAngleAtStraightKnee: '1.9 rad',
    crankAngleAtStraightKnee: '1.9 rad',
  },
})

describe('knee drives', () => {
  test('power is the same in the joints and at the drums', () => {
    fc.assert(
      fc.property(motorOn, kneeRatio, within(-9, 9), within(-9, 9), within(-9, 9), within(-9, 9), (on, n, hip, knee, hipRate, kneeRate) => {
        const held = drumTorques.si({ motorOn: on, kneeRatio: n, hipTorque: hip, kneeTorque: knee })
        const rest = { ratioSlope: 0, hipAcceleration: 0, kneeAcceleration: 0 }
        const { rate } = kneeDrumMotion.si({ motorOn: on, kneeRatio: n, hipRate, kneeRate, ...rest })
        expect(held.hip * hipRate + held.knee * rate).toBeCloseTo(hip * hipRate + knee * kneeRate, 10)
      }),
    )
  })

  test('the foot under the hip loads the hip drive of a motor on the body as much as the knee drive', () => {
    const held = drumTorques({ motorOn: 'body', hipTorque: '0 N m', kneeTorque: '-3.2 N m' })
    expect(held.hip.si).toBe(-held.knee.si)
    expect(drumTorques({ motorOn: 'thigh', hipTorque: '0 N m', kneeTorque: '-3.2 N m' }).hip.si).toBeCloseTo(0, 15)
  })

  test('torque without any is refused at the dead point of the rocker', () => {
    expect(() => drumTorques({ motorOn: 'body', kneeRatio: 0, hipTorque: '0 N m', kneeTorque: '1 N m' })).toThrow(/kneeRatio.*dead point/s)
  })

  test('the formulas agree with the coupling of the drives, four-bar included', () => {
    const out = new Float64Array(3)
    fc.assert(
      fc.property(within(-0.9, 0.9), within(-9, 9), within(-9, 9), within(-90, 90), within(-90, 90), (kneeAngle, ...x) => {
        const [hipRate, kneeRate, hipAcceleration, kneeAcceleration] = x as [number, number, number, number]
        const pose = fourBarKneePose.si({ ...linkage, crankSide: 'positive', kneeAngle })
        const drive = { motorOn: 'body', kneeRatio: pose.ratio, ratioSlope: pose.ratioSlope } as const
        const drum = kneeDrumMotion.si({ ...drive, hipRate, kneeRate, hipAcceleration, kneeAcceleration })
        const q = [0, 0.3, kneeAngle]
        fourBarCoupling.si.actuatorAccelerationsInto(out, 0, q, [0, hipRate, kneeRate], [0, hipAcceleration, kneeAcceleration])
        expect(drum.acceleration).toBeCloseTo(out[2]!, 9)
        fourBarCoupling.si.actuatorRatesInto(out, 0, q, [0, hipRate, kneeRate])
        expect(drum.rate).toBeCloseTo(out[2]!, 10)
      }),
    )
  })

  test('drum and rotor add an inertia that no motion makes negative, and torques that are its product with the accelerations', () => {
    fc.assert(
      fc.property(
        motorOn,
        kneeRatio,
        within(-9, 9),
        within(0, 1e-3),
        within(0, 1e-3),
        within(-90, 90),
        within(-90, 90),
        (on, n, N, J, Id, a, b) => {
          const drive = { motorOn: on, kneeRatio: n, motorRatio: N, rotorInertia: J, drumInertia: Id }
          const m = kneeDriveInertia.si(drive)
          expect(m.hip * m.knee).toBeGreaterThanOrEqual(m.coupling * m.coupling * (1 - 1e-12))
          const t = kneeDriveAccelerationTorque.si({ ...drive, ratioSlope: 0, kneeRate: 0, hipAcceleration: a, kneeAcceleration: b })
          expect(t.hip).toBeCloseTo(m.hip * a + m.coupling * b, 9)
          expect(t.knee).toBeCloseTo(m.coupling * a + m.knee * b, 9)
        },
      ),
    )
  })

  test('a mirrored linkage drives alike with the sides exchanged', () => {
    fc.assert(
      fc.property(within(-1.5, 1), (kneeAngle) => {
        const one = fourBarKneePose.si({ ...linkage, crankSide: 'positive', kneeAngle })
        const other = fourBarKneePose.si({ ...linkage, rockerAngleAtStraightKnee: -1.9, crankSide: 'negative', kneeAngle: -kneeAngle })
        expect(other.state).toBe(one.state)
        expect(other.ratio).toBeCloseTo(one.ratio, 10)
        expect(other.ratioSlope).toBeCloseTo(-one.ratioSlope, 9)
        expect(other.crankAngle).toBeCloseTo(-one.crankAngle, 10)
      }),
    )
  })
})

describe('dead points', () => {
  const near = (state: string, kneeAngle: number) => ({ state, kneeAngle: expect.closeTo(kneeAngle, 6) as unknown })

  test('the poses around a dead point lose the ratio there', () => {
    const inside = { ...linkage, crankSide: 'positive', kneeLowest: -3, kneeHighest: 3 } as const
    const { kneeAngle, state } = fourBarDeadPoint.si(inside)
    expect(state).toBe('rockerDeadPoint')
    expect(fourBarKneePose.si({ ...inside, kneeAngle }).ratio).toBeCloseTo(0, 9)
    expect(fourBarKneePose.si({ ...inside, kneeAngle }).state).toBe('rockerDeadPoint')
    const rod = { kneeTorque: 1, crank: 0.03, rocker: 0.026, crankAngle: 1.2, couplerAngle: 0.3, rockerAngle: 0.3 }
    expect(rodForce.si(rod)).toMatchObject({ state: 'deadPoint', force: Number.POSITIVE_INFINITY })
    expect(rodForce.si({ ...rod, kneeTorque: 0 })).toMatchObject({ state: 'unloaded', force: 0 })
  })

  test('a parallelogram is dead with the crank along the link, at both ends of its half turn', () => {
    const equal = { ground: 0.15, crank: 0.03, coupler: 0.15, rocker: 0.03, rockerAngleAtStraightKnee: 1.5, crankSide: 'positive' } as const
    expect(fourBarDeadPoint.si({ ...equal, kneeLowest: -1, kneeHighest: 1 })).toMatchObject({ state: 'drivesThroughout' })
    expect(fourBarDeadPoint.si({ ...equal, kneeLowest: -1, kneeHighest: 1 }).margin).toBeCloseTo(0.5, 9)
    expect(fourBarDeadPoint.si({ ...equal, kneeLowest: 0, kneeHighest: 2 })).toMatchObject(near('crankDeadPoint', Math.PI - 1.5))
    expect(fourBarDeadPoint.si({ ...equal, kneeLowest: -1.6, kneeHighest: 1 })).toMatchObject(near('crankDeadPoint', -1.5))
  })

  test('wider limits never have more margin, and limits beyond the closure are apart', () => {
    const rocker = {
      ground: 0.15,
      crank: 0.03,
      coupler: 0.12,
      rocker: 0.05,
      rockerAngleAtStraightKnee: -1.2,
      crankSide: 'negative',
    } as const
    fc.assert(
      fc.property(within(-1.7, 0), within(0, 1), within(0, 0.3), (low, range, more) => {
        const narrow = fourBarDeadPoint.si({ ...rocker, kneeLowest: low, kneeHighest: low + range })
        const wide = fourBarDeadPoint.si({ ...rocker, kneeLowest: low - more, kneeHighest: low + range + more })
        expect(wide.margin).toBeLessThanOrEqual(narrow.margin + 1e-12)
      }),
    )
    expect(fourBarDeadPoint.si({ ...rocker, kneeLowest: 0, kneeHighest: 0.2 }).state).toBe('apart')
    expect(fourBarKneePose.si({ ...rocker, kneeAngle: 0.1 })).toMatchObject({ state: 'apart', ratio: Number.POSITIVE_INFINITY })
  })
})

describe('clearance from dead points', () => {
  const equal = {
    ground: 0.165,
    crank: 0.034,
    coupler: 0.165,
    rocker: 0.034,
    rockerAngleAtStraightKnee: -2.88,
    crankSide: 'negative',
    kneeLowest: 1.5,
    kneeHighest: 2.2,
    lengthError: 0,
  } as const

  test('of equal pairs it is the distance to the line', () => {
    expect(fourBarClearance.si(equal).clearance).toBeCloseTo(2.88 - 2.2, 9)
  })

  test('it changes by little where a dead point comes or goes with a tenth of a millimetre', () => {
    fc.assert(
      fc.property(within(0.16, 0.17), within(0.03, 0.036), within(0, 4e-4), (coupler, crank, lengthError) => {
        const one = fourBarClearance.si({ ...equal, coupler, crank, lengthError }).clearance
        const other = fourBarClearance.si({ ...equal, coupler: coupler + 1e-6, crank, lengthError }).clearance
        // A dead point that appears moves away from the line as the root of the length.
        expect(Math.abs(other - one)).toBeLessThan(0.03)
      }),
    )
  })

  test('it is never more than the distance to a dead point, and larger errors or wider limits never add to it', () => {
    fc.assert(
      fc.property(
        within(0.16, 0.17),
        within(0.03, 0.036),
        within(0, 3e-4),
        within(0, 3e-4),
        within(0, 0.2),
        (coupler, crank, e, more, wide) => {
          const given = { ...equal, coupler, crank, lengthError: e }
          const { clearance } = fourBarClearance.si(given)
          const { margin } = fourBarDeadPoint.si(given)
          expect(clearance).toBeLessThanOrEqual(margin + 1e-9)
          expect(fourBarClearance.si({ ...given, lengthError: e + more }).clearance).toBeLessThanOrEqual(clearance + 1e-6)
          expect(fourBarClearance.si({ ...given, kneeHighest: given.kneeHighest + wide }).clearance).toBeLessThanOrEqual(clearance + 1e-6)
        },
      ),
    )
  })
})

describe('forces of links', () => {
  test('the rod acts on the shank as its torque, and the pins balance the ground', () => {
    fc.assert(
      fc.property(within(-1, 1), within(0.3, 2), within(-40, 40), within(10, 90), (hipAngle, crankAngle, x, z) => {
        const kneeTorque = 2.5
        const place = { crank: 0.03, rocker: 0.03, crankAngle, couplerAngle: 0, rockerAngle: crankAngle }
        const rod = rodForce.si({ kneeTorque, ...place })
        expect(rod.crankTorque).toBeCloseTo(kneeTorque, 10)
        const pin = kneePinForce.si({ groundForward: x, groundUpward: z, rodForce: rod.force, hipAngle, couplerAngle: 0 })
        expect(Math.hypot(pin.compression, pin.shear)).toBeCloseTo(pin.force, 9)
        // A rod along the link changes its compression alone.
        const without = kneePinForce.si({ groundForward: x, groundUpward: z, rodForce: 0, hipAngle, couplerAngle: 0 })
        expect(pin.shear).toBeCloseTo(without.shear, 9)
        expect(pin.compression - without.compression).toBeCloseTo(rod.force, 9)
      }),
    )
  })

  test('a mirrored leg holds the opposite sideways torque', () => {
    const body = { mass: 0.2, heightRate: 0.3, heightAcceleration: 2, inertia: 1e-4, lean: 0.3, leanRate: -2 }
    fc.assert(
      fc.property(
        within(-1, 1),
        within(-4, 4),
        within(-40, 40),
        within(0, 0.08),
        within(-9, 9),
        (angle, rate, acceleration, offset, left) => {
          const side = (sign: 1 | -1) =>
            sidewaysHipTorque.si({
              angle: sign * angle,
              rate: sign * rate,
              acceleration: sign * acceleration,
              bodies: [{ ...body, offset: sign * offset, height: -0.1 }],
              foot: { offset: sign * offset, height: -0.25, groundLeft: sign * left, groundUpward: 40 },
              gravity: 9.80665,
            })
          expect(side(-1).torque).toBeCloseTo(-side(1).torque, 12)
          expect(side(-1).inertia).toBeCloseTo(side(1).inertia, 12)
        },
      ),
    )
  })

  test('a rotor that does not spin makes no gyroscopic torque', () => {
    const still = rotorGyroscopicTorque({ rotorInertia: '4e-5 kg m^2', spin: '0 rad/s', pitchRate: '3 rad/s', yawRate: '2 rad/s' })
    expect(still.sidewaysDrive.si).toBeCloseTo(0, 15)
  })
})
