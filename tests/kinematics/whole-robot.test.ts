import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  commutationError,
  dipoleMagnetField,
  fourFeetForces,
  kneeEncoderError,
  shaftMagnetError,
  shaftMagnetErrorBound,
  shaftMagnetField,
  strayFieldError,
  supportPolygon,
  threeFeetShares,
  twoFeetTipping,
} from '../../src/kinematics/index.js'

const within = (min: number, max: number) => fc.double({ min, max, noNaN: true })

describe('feet', () => {
  const robot = { weight: 60, length: 0.36, width: 0.24, legStiffness: 4000 }
  const forces = (x: number, y: number, shortBy: number) => fourFeetForces.si({ ...robot, centreForward: x, centreLeft: y, shortBy })

  test('no foot pulls; what stands balances weight and moments', () => {
    fc.assert(
      fc.property(within(-0.2, 0.2), within(-0.15, 0.15), within(-0.02, 0.02), (x, y, shortBy) => {
        const f = forces(x, y, shortBy)
        const each = [f.leftFront, f.rightFront, f.leftHind, f.rightHind]
        for (const force of each) expect(force).toBeGreaterThanOrEqual(0)
        const inside = Math.abs(x) < 0.18 && Math.abs(y) < 0.12
        expect(f.state === 'tips').toBe(!inside)
        if (!inside) return
        expect(each.reduce((a, b) => a + b)).toBeCloseTo(60, 9)
        expect((0.36 / 2) * (f.leftFront + f.rightFront - f.leftHind - f.rightHind)).toBeCloseTo(60 * x, 9)
        expect((0.24 / 2) * (f.leftFront + f.leftHind - f.rightFront - f.rightHind)).toBeCloseTo(60 * y, 9)
        expect(f.state === 'threeStand').toBe(each.filter((force) => force === 0).length > 0)
      }),
    )
  })

  test('forces do not jump where a foot leaves the ground', () => {
    const [one, other] = [forces(0.01, 0.006, 0.0162), forces(0.01, 0.006, 0.0163)]
    expect(Math.abs(one.rightFront - other.rightFront)).toBeLessThan(0.3)
    const reached = [0, 0.005, 0.01, 0.015, 0.02, 0.03].map((shortBy) => forces(-0.02, 0.006, shortBy).leftFront)
    expect(reached).toEqual(reached.toSorted((a, b) => b - a))
  })

  test('three feet stand where the support polygon says so', () => {
    const feet = [
      { x: 0.18, y: 0.12 },
      { x: 0.18, y: -0.12 },
      { x: -0.18, y: 0.12 },
    ]
    fc.assert(
      fc.property(within(-0.25, 0.25), within(-0.2, 0.2), fc.boolean(), (centreX, centreY, reversed) => {
        const given = reversed ? feet.toReversed() : feet
        const { shares, margin, state } = threeFeetShares.si({ feet: given, centreX, centreY })
        const polygon = supportPolygon({
          feet: given.map(({ x, y }) => ({ x: [x, 'm'] as const, y: [y, 'm'] as const })),
          centreOfMass: { x: [centreX, 'm'], y: [centreY, 'm'], z: '0.25 m' },
        })
        expect(state === 'stands').toBe(polygon.state === 'stable')
        expect(margin).toBeCloseTo(polygon.margin!.si, 12)
        expect(shares.reduce((a, b) => a + b)).toBeCloseTo(1, 9)
        expect(shares.every((share) => share >= 0)).toBe(state === 'stands')
      }),
    )
    expect(() =>
      threeFeetShares({ feet: [feet[0]!, feet[0]!, feet[1]!].map(() => ({ x: '1 m', y: '0 m' })), centreX: '0 m', centreY: '0 m' }),
    ).toThrow(/feet.*not in one line/s)
  })

  test('two feet tip to the side of the centre of mass, and mirrored robots to the other', () => {
    const body = { height: 0.25, mass: 6, inertia: 0.08, time: 0.16, gravity: 9.80665 }
    fc.assert(
      fc.property(within(-0.05, 0.05), within(-0.05, 0.05), (centreX, centreY) => {
        const one = twoFeetTipping.si({ rearX: -0.18, rearY: -0.12, frontX: 0.18, frontY: 0.12, centreX, centreY, ...body })
        const other = twoFeetTipping.si({ rearX: -0.18, rearY: 0.12, frontX: 0.18, frontY: -0.12, centreX, centreY: -centreY, ...body })
        expect(other.offset).toBeCloseTo(-one.offset, 12)
        expect(other.angle).toBeCloseTo(-one.angle, 12)
      }),
    )
    expect(() =>
      twoFeetTipping({
        ...{ rearX: '0 m', rearY: '0 m', frontX: '0 m', frontY: '0 m', centreX: '0 m', centreY: '0 m' },
        ...{ height: '0.2 m', mass: '6 kg', inertia: '0 kg m^2', time: '1 s' },
      }),
    ).toThrow(/frontX.*another place/s)
  })
})

describe('angle sensors over a shaft magnet', () => {
  const place = fc.record({
    sensorX: within(-2e-4, 2e-4),
    sensorY: within(-2e-4, 2e-4),
    sensorLeanX: within(-0.05, 0.05),
    sensorLeanY: within(-0.05, 0.05),
    magnetX: within(-2e-4, 2e-4),
    magnetY: within(-2e-4, 2e-4),
    magnetLeanX: within(-0.05, 0.05),
    magnetLeanY: within(-0.05, 0.05),
  })
  const magnet = { curvature: 21558.9, slope: -235.998 }

  test('the error stays within its bound, and a magnet that is off alone makes none', () => {
    fc.assert(
      fc.property(place, (x) => {
        const error = shaftMagnetError.si({ ...magnet, ...x })
        const bound = shaftMagnetErrorBound.si({
          ...magnet,
          sensorOffset: Math.hypot(x.sensorX, x.sensorY),
          sensorLean: Math.hypot(x.sensorLeanX, x.sensorLeanY),
          magnetOffset: Math.hypot(x.magnetX, x.magnetY),
          magnetLean: Math.hypot(x.magnetLeanX, x.magnetLeanY),
        })
        expect(error.firstHarmonic).toBeLessThanOrEqual(bound.firstHarmonic * (1 + 1e-9) + 1e-18)
        expect(error.secondHarmonic).toBeLessThanOrEqual(bound.secondHarmonic * (1 + 1e-9) + 1e-18)
        const alone = shaftMagnetError.si({ ...magnet, ...x, sensorX: 0, sensorY: 0, sensorLeanX: 0, sensorLeanY: 0 })
        expect(alone).toEqual({ firstHarmonic: 0, secondHarmonic: 0 })
      }),
    )
  })

  test('far away every magnet is a dipole; near, the dipole overstates a disc by far', () => {
    const disc = { remanence: 1.2, radius: 0.003, length: 0.0025 }
    const far = shaftMagnetField.si({ ...disc, gap: 0.3 })
    const dipole = dipoleMagnetField.si({ ...disc, distance: 0.30125 })
    expect(far.curvature / dipole.curvature).toBeCloseTo(1, 3)
    expect(far.slope / dipole.slope).toBeCloseTo(1, 3)
    const near = dipoleMagnetField.si({ ...disc, distance: 0.00275 }).curvature / shaftMagnetField.si({ ...disc, gap: 0.0015 }).curvature
    expect(near).toBeGreaterThan(7)
    expect(near).toBeLessThan(10)
    const noted = dipoleMagnetField({ radius: '3 mm', length: '2.5 mm', distance: '2.75 mm' })
    expect(noted.curvature.notes?.map(({ text }) => text).join()).toContain('a gap above three radii')
  })

  test('a stray field as strong as the magnet’s is refused; a commutation error of a quarter turn reverses the motor', () => {
    expect(() => strayFieldError({ strayField: '50 mT', field: '50 mT' })).toThrow(/strayField.*below the field/s)
    expect(commutationError({ angleError: '7 deg', polePairs: 14 }).state).toBe('reversed')
    // Beyond half an electrical turn the cosine rises again, though an error of that size has passed reversal.
    expect(commutationError({ angleError: '24 deg', polePairs: 14 }).torqueLeft.notes?.[0]?.text).toMatch(/half an electrical turn/)
    expect(commutationError({ angleError: '12 deg', polePairs: 14 }).torqueLeft.notes).toBeUndefined()
    expect(commutationError({ angleError: '6 deg', polePairs: 14 }).state).toBe('pulls')
  })

  test('the hip’s error enters the knee of a motor on the body alone', () => {
    const errors = { kneeRatio: 1, hipMotorRatio: 6, kneeMotorRatio: 6, kneeError: 0.01 }
    const at = (motorOn: 'body' | 'thigh', hipError: number) => kneeEncoderError.si({ ...errors, motorOn, hipError })
    expect(at('thigh', 0.5)).toBe(at('thigh', 0))
    expect(at('body', 0.5)).toBeGreaterThan(at('body', 0))
  })
})
