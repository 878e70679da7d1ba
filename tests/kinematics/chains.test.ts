import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import {
  chainFromDenavitHartenberg,
  chainFromScrews,
  dampedInverse,
  driveCoupling,
  LegDynamicsKernel,
  LegKernel,
  legDynamics,
  threeJointLeg,
} from '../../src/kinematics/index.js'
import { randomStream } from '../../src/numeric/index.js'
import { lynchThreeLink } from './textbook.js'

interface Link {
  mass: number
  c: number[]
  inertia: number[]
}
interface Pose {
  q: number[]
  w: number[]
  a: number[]
  position: number[]
  rotation: number[][]
  jacobian: number[][]
  mass: number[][]
  coriolis: number[]
  gravity: number[]
  push: { force: number[]; moment: number[] }
  torque: number[]
}
interface Row {
  type: 'turning' | 'sliding'
  theta: number
  d: number
  a: number
  alpha: number
}
/** By tests/oracles/kinematics-chains.py. */
const oracle = JSON.parse(readFileSync(new URL('../oracles/kinematics-chains.json', import.meta.url), 'utf8')) as {
  leg: (Pose & { d: number; l1: number; l2: number; links: Link[]; g: number[] })[]
  chains: { n: number; rows: Row[]; links: Link[]; g: number[]; poses: Pose[] }[]
}

const close = (got: ArrayLike<number>, wanted: readonly number[], tolerance = 1e-11) => {
  expect(got.length).toBe(wanted.length)
  const size = Math.max(1, ...wanted.map(Math.abs))
  wanted.forEach((value, i) => {
    if (!(Math.abs(got[i]! - value) <= tolerance * size)) throw new Error(`[${i}] ${got[i]} against ${value}`)
  })
}
const ten = ({ mass, c, inertia }: Link) => [mass, ...c, ...inertia]
const link = ({ mass, c, inertia: [xx, yy, zz, xy, xz, yz] }: Link) => ({
  mass: [mass, 'kg'] as const,
  centreOfMass: { x: [c[0]!, 'm'] as const, y: [c[1]!, 'm'] as const, z: [c[2]!, 'm'] as const },
  inertia: Object.fromEntries(Object.entries({ xx, yy, zz, xy, xz, yz }).map(([name, value]) => [name, [value!, 'kg m^2'] as const])),
})
const rad = (values: readonly number[]) => values.map((value) => [value, 'rad'] as const)

describe('the leg against a generic kinematics library', () => {
  test.each(oracle.leg.map((pose, i) => [i, pose] as const))('pose %i', (_, pose) => {
    const { d, l1, l2, q, g } = pose
    const leg = new LegKernel(d, l1, l2)
    const p = new Float64Array(3)
    leg.footInto(p, 0, q[0]!, q[1]!, q[2]!)
    close(p, pose.position, 1e-14)
    const J = new Float64Array(9)
    leg.jacobianInto(J, 0, q[0]!, q[1]!, q[2]!)
    close(J, pose.jacobian.slice(3).flat(), 1e-14)
    const kernel = new LegDynamicsKernel(d, l1, l2, [ten(pose.links[0]!), ten(pose.links[1]!), ten(pose.links[2]!)], g)
    const { force } = pose.push
    const tau = new Float64Array(3)
    const [qa, wa, aa] = [pose.q, pose.w, pose.a].map((x) => Float64Array.from(x)) as [Float64Array, Float64Array, Float64Array]
    // The library's force is the foot's push; ours is the ground's.
    kernel.torqueInto(tau, 0, qa, wa, aa, -force[0]!, -force[1]!, -force[2]!)
    close(tau, pose.torque)

    const dynamics = legDynamics(threeJointLeg({ hipOffset: [d, 'm'], upperLink: [l1, 'm'], lowerLink: [l2, 'm'] }), {
      hipLink: link(pose.links[0]!),
      upperLink: link(pose.links[1]!),
      lowerLink: link(pose.links[2]!),
      gravity: { x: [g[0]!, 'm/s^2'], y: [g[1]!, 'm/s^2'], z: [g[2]!, 'm/s^2'] },
    })
    const angles = { sidewaysHip: [q[0]!, 'rad'], hip: [q[1]!, 'rad'], knee: [q[2]!, 'rad'] } as const
    const M = dynamics.massMatrix(angles).map((row) => row.map((x) => x.si))
    close(M.flat(), pose.mass.flat())
    close(
      Object.values(dynamics.gravityTorque(angles)).map((x) => x.si),
      pose.gravity,
    )
    const rates = { sidewaysHip: [pose.w[0]!, 'rad/s'], hip: [pose.w[1]!, 'rad/s'], knee: [pose.w[2]!, 'rad/s'] } as const
    close(
      Object.values(dynamics.coriolisTorque({ angles, rates })).map((x) => x.si),
      pose.coriolis,
    )

    // Gravity torque is the gradient of the potential.
    for (let j = 0; j < 3; j++) {
      const at = (step: number) => dynamics.si.potentialEnergy(q.map((x, i) => (i === j ? x + step : x)))
      expect(Math.abs((at(1e-5) - at(-1e-5)) / 2e-5 - pose.gravity[j]!)).toBeLessThan(1e-7)
    }
  })
})

describe('chains of one to eight joints against a generic kinematics library', () => {
  test.each(oracle.chains.map((chain) => [chain.n, chain] as const))('%i joints', (n, given) => {
    const chain = chainFromDenavitHartenberg({
      convention: 'standard',
      rows: given.rows.map((row) => ({
        type: row.type,
        theta: [row.theta, 'rad'],
        d: [row.d, 'm'],
        a: [row.a, 'm'],
        alpha: [row.alpha, 'rad'],
      })),
      links: given.links.map(link),
      gravity: { x: [given.g[0]!, 'm/s^2'], y: [given.g[1]!, 'm/s^2'], z: [given.g[2]!, 'm/s^2'] },
    })
    for (const pose of given.poses) {
      const frame = new Float64Array(12)
      chain.si.poseInto(frame, 0, pose.q)
      close(frame, [...pose.rotation.flat(), ...pose.position], 1e-13)
      const J = new Float64Array(6 * n)
      chain.si.jacobianInto(J, 0, pose.q)
      close(J, pose.jacobian.flat(), 1e-13)
      const M = new Float64Array(n * n)
      chain.si.massMatrixInto(M, 0, pose.q)
      close(M, pose.mass.flat())
      const tau = new Float64Array(n)
      chain.si.gravityInto(tau, 0, pose.q)
      close(tau, pose.gravity)
      chain.si.coriolisInto(tau, 0, pose.q, pose.w)
      close(tau, pose.coriolis)
      // The push in the tool's axes.
      const R = pose.rotation
      const inTool = (v: readonly number[]) => [0, 1, 2].map((i) => R[0]![i]! * v[0]! + R[1]![i]! * v[1]! + R[2]![i]! * v[2]!)
      chain.si.torqueInto(tau, 0, pose.q, pose.w, pose.a, [...inTool(pose.push.moment), ...inTool(pose.push.force)])
      close(tau, pose.torque)
      // Body Jacobian and space Jacobian carry the same motion.
      const [body, space] = [new Float64Array(6 * n), new Float64Array(6 * n)]
      chain.si.bodyJacobianInto(body, 0, pose.q)
      chain.si.spaceJacobianInto(space, 0, pose.q)
      for (let j = 0; j < n; j++) {
        const column = (m: Float64Array, from: number) => [0, 1, 2].map((i) => m[(from + i) * n + j]!)
        close(inTool(column(space, 0)), column(body, 0), 1e-12)
        const [omega, v, p] = [column(space, 0), column(space, 3), pose.position]
        const atTool = [0, 1, 2].map((i) => v[i]! + omega[(i + 1) % 3]! * p[(i + 2) % 3]! - omega[(i + 2) % 3]! * p[(i + 1) % 3]!)
        close(inTool(atTool), column(body, 3), 1e-12)
      }
      for (let j = 0; j < n; j++) {
        const at = (step: number) => chain.si.potentialEnergy(pose.q.map((x, i) => (i === j ? x + step : x)))
        expect(Math.abs((at(1e-5) - at(-1e-5)) / 2e-5 - pose.gravity[j]!)).toBeLessThan(1e-6)
      }
    }
  })
})

describe('conventions', () => {
  const rows = [
    { theta: '0.3 rad', d: '0.1 m', a: '0.2 m', alpha: '0.5 rad' },
    { theta: '-0.2 rad', d: '0.05 m', a: '0.1 m', alpha: '-1.1 rad' },
  ] as const
  test('the same rows are different chains in the two conventions', () => {
    const [standard, modified] = (['standard', 'modified'] as const).map((convention) =>
      chainFromDenavitHartenberg({ convention, rows }).pose(rad([0.2, 0.4])),
    )
    expect(standard!.position.x.si).not.toBeCloseTo(modified!.position.x.si, 3)
  })

  test('modified rows, shifted by one, make the standard chain', () => {
    // Rx(α)Tx(a) of a modified row belongs to the link before: moving it up one row, with the last as the tool, is the standard form.
    const modified = chainFromDenavitHartenberg({
      convention: 'modified',
      rows: [
        { theta: '0.3 rad', d: '0.1 m' },
        { theta: '-0.2 rad', d: '0.05 m', a: '0.2 m', alpha: '0.5 rad' },
      ],
      tool: {
        position: { x: '0.1 m', y: '0 m', z: '0 m' },
        rotation: [
          [1, 0, 0],
          [0, Math.cos(-1.1), -Math.sin(-1.1)],
          [0, Math.sin(-1.1), Math.cos(-1.1)],
        ],
      },
    })
    const [one, other] = [modified, chainFromDenavitHartenberg({ convention: 'standard', rows })].map((chain) => {
      const frame = new Float64Array(12)
      chain.si.poseInto(frame, 0, [0.7, -1.2])
      return [...frame]
    })
    close(one!, other!, 1e-15)
  })

  test('the leg as screws and as standard rows is the leg', () => {
    const [d, l1, l2] = [0.058, 0.165, 0.18]
    const screws = chainFromScrews({
      screws: [
        { axis: { x: 1, y: 0, z: 0 }, point: { x: '0 m', y: '0 m', z: '0 m' } },
        { axis: { x: 0, y: 1, z: 0 }, point: { x: '0 m', y: [d, 'm'], z: '0 m' } },
        { axis: { x: 0, y: 1, z: 0 }, point: { x: '0 m', y: [d, 'm'], z: [-l1, 'm'] } },
      ],
      tool: { position: { x: '0 m', y: [d, 'm'], z: [-l1 - l2, 'm'] } },
    })
    const table = chainFromDenavitHartenberg({
      convention: 'standard',
      base: {
        position: { x: '0 m', y: '0 m', z: '0 m' },
        rotation: [
          [0, 0, 1],
          [1, 0, 0],
          [0, 1, 0],
        ],
      },
      rows: [{ theta: '90 deg', alpha: '90 deg' }, { theta: '180 deg', d: [d, 'm'], a: [l1, 'm'] }, { a: [l2, 'm'] }],
    })
    const leg = new LegKernel(d, l1, l2)
    const random = randomStream(5)
    const [p, frame] = [new Float64Array(3), new Float64Array(12)]
    for (let i = 0; i < 200; i++) {
      const q = [0, 1, 2].map(() => random.uniformBetween(-3, 3))
      leg.footInto(p, 0, q[0]!, q[1]!, q[2]!)
      for (const chain of [screws, table]) {
        chain.si.poseInto(frame, 0, q)
        close(frame.slice(9), [...p], 1e-15)
      }
    }
  })
})

describe('dynamics', () => {
  const random = randomStream(11)
  const draw = (n: number, size: number) => Float64Array.from({ length: n }, () => random.uniformBetween(-size, size))
  test('mass matrix is symmetric positive definite, torque is linear in acceleration, power balances', () => {
    for (const given of oracle.chains.filter(({ n }) => n >= 3)) {
      const { n } = given
      const chain = chainFromDenavitHartenberg({
        convention: 'standard',
        rows: given.rows.map((row) => ({
          type: row.type,
          theta: [row.theta, 'rad'],
          d: [row.d, 'm'],
          a: [row.a, 'm'],
          alpha: [row.alpha, 'rad'],
        })),
        links: given.links.map(link),
      }).si
      const [q, w, a] = [draw(n, 2), draw(n, 2), draw(n, 5)]
      const [M, tau, gravity, coriolis] = [new Float64Array(n * n), new Float64Array(n), new Float64Array(n), new Float64Array(n)]
      chain.massMatrixInto(M, 0, q)
      // Cholesky by hand: every pivot positive.
      const L = Float64Array.from(M)
      for (let k = 0; k < n; k++) {
        expect(L[k * n + k]).toBeGreaterThan(0)
        for (let i = k + 1; i < n; i++) {
          expect(M[i * n + k]).toBe(M[k * n + i])
          const factor = L[i * n + k]! / L[k * n + k]!
          for (let j = k; j < n; j++) L[i * n + j]! -= factor * L[k * n + j]!
        }
      }
      chain.torqueInto(tau, 0, q, w, a)
      chain.gravityInto(gravity, 0, q)
      chain.coriolisInto(coriolis, 0, q, w)
      for (let i = 0; i < n; i++) {
        let sum = gravity[i]! + coriolis[i]!
        for (let j = 0; j < n; j++) sum += M[i * n + j]! * a[j]!
        expect(Math.abs(sum - tau[i]!)).toBeLessThan(1e-10)
      }
      // d/dt (T + V) = τ · q̇ along the motion.
      const energy = (t: number) => {
        const [qt, wt] = [q.map((x, i) => x + w[i]! * t + 0.5 * a[i]! * t * t), w.map((x, i) => x + a[i]! * t)]
        return chain.kineticEnergy(qt, wt) + chain.potentialEnergy(qt)
      }
      const power = tau.reduce((sum, t, i) => sum + t * w[i]!, 0)
      expect(Math.abs((energy(1e-5) - energy(-1e-5)) / 2e-5 - power)).toBeLessThan(1e-6 * Math.max(1, Math.abs(power)))
    }
  })

  test('three-link arm with yaw has the closed-form mass matrix', () => {
    // R. M. Murray, Z. Li, S. S. Sastry, A Mathematical Introduction to Robotic Manipulation (1994), ch. 4, elbow manipulator: yaw, pitch, pitch.
    const [l1, r1, r2] = [0.4, 0.15, 0.2]
    const [m1, m2, m3] = [2, 3, 1.5]
    const I = (x: number, y: number, z: number) => ({ xx: [x, 'kg m^2'] as const, yy: [y, 'kg m^2'] as const, zz: [z, 'kg m^2'] as const })
    const m = (x: number) => [x, 'm'] as const
    const zero = { x: '0 m', y: '0 m', z: '0 m' } as const
    const chain = chainFromScrews({
      screws: [
        { axis: { x: 0, y: 0, z: 1 }, point: zero },
        { axis: { x: -1, y: 0, z: 0 }, point: zero },
        { axis: { x: -1, y: 0, z: 0 }, point: { x: '0 m', y: m(l1), z: '0 m' } },
      ],
      tool: { position: { x: '0 m', y: m(1), z: '0 m' } },
      links: [
        { mass: [m1, 'kg'], centreOfMass: zero, inertia: I(0.01, 0.02, 0.03) },
        { mass: [m2, 'kg'], centreOfMass: { x: '0 m', y: m(r1), z: '0 m' }, inertia: I(0.04, 0.005, 0.06) },
        { mass: [m3, 'kg'], centreOfMass: { x: '0 m', y: m(l1 + r2), z: '0 m' }, inertia: I(0.07, 0.008, 0.09) },
      ],
    })
    const [q2, q3] = [0.6, -0.9]
    const [c2, c23, s2, s23, c3] = [Math.cos(q2), Math.cos(q2 + q3), Math.sin(q2), Math.sin(q2 + q3), Math.cos(q3)]
    const M = chain.massMatrix(rad([0.3, q2, q3]))
    expect(M[0]![0]).toBeCloseTo(
      0.005 * s2 ** 2 +
        0.008 * s23 ** 2 +
        0.03 +
        0.06 * c2 ** 2 +
        0.09 * c23 ** 2 +
        m2 * r1 ** 2 * c2 ** 2 +
        m3 * (l1 * c2 + r2 * c23) ** 2,
      13,
    )
    expect(M[0]![1]).toBeCloseTo(0, 14)
    expect(M[1]![1]).toBeCloseTo(0.04 + 0.07 + m3 * l1 ** 2 + m2 * r1 ** 2 + m3 * r2 ** 2 + 2 * m3 * l1 * r2 * c3, 13)
    expect(M[1]![2]).toBeCloseTo(0.07 + m3 * r2 ** 2 + m3 * l1 * r2 * c3, 13)
    expect(M[2]![2]).toBeCloseTo(0.07 + m3 * r2 ** 2, 13)
  })

  test('rotors act through the coupling as they do on the leg', () => {
    const make = (more: object) =>
      chainFromScrews({
        screws: [
          { axis: { x: 0, y: 1, z: 0 }, point: { x: '0 m', y: '0 m', z: '0 m' } },
          { axis: { x: 0, y: 1, z: 0 }, point: { x: '0 m', y: '0 m', z: '-1 m' } },
        ],
        tool: { position: { x: '0 m', y: '0 m', z: '-2 m' } },
        ...more,
      }).massMatrix(['0.2 rad', '0.4 rad'])
    const rotorInertia = ['0.03 kg m^2', '0.05 kg m^2']
    expect(make({ rotorInertia })).toEqual([
      [0.03, 0],
      [0, 0.05],
    ])
    const coupled = make({
      rotorInertia,
      actuators: [
        [1, 0],
        [1, 2],
      ],
    })
    const expected = [0.08, 0.1, 0.1, 0.2]
    for (const [i, value] of coupled.flat().entries()) expect(value).toBeCloseTo(expected[i]!, 15)
    expect(() => make({ rotorInertia: ['1 kg m^2'] })).toThrow(/1 values; must be one for each of the 2 joints/)
    expect(() => make({ rotorInertia, actuators: [[1]] })).toThrow(/2 rows of 2 ratios/)
  })

  test('rotors of the leg, coupled, are those of the same chain', () => {
    const [d, l1, l2] = [0.058, 0.165, 0.18]
    const rotorInertia = [0.002, 0.003, 0.004]
    const body = { mass: [0.3, 'kg'], centreOfMass: { x: [0.002, 'm'], y: [0.01, 'm'], z: [-0.07, 'm'] } } as const
    const at = (y: number, z: number) => ({ x: [0, 'm'], y: [y, 'm'], z: [z, 'm'] }) as const
    const from = (y: number, z: number) =>
      ({ ...body, centreOfMass: { ...body.centreOfMass, y: [0.01 + y, 'm'], z: [-0.07 + z, 'm'] } }) as const
    const chain = chainFromScrews({
      screws: [
        { axis: { x: 1, y: 0, z: 0 }, point: at(0, 0) },
        { axis: { x: 0, y: 1, z: 0 }, point: at(d, 0) },
        { axis: { x: 0, y: 1, z: 0 }, point: at(d, -l1) },
      ],
      tool: { position: at(d, -l1 - l2) },
      links: [from(0, 0), from(d, 0), from(d, -l1)],
      rotorInertia: rotorInertia.map((inertia) => [inertia, 'kg m^2'] as const),
      actuators: [
        [1, 0, 0],
        [0, 1, 0],
        [0, 1, 1.3],
      ],
    })
    const felt = new Float64Array(9)
    const [q, w, a] = [draw(3, 1), draw(3, 4), draw(3, 40)]
    driveCoupling({ knee: 'cordFromHip', ratio: 1.3 }).si.jointMatrixInto(felt, 0, q, rotorInertia)
    const link = [0.3, 0.002, 0.01, -0.07, 0, 0, 0, 0, 0, 0]
    const leg = new LegDynamicsKernel(d, l1, l2, [link, link, link], [0, 0, -9.80665], felt)
    const [ours, theirs] = [new Float64Array(3), new Float64Array(3)]
    leg.torqueInto(ours, 0, q, w, a, 0, 0, 0)
    chain.si.torqueInto(theirs, 0, q, w, a)
    close(ours, [...theirs], 1e-12)
  })

  test('a guided foot is never lighter than a free one', () => {
    const { free, constrained } = lynchThreeLink.effectiveMass(rad([0.2, 0.5, -0.8]), { x: 0.3, y: -0.2, z: 0.9 })
    expect(constrained!.si).toBeGreaterThan(free!.si)
  })
})

describe('damped inverse', () => {
  const leg = chainFromScrews({
    screws: [
      { axis: { x: 1, y: 0, z: 0 }, point: { x: '0 mm', y: '0 mm', z: '0 mm' } },
      { axis: { x: 0, y: 1, z: 0 }, point: { x: '0 mm', y: '58 mm', z: '0 mm' } },
      { axis: { x: 0, y: 1, z: 0 }, point: { x: '0 mm', y: '58 mm', z: '-165 mm' } },
    ],
    tool: { position: { x: '0 mm', y: '58 mm', z: '-345 mm' } },
  })
  const exact = threeJointLeg({ hipOffset: '58 mm', upperLink: '165 mm', lowerLink: '180 mm' })
  const request = (position: readonly number[]) => ({
    position,
    lengthPerRadian: 0.1,
    seed: [0, -0.4, 0.9],
    lowest: [-Infinity, -Infinity, -Infinity],
    highest: [Infinity, Infinity, Infinity],
    tolerance: 1e-10,
    maxIterations: 500,
  })

  test('reaches what can be reached, from one seed', () => {
    const random = randomStream(21)
    const p = new Float64Array(3)
    let reached = 0
    for (let n = 0; n < 300; n++) {
      exact.si.footInto(p, 0, random.uniformBetween(-0.6, 0.6), random.uniformBetween(-1, 0.5), random.uniformBetween(0.3, 2.2))
      const found = dampedInverse(leg.si, request([...p]))
      if (found.ended === 'reached') reached++
      else expect(found.ended).toBe('localStop')
    }
    expect(reached).toBe(300)
  })

  test('settles on the nearest point of targets out of reach instead of cycling', () => {
    const random = randomStream(22)
    for (let n = 0; n < 100; n++) {
      const direction = [random.uniformBetween(-0.5, 0.5), random.uniformBetween(-0.3, 0.5), -1]
      const size = Math.hypot(...direction)
      const target = direction.map((x) => (x / size) * random.uniformBetween(0.4, 0.9))
      const found = dampedInverse(leg.si, request(target))
      expect(found.ended).toBe('localStop')
      const answer = exact.jointAngles({ x: [target[0]!, 'm'], y: [target[1]!, 'm'], z: [target[2]!, 'm'] })
      if (answer.reachable) throw new Error('out of reach')
      expect(found.positionError).toBeCloseTo(answer.miss.si, 7)
    }
  })

  test('what is missing of a rotation is its angle, up to half a turn', () => {
    const wrist = chainFromScrews({
      screws: [{ axis: { x: 0, y: 0, z: 1 }, point: { x: '0 m', y: '0 m', z: '0 m' } }],
      tool: { position: { x: '0 m', y: '0 m', z: '0 m' } },
    })
    for (const angle of [1e-6, 0.7, 2.5, Math.PI]) {
      const [c, s] = [Math.cos(angle), Math.sin(angle)]
      const { ended, rotationError } = wrist.inverse({
        position: { x: '0 m', y: '0 m', z: '0 m' },
        rotation: [
          [1, 0, 0],
          [0, c, -s],
          [0, s, c],
        ],
        seed: ['0 rad'],
      })
      expect(ended).toBe('localStop')
      expect(rotationError.si).toBeCloseTo(angle, 9)
    }
  })

  test('rotation too, and limits', () => {
    const target = lynchThreeLink.pose(rad([0.3, -0.4, 0.9]))
    const found = lynchThreeLink.inverse({
      position: target.position,
      rotation: target.rotation.map((row) => row.map((x) => x.si)),
      seed: rad([0, 0, 0.2]),
      maxIterations: 2000,
    })
    expect(found.ended).toBe('reached')
    expect(found.rotationError.si).toBeLessThan(1e-7)
    const stopped = lynchThreeLink.inverse({
      position: target.position,
      seed: rad([0, 0, 0.2]),
      limits: [0, 1, 2].map(() => ({ lowest: '-0.3 rad', highest: '0.5 rad' }) as const),
    })
    expect(stopped.ended).toBe('localStop')
    for (const value of stopped.values) {
      expect(value.si).toBeLessThanOrEqual(0.5)
      expect(value.si).toBeGreaterThanOrEqual(-0.3)
    }
  })
})

describe('bad input', () => {
  test('a table without a convention, a chain without joints, links that do not match', () => {
    expect(() => chainFromDenavitHartenberg({ rows: [{ a: '1 m' }] } as never)).toThrow(
      /convention is missing; must be one of standard, modified/,
    )
    expect(() => chainFromDenavitHartenberg({ convention: 'standard', rows: [] })).toThrow(
      /rows is an empty list; a chain needs at least one joint/,
    )
    expect(() => chainFromScrews({ screws: [], tool: { position: { x: '0 m', y: '0 m', z: '0 m' } } })).toThrow(/at least one joint/)
    const tool = { position: { x: '0 m', y: '0 m', z: '1 m' } } as const
    expect(() => chainFromScrews({ screws: [{ axis: { x: 0, y: 0, z: 0 }, point: tool.position }], tool })).toThrow(/screws\[0\]\.axis/)
    expect(() => chainFromScrews({ screws: [{ axis: { x: 0, y: 0, z: 1 } }], tool })).toThrow(/screws\[0\]\.point is missing/)
    expect(() =>
      chainFromScrews({
        screws: [{ axis: { x: 0, y: 0, z: 1 }, point: tool.position }],
        tool: {
          ...tool,
          rotation: [
            [1, 0, 0],
            [0, 1, 0],
            [0, 0, 2],
          ],
        },
      }),
    ).toThrow(/rotation/)
    const target = { position: tool.position, seed: rad([0, 0, 0]) } as const
    expect(() =>
      lynchThreeLink.inverse({
        ...target,
        rotation: [
          [1, 0, 0],
          [0, 1, 0],
          [0, 0, 2],
        ],
      }),
    ).toThrow(/rotation is another matrix; must be the three rows of a rotation/)
    expect(() => lynchThreeLink.inverse({ ...target, limits: [] })).toThrow(/limits is 0 limits; must be one for each of the 3 joints/)
    expect(() => lynchThreeLink.coriolis(rad([0, 0, 0]), undefined as never)).toThrow(/rates is .*must be 3 finite numbers/)
    for (const inertia of [
      { xx: '1 kg m^2', yy: '1 kg m^2', xy: '2 kg m^2' },
      // No pair of axes shows it, all three together do.
      { xx: '1 kg m^2', yy: '1 kg m^2', zz: '1 kg m^2', xy: '-0.9 kg m^2', xz: '-0.9 kg m^2', yz: '-0.9 kg m^2' },
    ] as const)
      expect(() =>
        chainFromScrews({
          screws: [{ axis: { x: 0, y: 0, z: 1 }, point: tool.position }],
          tool,
          links: [{ mass: '1 kg', centreOfMass: tool.position, inertia }],
        }),
      ).toThrow(/links\[0\]\.inertia is products beyond its moments/)
    expect(() => lynchThreeLink.pose(['1 rad', '1 rad'])).toThrow(/2 values; must be one for each of the 3 joints/)
    expect(() => lynchThreeLink.pose(['1 rad', '1 m' as never, '1 rad'])).toThrow(/values\[1\]/)
  })
})
