import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { driveCoupling, legDynamics, limitedWorkspaceVolume, sagittalArea, threeJointLeg } from '../../src/kinematics/index.js'
import { InputError } from '../../src/units/index.js'

const leg = threeJointLeg({ hipOffset: '58 mm', upperLink: '165 mm', lowerLink: '180 mm' })
const links = {
  hipLink: { mass: '620 g', centreOfMass: { x: '0 mm', y: '35 mm', z: '4 mm' }, inertia: { xx: '400 kg mm^2', yy: '400 kg mm^2' } },
  upperLink: {
    mass: '340 g',
    centreOfMass: { x: '3 mm', y: '5 mm', z: '-70 mm' },
    inertia: { xx: '900 kg mm^2', yy: '900 kg mm^2', zz: '150 kg mm^2', xy: '20 kg mm^2' },
  },
  lowerLink: {
    mass: '160 g',
    centreOfMass: { x: '-2 mm', y: '0 mm', z: '-85 mm' },
    inertia: { xx: '500 kg mm^2', yy: '500 kg mm^2', zz: '40 kg mm^2', yz: '-12 kg mm^2' },
  },
} as const
const rotor = { rotorInertia: '70 kg mm^2', ratio: 6 } as const
const rotors = { sidewaysHip: rotor, hip: rotor, knee: rotor } as const
const cases = {
  links: legDynamics(leg, links),
  'knee motor on the body': legDynamics(leg, { ...links, rotors, coupling: driveCoupling({ knee: 'cordFromHip', ratio: 0.8 }) }),
  'knee motor on the thigh': legDynamics(leg, { ...links, rotors }),
  tilted: legDynamics(leg, { ...links, gravity: { x: '2 m/s^2', y: '-1 m/s^2', z: '-9 m/s^2' } }),
}
const within = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const triple = (size: number) => fc.tuple(within(-size, size), within(-size, size), within(-size, size))

describe.each(Object.entries(cases))('dynamics of a leg: %s', (_, dynamics) => {
  test('forward dynamics undoes inverse dynamics, standing or in the air', () => {
    fc.assert(
      fc.property(triple(1.4), triple(12), triple(200), triple(80), (q, w, a, r) => {
        const [Q, W, A, torque, back] = [q, w, a, [0, 0, 0], [0, 0, 0]].map((x) => Float64Array.from(x)) as Float64Array[]
        dynamics.si.torqueInto(torque!, 0, Q!, W!, A!, ...r)
        expect(dynamics.si.accelerationsInto(back!, 0, Q!, W!, torque!, ...r)).toBe(true)
        for (let i = 0; i < 3; i++)
          expect(Math.abs(back![i]! - a[i]!)).toBeLessThan(1e-9 * (1 + Math.hypot(...a) + Math.hypot(...w) ** 2 + 1e3))
      }),
    )
  })

  test('a leg let go keeps its energy as it swings', () => {
    const state = Float64Array.of(0.3, -0.9, 1.2, 1, -2, 3)
    const energy = () => dynamics.si.kineticEnergy(state.slice(0, 3), state.slice(3)) + dynamics.si.potentialEnergy(state.slice(0, 3))
    const slope = (x: Float64Array) => {
      const out = new Float64Array(6)
      out.set(x.subarray(3))
      dynamics.si.accelerationsInto(out, 3, x.slice(0, 3), x.slice(3), [0, 0, 0], 0, 0, 0)
      return out
    }
    const moved = (k: Float64Array, h: number) => state.map((x, i) => x + h * k[i]!)
    const start = energy()
    const h = 2e-4
    let swung = 0
    for (let n = 0; n < 2500; n++) {
      const k1 = slope(state)
      const k2 = slope(moved(k1, h / 2))
      const k3 = slope(moved(k2, h / 2))
      const k4 = slope(moved(k3, h))
      for (let i = 0; i < 6; i++) state[i] = state[i]! + (h / 6) * (k1[i]! + 2 * k2[i]! + 2 * k3[i]! + k4[i]!)
      swung = Math.max(swung, Math.abs(state[2]! - 1.2))
    }
    expect(swung).toBeGreaterThan(0.5)
    expect(Math.abs(energy() - start)).toBeLessThan(1e-8)
  })

  test('the rates’ own torque does no work but to change the mass matrix: w · C = ½ d(w M w)', () => {
    fc.assert(
      fc.property(triple(1.2), triple(8), (q, w) => {
        const [Q, W, C] = [Float64Array.from(q), Float64Array.from(w), new Float64Array(3)]
        dynamics.si.coriolisInto(C, 0, Q, W)
        const step = 1e-5
        const at = (s: number) =>
          dynamics.si.kineticEnergy(
            Float64Array.from(q, (x, i) => x + s * w[i]!),
            W,
          )
        const change = (at(step) - at(-step)) / (2 * step)
        expect(Math.abs(C[0]! * w[0] + C[1]! * w[1] + C[2]! * w[2] - change)).toBeLessThan(1e-5)
      }),
    )
  })
})

test('a rotor on the thigh spins with the thigh and with its drum: energy of the mass matrix', () => {
  const bare = cases.links.si
  const [q, w] = [Float64Array.of(0.2, -0.5, 1.1), Float64Array.of(1.5, -2, 3)]
  const J = 70e-6
  const spin = (x: number) => 0.5 * J * x * x
  const common = bare.kineticEnergy(q, w) + spin(6 * w[0]!) + spin(6 * w[1]!)
  // The thigh's inertia already has the rotor in it as if it were locked.
  expect(cases['knee motor on the thigh'].si.kineticEnergy(q, w)).toBeCloseTo(common + spin(6 * w[2]! + w[1]!) - spin(w[1]!), 12)
  const against = legDynamics(leg, { ...links, rotors: { ...rotors, knee: { ...rotor, rotorTurns: 'againstDrum' } } })
  expect(against.si.kineticEnergy(q, w)).toBeCloseTo(common + spin(w[1]! - 6 * w[2]!) - spin(w[1]!), 12)
  expect(cases['knee motor on the body'].si.kineticEnergy(q, w)).toBeCloseTo(common + spin(6 * (w[1]! + 0.8 * w[2]!)), 12)
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
  expect(() => legDynamics(leg, { ...links, rotors, coupling: linkage })).toThrow(/rotors\.knee.*four-bar/)
  expect(() => legDynamics(leg, undefined as never)).toThrow(InputError)
  expect(legDynamics(leg, { ...links, rotors: { hip: rotor }, coupling: linkage }).hasRotors).toBe(true)
})

test('motors fixed to a link are part of it: two halves are the whole, and a motor’s weight is felt', () => {
  const half = { mass: '170 g', centreOfMass: { x: '3 mm', y: '5 mm', z: '-70 mm' } } as const
  const inertia = { xx: '450 kg mm^2', yy: '450 kg mm^2', zz: '75 kg mm^2', xy: '10 kg mm^2' } as const
  const split = legDynamics(leg, {
    ...links,
    upperLink: { ...half, inertia },
    motors: [{ on: 'upperLink', ...half, inertia }],
  })
  const angles = { sidewaysHip: '10 deg', hip: '-35 deg', knee: '70 deg' } as const
  const pick = (d: typeof split) => [...d.massMatrix(angles).flat(), ...Object.values(d.gravityTorque(angles))].map(({ si }) => si)
  const whole = pick(cases.links)
  for (const [i, x] of pick(split).entries()) expect(x).toBeCloseTo(whole[i]!, 14)
  // Two point masses as one body: Steiner's terms.
  const points = legDynamics(leg, {
    hipLink: { mass: '0 kg', centreOfMass: { x: '0 mm', y: '0 mm', z: '0 mm' } },
    upperLink: { mass: '0.2 kg', centreOfMass: { x: '0 mm', y: '0 mm', z: '-50 mm' } },
    lowerLink: { mass: '0 kg', centreOfMass: { x: '0 mm', y: '0 mm', z: '0 mm' } },
    motors: [{ on: 'upperLink', mass: '0.5 kg', centreOfMass: { x: '30 mm', y: '-10 mm', z: '-20 mm' } }],
  })
  expect(points.massMatrix(angles)[1]![1]!.si).toBeCloseTo(0.2 * 0.05 ** 2 + 0.5 * (0.03 ** 2 + 0.02 ** 2), 15)
  expect(points.centreOfMass(angles).mass.si).toBeCloseTo(0.7, 15)
})

test('forward dynamics in units; a joint that moves no mass is no result', () => {
  const angles = { sidewaysHip: '0 deg', hip: '0 deg', knee: '0 deg' } as const
  const still = { sidewaysHip: '0 rad/s', hip: '0 rad/s', knee: '0 rad/s' } as const
  const none = { mass: '0 kg', centreOfMass: { x: '0 mm', y: '0 mm', z: '0 mm' } } as const
  const pendulum = legDynamics(threeJointLeg({ hipOffset: '0 mm', upperLink: '165 mm', lowerLink: '180 mm' }), {
    hipLink: { ...none, inertia: { xx: '1e-3 kg m^2' } },
    upperLink: { ...none, inertia: { xx: '1e-3 kg m^2', yy: '1e-3 kg m^2' } },
    lowerLink: { mass: '1 kg', centreOfMass: { x: '0 mm', y: '0 mm', z: '-180 mm' } },
  })
  // A point mass on a bar of no mass: a torque of the knee alone turns the shank and, against it, the thigh.
  const { knee, hip } = pendulum.forwardDynamics({ angles, rates: still, torque: { sidewaysHip: '0 N m', hip: '0 N m', knee: '1 N m' } })
  // M = [[I + m L², m L s], [·, m s²]] with L = 345 mm, s = 180 mm.
  const [m11, m12, m22] = [1e-3 + 0.345 ** 2, 0.345 * 0.18, 0.18 ** 2]
  expect(hip.si).toBeCloseTo(-m12 / (m11 * m22 - m12 ** 2), 6)
  expect(knee.si).toBeCloseTo(m11 / (m11 * m22 - m12 ** 2), 6)
  const massless = legDynamics(leg, { ...links, lowerLink: none })
  expect(() => massless.forwardDynamics({ angles, rates: still, torque: { sidewaysHip: '0 N m', hip: '0 N m', knee: '1 N m' } })).toThrow(
    /a joint moves no mass/,
  )
  const out = Float64Array.of(7, 7, 7)
  expect(cases.links.si.accelerationsInto(out, 0, Float64Array.of(0, Number.NaN, 1), new Float64Array(3), [0, 0, 0], 0, 0, 0)).toBe(false)
  expect([...out]).toEqual([7, 7, 7])
})

test('an inertia that no body has carries a note, for a slip of the unit', () => {
  const slipped = legDynamics(leg, {
    ...links,
    lowerLink: { ...links.lowerLink, inertia: { xx: '1 g mm^2', yy: '1 g mm^2', zz: '100 kg m^2' } },
  })
  const angles = { sidewaysHip: '0 deg', hip: '-30 deg', knee: '60 deg' } as const
  expect(slipped.notes?.[0]?.text).toMatch(/lowerLink\.inertia: one moment is larger/)
  expect(slipped.gravityTorque(angles).hip.notes).toEqual(slipped.notes)
  expect(
    legDynamics(leg, { ...links, hipLink: { ...links.hipLink, mass: '0 kg' } })
      .notes?.map(({ text }) => text)
      .join(),
  ).toMatch(/without mass/)
  expect(cases.tilted.notes).toBeUndefined()
})

test('rates near a singular pose carry a note, and a tolerance makes the pose singular', () => {
  const near = { sidewaysHip: '0 deg', hip: '-20 deg', knee: '0.5 deg' } as const
  const footVelocity = { x: '0 m/s', y: '0 m/s', z: '0.1 m/s' } as const
  const answer = leg.jointRates({ angles: near, footVelocity })
  if (!answer.regular) throw new Error('regular at the default')
  expect(answer.rates.knee.notes?.[0]?.text).toMatch(/the knee is 0\.5 deg from straight/)
  expect(leg.jointRates({ angles: near, footVelocity, tolerance: 0.02 })).toEqual({ regular: false, singularity: 'kneeStraight' })
  expect(leg.singularity(near)).toBe('none')
  expect(leg.singularity(near, 0.02)).toBe('kneeStraight')
  const torque = { sidewaysHip: '1 N m', hip: '1 N m', knee: '1 N m' } as const
  expect(leg.footPushFromTorque({ angles: near, torque, tolerance: 0.01 }).regular).toBe(false)
  const bent = leg.jointRates({ angles: { ...near, knee: '40 deg' }, footVelocity })
  expect(bent.regular && bent.rates.knee.notes).toBeUndefined()
  expect(() => leg.singularity(near, 2)).toThrow(/tolerance/)
})

test('a backward knee has the area and volume of its mirror image', () => {
  const given = { upperLink: '165 mm', lowerLink: '180 mm' } as const
  const forward = { kneeFrom: '23 deg', kneeTo: '115 deg' } as const
  const backward = { kneeFrom: '-115 deg', kneeTo: '-23 deg' } as const
  expect(sagittalArea({ ...given, hipRange: '80 deg', ...backward }).si).toBeCloseTo(
    sagittalArea({ ...given, hipRange: '80 deg', ...forward }).si,
    15,
  )
  const volume = (hipFrom: '-60 deg' | '10 deg', hipTo: '-10 deg' | '60 deg', knee: typeof forward | typeof backward) =>
    limitedWorkspaceVolume({ ...given, sidewaysHipRange: '60 deg', hipFrom, hipTo, ...knee })
  expect(volume('10 deg', '60 deg', backward).si).toBeCloseTo(volume('-60 deg', '-10 deg', forward).si, 15)
  expect(() => sagittalArea({ ...given, hipRange: '80 deg', kneeFrom: '-10 deg', kneeTo: '60 deg' })).toThrow(/same side of straight/)
})
