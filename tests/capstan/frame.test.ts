import { readFileSync } from 'node:fs'
import * as fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  type CordDriveState,
  cordDrive,
  driveWindup,
  frameCompliance,
  frictionlessWrapStiffness,
  loadPath,
  slackTorque,
  slipTorque,
  tensionerCompliance,
  tensionerTakeUp,
  travelLimits,
  travelPath,
} from '../../src/capstan/index.js'

// Written by tests/oracles/capstan-frame.py: the cord node by node on springs for a frame.
const oracle = JSON.parse(readFileSync(new URL('../oracles/capstan-frame.json', import.meta.url), 'utf8')) as {
  geometry: { crossed: boolean; sum: number; difference: number }[]
  cases: {
    name: string
    drive: { EA: number; T0: number; R1: number; R2: number; L: number; pinion: number; mu: number; mu_drum: number; clamped: boolean }
    taut: number
    slack: number
    centre: number
    along: number
    across: number
    idler: number
    windup: number
    Ta: number
    Tb: number
  }[]
}

test('the compliance of the frame is that of the cord path about shifted axes', () => {
  for (const { crossed, sum, difference } of oracle.geometry) {
    const ours = frameCompliance.si({
      arrangement: crossed ? 'crossed' : 'open',
      pinionRadius: 0.0075,
      drumRadius: 0.0465,
      centreDistance: 0.062,
      stiffnessAlong: 2e6,
      stiffnessAcross: 1e6,
    })
    expect(ours.sum / sum).toBeCloseTo(1, 8)
    expect(ours.difference / difference).toBeCloseTo(1, 8)
  }
})

test.each(oracle.cases.map((row) => [row.name, row] as const))('%s: as the cord node by node on a frame of springs', (_, row) => {
  const { drive: x } = row
  const frame = frameCompliance.si({
    arrangement: 'crossed',
    pinionRadius: x.R1,
    drumRadius: x.R2,
    centreDistance: row.centre,
    stiffnessAlong: row.along,
    stiffnessAcross: row.across,
  })
  const slackSpan = row.idler > 0 ? tensionerCompliance.si({ stiffness: row.idler, gain: 1 }) : 0
  const d: CordDriveState = {
    axialRigidity: x.EA,
    pretension: x.T0,
    pinionRadius: x.R1,
    drumRadius: x.R2,
    span: x.L,
    pinionWrap: x.pinion,
    drumWrapTaut: row.taut,
    drumWrapSlack: row.slack,
    friction: x.mu,
    drumFriction: x.mu_drum,
    hold: x.clamped ? 'clampedMidPinion' : 'frictionOnly',
    compliance: { sum: frame.sum, difference: frame.difference, tautSpan: 0, slackSpan },
  }
  const torque = (row.Ta - row.Tb) * x.R2
  const wound = driveWindup.si({ ...d, torque })
  expect(Math.abs(wound.tautTension / row.Ta - 1)).toBeLessThan(2e-6)
  expect(Math.abs(wound.windup / row.windup - 1)).toBeLessThan(2e-6)
  const path = loadPath(d, 'torque', [torque])[0]
  expect(Math.abs((path?.windup ?? 0) / wound.windup - 1)).toBeLessThan(1e-9)
  expect(Math.abs((path?.tautTension ?? 0) / wound.tautTension - 1)).toBeLessThan(1e-9)
})

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const drives = fc.record({
  axialRigidity: between(5e3, 1e5),
  pretension: between(10, 400),
  pinionRadius: between(0.004, 0.012),
  drumRadius: between(0.02, 0.08),
  span: between(0.005, 0.1),
  pinionWrap: between(2, 30),
  drumWrapTaut: between(0.2, 7),
  drumWrapSlack: between(0.2, 7),
  friction: between(0.03, 0.5),
  drumFriction: between(0.03, 0.5),
  hold: fc.constantFrom('frictionOnly' as const, 'clampedMidPinion' as const),
  compliance: fc.record({ sum: between(0, 1e-5), difference: between(0, 1e-5), tautSpan: between(0, 1e-5), slackSpan: between(0, 1e-5) }),
})

describe('a frame that gives', () => {
  test('one step of a history is the closed form, and the tangent is its slope', () => {
    fc.assert(
      fc.property(drives, between(0.05, 0.95), (d, share) => {
        const limit = d.hold === 'frictionOnly' ? slipTorque.si(d).torque : slackTorque.si({ ...d, slackShare: 0.01 }).torque
        const torque = share * limit
        const closed = driveWindup.si({ ...d, torque })
        const path = loadPath(d, 'torque', [torque])[0]
        expect((path?.windup ?? 0) / closed.windup).toBeCloseTo(1, 7)
        const step = 1e-4 * torque
        const slope =
          (2 * step) / (driveWindup.si({ ...d, torque: torque + step }).windup - driveWindup.si({ ...d, torque: torque - step }).windup)
        expect(slope / closed.tangentStiffness).toBeCloseTo(1, 2)
      }),
    )
  })
  test('limits are those at which the state changes, on a path too', () => {
    fc.assert(
      fc.property(drives, (d) => {
        const clamped = d.hold === 'clampedMidPinion'
        const limit = clamped ? slackTorque.si({ ...d, slackShare: 0.01 }).torque : slipTorque.si(d).torque
        const state = clamped ? 'slackSpan' : 'slips'
        for (const [share, reached] of [
          [0.9995, false],
          [1.0005, true],
        ] as const) {
          expect(driveWindup.si({ ...d, torque: share * limit }).state === state).toBe(reached)
          expect(loadPath(d, 'torque', [share * limit])[0]?.state === state).toBe(reached)
        }
      }),
    )
  })
  test('a path beyond a slack span and back, and through slip, keeps the sum of lengths', () => {
    fc.assert(
      fc.property(drives, between(1.05, 2), (d, times) => {
        const clamped = d.hold === 'clampedMidPinion'
        const limit = clamped ? slackTorque.si({ ...d, slackShare: 0 }).torque : slipTorque.si(d).torque
        const peak = times * limit
        const once = loadPath(d, 'torque', [peak])[0]
        const closed = driveWindup.si({ ...d, torque: peak })
        expect((once?.windup ?? 0) / closed.windup).toBeCloseTo(1, 6)
        expect((once?.tautTension ?? 0) / closed.tautTension).toBeCloseTo(1, 6)
        // The same peaks give the same loop however finely they are reached.
        const rough = loadPath(d, 'torque', [peak, -peak, peak, 0])
        const fine = loadPath(d, 'torque', [0.5 * peak, peak, 0.3 * peak, -0.4 * peak, -peak, 0, 0.7 * peak, peak, 0.2 * peak, 0])
        expect((fine.at(-1)?.windup ?? 0) / (rough.at(-1)?.windup ?? 1)).toBeCloseTo(1, 5)
      }),
    )
  })
  test('without friction it is the springs of two branches and a frame: least energy of angle, approach and shift', () => {
    const x = { pinionRadius: 0.008, drumRadius: 0.048, centreDistance: 0.06 }
    const [along, across, EA] = [4e5, 3e5, 20000]
    const d: CordDriveState = {
      ...x,
      axialRigidity: EA,
      pretension: 60,
      span: 0.02,
      pinionWrap: 6 * Math.PI,
      drumWrapTaut: 4,
      drumWrapSlack: 2,
      friction: 1e-9,
      hold: 'clampedMidPinion',
      compliance: {
        ...frameCompliance.si({ ...x, arrangement: 'crossed', stiffnessAlong: along, stiffnessAcross: across }),
        tautSpan: 0,
        slackSpan: 0,
      },
    }
    // Elongations R θ − c δ − s y and −R θ − c δ + s y; the gradient of the energy is [torque, 0, 0].
    const sine = 0.056 / 0.06
    const cosine = Math.sqrt(1 - sine * sine)
    const lengths = [4, 2].map((wrap) => 0.02 + 0.008 * 3 * Math.PI + 0.048 * wrap)
    const rows = [
      [0.048, -cosine, -sine],
      [-0.048, -cosine, sine],
    ]
    const k = [0, 1, 2].map((i) =>
      [0, 1, 2].map((j) =>
        rows.reduce(
          (sum, row, n) => sum + (EA / (lengths[n] ?? 1)) * (row[i] ?? 0) * (row[j] ?? 0),
          [0, along, across][i === j ? i : 0] ?? 0,
        ),
      ),
    )
    const det = (m: number[][]) => {
      const [[a = 0, b = 0, c = 0] = [], [e = 0, f = 0, g = 0] = [], [h = 0, i = 0, j = 0] = []] = m
      return a * (f * j - g * i) - b * (e * j - g * h) + c * (e * i - f * h)
    }
    const minor = (k[1]?.[1] ?? 0) * (k[2]?.[2] ?? 0) - (k[1]?.[2] ?? 0) * (k[2]?.[1] ?? 0)
    const stiffness = det(k) / minor
    const wound = driveWindup.si({ ...d, torque: 3 })
    expect(3 / wound.windup / stiffness).toBeCloseTo(1, 6)
    expect(wound.tangentStiffness / stiffness).toBeCloseTo(1, 6)
    expect(frictionlessWrapStiffness.si(d) / stiffness).toBeCloseTo(1, 12)
  })
})

describe('a drive on a bracket', () => {
  const given = {
    pinionRadius: '7.5 mm',
    drumRadius: '46.5 mm',
    centreDistance: '62 mm',
    pinionTurns: 3,
    drumWrap: '200 deg',
    travel: '110 deg',
    axialRigidity: '35 kN',
    pretension: '140 N',
    friction: { low: 0.1, high: 0.18 },
  } as const
  const rigid = cordDrive(given)
  const soft = cordDrive({ ...given, frameStiffness: { along: '2 kN/mm', across: '1 kN/mm' } })

  test('is softer, and stays between its bounds', () => {
    const [a, b] = [rigid.windup('6 N m').atLowFriction, soft.windup('6 N m').atLowFriction]
    expect(b.windup.si).toBeGreaterThan(1.3 * a.windup.si)
    expect(b.secantStiffness.si).toBeGreaterThan(b.secantStiffnessAtLeast.si)
    expect(b.secantStiffness.si).toBeLessThan(b.stiffnessAtMost.si)
    // The sideways shift alone is a spring in series.
    const stiff = cordDrive({ ...given, frameStiffness: { along: '1e9 N/mm', across: '1 kN/mm' } })
    const shift = frameCompliance({ ...pulleys, stiffnessAlong: '1e9 N/mm', stiffnessAcross: '1 kN/mm' }).shiftStiffness
    expect(stiff.windup('6 N m').atLowFriction.windup.si - a.windup.si).toBeCloseTo(6 / shift.si, 9)
  })
  test('a sprung idler in one span makes the directions differ, and the worse one is named', () => {
    const { gain } = tensionerTakeUp({ method: 'returnIdler', travel: '1 mm', span: '30 mm', centreDistance: '62 mm' })
    const along = tensionerCompliance({ stiffness: '0.4 kN/mm', gain })
    const sprung = cordDrive({ ...given, tensioner: { stiffness: [1 / along.si, 'N/m'], span: 'positive' } })
    const [plus, minus] = [
      sprung.limits('0 deg').atLowFriction,
      cordDrive({ ...given, tensioner: { stiffness: '100 N/mm', span: 'negative' } }).limits('0 deg').atLowFriction,
    ]
    expect(plus.pose.direction).toBe('positive')
    expect(minus.pose.direction).toBe('negative')
    expect(plus.holdingTorque.si).toBeCloseTo(minus.holdingTorque.si, 9)
    expect(plus.holdingTorque.si).toBeLessThan(rigid.limits('0 deg').atLowFriction.holdingTorque.si)
    expect(sprung.windup('6 N m').atLowFriction.tautTension.si).not.toBeCloseTo(sprung.windup('-6 N m').atLowFriction.tautTension.si, 1)
    const survey = sprung.overTravel('6 N m', 41).atLowFriction
    for (const w of survey.poses.flatMap((p) => [p.positive, p.negative])) {
      expect(Math.abs(w.windup.si)).toBeLessThanOrEqual(survey.windup.value.si * (1 + 1e-12))
      expect(w.slackTension.si).toBeGreaterThanOrEqual(survey.slackTension.value.si * (1 - 1e-12))
    }
    const { pose, value } = survey.slackTension
    const signed = pose.direction === 'positive' ? '6 N m' : '-6 N m'
    expect(sprung.windup(signed, pose.jointAngle).atLowFriction.slackTension.si).toBe(value.si)
    const least = sprung.limits().atLowFriction.holdingTorque.si
    for (const angle of [-55, -20, 0, 30, 55])
      expect(sprung.limits([angle, 'deg']).atLowFriction.holdingTorque.si).toBeGreaterThanOrEqual(least * (1 - 1e-9))
    expect(
      travelLimits.si({ ...sprung.si.atLowFriction, drumWrap: (200 * Math.PI) / 180, travel: (110 * Math.PI) / 180 }).holdingTorque,
    ).toBeCloseTo(least, 9)
  })
  test('histories of torque follow it; travel and angles refuse it by name', () => {
    const { lostMotion } = soft.path({ torques: ['6 N m', '0 N m'] }).atLowFriction
    expect(lostMotion?.si).toBeGreaterThan(0)
    const steps = [{ jointAngle: '0 deg', torque: '1 N m' }] as const
    expect(() => soft.travel({ steps, cycles: 1 })).toThrow('capstan.cordDrive.travel: compliance')
    expect(() => soft.path({ angles: ['1 deg'] })).toThrow('capstan.cordDrive.path: compliance')
    const lost = {
      torque: '1 N m',
      returnTorque: '0 N m',
      stroke: '9 deg',
      bearingFriction: 0,
      bearingRadius: '1 mm',
      bendingLoss: 0,
    } as const
    expect(() => soft.losses(lost)).toThrow('assumes a rigid frame')
    expect(() => loadPath(soft.si.atLowFriction, 'angle', [0.01])).toThrow('compliance')
    expect(() => travelPath(soft.si.atLowFriction, [0], [1], 0.01)).toThrow('compliance')
  })
})

const pulleys = { arrangement: 'crossed', pinionRadius: '7.5 mm', drumRadius: '46.5 mm', centreDistance: '62 mm' } as const
