import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  BEYOND_LIMITS,
  cantileverToe,
  driveCoupling,
  eccentricityError,
  encoderStep,
  footError,
  footErrorChart,
  footPath,
  footPushLimit,
  footSpeedLimit,
  footStiffness,
  LegKernel,
  largestStepBox,
  limitedWorkspaceVolume,
  manipulability,
  notchHinge,
  OUT_OF_REACH,
  REACHED,
  sagittalArea,
  stiffnessAlong,
  supportPolygon,
  threeJointLeg,
  workspaceOverlaps,
  workspaceSection,
  workspaceVolume,
} from '../../src/kinematics/index.js'
import { integrate, randomStream, singularValues } from '../../src/numeric/index.js'
import frames from '../oracles/kinematics-frame.json' with { type: 'json' }
import limitsOracle from '../oracles/kinematics-limits.json' with { type: 'json' }

const leg = threeJointLeg({ hipOffset: '58 mm', upperLink: '165 mm', lowerLink: '180 mm' })
const standing = { sidewaysHip: '4 deg', hip: '-30 deg', knee: '62 deg' } as const
const q = [(4 * Math.PI) / 180, -Math.PI / 6, (62 * Math.PI) / 180] as const
const foot = (pose: readonly number[]) => {
  const out = new Float64Array(3)
  leg.si.footInto(out, 0, pose[0]!, pose[1]!, pose[2]!)
  return out
}

describe('error at the foot', () => {
  const half = { sidewaysHip: '0.2 deg', hip: '0.3 deg', knee: '0.25 deg' } as const
  test('the worst corner is the worst of the eight corners, moved for real', () => {
    const { lines } = footError(leg, { angles: standing, sources: [{ name: 'slack', at: 'joint', ...half }] })
    const delta = [0.2, 0.3, 0.25].map((d) => (d * Math.PI) / 180)
    const here = foot(q)
    let worst = 0
    const axis = [0, 0, 0]
    for (let bits = 0; bits < 8; bits++) {
      const there = foot(q.map((x, i) => x + ((bits >> i) & 1 ? -1 : 1) * delta[i]!))
      worst = Math.max(worst, Math.hypot(there[0]! - here[0]!, there[1]! - here[1]!, there[2]! - here[2]!))
      for (let i = 0; i < 3; i++) axis[i] = Math.max(axis[i]!, Math.abs(there[i]! - here[i]!))
    }
    // To first order in half a degree.
    expect(lines[0]!.worstCorner.si / worst).toBeCloseTo(1, 1.5)
    for (const [i, value] of Object.values(lines[0]!.worstPerAxis).entries()) expect(Math.abs(value.si / axis[i]! - 1)).toBeLessThan(0.03)
    expect(lines[0]!.rss.si).toBeLessThan(lines[0]!.worstCorner.si)
  })

  test('causes add at the worst and as squares, drums through the coupling', () => {
    const coupling = driveCoupling({ knee: 'parallelogram' })
    const sources = [
      { name: 'encoder', at: 'joint', ...half },
      { name: 'lost motion', at: 'actuator', ...half },
    ] as const
    const { lines, together, covarianceSi } = footError(leg, { angles: standing, sources, coupling })
    expect(together.rss.si ** 2).toBeCloseTo(lines[0]!.rss.si ** 2 + lines[1]!.rss.si ** 2, 15)
    expect(together.worstPerAxis.x.si).toBeCloseTo(lines[0]!.worstPerAxis.x.si + lines[1]!.worstPerAxis.x.si, 15)
    expect(together.worstCorner.si).toBeLessThanOrEqual(lines[0]!.worstCorner.si + lines[1]!.worstCorner.si + 1e-15)
    expect(covarianceSi[0]! + covarianceSi[4]! + covarianceSi[8]!).toBeCloseTo(together.rss.si ** 2, 15)
    // Slack in the hip's drum moves the thigh while the shank keeps its absolute angle, so the foot moves less than by the hip joint's slack alone.
    const only = { sidewaysHip: '0 deg', hip: '1 deg', knee: '0 deg' } as const
    const one = (at: 'joint' | 'actuator') =>
      footError(leg, { angles: standing, coupling, sources: [{ name: 'hip', at, ...only }] }).together.worstCorner.si
    expect(one('actuator')).toBeLessThan(one('joint'))
    expect(one('actuator')).toBeCloseTo((0.165 * Math.PI) / 180, 12)
  })

  test('a movement of the foot itself is a cause like another', () => {
    const windup = { name: 'windup', at: 'foot', x: '-1 mm', y: '2 mm', z: '2 mm' } as const
    const { lines, together, covarianceSi } = footError(leg, {
      angles: standing,
      sources: [windup, { name: 'slack', at: 'joint', ...half }],
    })
    expect(lines[0]!.worstCorner.in('mm')).toBeCloseTo(3, 12)
    expect(lines[0]!.rss.in('mm')).toBeCloseTo(3, 12)
    expect(lines[0]!.worstPerAxis.x.in('mm')).toBeCloseTo(1, 12)
    expect(together.worstPerAxis.z.si).toBeCloseTo(0.002 + lines[1]!.worstPerAxis.z.si, 15)
    expect(together.worstCorner.si).toBeLessThanOrEqual(0.003 + lines[1]!.worstCorner.si)
    expect(together.worstCorner.si).toBeGreaterThan(Math.hypot(0.003, lines[1]!.worstCorner.si))
    // Ten movements in ten directions, over all signs.
    const random = randomStream(13)
    const ten = Array.from({ length: 10 }, (_, k) => {
      const [x, y, z] = [0, 1, 2].map(() => random.uniformBetween(-1, 1)) as [number, number, number]
      return { name: `${k}`, at: 'foot', x: [x, 'mm'], y: [y, 'mm'], z: [z, 'mm'] } as const
    })
    let worst = 0
    for (let bits = 0; bits < 1 << 10; bits++) {
      const total = [0, 0, 0]
      ten.forEach(({ x, y, z }, k) => {
        for (const [i, [value]] of [x, y, z].entries()) total[i]! += (bits >> k) & 1 ? -value : value
      })
      worst = Math.max(worst, Math.hypot(...(total as [number, number, number])))
    }
    expect(footError(leg, { angles: standing, sources: ten }).together.worstCorner.in('mm')).toBeCloseTo(worst, 12)
    const alone = footError(leg, { angles: standing, sources: [windup] }).covarianceSi
    expect(alone[1]).toBeCloseTo(-2e-6, 18)
    expect(covarianceSi[0]! + covarianceSi[4]! + covarianceSi[8]!).toBeCloseTo(together.rss.si ** 2, 15)
  })

  test.each([
    [[{ name: 'a', at: 'foot', x: '1 mm', y: '0 mm' }], /sources\[0\]\.z is missing; must be a length/],
    [[{ name: 'a', at: 'joint', ...half, x: '1 mm' }], /sources\[0\]\.x is given; is not an input of a source at 'joint'/],
    [[{ name: 'a', at: 'actuator', sidewaysHip: '0 deg', hip: '0 deg' }], /sources\[0\]\.knee is missing; must be an angle/],
    [[{ at: 'joint', ...half }], /sources\[0\]\.name is .*must be a name/],
    [undefined, /sources is missing/],
    [Array.from({ length: 17 }, (_, k) => ({ name: `${k}`, at: 'foot', x: [k, 'mm'], y: '1 mm', z: [k * k, 'mm'] })), undefined],
    [
      Array.from({ length: 22 }, (_, k) => ({ name: `${k}`, at: 'foot', x: [k, 'mm'], y: '1 mm', z: [k * k, 'mm'] })),
      /sources is 22 sources; at most 16 at the foot/,
    ],
  ] as const)('sources %#', (sources, message) => {
    const call = () => footError(leg, { angles: standing, sources: sources as never })
    if (message === undefined) expect(call()).toBeDefined()
    else expect(call).toThrow(message)
  })

  test('many causes: the worst corner by directions is the worst over all signs', () => {
    const random = randomStream(31)
    const many = Array.from({ length: 5 }, (_, k) => {
      const angle = () => [random.uniformBetween(0, 0.01), 'rad'] as const
      return { name: `cause ${k}`, at: 'joint', sidewaysHip: angle(), hip: angle(), knee: angle() } as const
    })
    const { together } = footError(leg, { angles: standing, sources: many })
    const J = new Float64Array(9)
    leg.si.jacobianInto(J, 0, ...q)
    const columns = many.flatMap((s) => [s.sidewaysHip, s.hip, s.knee].map(([d], j) => [J[j]! * d, J[3 + j]! * d, J[6 + j]! * d]))
    let worst = 0
    for (let bits = 0; bits < 1 << 15; bits++) {
      const total = [0, 0, 0]
      columns.forEach((c, k) => {
        for (let i = 0; i < 3; i++) total[i]! += (bits >> k) & 1 ? -c[i]! : c[i]!
      })
      worst = Math.max(worst, Math.hypot(...(total as [number, number, number])))
    }
    expect(together.worstCorner.si).toBeCloseTo(worst, 14)
  })

  test('the eccentricity error has the harmonics it says', () => {
    const at = (k: number, angle: number) => eccentricityError.si({ eccentricity: k, trackRadius: 1, angle }).error
    for (const k of [0.01, 0.05]) {
      for (const harmonic of [1, 2]) {
        const amplitude = integrate((t) => at(k, t) * Math.sin(harmonic * t), 0, 2 * Math.PI) / Math.PI
        const { firstHarmonic, secondHarmonic } = eccentricityError.si({ eccentricity: k, trackRadius: 1, angle: 0 })
        expect(amplitude).toBeCloseTo(harmonic === 1 ? firstHarmonic : secondHarmonic, 10)
      }
      let worst = 0
      for (let i = 0; i < 20_000; i++) worst = Math.max(worst, at(k, (i * Math.PI) / 10_000))
      expect(worst).toBeCloseTo(eccentricityError.si({ eccentricity: k, trackRadius: 1, angle: 0 }).worstError, 8)
    }
    expect(encoderStep.si({ countsPerTurn: 4096, turnsPerJointTurn: 1 }).rmsError * Math.sqrt(3)).toBeCloseTo(
      encoderStep.si({ countsPerTurn: 4096, turnsPerJointTurn: 1 }).worstError,
      15,
    )
  })

  test('a chart of ellipses', () => {
    const path = footPath({
      midStance: { x: '0 mm', y: '58 mm', z: '-280 mm' },
      stanceSweep: '120 mm',
      stridePeriod: '0.5 s',
      dutyFactor: 0.5,
      lift: '40 mm',
    })
    const chart = footErrorChart(
      leg,
      path,
      ([a, b, c]) =>
        footError(leg, {
          angles: { sidewaysHip: [a!, 'rad'], hip: [b!, 'rad'], knee: [c!, 'rad'] },
          sources: [{ name: 'slack', at: 'joint', ...half }],
        }).covarianceSi,
    )
    expect(JSON.stringify(chart)).toContain('1 σ')
    // The first ellipse, at touch-down, spans what the deviations along x and z are, ten times; its tilt is the covariance's.
    const layers = (chart.layer as { data?: { values?: { series?: string; x: number; y: number }[] } }[]) ?? [chart]
    const points = layers.flatMap(({ data }) => data?.values ?? []).filter(({ series }) => series?.startsWith('1 σ at 0 %'))
    const start = leg.jointAngles({ x: '60 mm', y: '58 mm', z: '-280 mm' })
    if (!start.reachable) throw new Error('reachable')
    const { sidewaysHip, hip, knee } = start.branches[0]!
    const c = footError(leg, { angles: { sidewaysHip, hip, knee }, sources: [{ name: 'slack', at: 'joint', ...half }] }).covarianceSi
    const [x, z] = [points.map((p) => p.x - 60), points.map((p) => p.y + 280)]
    expect(points.length).toBe(33)
    expect(Math.max(...x) / (1e4 * Math.sqrt(c[0]!))).toBeCloseTo(1, 1.5)
    expect(Math.max(...z) / (1e4 * Math.sqrt(c[8]!))).toBeCloseTo(1, 1.5)
    const mixed = x.slice(1).reduce((sum, value, i) => sum + value * z[i + 1]!, 0) / 32
    expect(mixed / (0.5e8 * c[2]!)).toBeCloseTo(1, 6)
    expect(JSON.stringify(chart)).not.toContain('null,null')
  })
})

describe('stiffness at the foot', () => {
  const drives = { sidewaysHip: '90 N m/rad', hip: '120 N m/rad', knee: '80 N m/rad' } as const
  const solve = (more: object = {}) => {
    const answer = footStiffness(leg, { angles: standing, driveStiffness: drives, ...more })
    if (!answer.stable) throw new Error('gives way')
    return answer
  }

  test('compliance is J K⁻¹ Jᵀ, and the guided foot is never softer than the free one', () => {
    const J = new Float64Array(9)
    leg.si.jacobianInto(J, 0, ...q)
    const { compliance, free, guided } = solve()
    for (let i = 0; i < 3; i++)
      for (let k = 0; k < 3; k++) {
        const sum = [90, 120, 80].reduce((s, stiffness, j) => s + (J[3 * i + j]! * J[3 * k + j]!) / stiffness, 0)
        expect(compliance[i]![k]!.si).toBeCloseTo(sum, 15)
      }
    for (const axis of ['x', 'y', 'z'] as const) expect(guided[axis].si).toBeGreaterThanOrEqual(free[axis].si * (1 - 1e-12))
    expect(guided.z.si / free.z.si).toBeGreaterThan(2)
    const flat = compliance.flat().map((x) => x.si)
    expect(stiffnessAlong(flat, [0, 0, 1])).toEqual({ free: expect.closeTo(free.z.si, 6), guided: expect.closeTo(guided.z.si, 6) })
  })

  test('the load’s term is the derivative of the load’s torque', () => {
    fc.assert(
      fc.property(
        fc.tuple(...[0, 1, 2].map(() => fc.double({ min: -2, max: 2, noNaN: true }))),
        fc.tuple(...[0, 1, 2].map(() => fc.double({ min: -80, max: 80, noNaN: true }))),
        (pose, force) => {
          const H = new Float64Array(9)
          leg.si.loadStiffnessInto(H, 0, pose as number[], force as number[])
          for (let j = 0; j < 3; j++) {
            const at = (step: number) => {
              const out = new Float64Array(3)
              const p = (pose as number[]).map((x, i) => (i === j ? x + step : x))
              leg.si.torqueFromFootPushInto(out, 0, p[0]!, p[1]!, p[2]!, ...(force as [number, number, number]))
              return out
            }
            const [up, down] = [at(1e-5), at(-1e-5)]
            for (let i = 0; i < 3; i++) expect(Math.abs((up[i]! - down[i]!) / 2e-5 - H[3 * i + j]!)).toBeLessThan(1e-7)
          }
        },
      ),
    )
  })

  test('with its load the compliance is how the loaded foot really moves', () => {
    // Solve the loaded leg's balance K (q0 − q) + Jᵀ R = 0 for two loads, and compare the foot's movement with the compliance.
    const K = [90, 120, 80]
    const load = [4, -3, 60]
    const settle = (force: readonly number[], start: readonly number[], command: readonly number[]) => {
      const pose = [...start]
      for (let i = 0; i < 3000; i++) {
        const tau = new Float64Array(3)
        leg.si.torqueFromFootPushInto(tau, 0, pose[0]!, pose[1]!, pose[2]!, force[0]!, force[1]!, force[2]!)
        for (let j = 0; j < 3; j++) pose[j]! += 0.3 * (command[j]! + tau[j]! / K[j]! - pose[j]!)
      }
      return pose
    }
    const tau = new Float64Array(3)
    leg.si.torqueFromFootPushInto(tau, 0, ...q, load[0]!, load[1]!, load[2]!)
    const command = q.map((x, j) => x - tau[j]! / K[j]!)
    const more = [0.02, -0.01, 0.03]
    const [before, after] = [1, -1].map((sign) =>
      foot(
        settle(
          load.map((f, i) => f - sign * more[i]!),
          q,
          command,
        ),
      ),
    )
    const { compliance } = solve({ groundReaction: { x: '4 N', y: '-3 N', z: '60 N' } })
    for (let i = 0; i < 3; i++) {
      const predicted = compliance[i]!.reduce((sum, c, j) => sum + c.si * 2 * more[j]!, 0)
      expect(after![i]! - before![i]!).toBeCloseTo(predicted, 10)
    }
    expect(solve({ groundReaction: { x: '0 N', y: '0 N', z: '60 N' } }).free.z.si).not.toBeCloseTo(solve().free.z.si, 0)
  })

  test('the deflection is the way the foot has gone from its unloaded place', () => {
    // Load the unloaded leg in small steps, each by the compliance found there, and see where it ends.
    const coupling = driveCoupling({ knee: 'cordFromHip', ratio: 1.2 })
    const load = [6, -4, 90] as const
    const K = new Float64Array(9)
    coupling.si.jointMatrixInto(K, 0, q, [90, 120, 80])
    const turn = (tau: ArrayLike<number>) => {
      const determinant = K[4]! * K[8]! - K[5]! * K[7]!
      return [
        tau[0]! / K[0]!,
        (K[8]! * tau[1]! - K[5]! * tau[2]!) / determinant,
        (K[4]! * tau[2]! - K[7]! * tau[1]!) / determinant,
      ] as const
    }
    const tau = new Float64Array(3)
    leg.si.torqueFromFootPushInto(tau, 0, ...q, ...load)
    const start = turn(tau).map((x, i) => q[i]! - x)
    let pose = [...start]
    const steps = 400
    let [x, y, z] = foot(pose)
    for (let n = 1; n <= steps; n++) {
      // The middle of the step: a half step first, then the whole by the compliance there.
      const by = (from: readonly number[], share: number) => {
        const answer = footStiffness(leg, {
          angles: { sidewaysHip: [from[0]!, 'rad'], hip: [from[1]!, 'rad'], knee: [from[2]!, 'rad'] },
          driveStiffness: drives,
          coupling,
          groundReaction: { x: [load[0] * share, 'N'], y: [load[1] * share, 'N'], z: [load[2] * share, 'N'] },
        })
        if (!answer.stable) throw new Error('gives way')
        return answer.compliance.map((row) => row.reduce((sum, c, j) => sum + (c.si * load[j]!) / steps, 0))
      }
      const settle = (share: number, from: readonly number[]) => {
        let found = [...from]
        for (let i = 0; i < 60; i++) {
          leg.si.torqueFromFootPushInto(tau, 0, found[0]!, found[1]!, found[2]!, load[0] * share, load[1] * share, load[2] * share)
          found = turn(tau).map((d, j) => start[j]! + d)
        }
        return found
      }
      const middle = settle((n - 0.5) / steps, pose)
      const moved = by(middle, (n - 0.5) / steps)
      x! += moved[0]!
      y! += moved[1]!
      z! += moved[2]!
      pose = settle(n / steps, middle)
    }
    const { deflection, deflectionOf } = solve({ coupling, groundReaction: { x: '6 N', y: '-4 N', z: '90 N' } })
    const unloaded = foot(start)
    expect(deflection.x.si).toBeCloseTo(x! - unloaded[0]!, 6)
    expect(deflection.y.si).toBeCloseTo(y! - unloaded[1]!, 6)
    expect(deflection.z.si).toBeCloseTo(z! - unloaded[2]!, 6)
    expect(deflectionOf.drives.z.si).toBe(deflection.z.si)
    const beam = { inPlane: '100 N m^2', acrossPlane: '50 N m^2', torsion: '20 N m^2' } as const
    const all = solve({ upperLink: beam, footPad: { z: '20 um/N' }, groundReaction: { x: '0 N', y: '0 N', z: '50 N' } })
    for (const axis of ['x', 'y', 'z'] as const)
      expect(all.deflection[axis].si).toBeCloseTo(
        all.deflectionOf.drives[axis].si + all.deflectionOf.links[axis].si + all.deflectionOf.footPad[axis].si,
        15,
      )
    expect(all.deflectionOf.footPad.z.in('mm')).toBeCloseTo(1, 12)
    expect(all.deflectionOf.links.z.si).toBeCloseTo(50 * all.shares.links.z.si, 15)
  })

  test('a very stiff drive beside soft ones is no reason to give way', () => {
    const given = { angles: standing, driveStiffness: { sidewaysHip: '1e12 N m/rad', hip: '100 N m/rad', knee: '100 N m/rad' } } as const
    expect(footStiffness(leg, given)).toMatchObject({ stable: true })
  })

  test('drives too soft for the load give way, said as such', () => {
    const soft = { sidewaysHip: '2 N m/rad', hip: '2 N m/rad', knee: '2 N m/rad' } as const
    expect(footStiffness(leg, { angles: standing, driveStiffness: soft, groundReaction: { x: '0 N', y: '0 N', z: '200 N' } })).toEqual({
      stable: false,
    })
  })

  test.each(frames.cases.map((frame, i) => [i, frame] as const))(
    'bending and torsion of the links are those of a space frame, case %i',
    (_, frame) => {
      const { d, l1, l2, q: pose, upperLink, lowerLink, compliance } = frame
      const rigid = [1e12, 'N m/rad'] as const
      const beam = (given: typeof upperLink) => ({
        inPlane: [given.inPlane, 'N m^2'] as const,
        acrossPlane: [given.acrossPlane, 'N m^2'] as const,
        torsion: [given.torsion, 'N m^2'] as const,
      })
      const answer = footStiffness(threeJointLeg({ hipOffset: [d, 'm'], upperLink: [l1, 'm'], lowerLink: [l2, 'm'] }), {
        angles: { sidewaysHip: [pose[0]!, 'rad'], hip: [pose[1]!, 'rad'], knee: [pose[2]!, 'rad'] },
        driveStiffness: { sidewaysHip: rigid, hip: rigid, knee: rigid },
        upperLink: beam(upperLink),
        lowerLink: beam(lowerLink),
      })
      if (!answer.stable) throw new Error('gives way')
      const largest = Math.max(...compliance.flat())
      for (let i = 0; i < 3; i++)
        for (let j = 0; j < 3; j++) expect(Math.abs(answer.compliance[i]![j]!.si - compliance[i]![j]!)).toBeLessThan(1e-6 * largest)
    },
  )

  test('a bending link gives a cantilever’s deflection, and parts add as compliances', () => {
    const stiff = { sidewaysHip: '1e12 N m/rad', hip: '1e12 N m/rad', knee: '1e12 N m/rad' } as const
    const straight = { sidewaysHip: '0 deg', hip: '0 deg', knee: '0 deg' } as const
    const beam = { inPlane: '100 N m^2', acrossPlane: '50 N m^2', torsion: '1e9 N m^2' } as const
    const lower = footStiffness(leg, { angles: straight, driveStiffness: stiff, lowerLink: beam })
    if (!lower.stable) throw new Error('gives way')
    expect(lower.free.x.si).toBeCloseTo((3 * 100) / 0.18 ** 3, 1)
    expect(lower.free.y.si).toBeCloseTo((3 * 50) / 0.18 ** 3, 1)
    const both = footStiffness(leg, { angles: straight, driveStiffness: stiff, lowerLink: beam, upperLink: beam })
    if (!both.stable) throw new Error('gives way')
    expect(both.free.x.si).toBeCloseTo((3 * 100) / 0.345 ** 3, 1)
    const padded = solve({ footPad: { x: '0 m/N', y: '0 m/N', z: '20 um/N' } })
    expect(padded.compliance[2]![2]!.si - solve().compliance[2]![2]!.si).toBeCloseTo(20e-6, 15)
    const coupled = solve({ coupling: driveCoupling({ knee: 'cordFromHip', ratio: 1 }) })
    expect(coupled.free.x.si).not.toBeCloseTo(solve().free.x.si, 0)
  })
})

describe('manipulability', () => {
  test('smallest singular value keeps its accuracy up to the singular pose', () => {
    for (const bend of [1, 1e-3, 1e-6, 1e-9, 1e-12]) {
      const { smallestSingularValue, measure, velocityAxes, inverseCondition, forceAxes } = manipulability(leg, {
        sidewaysHip: '0.2 rad',
        hip: '0.3 rad',
        knee: [bend, 'rad'],
      })
      // det = σ1 σ2 σ3 with the closed form of the determinant.
      const closed = 0.165 * 0.18 * Math.sin(bend) * (0.165 * Math.cos(0.3) + 0.18 * Math.cos(0.3 + bend))
      const [large, middle] = velocityAxes.map((axis) => axis.halfLength.si)
      expect(measure.si / closed).toBeCloseTo(1, 12)
      expect((large! * middle! * smallestSingularValue.si) / closed).toBeCloseTo(1, 12)
      // Near straight the value is linear in the bend.
      if (bend <= 1e-6)
        expect(smallestSingularValue.si / bend).toBeCloseTo(
          manipulability(leg, { sidewaysHip: '0.2 rad', hip: '0.3 rad', knee: [1e-7, 'rad'] }).smallestSingularValue.si / 1e-7,
          5,
        )
      expect(inverseCondition.si).toBeLessThanOrEqual(1)
      expect(forceAxes[2]!.halfLength.si).toBeCloseTo(1 / smallestSingularValue.si, -3)
    }
  })

  test('agrees with a Jacobi decomposition at ordinary poses', () => {
    const random = randomStream(8)
    for (let k = 0; k < 200; k++) {
      const [a, b, c] = [random.uniformBetween(-1, 1), random.uniformBetween(-1, 0.4), random.uniformBetween(0.2, 1.8)]
      const J = new Float64Array(9)
      leg.si.jacobianInto(J, 0, a, b, c)
      const values = [...singularValues(J, 3).values].sort((x, y) => y - x)
      const found = manipulability(leg, { sidewaysHip: [a, 'rad'], hip: [b, 'rad'], knee: [c, 'rad'] })
      found.velocityAxes.forEach(({ halfLength, direction: { x, y, z } }, i) => {
        expect(halfLength.si).toBeCloseTo(values[i]!, 13)
        // |Jᵀ u| = σ for the axis u.
        const u = [x.si, y.si, z.si]
        const image = [0, 1, 2].map((j) => J[j]! * u[0]! + J[3 + j]! * u[1]! + J[6 + j]! * u[2]!)
        expect(Math.hypot(...(image as [number, number, number]))).toBeCloseTo(values[i]!, 9)
      })
    }
  })

  test('a straight leg carries by structure along itself', () => {
    const push = footPushLimit(leg, {
      angles: { sidewaysHip: '0 deg', hip: '0 deg', knee: '0 deg' },
      torqueLimits: { sidewaysHip: '10 N m', hip: '10 N m', knee: '10 N m' },
      direction: { x: 0, y: 0.058 / 0.345, z: -1 },
    })
    expect(push.pureDirection.si).toBe(Infinity)
    expect(push.limitedBy).toBeUndefined()
    // Across itself it does not: 10 N m at the hip over 345 mm, with the knee still below its 10 N m over 180 mm.
    const across = footPushLimit(leg, {
      angles: { sidewaysHip: '0 deg', hip: '0 deg', knee: '0 deg' },
      torqueLimits: { sidewaysHip: '10 N m', hip: '10 N m', knee: '10 N m' },
      direction: { x: 1, y: 0, z: 0 },
    })
    expect(across.pureDirection.si).toBeCloseTo(10 / 0.345, 10)
    expect(across.bestDirection.si).toBeCloseTo(10 / 0.345, 10)
    const bent = footPushLimit(leg, {
      angles: standing,
      torqueLimits: { sidewaysHip: '10 N m', hip: '10 N m', knee: '10 N m' },
      direction: { x: 0, y: 0, z: -1 },
    })
    expect(bent.bestDirection.si).toBeGreaterThanOrEqual(bent.pureDirection.si)
    const out = new Float64Array(3)
    leg.si.torqueFromFootPushInto(out, 0, ...q, 0, 0, -bent.pureDirection.si)
    expect(Math.max(...out.map(Math.abs))).toBeCloseTo(10, 10)
  })
})

describe('limits along a direction', () => {
  const by = <U extends string>([sidewaysHip, hip, knee]: readonly number[], unit: U) =>
    ({ sidewaysHip: [sidewaysHip!, unit], hip: [hip!, unit], knee: [knee!, unit] }) as const
  const rateLimits = by(limitsOracle.rates, 'rad/s')
  const torqueLimits = by(limitsOracle.torques, 'N m')
  test.each(limitsOracle.cases.map((one, i) => [i, one.singularity, one] as const))(
    'are those of a linear programme, case %i (%s)',
    (_, singularity, { d, q: pose, u, pureSpeed, bestSpeed, purePush, bestPush }) => {
      const one = threeJointLeg({ hipOffset: [d, 'm'], upperLink: [limitsOracle.l1, 'm'], lowerLink: [limitsOracle.l2, 'm'] })
      const [angles, direction] = [by(pose, 'rad'), { x: u[0]!, y: u[1]!, z: u[2]! }]
      expect(one.singularity(angles)).toBe(singularity)
      const speed = footSpeedLimit(one, { angles, rateLimits, direction })
      const push = footPushLimit(one, { angles, torqueLimits, direction })
      for (const [ours, theirs] of [
        [speed.pureDirection.si, pureSpeed],
        [speed.bestDirection.si, bestSpeed],
        [push.pureDirection.si, purePush ?? Infinity],
        [push.bestDirection.si, bestPush ?? Infinity],
      ] as const) {
        if (theirs === Infinity) expect(ours).toBe(Infinity)
        else expect(Math.abs(ours - theirs)).toBeLessThanOrEqual(1e-8 * Math.max(1, theirs))
      }
    },
  )

  test('distances to the singular poses', () => {
    const { toSingularity } = manipulability(leg, { sidewaysHip: '10 deg', hip: '-20 deg', knee: '50 deg' })
    expect(toSingularity.kneeFromStraight.in('deg')).toBeCloseTo(50, 12)
    expect(toSingularity.kneeFromFolded.in('deg')).toBeCloseTo(130, 12)
    expect(toSingularity.footBelowHipAxis.si).toBeCloseTo(0.165 * Math.cos(Math.PI / 9) + 0.18 * Math.cos(Math.PI / 6), 12)
    expect(
      manipulability(leg, { sidewaysHip: '0 deg', hip: '0 deg', knee: '-170 deg' }).toSingularity.kneeFromFolded.in('deg'),
    ).toBeCloseTo(10, 10)
  })
})

describe('workspace', () => {
  test('volume by Monte Carlo, and independent of the offset', () => {
    const random = randomStream(17)
    const angles = new Float64Array(3)
    for (const d of [0, 0.058, -0.1]) {
      const kernel = new LegKernel(d, 0.165, 0.18)
      const reach = Math.hypot(0.345, d)
      let inside = 0
      const n = 200_000
      for (let k = 0; k < n; k++) {
        const [x, y, z] = [0, 0, 0].map(() => random.uniformBetween(-reach, reach)) as [number, number, number]
        if (kernel.jointAnglesInto(angles, 0, x, y, z, 0) === REACHED) inside++
      }
      const share = inside / n
      const volume = share * (2 * reach) ** 3
      const deviation = Math.sqrt((share * (1 - share)) / n) * (2 * reach) ** 3
      expect(Math.abs(volume - workspaceVolume.si({ upperLink: 0.165, lowerLink: 0.18 }))).toBeLessThan(4 * deviation)
    }
  })

  const limited = threeJointLeg({
    hipOffset: '58 mm',
    upperLink: '165 mm',
    lowerLink: '180 mm',
    limits: {
      sidewaysHip: { lowest: '-30 deg', highest: '30 deg' },
      hip: { lowest: '-45 deg', highest: '20 deg' },
      knee: { lowest: '10 deg', highest: '100 deg' },
    },
  })

  test('limited volume and section area by counting', () => {
    const random = randomStream(18)
    const angles = new Float64Array(3)
    const n = 200_000
    let inside = 0
    const box = [0.6, 0.6, 0.4] as const
    for (let k = 0; k < n; k++) {
      const [x, y, z] = [random.uniformBetween(-0.3, 0.3), random.uniformBetween(-0.25, 0.35), random.uniformBetween(-0.4, 0)]
      if (limited.si.jointAnglesInto(angles, 0, x, y, z, 0) !== REACHED) continue
      if (angles.every((a, i) => a >= limited.limitsSi[2 * i]! && a <= limited.limitsSi[2 * i + 1]!)) inside++
    }
    const share = inside / n
    const whole = box[0] * box[1] * box[2]
    const deg = Math.PI / 180
    const exact = limitedWorkspaceVolume.si({
      upperLink: 0.165,
      lowerLink: 0.18,
      sidewaysHipRange: 60 * deg,
      hipFrom: -45 * deg,
      hipTo: 20 * deg,
      kneeFrom: 10 * deg,
      kneeTo: 100 * deg,
    })
    expect(Math.abs(share * whole - exact)).toBeLessThan(4 * whole * Math.sqrt((share * (1 - share)) / n))
  })

  test('a section’s flags, its area, and the largest step box in it', () => {
    const inPlane = threeJointLeg({
      hipOffset: '0 mm',
      upperLink: '165 mm',
      lowerLink: '180 mm',
      limits: {
        sidewaysHip: { lowest: '-30 deg', highest: '30 deg' },
        hip: { lowest: '-45 deg', highest: '20 deg' },
        knee: { lowest: '10 deg', highest: '100 deg' },
      },
    })
    const section = workspaceSection(inPlane, {
      y: '0 mm',
      x: { lowest: '-350 mm', highest: '350 mm' },
      z: { lowest: '-350 mm', highest: '0 mm' },
      step: '2 mm',
    })
    const deg = Math.PI / 180
    const exact = sagittalArea.si({ upperLink: 0.165, lowerLink: 0.18, hipRange: 65 * deg, kneeFrom: 10 * deg, kneeTo: 100 * deg })
    expect(Math.abs(section.area.si / exact - 1)).toBeLessThan(0.02)
    expect(new Set(section.flags)).toContain(OUT_OF_REACH)
    expect(new Set(section.flags)).toContain(BEYOND_LIMITS)
    expect(section.overlapping).toBe(0)
    const box = largestStepBox(section, { leastLift: '40 mm' })!
    expect(box.lift.si).toBeGreaterThanOrEqual(0.04 - 1e-9)
    expect(box.sweep.si).toBeGreaterThan(0.05)
    // Every grid point of the box is reachable; one column more on either side is not.
    const answer = (x: number, z: number) => inPlane.jointAngles({ x: [x, 'm'], y: '0 mm', z: [z, 'm'] }).reachable
    const step = 0.002
    let [left, right] = [true, true]
    for (let z = box.z.lowest.si; z <= box.z.highest.si + 1e-9; z += step) {
      for (let x = box.x.lowest.si; x <= box.x.highest.si + 1e-9; x += step) expect(answer(x, z)).toBe(true)
      left &&= answer(box.x.lowest.si - step, z)
      right &&= answer(box.x.highest.si + step, z)
    }
    expect(left || right).toBe(false)
    expect(largestStepBox(section, { leastLift: '300 mm' })).toBeUndefined()
  })

  test('a section’s branches are those of the inverse, and a step box keeps to one', () => {
    const bothWays = threeJointLeg({
      hipOffset: '0 mm',
      upperLink: '165 mm',
      lowerLink: '180 mm',
      limits: {
        sidewaysHip: { lowest: '-30 deg', highest: '30 deg' },
        hip: { lowest: '-60 deg', highest: '40 deg' },
        knee: { lowest: '-80 deg', highest: '110 deg' },
      },
    })
    const section = workspaceSection(bothWays, {
      y: '0 mm',
      x: { lowest: '-300 mm', highest: '300 mm' },
      z: { lowest: '-340 mm', highest: '-100 mm' },
      step: '20 mm',
    })
    const seen = new Set<number>()
    section.z.forEach((z, iz) => {
      section.x.forEach((x, ix) => {
        const answer = bothWays.jointAngles({ x: [x, 'm'], y: '0 mm', z: [z, 'm'] })
        const bends = answer.reachable ? answer.branches.map(({ kneeBend }) => kneeBend) : []
        const bits = section.branches[iz * section.x.length + ix]!
        seen.add(bits)
        expect(bits).toBe((bends.includes('forward') ? 1 : 0) + (bends.includes('backward') ? 2 : 0))
      })
    })
    expect([...seen].sort()).toEqual([0, 1, 2, 3])
    expect(section.overlapping).toBe(section.branches.filter((bits) => bits === 3).length)
    const box = largestStepBox(section)!
    section.z.forEach((z, iz) => {
      section.x.forEach((x, ix) => {
        if (x < box.x.lowest.si || x > box.x.highest.si || z < box.z.lowest.si || z > box.z.highest.si) return
        expect((section.branches[iz * section.x.length + ix]! >> box.branch) & 1).toBe(1)
      })
    })
  })

  test('the note on the volume is there where the foot comes to both sides of the hip axis, found by sampling', () => {
    const random = randomStream(41)
    let noted = 0
    for (let k = 0; k < 400; k++) {
      const [upperLink, lowerLink] = [random.uniformBetween(0.1, 0.3), random.uniformBetween(0.1, 0.3)]
      const hip = [random.uniformBetween(-Math.PI, Math.PI), random.uniformBetween(-Math.PI, Math.PI)].sort((x, y) => x - y)
      const knee = [random.uniformBetween(0, Math.PI), random.uniformBetween(0, Math.PI)].sort((x, y) => x - y)
      const rad = (x: number) => [x, 'rad'] as const
      let [lowest, highest] = [Infinity, -Infinity]
      for (let i = 0; i <= 60; i++)
        for (let j = 0; j <= 60; j++) {
          const q2 = hip[0]! + ((hip[1]! - hip[0]!) * i) / 60
          const height = upperLink * Math.cos(q2) + lowerLink * Math.cos(q2 + knee[0]! + ((knee[1]! - knee[0]!) * j) / 60)
          lowest = Math.min(lowest, height)
          highest = Math.max(highest, height)
        }
      if (Math.min(Math.abs(lowest), Math.abs(highest)) < 1e-3) continue
      const { notes, si } = limitedWorkspaceVolume({
        upperLink: [upperLink, 'm'],
        lowerLink: [lowerLink, 'm'],
        sidewaysHipRange: '40 deg',
        hipFrom: rad(hip[0]!),
        hipTo: rad(hip[1]!),
        kneeFrom: rad(knee[0]!),
        kneeTo: rad(knee[1]!),
      })
      expect(notes !== undefined).toBe(lowest < 0 && highest > 0)
      if (notes !== undefined) noted++
      expect(si).toBeGreaterThanOrEqual(0)
    }
    expect(noted).toBeGreaterThan(50)
  })

  test('limits upside down are refused by the volume', () => {
    const given = { upperLink: '165 mm', lowerLink: '180 mm', sidewaysHipRange: '60 deg', kneeFrom: '10 deg', kneeTo: '100 deg' } as const
    expect(() => limitedWorkspaceVolume({ ...given, hipFrom: '20 deg', hipTo: '-45 deg' })).toThrow(/hipTo is .*must be above hipFrom/)
    expect(() => limitedWorkspaceVolume({ ...given, hipFrom: '0 deg', hipTo: '9 deg', kneeTo: '5 deg' })).toThrow(/must be above kneeFrom/)
  })

  test('overlap is warned of', () => {
    const bending = (lowest: string, highest: string) =>
      workspaceOverlaps(
        threeJointLeg({
          hipOffset: '58 mm',
          upperLink: '165 mm',
          lowerLink: '180 mm',
          limits: {
            sidewaysHip: { lowest: '-30 deg', highest: '30 deg' },
            hip: { lowest: '-10 deg', highest: '10 deg' },
            knee: { lowest, highest } as never,
          },
        }),
      ).because
    expect(bending('0 deg', '90 deg')).toEqual([])
    expect(bending('-1 deg', '90 deg')).toEqual(['kneeBothWays'])
    expect(bending('150 deg', '200 deg')).toContain('kneeBothWays')
    const spinning = threeJointLeg({
      hipOffset: '58 mm',
      upperLink: '165 mm',
      lowerLink: '180 mm',
      limits: {
        sidewaysHip: { lowest: '-30 deg', highest: '30 deg' },
        hip: { lowest: '-200 deg', highest: '200 deg' },
        knee: { lowest: '0 deg', highest: '90 deg' },
      },
    })
    expect(workspaceOverlaps(spinning).because).toEqual(['hipBeyondTurn', 'footAboveHip'])
    expect(workspaceOverlaps(limited)).toEqual({ overlaps: false, because: [] })
    expect(workspaceOverlaps(leg).because).toEqual(['kneeBothWays', 'sidewaysHipBeyondTurn', 'hipBeyondTurn', 'footAboveHip'])
    const note = limitedWorkspaceVolume({
      upperLink: '165 mm',
      lowerLink: '180 mm',
      sidewaysHipRange: '60 deg',
      hipFrom: '-120 deg',
      hipTo: '20 deg',
      kneeFrom: '0 deg',
      kneeTo: '100 deg',
    })
    expect(note.notes?.[0]?.text).toMatch(/one side of the hip axis/)
  })

  test('bad sections are refused', () => {
    const good = { y: '0 mm', x: { lowest: '-1 m', highest: '1 m' }, z: { lowest: '-1 m', highest: '0 m' } } as const
    expect(() => workspaceSection(leg, { ...good, step: '0 mm' })).toThrow(/step/)
    expect(() => workspaceSection(leg, { ...good, step: '1 um' })).toThrow(/at most 4000000 points/)
    expect(() => workspaceSection(leg, { ...good, step: '10 mm', x: { lowest: '1 m', highest: '-1 m' } })).toThrow(
      /x\.lowest is 1 m; must be below the highest/,
    )
  })
})

describe('toes', () => {
  test('thin notch formula is the exact integral’s leading term', () => {
    // Compliance ∫ 12 dx / E b h³ with h = t + 2 r (1 − cos φ).
    const exact = (t: number, r: number) =>
      1 / integrate((phi) => (12 * r * Math.cos(phi)) / (t + 2 * r * (1 - Math.cos(phi))) ** 3, -Math.PI / 2, Math.PI / 2)
    const formula = (t: number, r: number) =>
      notchHinge.si({ modulus: 1, width: 1, thickness: t, notchRadius: r, angle: 1, allowableStrain: 1 }).stiffness
    expect(formula(1e-4, 1) / exact(1e-4, 1)).toBeCloseTo(1, 3)
    // The validity range promises about 5 % at a tenth.
    expect(Math.abs(formula(0.1, 1) / exact(0.1, 1) - 1)).toBeLessThan(0.05)
  })

  test('limits are consistent: at the force limit the use is 1; long deflections are noted', () => {
    const toe = { modulus: '2000 MPa', length: '40 mm', width: '10 mm', thickness: '2 mm', allowableStrain: '1 %' } as const
    const { forceLimit } = cantileverToe({ ...toe, tipForce: '1 N' })
    const at = cantileverToe({ ...toe, tipForce: forceLimit })
    expect(at.use.si).toBeCloseTo(1, 12)
    expect(at.deflection.notes?.[0]?.text).toMatch(/tenth of the length/)
    expect(cantileverToe({ ...toe, tipForce: '1 N' }).deflection.notes).toBeUndefined()
  })
})

describe('support', () => {
  const feet = [
    { x: '150 mm', y: '120 mm' },
    { x: '150 mm', y: '-120 mm' },
    { x: '-150 mm', y: '120 mm' },
    { x: '-150 mm', y: '-120 mm' },
  ] as const
  test('four feet, the middle: margins, slopes and pushes', () => {
    const found = supportPolygon({ feet, centreOfMass: { x: '20 mm', y: '0 mm', z: '260 mm' }, mass: '10.5 kg' })
    expect(found.state).toBe('stable')
    expect(found.corners.length).toBe(4)
    expect(found.area.si).toBeCloseTo(0.3 * 0.24, 12)
    expect(found.margin!.in('mm')).toBeCloseTo(120, 9)
    expect(found.weakest!.tipSlope.si).toBeCloseTo(Math.atan(120 / 260), 12)
    expect(found.weakest!.tipPush!.si).toBeCloseTo((10.5 * 9.80665 * 0.12) / 0.26, 9)
  })

  test('a push higher up tips with less', () => {
    const given = { feet, centreOfMass: { x: '20 mm', y: '0 mm', z: '260 mm' }, mass: '10.5 kg' } as const
    expect(supportPolygon({ ...given, pushHeight: '520 mm' }).weakest!.tipPush!.si).toBeCloseTo((10.5 * 9.80665 * 0.12) / 0.52, 9)
  })

  test('three feet may tip, two never hold', () => {
    const centreOfMass = { x: '-60 mm', y: '-60 mm', z: '260 mm' } as const
    expect(supportPolygon({ feet: feet.slice(0, 3), centreOfMass }).state).toBe('tips')
    expect(supportPolygon({ feet: [feet[0], feet[3]], centreOfMass })).toMatchObject({ state: 'noPolygon', margin: undefined })
  })

  test('the margin is the distance to the hull, and hull order does not matter', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.integer({ min: -300, max: 300 }), fc.integer({ min: -300, max: 300 })), { minLength: 3, maxLength: 9 }),
        (points) => {
          const given = points.map(([x, y]) => ({ x: [x, 'mm'] as const, y: [y, 'mm'] as const }))
          const centreOfMass = { x: '7 mm', y: '-3 mm', z: '100 mm' } as const
          const [one, other] = [given, given.toReversed()].map((list) => supportPolygon({ feet: list, centreOfMass }))
          expect(other!.state).toBe(one!.state)
          if (one!.margin !== undefined) expect(other!.margin!.si).toBeCloseTo(one!.margin.si, 12)
          // Every foot is inside or on every edge.
          for (const edge of one!.edges) {
            const [a, b] = edge.feet.map((i) => points[i]!)
            for (const [x, y] of points)
              expect((b![0] - a![0]) * (y - a![1]) - (b![1] - a![1]) * (x - a![0])).toBeGreaterThanOrEqual(-1e-6 * 600 * 600)
          }
        },
      ),
    )
  })
})
