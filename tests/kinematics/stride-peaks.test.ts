import { describe, expect, test } from 'vitest'
import {
  driveCoupling,
  footPath,
  legDynamics,
  SWING_SHAPES,
  strideDemand,
  threeJointLeg,
  type Walkable,
} from '../../src/kinematics/index.js'

// The walker of the guide.
const leg = threeJointLeg({ hipOffset: '58 mm', upperLink: '165 mm', lowerLink: '180 mm' })
const dynamics = legDynamics(leg, {
  hipLink: { mass: '620 g', centreOfMass: { x: '0 mm', y: '35 mm', z: '0 mm' } },
  upperLink: {
    mass: '340 g',
    centreOfMass: { x: '0 mm', y: '0 mm', z: '-70 mm' },
    inertia: { xx: '900 kg mm^2', yy: '900 kg mm^2', zz: '150 kg mm^2' },
  },
  lowerLink: { mass: '160 g', centreOfMass: { x: '0 mm', y: '0 mm', z: '-85 mm' }, inertia: { xx: '500 kg mm^2', yy: '500 kg mm^2' } },
})
const motor = { torqueConstant: '0.087 N m/A', resistance: '0.14 ohm', noLoadCurrent: '0.7 A' } as const
const drive = (ratio: number) => ({ ratio, efficiency: 0.93, backEfficiency: 0.9, rotorInertia: '70 kg mm^2', motor }) as const
const drives = { sidewaysHip: drive(6.2), hip: drive(6.2), knee: drive(5.6) }
const gait = (dutyFactor: number, period: number, lift: number, more: object = {}) =>
  footPath({
    midStance: { x: '0 mm', y: '58 mm', z: '-285 mm' },
    stanceSweep: '110 mm',
    stridePeriod: [period, 's'],
    dutyFactor,
    lift: [lift, 'mm'],
    ...more,
  })
const walk = (path: ReturnType<typeof footPath>, more: object = {}): Walkable => {
  const answer = strideDemand({
    leg,
    path,
    dynamics,
    coupling: driveCoupling({ knee: 'cordFromHip', ratio: 1 }),
    load: { mass: '10.5 kg', legShare: 0.25 },
    drives,
    ...more,
  })
  if (!answer.walkable) throw new Error(answer.reason)
  return answer
}
const JOINTS = ['sidewaysHip', 'hip', 'knee'] as const
const PEAKS = ['peakTorque', 'peakSpeed', 'peakPowerOut', 'peakPowerIn'] as const
const peaksOf = (answer: Walkable) =>
  JOINTS.flatMap((joint) => [
    ...(['joints', 'actuators', 'motors'] as const).flatMap((place) => PEAKS.map((peak) => answer[place][joint][peak].si)),
    ...(['peakCurrent', 'peakVoltage', 'peakPowerDrawn', 'peakPowerReturned'] as const).map(
      (peak) => answer.motors[joint].electrical![peak].si,
    ),
  ])

describe('peaks of a stride at the default number of samples are within 0.2 % of those of 10 000', () => {
  test.each([
    [0.5, 0.55, 40],
    [0.75, 0.5, 60],
    [0.8, 0.3, 60],
    [0.9, 0.5, 40],
    [0.95, 0.8, 30],
    [0.3, 0.4, 50],
  ] as const)('duty factor %d, period %d s, lift %d mm', (dutyFactor, period, lift) => {
    const path = gait(dutyFactor, period, lift)
    const fine = peaksOf(walk(path, { samples: 10_000 }))
    const coarse = peaksOf(walk(path))
    for (const [i, peak] of fine.entries()) {
      expect(coarse[i]!).toBeLessThanOrEqual(peak * (1 + 1e-6) + 1e-9)
      expect(coarse[i]!).toBeGreaterThanOrEqual(peak * 0.998 - 1e-9)
    }
  })

  test('every swing and lift, rms torque within 0.1 %', () => {
    for (const swing of SWING_SHAPES)
      for (const liftShape of ['cosine', 'smooth']) {
        const path = gait(0.85, 0.5, 50, { swing, liftShape })
        const [fine, coarse] = [walk(path, { samples: 10_000 }), walk(path)]
        const [of, at] = [peaksOf(fine), peaksOf(coarse)]
        for (const [i, peak] of of.entries()) expect(at[i]!).toBeGreaterThanOrEqual(peak * 0.998 - 1e-9)
        for (const joint of JOINTS)
          expect(Math.abs(coarse.motors[joint].rmsTorque.si / fine.motors[joint].rmsTorque.si - 1)).toBeLessThan(1e-3)
      }
  })

  test('the weights are the stride, each phase its own', () => {
    const { samples: s } = walk(gait(0.9, 0.5, 40))
    const total = (phase: number) => s.weight.reduce((sum, w, i) => sum + (s.stance[i] === phase ? w : 0), 0)
    expect(total(1)).toBeCloseTo(0.45, 12)
    expect(total(0)).toBeCloseTo(0.05, 12)
    expect([...s.time]).toEqual([...s.time].sort((a, b) => a - b))
  })
})

describe('a step of the foot’s motion between stance and swing', () => {
  test('is reported, and the peaks that leave its blow out carry a note', () => {
    for (const swing of ['quintic', 'cycloid', 'cubic'] as const) {
      const path = gait(0.5, 0.55, 40, { swing })
      // The stance foot runs at 400 mm/s; the swing starts and ends at rest.
      for (const phase of ['liftOff', 'touchDown'] as const) expect(path.steps[phase].speed.si).toBeCloseTo(0.4, 9)
      const { motors, steps } = walk(path)
      expect(steps.liftOff.speed.si).toBeCloseTo(0.4, 9)
      for (const quantity of [motors.hip.peakTorque, motors.knee.peakPowerOut, motors.hip.electrical!.peakCurrent])
        expect(quantity.notes?.map(({ text }) => text).join()).toMatch(/foot speed steps by 400 mm\/s at lift-off/)
      expect(motors.hip.rmsTorque.notes).toBeUndefined()
    }
  })

  test('a matched swing has none; a cosine lift has a step of acceleration only', () => {
    const smooth = gait(0.5, 0.55, 40)
    const cosine = gait(0.5, 0.55, 40, { liftShape: 'cosine' })
    for (const phase of ['liftOff', 'touchDown'] as const) {
      expect(smooth.steps[phase].speed.si).toBeLessThan(1e-9)
      expect(smooth.steps[phase].acceleration.si).toBeLessThan(1e-6)
      expect(cosine.steps[phase].speed.si).toBeLessThan(1e-9)
      // 2 π² lift / T².
      expect(cosine.steps[phase].acceleration.si).toBeCloseTo((2 * Math.PI ** 2 * 0.04) / 0.275 ** 2, 6)
    }
    expect(walk(smooth).motors.hip.peakTorque.notes).toBeUndefined()
    expect(walk(cosine).motors.hip.peakTorque.notes).toBeUndefined()
    const standing = footPath({
      midStance: { x: '0 mm', y: '58 mm', z: '-285 mm' },
      stanceSweep: '0 mm',
      stridePeriod: '1 s',
      dutyFactor: 1,
    })
    expect(standing.steps.liftOff.speed.si).toBe(0)
    expect(walk(standing).motors.hip.peakTorque.notes).toBeUndefined()
  })

  test('of a Bézier swing is that of its end legs', () => {
    const path = footPath({
      midStance: { x: '0 mm', y: '58 mm', z: '-285 mm' },
      stanceSweep: '110 mm',
      stridePeriod: '0.5 s',
      dutyFactor: 0.5,
      swingPoints: [
        { forward: '-80 mm', up: '30 mm' },
        { forward: '0 mm', up: '90 mm' },
        { forward: '90 mm', up: '20 mm' },
      ],
    })
    // Four sides: the first runs at 4 (-25, 30) mm over 0.25 s, against -440 mm/s along x.
    expect(path.steps.liftOff.speed.si).toBeCloseTo(Math.hypot((4 * -0.025) / 0.25 + 0.44, (4 * 0.03) / 0.25), 9)
    expect(path.steps.touchDown.speed.si).toBeCloseTo(Math.hypot((4 * -0.035) / 0.25 + 0.44, (4 * -0.02) / 0.25), 9)
  })
})

describe('energy of links and rotors is what the motors give', () => {
  test.each([
    ['motor at the knee, rotor with its drum', driveCoupling({ knee: 'motorAtKnee' }), 'withDrum', 1],
    ['motor at the knee, rotor against its drum', driveCoupling({ knee: 'motorAtKnee' }), 'againstDrum', -1],
    ['knee motor on the thigh', driveCoupling({ knee: 'cordFromHip', ratio: 1.3, motorOn: 'thigh' }), 'withDrum', 1],
    ['knee motor on the body', driveCoupling({ knee: 'cordFromHip', ratio: 1.3 }), 'withDrum', 0],
  ] as const)('%s', (_, coupling, rotorTurns, sense) => {
    const lossless = (ratio: number) => ({ ratio, rotorInertia: '70 kg mm^2', rotorTurns }) as const
    const path = gait(0.4, 0.4, 60)
    const { samples: s, motors } = walk(path, {
      coupling,
      samples: 6000,
      drives: { sidewaysHip: lossless(6.2), hip: lossless(6.2), knee: lossless(5.6) },
    })
    const J = 70e-6
    const energy = (i: number) => {
      const [q, w, drum] = [s.jointAngle, s.jointRate, s.actuatorRate].map((column) => column.slice(3 * i, 3 * i + 3)) as [
        Float64Array,
        Float64Array,
        Float64Array,
      ]
      // Spin of each rotor in space about its own axis. The thigh's inertia has the knee's rotor in it as if it were locked.
      const spins = [6.2 * drum[0]!, 6.2 * drum[1]!, 5.6 * drum[2]! + sense * w[1]!]
      const rotors = 0.5 * J * (spins[0]! ** 2 + spins[1]! ** 2 + spins[2]! ** 2 - (sense === 0 ? 0 : w[1]! ** 2))
      return dynamics.si.kineticEnergy(q, w) + dynamics.si.potentialEnergy(q) + rotors
    }
    let checked = 0
    for (let i = 1; i < s.count - 1; i += 5) {
      if ([i - 1, i, i + 1].some((k) => s.stance[k] === 1 || s.weight[k] === 0)) continue
      // At mid swing the lift's jerk steps, and a difference of the energy is of first order only.
      if (Math.abs(s.time[i]! - 0.28) < 2e-4) continue
      const power = JOINTS.reduce((sum, joint) => sum + motors[joint].cloud.torque[i]! * motors[joint].cloud.speed[i]!, 0)
      const rate = (energy(i + 1) - energy(i - 1)) / (s.time[i + 1]! - s.time[i - 1]!)
      expect(Math.abs(power - rate)).toBeLessThan(1e-4 * (1 + Math.abs(power)))
      checked++
    }
    expect(checked).toBeGreaterThan(500)
  })
})

test('samples have drum angles, foot accelerations and plain lists as JSON', () => {
  const coupling = driveCoupling({ knee: 'cordFromHip', ratio: 0.8 })
  const { samples: s, motors } = walk(gait(0.6, 0.5, 40), { coupling })
  const drums = new Float64Array(3)
  for (let i = 0; i < s.count; i += 11) {
    coupling.si.actuatorAnglesInto(drums, 0, s.jointAngle.subarray(3 * i, 3 * i + 3))
    for (let k = 0; k < 3; k++) expect(s.actuatorAngle[3 * i + k]).toBe(drums[k])
  }
  const json = JSON.parse(JSON.stringify(s))
  expect(Object.keys(json)).toEqual(Object.keys(s))
  expect(json.actuatorAngle).toEqual(Array.from(s.actuatorAngle))
  expect(json.stance).toEqual(Array.from(s.stance))
  expect(JSON.parse(JSON.stringify(motors.hip.cloud))).toEqual({
    speed: Array.from(motors.hip.cloud.speed),
    torque: Array.from(motors.hip.cloud.torque),
  })
})
