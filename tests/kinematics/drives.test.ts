import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { driveCoupling, fourBar, fourBarSpeedRatio, threeJointLeg, transmissionAngleExtremes } from '../../src/kinematics/index.js'

const parallelogram = driveCoupling({ knee: 'parallelogram' })
const crossed = driveCoupling({ knee: 'cordFromHip', ratio: -1.4 })
const carried = driveCoupling({ knee: 'cordFromHip', ratio: 0.8, motorOn: 'thigh' })
const linkage = driveCoupling({
  knee: 'fourBar',
  fourBar: {
    ground: '165 mm',
    crank: '35 mm',
    coupler: '160 mm',
    rocker: '30 mm',
    rockerAngleAtStraightKnee: '-120 deg',
    crankAngleAtStraightKnee: '-110 deg',
  },
})
const couplings = { parallelogram, crossed, carried, linkage, direct: driveCoupling({ knee: 'motorAtKnee' }) }
const within = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const pose = fc.tuple(within(-1, 1), within(-1.2, 1.2), within(0.1, 1.3))
const three = fc.tuple(within(-10, 10), within(-10, 10), within(-10, 10))

describe.each(Object.entries(couplings))('coupling %s', (_, coupling) => {
  const into = (fill: (out: Float64Array) => void) => {
    const out = new Float64Array(3)
    fill(out)
    return out
  }
  test('angles, rates and torques come back', () => {
    fc.assert(
      fc.property(pose, three, (q, x) => {
        const phi = into((out) => coupling.si.actuatorAnglesInto(out, 0, q))
        const back = into((out) => coupling.si.jointAnglesInto(out, 0, phi))
        const rates = into((out) =>
          coupling.si.jointRatesInto(
            out,
            0,
            q,
            into((o) => coupling.si.actuatorRatesInto(o, 0, q, x)),
          ),
        )
        const torques = into((out) =>
          coupling.si.jointTorquesInto(
            out,
            0,
            q,
            into((o) => coupling.si.actuatorTorquesInto(o, 0, q, x)),
          ),
        )
        for (let i = 0; i < 3; i++) {
          expect(back[i]).toBeCloseTo(q[i]!, 11)
          expect(rates[i]).toBeCloseTo(x[i]!, 10)
          expect(torques[i]).toBeCloseTo(x[i]!, 10)
        }
      }),
    )
  })

  test('a vector may be turned into another in place', () => {
    const [q, x] = [Float64Array.of(0.2, -0.6, 0.9), Float64Array.of(3, -4, 5)]
    const forms: ((out: Float64Array, x: Float64Array) => void)[] = [
      (out, y) => coupling.si.actuatorAnglesInto(out, 0, y === x ? q : y),
      (out, y) => coupling.si.actuatorRatesInto(out, 0, q, y),
      (out, y) => coupling.si.jointRatesInto(out, 0, q, y),
      (out, y) => coupling.si.actuatorAccelerationsInto(out, 0, q, x, y),
      (out, y) => coupling.si.actuatorTorquesInto(out, 0, q, y),
      (out, y) => coupling.si.jointTorquesInto(out, 0, q, y),
    ]
    for (const [k, form] of forms.entries()) {
      const apart = into((out) => form(out, x))
      const inPlace = Float64Array.from(k === 0 ? q : x)
      form(inPlace, inPlace)
      expect([...inPlace]).toEqual([...apart])
    }
    const drums = into((out) => coupling.si.actuatorAnglesInto(out, 0, q))
    coupling.si.jointAnglesInto(drums, 0, drums)
    for (let i = 0; i < 3; i++) expect(drums[i]).toBeCloseTo(q[i]!, 11)
  })

  test('power is the same in joint space and in actuator space', () => {
    fc.assert(
      fc.property(pose, three, three, (q, rates, torque) => {
        const [phiRates, phiTorque] = [new Float64Array(3), new Float64Array(3)]
        coupling.si.actuatorRatesInto(phiRates, 0, q, rates)
        coupling.si.actuatorTorquesInto(phiTorque, 0, q, torque)
        const power = (a: ArrayLike<number>, b: ArrayLike<number>) => a[0]! * b[0]! + a[1]! * b[1]! + a[2]! * b[2]!
        expect(power(phiRates, phiTorque)).toBeCloseTo(power(rates, torque), 9)
      }),
    )
  })

  test('rates and accelerations are derivatives of the angles, and rotor energy agrees', () => {
    fc.assert(
      fc.property(pose, three, three, (q, w, a) => {
        const at = (t: number) =>
          into((out) =>
            coupling.si.actuatorAnglesInto(
              out,
              0,
              q.map((x, i) => x + w[i]! * t + 0.5 * a[i]! * t * t),
            ),
          )
        const step = 1e-4
        const [before, here, after] = [at(-step), at(0), at(step)]
        const rates = into((out) => coupling.si.actuatorRatesInto(out, 0, q, w))
        const accelerations = into((out) => coupling.si.actuatorAccelerationsInto(out, 0, q, w, a))
        const M = new Float64Array(9)
        coupling.si.jointMatrixInto(M, 0, q, [0.2, 0.3, 0.5])
        let energy = 0
        for (let i = 0; i < 3; i++) {
          expect(Math.abs((after[i]! - before[i]!) / (2 * step) - rates[i]!)).toBeLessThan(3e-4)
          expect(Math.abs((after[i]! - 2 * here[i]! + before[i]!) / step ** 2 - accelerations[i]!)).toBeLessThan(
            2e-3 * (1 + Math.abs(accelerations[i]!)),
          )
          for (let j = 0; j < 3; j++) energy += w[i]! * M[3 * i + j]! * w[j]!
        }
        expect(energy).toBeCloseTo(0.2 * rates[0]! ** 2 + 0.3 * rates[1]! ** 2 + 0.5 * rates[2]! ** 2, 9)
      }),
    )
  })
})

test('a knee driven 1:1 from the hip keeps the shank’s absolute angle and loads the hip', () => {
  const angles = { sidewaysHip: '0 deg', hip: '-30 deg', knee: '60 deg' } as const
  expect(parallelogram.actuatorAngles(angles).knee.in('deg')).toBeCloseTo(30, 12)
  const torque = { sidewaysHip: '0 N m', hip: '1 N m', knee: '-4 N m' } as const
  expect(parallelogram.actuatorTorques({ angles, torque }).hip.si).toBeCloseTo(5, 12)
  expect(crossed.actuatorTorques({ angles, torque }).knee.si).toBeCloseTo(4 / 1.4, 12)
})

test('a motor on the thigh rides with it: the hip’s angle and torque are its own', () => {
  const angles = { sidewaysHip: '0 deg', hip: '-30 deg', knee: '60 deg' } as const
  const torque = { sidewaysHip: '0 N m', hip: '1 N m', knee: '-4 N m' } as const
  for (const coupling of [driveCoupling({ knee: 'parallelogram', motorOn: 'thigh' }), driveCoupling({ knee: 'motorAtKnee' })]) {
    expect(coupling.actuatorAngles(angles).knee.in('deg')).toBeCloseTo(60, 12)
    expect(coupling.actuatorTorques({ angles, torque }).hip.si).toBe(1)
  }
})

test('joint limits become the corners of a parallelogram', () => {
  const leg = threeJointLeg({
    hipOffset: '0 mm',
    upperLink: '165 mm',
    lowerLink: '180 mm',
    limits: { hip: { lowest: '-60 deg', highest: '40 deg' }, knee: { lowest: '10 deg', highest: '120 deg' } },
  })
  const { corners, kneeActuator } = parallelogram.actuatorLimits(leg.limitsSi)
  expect(corners.map(({ hip, knee }) => [Math.round(hip.in('deg')), Math.round(knee.in('deg'))])).toEqual([
    [-60, -50],
    [40, 50],
    [40, 160],
    [-60, 60],
  ])
  expect(kneeActuator.lowest.in('deg')).toBeCloseTo(-50, 10)
  expect(() => parallelogram.actuatorLimits(threeJointLeg({ hipOffset: '0 mm', upperLink: '1 m', lowerLink: '1 m' }).limitsSi)).toThrow(
    /need limits/,
  )
})

describe('four-bar', () => {
  const crankRocker = { ground: 0.1, crank: 0.04, coupler: 0.12, rocker: 0.08 }
  const m = (x: number) => [x, 'm'] as const
  const make = ({ ground, crank, coupler, rocker }: typeof crankRocker) =>
    fourBar({ ground: m(ground), crank: m(crank), coupler: m(coupler), rocker: m(rocker) })

  test('the loop closes, and the speed ratio is the derivative', () => {
    const linkage = make(crankRocker)
    for (const assembly of ['open', 'crossed'] as const) {
      for (let degrees = -175; degrees < 180; degrees += 5) {
        const at = (d: number) => {
          const found = linkage.at({ crankAngle: [d, 'deg'], assembly })
          if (!found.assembles) throw new Error(`apart at ${d}`)
          return found
        }
        const { couplerAngle, rockerAngle, rockerSpeedRatio, couplerSpeedRatio, transmissionAngle } = at(degrees)
        const [t2, t3, t4] = [(degrees * Math.PI) / 180, couplerAngle.si, rockerAngle.si]
        expect(0.04 * Math.cos(t2) + 0.12 * Math.cos(t3) - 0.08 * Math.cos(t4) - 0.1).toBeCloseTo(0, 14)
        expect(0.04 * Math.sin(t2) + 0.12 * Math.sin(t3) - 0.08 * Math.sin(t4)).toBeCloseTo(0, 14)
        const wrap = (x: number) => Math.atan2(Math.sin(x), Math.cos(x))
        const slope = (field: 'rockerAngle' | 'couplerAngle') =>
          (wrap(at(degrees + 0.001)[field].si - at(degrees - 0.001)[field].si) / 0.002) * (180 / Math.PI)
        expect(slope('rockerAngle')).toBeCloseTo(rockerSpeedRatio!.si, 6)
        expect(slope('couplerAngle')).toBeCloseTo(couplerSpeedRatio!.si, 6)
        expect(rockerSpeedRatio!.si).toBeCloseTo(
          fourBarSpeedRatio.si({ crank: 0.04, rocker: 0.08, crankAngle: t2, couplerAngle: t3, rockerAngle: t4 }),
          12,
        )
        expect(transmissionAngle.in('deg')).toBeGreaterThanOrEqual(26.3843)
        expect(transmissionAngle.in('deg')).toBeLessThanOrEqual(90)
      }
    }
    expect(linkage.motion).toBe('crankRocker')
  })

  test('a parallelogram turns 1:1 and flags where it may flip', () => {
    const linkage = make({ ground: 0.11, crank: 0.03, coupler: 0.11, rocker: 0.03 })
    expect(linkage.motion).toBe('changePoint')
    const poses = (['open', 'crossed'] as const).map((assembly) => linkage.at({ crankAngle: '70 deg', assembly }))
    const ratios = poses.map((pose) => (pose.assembles ? pose.rockerAngle.in('deg') : Number.NaN))
    expect(ratios.some((angle) => Math.abs(angle - 70) < 1e-9)).toBe(true)
    const flat = linkage.at({ crankAngle: '0 deg', assembly: 'open' })
    // Both senses are possible there: no ratio is given, and none is NaN.
    expect(flat).toMatchObject({
      assembles: true,
      changePoint: true,
      rockerSpeedRatio: undefined,
      couplerSpeedRatio: undefined,
      mechanicalAdvantage: undefined,
    })
  })

  test('a linkage that does not close is a typed answer with the gap', () => {
    const linkage = make({ ground: 0.1, crank: 0.06, coupler: 0.05, rocker: 0.05 })
    expect(linkage.at({ crankAngle: '180 deg', assembly: 'open' })).toMatchObject({ assembles: false, reason: 'pinTooFar' })
    const apart = linkage.at({ crankAngle: '180 deg', assembly: 'open' })
    if (apart.assembles) throw new Error('apart')
    expect(apart.gap.in('mm')).toBeCloseTo(60, 9)
    const near = make({ ground: 0.1, crank: 0.08, coupler: 0.2, rocker: 0.05 }).at({ crankAngle: '0 deg', assembly: 'open' })
    expect(near).toMatchObject({ assembles: false, reason: 'pinTooNear' })
    // Coupler less rocker, 150 mm, less the pin's distance of 20 mm.
    if (near.assembles) throw new Error('apart')
    expect(near.gap.in('mm')).toBeCloseTo(130, 9)
  })

  test('Grashof’s criterion names the motion', () => {
    const motion = (ground: number, crank: number, coupler: number, rocker: number) => make({ ground, crank, coupler, rocker }).motion
    expect(motion(0.1, 0.04, 0.12, 0.08)).toBe('crankRocker')
    expect(motion(0.04, 0.1, 0.12, 0.08)).toBe('doubleCrank')
    expect(motion(0.1, 0.08, 0.12, 0.04)).toBe('rockerCrank')
    expect(motion(0.1, 0.12, 0.04, 0.08)).toBe('doubleRocker')
    expect(motion(0.1, 0.06, 0.05, 0.05)).toBe('tripleRocker')
    expect(motion(0.11, 0.03, 0.11, 0.03)).toBe('changePoint')
  })

  test('a transmission angle of 40° and more transmits well', () => {
    for (let d = 0; d < 360; d += 5) {
      const pose = make(crankRocker).at({ crankAngle: [d, 'deg'], assembly: 'open' })
      if (!pose.assembles) throw new Error('assembles')
      expect(pose.transmitsWell).toBe(pose.transmissionAngle.in('deg') >= 40)
    }
  })

  test('extremes of the transmission angle are those of a full turn', () => {
    const linkage = make(crankRocker)
    let [least, most] = [90, 0]
    for (let d = 0; d < 360; d++) {
      const pose = linkage.at({ crankAngle: [d, 'deg'], assembly: 'open' })
      if (!pose.assembles) continue
      least = Math.min(least, pose.transmissionAngle.in('deg'))
      most = Math.max(most, pose.transmissionAngle.in('deg'))
    }
    const { crankInward, crankOutward } = transmissionAngleExtremes.si(crankRocker)
    expect(least).toBeCloseTo((crankInward * 180) / Math.PI, 9)
    expect((crankOutward * 180) / Math.PI).toBeCloseTo(86.4166783, 6)
    expect(most).toBeCloseTo((crankOutward * 180) / Math.PI, 9)
  })
})

describe('bad input', () => {
  test.each([
    [{ knee: 'cordFromHip' }, /ratio is missing/],
    [{ knee: 'cordFromHip', ratio: 0 }, /ratio is 0/],
    [{ knee: 'parallelogram', ratio: 2 }, /ratio is 2; is not an input of knee 'parallelogram'/],
    [{ knee: 'fourBar' }, /fourBar is missing/],
    [
      {
        knee: 'fourBar',
        fourBar: {
          ground: '100 mm',
          crank: '10 mm',
          coupler: '10 mm',
          rocker: '10 mm',
          rockerAngleAtStraightKnee: '0 deg',
          crankAngleAtStraightKnee: '0 deg',
        },
      },
      /must assemble with the knee straight/,
    ],
    [{ knee: 'cordfromhip', ratio: 1 }, /did you mean cordFromHip/],
    [{ knee: 'motorAtKnee', motorOn: 'body' }, /motorOn is 'body'; must be 'thigh' or absent/],
  ])('coupling %#', (given, message) => expect(() => driveCoupling(given as never)).toThrow(message))

  test('a four-bar that turns the knee against the crank stays on its turn over a wide range', () => {
    const against = driveCoupling({
      knee: 'fourBar',
      motorOn: 'thigh',
      fourBar: {
        ground: '165 mm',
        crank: '40 mm',
        coupler: '168 mm',
        rocker: '32 mm',
        rockerAngleAtStraightKnee: '60 deg',
        crankAngleAtStraightKnee: '-60 deg',
      },
    })
    const out = new Float64Array(3)
    let before = 0
    for (let degrees = 0; degrees <= 179; degrees += 1) {
      against.si.actuatorAnglesInto(out, 0, [0, 0, (degrees * Math.PI) / 180])
      expect(Math.abs(out[2]! - before)).toBeLessThan(0.03)
      before = out[2]!
    }
    expect(against.si.kneeRatio(0)).toBeLessThan(0)
  })

  test('joint limits past a four-bar’s dead point are refused by name', () => {
    const leg = (highest: string) =>
      threeJointLeg({
        hipOffset: '0 mm',
        upperLink: '165 mm',
        lowerLink: '180 mm',
        limits: { hip: { lowest: '-60 deg', highest: '40 deg' }, knee: { lowest: '5 deg', highest } as never },
      }).limitsSi
    const { kneeActuator } = linkage.actuatorLimits(leg('70 deg'))
    const out = new Float64Array(3)
    linkage.si.actuatorAnglesInto(out, 0, [0, (40 * Math.PI) / 180, (70 * Math.PI) / 180])
    expect(kneeActuator.highest.si).toBeCloseTo(out[2]!, 12)
    expect(() => linkage.actuatorLimits(leg('170 deg'))).toThrow(
      /limits is a knee from 5 deg to 170 deg; the four-bar does not drive the knee at/,
    )
  })

  test('a four-bar knee beyond its travel is refused by name', () => {
    const short = driveCoupling({
      knee: 'fourBar',
      fourBar: {
        ground: '165 mm',
        crank: '30 mm',
        coupler: '160 mm',
        rocker: '35 mm',
        rockerAngleAtStraightKnee: '-70 deg',
        crankAngleAtStraightKnee: '-80 deg',
      },
    })
    expect(short.si.assemblesAt(0.2)).toBe(true)
    const beyond = [...Array(64).keys()].map((i) => i / 10).find((knee) => !short.si.assemblesAt(knee))
    expect(beyond).toBeDefined()
    expect(() => short.actuatorAngles({ sidewaysHip: '0 deg', hip: '0 deg', knee: [beyond!, 'rad'] })).toThrow(
      /does not assemble at a knee/,
    )
  })
})
