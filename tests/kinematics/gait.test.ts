import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  driveCoupling,
  dropOnSpring,
  type FootPathSpecification,
  footPath,
  footSpeedLimit,
  type Landing,
  landOnSpringAndDamper,
  legDynamics,
  matchedSwingPeaks,
  peakForceOfPair,
  reachChart,
  restToRestPeaks,
  SWING_SHAPES,
  stanceForce,
  strideDemand,
  strideTorqueChart,
  threeJointLeg,
  torqueSpeedChart,
} from '../../src/kinematics/index.js'
import { integrate } from '../../src/numeric/index.js'

const base = {
  midStance: { x: '10 mm', y: '58 mm', z: '-280 mm' },
  stanceSweep: '120 mm',
  stridePeriod: '0.5 s',
  dutyFactor: 0.45,
  lift: '45 mm',
} as const satisfies FootPathSpecification
const { lift: _, ...bare } = base
/** Every mark of a chart that belongs to a series. */
const marksOf = (spec: unknown): { series: string; x: number; y: number }[] => {
  if (typeof spec !== 'object' || spec === null) return []
  const { data } = spec as { data?: { values?: { series?: string; x: number; y: number }[] } }
  const own = (data?.values ?? []).filter((mark) => mark.series !== undefined) as { series: string; x: number; y: number }[]
  return own.length > 0 ? own : Object.values(spec).flatMap(marksOf)
}
const at = (path: ReturnType<typeof footPath>, t: number) => {
  const out = new Float64Array(9)
  const stance = path.si.stateInto(out, 0, t)
  return { out, stance }
}
const points = [
  { forward: '-60 mm', up: '0 mm' },
  { forward: '-50 mm', up: '60 mm' },
  { forward: '0 mm', up: '80 mm' },
  { forward: '50 mm', up: '60 mm' },
  { forward: '60 mm', up: '0 mm' },
] as const

describe.each([
  ...SWING_SHAPES.flatMap((swing) =>
    (['cosine', 'smooth'] as const).map(
      (liftShape) => [`${swing}, ${liftShape}`, { ...base, swing, liftShape, heading: '25 deg' }] as const,
    ),
  ),
  ['Bézier', { ...bare, swingPoints: points }] as const,
])('foot path: %s', (_, given) => {
  const path = footPath(given as FootPathSpecification)
  test('is closed and continuous, and its rates are derivatives', () => {
    const T = path.si.period
    const edge = 1e-9
    for (const t of [0, path.si.stanceTime]) {
      const [before, after] = [at(path, t - edge + T).out, at(path, t + edge).out]
      for (let i = 0; i < 3; i++) expect(Math.abs(before[i]! - after[i]!)).toBeLessThan(1e-8)
    }
    for (let k = 0; k < 97; k++) {
      const t = (T * (k + 0.31)) / 97
      const step = 1e-6
      if (at(path, t - step).stance !== at(path, t + step).stance) continue
      const [down, here, up] = [at(path, t - step).out, at(path, t).out, at(path, t + step).out]
      for (let i = 0; i < 3; i++) {
        expect(Math.abs((up[i]! - down[i]!) / (2 * step) - here[3 + i]!)).toBeLessThan(1e-7)
        expect(Math.abs((up[3 + i]! - down[3 + i]!) / (2 * step) - here[6 + i]!)).toBeLessThan(2e-4)
      }
    }
  })

  test('stands at constant speed, and clears the ground by what it says', () => {
    const { out } = at(path, 0.3 * path.si.stanceTime)
    expect(Math.hypot(out[3]!, out[4]!)).toBeCloseTo(0.12 / (0.45 * 0.5), 12)
    expect(path.bodySpeed.si).toBeCloseTo(0.12 / (0.45 * 0.5), 12)
    let highest = 0
    for (let k = 0; k <= 2000; k++) highest = Math.max(highest, at(path, (path.si.period * k) / 2000).out[2]! + 0.28)
    expect(path.clearance.si).toBeGreaterThanOrEqual(highest - 1e-12)
    expect(path.clearance.si - highest).toBeLessThan(1e-6)
  })
})

test('a matched swing meets the ground at the stance’s speed; others scuff', () => {
  const matched = footPath({ ...base, swing: 'matched' })
  const [before, after] = [at(matched, matched.si.period - 1e-9), at(matched, 1e-9)]
  expect(before.out[3]).toBeCloseTo(after.out[3]!, 6)
  expect(at(footPath({ ...base, swing: 'cycloid' }), matched.si.period - 1e-9).out[3]).toBeCloseTo(0, 6)
})

test('a Bézier’s clearance is well below its highest control point', () => {
  // Middle of seven points: (6 · 0 + 2 · 15 · 60 + 20 · 80)/64 mm.
  expect(footPath({ ...bare, swingPoints: points }).clearance.in('mm')).toBeCloseTo(53.125, 9)
})

test('peaks of the swing agree with its samples', () => {
  const peak = (path: ReturnType<typeof footPath>, from: number) => {
    let most = 0
    for (let k = 0; k <= 20_000; k++) {
      const { out, stance } = at(path, path.si.stanceTime + ((path.si.period - path.si.stanceTime) * (k + 1e-6)) / 20_001)
      if (!stance) most = Math.max(most, from === 3 ? out[3]! : Math.abs(out[6]!))
    }
    return most
  }
  const swingTime = 0.55 * 0.5
  for (const shape of ['cycloid', 'cubic', 'quintic'] as const) {
    const { peakSpeed, peakAcceleration } = restToRestPeaks.si({ distance: 0.12, time: swingTime, shape })
    const path = footPath({ ...base, swing: shape })
    expect(peak(path, 3)).toBeCloseTo(peakSpeed, 6)
    expect(Math.abs(peak(path, 6) / peakAcceleration - 1)).toBeLessThan(2e-4)
  }
  const path = footPath({ ...base, swing: 'matched' })
  const { peakSpeed, peakAcceleration } = matchedSwingPeaks.si({ stride: 0.12, swingTime, bodySpeed: path.si.bodySpeed })
  expect(peak(path, 3)).toBeCloseTo(peakSpeed, 6)
  expect(Math.abs(peak(path, 6) / peakAcceleration - 1)).toBeLessThan(2e-4)
})

test('impulse of a stance equals weight times time, whatever the shape', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.05, max: 1, noNaN: true }),
      fc.double({ min: 0.05, max: 1, noNaN: true }),
      fc.constantFrom('halfSine', 'parabolic', 'rectangular', 'twoPeaked'),
      fc.double({ min: -0.33, max: 1, noNaN: true }),
      (dutyFactor, legShare, shape, thirdHarmonic) => {
        const force = (stancePhase: number) =>
          stanceForce.si({ mass: 10.5, legShare, dutyFactor, stancePhase, shape, thirdHarmonic, gravity: 9.80665 })
        const perStride = dutyFactor * integrate(force, 0, 1)
        expect(perStride).toBeCloseTo(legShare * 10.5 * 9.80665, 9)
      },
    ),
  )
  expect(peakForceOfPair.si({ mass: 1, pairShare: 1, dutyFactor: 0.4, gravity: 1 })).toBeCloseTo(Math.PI / 1.6, 12)
})

describe('what a stride asks', () => {
  const leg = threeJointLeg({ hipOffset: '58 mm', upperLink: '165 mm', lowerLink: '180 mm' })
  const massless = {
    centreOfMass: { x: '0 mm', y: '0 mm', z: '-60 mm' },
    inertia: { xx: '1e-3 kg m^2', yy: '1e-3 kg m^2', zz: '2e-4 kg m^2' },
  } as const
  const dynamics = legDynamics(leg, {
    hipLink: { mass: '0.6 kg', ...massless },
    upperLink: { mass: '0.35 kg', ...massless },
    lowerLink: { mass: '0.18 kg', ...massless },
  })
  const drive = {
    ratio: 6,
    efficiency: 0.9,
    backEfficiency: 0.85,
    rotorInertia: '60 kg mm^2',
    motor: { torqueConstant: '0.087 N m/A', resistance: '0.12 ohm' },
  } as const
  const drives = { sidewaysHip: drive, hip: drive, knee: drive }
  const load = { mass: '10.5 kg', legShare: 0.25 } as const
  const path = footPath(base)
  const walk = (more: object = {}) => {
    const answer = strideDemand({ leg, path, load, drives, ...more })
    if (!answer.walkable) throw new Error(answer.reason)
    return answer
  }

  test('work in equals work out: mean power of the joints is the power of the ground and nothing else', () => {
    const answer = walk({ dynamics, samples: 4000 })
    const { samples } = answer
    // Over a closed path the leg's own energy comes back: joints give what the ground takes.
    let ground = 0
    for (let i = 0; i < samples.count; i++) {
      let power = 0
      for (let k = 0; k < 3; k++) power -= samples.groundReaction[3 * i + k]! * samples.footVelocity[3 * i + k]!
      ground += samples.weight[i]! * power
    }
    const net = (['sidewaysHip', 'hip', 'knee'] as const).reduce(
      (sum, joint) => sum + answer.joints[joint].meanPowerOut.si - answer.joints[joint].meanPowerIn.si,
      0,
    )
    expect(net).toBeCloseTo(ground / path.si.period, 3)
  })

  test('power is the same at joints and drums, moment by moment', () => {
    const { samples: s } = walk({ dynamics, coupling: driveCoupling({ knee: 'cordFromHip', ratio: 1.3 }) })
    for (let i = 0; i < s.count; i++) {
      let [joints, drums] = [0, 0]
      for (let k = 3 * i; k < 3 * i + 3; k++) {
        joints += s.jointTorque[k]! * s.jointRate[k]!
        drums += s.actuatorTorque[k]! * s.actuatorRate[k]!
      }
      expect(drums).toBeCloseTo(joints, 9)
    }
  })

  test('rates and accelerations are derivatives along the path', () => {
    const { samples: s } = walk({ samples: 4000 })
    for (let i = 1; i < s.count - 1; i++) {
      if ([i - 1, i, i + 1].some((j) => s.weight[j] === 0)) continue
      const h = s.time[i + 1]! - s.time[i]!
      for (let k = 0; k < 3; k++) {
        const slope = (column: Float64Array) => (column[3 * i + 3 + k]! - column[3 * i - 3 + k]!) / (2 * h)
        expect(Math.abs(slope(s.jointAngle) - s.jointRate[3 * i + k]!)).toBeLessThan(2e-3)
        expect(Math.abs(slope(s.jointRate) - s.jointAcceleration[3 * i + k]!)).toBeLessThan(0.3)
      }
    }
  })

  test('a knee driven 1:1 from the hip moves load onto the hip motor', () => {
    const direct = walk()
    const driven = walk({ coupling: driveCoupling({ knee: 'parallelogram' }) })
    expect(driven.actuators.hip.peakTorque.si / direct.actuators.hip.peakTorque.si).toBeGreaterThan(2)
    expect(driven.actuators.knee.peakTorque.si).toBeCloseTo(direct.actuators.knee.peakTorque.si, 9)
  })

  test('reduction losses cost the motor when it drives and spare it when it is driven', () => {
    const still = { ...drive, rotorInertia: '0 kg m^2', efficiency: 1, backEfficiency: 1 } as const
    const ideal = walk({ drives: { sidewaysHip: still, hip: still, knee: still } }).motors.hip
    const lossy = { ...still, efficiency: 0.8, backEfficiency: 0.7 } as const
    const real = walk({ drives: { sidewaysHip: lossy, hip: lossy, knee: lossy } }).motors.hip
    expect(real.meanPowerOut.si).toBeCloseTo(ideal.meanPowerOut.si / 0.8, 9)
    expect(real.meanPowerIn.si).toBeCloseTo(ideal.meanPowerIn.si * 0.7, 9)
    // Copper loss is the rms current squared times the resistance.
    const { rmsCurrent, meanCopperLoss } = real.electrical!
    expect(meanCopperLoss.si).toBeCloseTo(rmsCurrent.si ** 2 * 0.12, 12)
    // What the supply gives is heat and the shaft's net power; drawn and returned are told apart.
    const { meanElectricalPower, meanPowerDrawn, meanPowerReturned, peakPowerDrawn, peakPowerReturned } = real.electrical!
    expect(meanElectricalPower.si).toBeCloseTo(meanCopperLoss.si + real.meanPowerOut.si - real.meanPowerIn.si, 9)
    expect(meanPowerDrawn.si - meanPowerReturned.si).toBeCloseTo(meanElectricalPower.si, 9)
    expect(meanPowerReturned.si).toBeGreaterThan(0)
    expect(peakPowerDrawn.si).toBeGreaterThan(meanPowerDrawn.si)
    expect(peakPowerReturned.si).toBeGreaterThan(meanPowerReturned.si)
    expect(real.peakTorque.si).toBeGreaterThanOrEqual(real.rmsTorque.si)
  })

  test('a leg of no mass asks what the ground asks, and a slow heavy one its weight beside', () => {
    const none = { mass: '0 kg', centreOfMass: { x: '0 mm', y: '0 mm', z: '0 mm' } } as const
    const weightless = walk().samples
    const none0 = walk({ dynamics: legDynamics(leg, { hipLink: none, upperLink: none, lowerLink: none }) }).samples
    // Samples for peaks stand where rounding puts them; those of the grid stand alike.
    const ofGrid = (s: typeof weightless) => s.jointTorque.filter((_, k) => s.weight[Math.floor(k / 3)]! > 0)
    const expected = ofGrid(none0)
    expect(expected.length).toBeGreaterThan(700)
    for (const [i, torque] of ofGrid(weightless).entries()) expect(expected[i]).toBeCloseTo(torque, 12)
    const slow = footPath({ ...base, stridePeriod: '500 s' })
    const { samples } = walk({ path: slow, dynamics })
    for (let i = 0; i < samples.count; i += 7) {
      const [q, r] = [samples.jointAngle.subarray(3 * i, 3 * i + 3), samples.groundReaction.subarray(3 * i, 3 * i + 3)]
      const angles = { sidewaysHip: [q[0]!, 'rad'], hip: [q[1]!, 'rad'], knee: [q[2]!, 'rad'] } as const
      const ground = leg.torqueFromGroundReaction({ angles, groundReaction: { x: [r[0]!, 'N'], y: [r[1]!, 'N'], z: [r[2]!, 'N'] } })
      const weight = dynamics.gravityTorque(angles)
      for (const [j, joint] of (['sidewaysHip', 'hip', 'knee'] as const).entries())
        expect(samples.jointTorque[3 * i + j]).toBeCloseTo(ground[joint].si + weight[joint].si, 4)
    }
  })

  test('motor torque, rms, current and voltage are those of the samples, worked again', () => {
    const motor = { torqueConstant: '0.087 N m/A', resistance: '0.12 ohm', noLoadCurrent: '0.6 A' } as const
    // A fast stride, so that rotors count and the motor runs both ways.
    const quick = footPath({ ...base, stridePeriod: '0.3 s' })
    const { samples: s, motors } = walk({ path: quick, dynamics, drives: { sidewaysHip: drive, hip: { ...drive, motor }, knee: drive } })
    let [squares, currents, total, volts, amperes] = [0, 0, 0, 0, 0]
    for (let i = 0; i < s.count; i++) {
      const [torque, rate, acceleration] = [s.actuatorTorque, s.actuatorRate, s.actuatorAcceleration].map(
        (column) => column[3 * i + 1]!,
      ) as [number, number, number]
      // The knee's rotor rides on the thigh: spinning it up loads the hip.
      const loaded = torque + 60e-6 * 6 * s.actuatorAcceleration[3 * i + 2]!
      const loss = loaded * rate < 0 ? 0.85 : 1 / 0.9
      const shaft = (loaded * loss) / 6 + 60e-6 * 6 * acceleration
      const speed = 6 * rate
      const current = shaft / 0.087 + 0.6 * Math.sign(speed)
      const voltage = 0.12 * current + 0.087 * speed
      expect(motors.hip.cloud.torque[i]).toBeCloseTo(shaft, 12)
      expect(motors.hip.cloud.speed[i]).toBeCloseTo(speed, 12)
      squares += s.weight[i]! * shaft ** 2
      currents += s.weight[i]! * current ** 2
      total += s.weight[i]!
      volts = Math.max(volts, Math.abs(voltage))
      amperes = Math.max(amperes, Math.abs(current))
    }
    expect(total).toBeCloseTo(quick.si.period, 12)
    expect(motors.hip.rmsTorque.si).toBeCloseTo(Math.sqrt(squares / total), 12)
    expect(motors.hip.electrical!.rmsCurrent.si).toBeCloseTo(Math.sqrt(currents / total), 10)
    expect(motors.hip.electrical!.peakVoltage.si).toBeCloseTo(volts, 12)
    expect(motors.hip.electrical!.peakCurrent.si).toBeCloseTo(amperes, 12)
    expect(motors.hip.peakTorque.si).toBe(Math.max(...motors.hip.cloud.torque.map(Math.abs)))
    expect(motors.hip.peakSpeed.si).toBe(Math.max(...motors.hip.cloud.speed.map(Math.abs)))
  })

  test('a force through the hip axis asks nothing of a weightless hip, upright leg or leaning', () => {
    for (const y of ['58 mm', '120 mm', '-20 mm']) {
      const leaning = footPath({ ...base, midStance: { ...base.midStance, y } } as FootPathSpecification)
      const { joints } = walk({ path: leaning, load: { ...load, foreAft: 'throughHip' } })
      expect(joints.hip.peakTorque.si).toBeLessThan(1e-12)
      expect(joints.knee.peakTorque.si).toBeGreaterThan(1)
    }
  })

  test('rotors make the foot heavier, and a guided foot is never lighter than a free one', () => {
    const given = { angles: { sidewaysHip: '3 deg', hip: '-30 deg', knee: '60 deg' }, direction: { x: 0, y: 0, z: 1 } } as const
    const bare = dynamics.effectiveMass(given)
    const coupling = driveCoupling({ knee: 'parallelogram' })
    const reflected = [70e-6 * 6.2 ** 2, 'kg m^2'] as const
    const rotors = { coupling, rotorInertiaAtOutput: { sidewaysHip: reflected, hip: reflected, knee: reflected } }
    const geared = dynamics.effectiveMass(given, rotors)
    expect(bare.constrained!.si).toBeGreaterThan(bare.free!.si)
    expect(geared.free!.si).toBeGreaterThan(bare.free!.si)
    expect(geared.constrained!.si).toBeGreaterThan(geared.free!.si)
  })

  test('effective mass of a point mass at the foot is that mass every way; of rotors alone it is by hand, and without bound along a straight leg', () => {
    const none = { mass: '0 kg', centreOfMass: { x: '0 mm', y: '0 mm', z: '0 mm' } } as const
    const point = legDynamics(leg, {
      hipLink: none,
      upperLink: none,
      lowerLink: { mass: '0.2 kg', centreOfMass: { x: '0 mm', y: '0 mm', z: '-180 mm' } },
    })
    const bent = { sidewaysHip: '10 deg', hip: '-25 deg', knee: '70 deg' } as const
    for (const direction of [
      { x: 0, y: 0, z: 1 },
      { x: 0.3, y: -0.5, z: 0.2 },
    ]) {
      const { free, constrained } = point.effectiveMass({ angles: bent, direction })
      expect(free!.si).toBeCloseTo(0.2, 12)
      expect(constrained!.si).toBeCloseTo(0.2, 12)
    }
    const bare = legDynamics(leg, { hipLink: none, upperLink: none, lowerLink: none })
    const rotors = {
      coupling: driveCoupling({ knee: 'motorAtKnee' }),
      rotorInertiaAtOutput: { sidewaysHip: '0.002 kg m^2', hip: '0.002 kg m^2', knee: '0.002 kg m^2' },
    } as const
    const straight = { sidewaysHip: '0 deg', hip: '0 deg', knee: '0 deg' } as const
    const across = bare.effectiveMass({ angles: straight, direction: { x: 1, y: 0, z: 0 } }, rotors)
    expect(across.free!.si).toBeCloseTo(0.002 / (0.345 ** 2 + 0.18 ** 2), 12)
    expect(across.constrained).toBeUndefined()
    const along = bare.effectiveMass({ angles: straight, direction: { x: 0, y: 0.058, z: -0.345 } }, rotors)
    expect(along).toEqual({ free: undefined, constrained: undefined })
    // Without masses and rotors there is nothing to accelerate, and nothing to divide by.
    expect(bare.effectiveMass({ angles: bent, direction: { x: 1, y: 0, z: 0 } })).toEqual({ free: undefined, constrained: undefined })
  })

  test('a path out of reach, beyond limits or through a singular pose is a typed answer', () => {
    const far = strideDemand({ leg, path: footPath({ ...base, midStance: { x: '10 mm', y: '58 mm', z: '-345 mm' } }), load, drives })
    expect(far).toMatchObject({ walkable: false, reason: 'unreachable' })
    const limited = threeJointLeg({
      hipOffset: '58 mm',
      upperLink: '165 mm',
      lowerLink: '180 mm',
      limits: { knee: { lowest: '10 deg', highest: '75 deg' } },
    })
    expect(strideDemand({ leg: limited, path, load, drives })).toMatchObject({ walkable: false, reason: 'jointLimits' })
    const straight = footPath({ ...bare, midStance: { x: '0 mm', y: '58 mm', z: '-345 mm' }, stanceSweep: '0 mm', dutyFactor: 1 })
    expect(strideDemand({ leg, path: straight, load, drives })).toMatchObject({ walkable: false, reason: 'singular' })
    const coupling = driveCoupling({
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
    const low = footPath({ ...bare, midStance: { x: '0 mm', y: '58 mm', z: '-170 mm' } })
    const apart = strideDemand({ leg, path: low, load, drives, coupling })
    expect(apart).toMatchObject({ walkable: false, reason: 'driveApart' })
    if (apart.walkable) throw new Error('apart')
    expect(apart.foot.z.in('mm')).toBeCloseTo(-170, 9)
    expect(() => strideDemand({ leg, path, drives } as never)).toThrow(/load is missing; give either load or groundReactionSi/)
    expect(() => strideDemand({ leg: {}, path, drives, load } as never)).toThrow(/leg is/)
  })

  test('the cloud’s chart has every moment, driving or driven, in rpm and N m', () => {
    const { knee } = walk({ dynamics }).motors
    const marks = marksOf(torqueSpeedChart(knee))
    const { torque, speed } = knee.cloud
    const drives = [...torque.keys()].filter((i) => torque[i]! * speed[i]! >= 0)
    expect(marks.filter(({ series }) => series === 'motor drives').length).toBe(drives.length)
    expect(marks.filter(({ series }) => series === 'load drives').length).toBe(torque.length - drives.length)
    expect(drives.length).toBeLessThan(torque.length)
    expect(Math.max(...marks.map(({ x }) => x))).toBeCloseTo((knee.peakSpeed.si * 60) / (2 * Math.PI), 9)
    expect(Math.max(...marks.map(({ y }) => y))).toBeCloseTo(knee.peakTorque.si, 12)
  })

  test('charts hold the numbers and say what they show', () => {
    const answer = walk()
    for (const chart of [
      reachChart(leg, path),
      torqueSpeedChart(answer.motors.knee, [
        [0, 3],
        [200, 0],
      ]),
      strideTorqueChart(answer),
    ]) {
      expect(chart.description.length).toBeGreaterThan(20)
      expect(JSON.stringify(chart)).not.toContain('null,null')
      expect(JSON.stringify(chart)).not.toContain('NaN')
    }
  })
})

describe('landing', () => {
  test('without a damper it is the energy formula', () => {
    const given = { mass: '10.5 kg', dropHeight: '150 mm', stiffness: '8 N/mm' } as const
    const landing = landOnSpringAndDamper({ ...given, damping: '0 N s/m' })
    const formula = dropOnSpring(given)
    expect(landing.peakForce.si).toBeCloseTo(formula.peakForce.si, 6)
    expect(landing.compression.si).toBeCloseTo(formula.compression.si, 9)
    expect(landing.damperGoverns).toBe(false)
  })

  test('more damping lessens the peak, then the damper itself becomes the peak', () => {
    const peaks = [0, 50, 100, 200, 400, 800, 1600].map((damping) =>
      landOnSpringAndDamper({ mass: '10.5 kg', dropHeight: '150 mm', stiffness: '8 N/mm', damping: [damping, 'N s/m'] }),
    )
    expect(peaks[1]!.peakForce.si).toBeLessThan(peaks[0]!.peakForce.si)
    expect(peaks.at(-1)!.peakForce.si).toBeGreaterThan(peaks[0]!.peakForce.si)
    expect(peaks.at(-1)!.damperGoverns).toBe(true)
    expect(peaks.at(-1)!.peakForce.si).toBeCloseTo(1600 * Math.sqrt(2 * 9.80665 * 0.15), 9)
    for (let i = 1; i < peaks.length; i++) expect(peaks[i]!.compression.si).toBeLessThan(peaks[i - 1]!.compression.si)
  })
})

describe('a landing on very stiff dampers', () => {
  // Far beyond critical damping the mass is slowed by the damper alone, which takes v m / c of travel, and then creeps to the sag m g / k.
  test.each([4e4, 4e5, 4e7, 4e12])('%d N s/m: stopped by the damper, then creeps to the static sag', (damping) => {
    const landing = landOnSpringAndDamper({ mass: '10.5 kg', dropHeight: '150 mm', stiffness: '8 N/mm', damping: [damping, 'N s/m'] })
    expect(landing.damperGoverns).toBe(true)
    expect(landing.peakForce.si / (damping * Math.sqrt(2 * 9.80665 * 0.15))).toBeCloseTo(1, 9)
    expect(landing.compression.si / ((10.5 * 9.80665) / 8000)).toBeCloseTo(1, 6)
  })
})

test.each([0, 1, 20, 400])('a landing from %d mm at ten times critical damping: integration and closed form meet', (height) => {
  const critical = 2 * Math.sqrt(8000 * 10.5)
  const [integrated, closed] = [10 - 1e-9, 10 + 1e-9].map((factor) =>
    landOnSpringAndDamper({ mass: '10.5 kg', dropHeight: [height, 'mm'], stiffness: '8 N/mm', damping: [factor * critical, 'N s/m'] }),
  ) as [Landing, Landing]
  expect(closed.peakForce.si / integrated.peakForce.si).toBeCloseTo(1, 7)
  expect(closed.compression.si / integrated.compression.si).toBeCloseTo(1, 6)
  expect(closed.damperGoverns).toBe(integrated.damperGoverns)
})

describe('speed limits', () => {
  const leg = threeJointLeg({ hipOffset: '58 mm', upperLink: '165 mm', lowerLink: '180 mm' })
  test('the best direction is never slower than the pure one, and a singular pose stands still', () => {
    const rateLimits = { sidewaysHip: '10 rad/s', hip: '12 rad/s', knee: '15 rad/s' } as const
    const bent = footSpeedLimit(leg, {
      angles: { sidewaysHip: '3 deg', hip: '-25 deg', knee: '55 deg' },
      rateLimits,
      direction: { x: 1, y: 0, z: 0.2 },
    })
    expect(bent.bestDirection.si).toBeGreaterThanOrEqual(bent.pureDirection.si)
    expect(bent.limitedBy).toBeDefined()
    const straight = footSpeedLimit(leg, {
      angles: { sidewaysHip: '0 deg', hip: '0 deg', knee: '0 deg' },
      rateLimits,
      direction: { x: 0, y: 0, z: 1 },
    })
    expect(straight.pureDirection.si).toBe(0)
    // Across a straight leg hip and knee turn together: 0.345 · 12 + 0.18 · 15.
    const across = footSpeedLimit(leg, {
      angles: { sidewaysHip: '0 deg', hip: '0 deg', knee: '0 deg' },
      rateLimits,
      direction: { x: 1, y: 0, z: 0 },
    })
    expect(across.pureDirection.si).toBeCloseTo(6.84, 12)
    expect(across.bestDirection.si).toBeCloseTo(6.84, 12)
    expect(() =>
      footSpeedLimit(leg, { angles: { sidewaysHip: '0 deg', hip: '0 deg', knee: '9 deg' }, rateLimits, direction: { x: 0, y: 0, z: 0 } }),
    ).toThrow(/must point somewhere/)
    expect(() =>
      footSpeedLimit(leg, {
        angles: { sidewaysHip: '0 deg', hip: '0 deg', knee: '9 deg' },
        rateLimits: { ...rateLimits, hip: '-1 rad/s' },
        direction: { x: 1, y: 0, z: 0 },
      }),
    ).toThrow(/rateLimits\.hip is '-1 rad\/s'; must be at least 0/)
    expect(() => footSpeedLimit({} as never, { angles: {}, rateLimits, direction: { x: 1, y: 0, z: 0 } } as never)).toThrow(
      /leg is .*must be made by threeJointLeg/,
    )
  })
})

describe('bad input', () => {
  test.each([
    [{ dutyFactor: 0 }, /dutyFactor is 0; must be above 0 and at most 1/],
    [{ dutyFactor: 1.2 }, /dutyFactor is 1.2/],
    [{ dutyFactor: 1 }, /no time to come back/],
    [{ stridePeriod: '0 s' }, /stridePeriod/],
    [{ swing: 'sine' }, /swing is 'sine'; must be one of/],
    [{ swingPoints: points }, /lift is '45 mm'; is not an input beside swingPoints/],
  ])('foot path %#', (change, message) => expect(() => footPath({ ...base, ...change } as never)).toThrow(message))
})
