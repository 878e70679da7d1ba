import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  type CordDriveState,
  cordDrive,
  cordFibre,
  driveWindup,
  fibreNames,
  loadPath,
  pretensionForTorque,
  slackTorque,
  slackTorqueEstimate,
  slipTorque,
  slipTorqueEstimate,
  travelLimits,
  travelPath,
} from '../../src/capstan/index.js'

// Written by tests/oracles/capstan-limits.py (numpy): springs and Coulomb contacts node by node, no law of slip arcs.
const oracle = JSON.parse(readFileSync(new URL('../oracles/capstan-limits.json', import.meta.url), 'utf8')) as {
  name: string
  drive: { EA: number; T0: number; R1: number; R2: number; L: number; pinion: number; mu: number; mu_drum: number; clamped: boolean }
  drumWrap: number
  travel: number
  torque: number
}[]

const inputs = ({ drive: d, drumWrap, travel }: (typeof oracle)[number]) => ({
  axialRigidity: d.EA,
  pretension: d.T0,
  pinionRadius: d.R1,
  drumRadius: d.R2,
  span: d.L,
  pinionWrap: d.pinion,
  drumWrap,
  travel,
  friction: d.mu,
  drumFriction: d.mu_drum,
  hold: d.clamped ? ('clampedMidPinion' as const) : ('frictionOnly' as const),
})

test.each(oracle.map((row) => [row.name, row] as const))('%s by the cord node by node', (_, row) => {
  const { holdingTorque, limit } = travelLimits.si(inputs(row))
  expect(limit).toBe(row.drive.clamped ? 'slackSpan' : 'slips')
  expect(Math.abs(holdingTorque / row.torque - 1)).toBeLessThan(2e-6)
})

test('a cord held by long, grippy wraps has no slack tension left before it slips', () => {
  const row = oracle.find(({ name }) => name === 'grippy long wrap')
  if (row === undefined) throw new Error('the oracle lacks a row')
  const x = { ...inputs(row), hold: 'frictionOnly' as const }
  const { slipTorque: slip, slackTorque: slack, limit, holdingTorque } = travelLimits.si(x)
  expect(limit).toBe('slackSpan')
  expect(Math.abs(slack / row.torque - 1)).toBeLessThan(2e-6)
  expect(holdingTorque).toBe(slack)
  expect(slip).toBeGreaterThan(1.1 * slack)
  const d: CordDriveState = { ...x, drumWrapTaut: x.drumWrap, drumWrapSlack: x.drumWrap }
  for (const [torque, state] of [
    [0.999 * slack, 'tight'],
    [1.001 * slack, 'slackSpan'],
    [1.001 * slip, 'slips'],
  ] as const) {
    expect(driveWindup.si({ ...d, torque }).state).toBe(state)
    expect(loadPath(d, 'torque', [torque])[0]?.state).toBe(state)
  }
  expect(travelPath(d, [0], [1.001 * slack], 0.01).end).toBe('slackSpan')
  expect(travelPath(d, [0], [0.999 * slack], 0.01).end).toBe('followed')
})

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const drives = fc.record({
  axialRigidity: between(5e3, 1e5),
  pretension: between(10, 400),
  pinionRadius: between(0.004, 0.012),
  drumRadius: between(0.02, 0.08),
  span: between(0.005, 0.1),
  pinionWrap: between(2, 30),
  drumWrap: between(0.5, 7),
  share: between(0, 1),
  friction: between(0.03, 0.5),
  drumFriction: between(0.03, 0.5),
  hold: fc.constantFrom('frictionOnly' as const, 'clampedMidPinion' as const),
})
type Drawn = typeof drives extends fc.Arbitrary<infer T> ? T : never
const posed = ({ share, ...x }: Drawn, at = share) => ({
  ...x,
  travel: 2 * share * x.drumWrap,
  drumWrapTaut: x.drumWrap * (1 + at),
  drumWrapSlack: x.drumWrap * (1 - at),
})

describe('over the travel', () => {
  test('no pose and no direction holds less than the least', () => {
    fc.assert(
      fc.property(drives, between(-1, 1), (x, place) => {
        const d = posed(x, place * x.share)
        const { slipTorque: slip, slackTorque: slack } = travelLimits.si(d)
        if (d.hold === 'frictionOnly') expect(slipTorque.si(d).torque).toBeGreaterThanOrEqual(slip * (1 - 1e-9))
        const pose = slackTorque.si({ ...d, slackShare: 0.01 })
        if (Number.isFinite(slack) && pose.state === 'slackSpan') expect(pose.torque).toBeGreaterThanOrEqual(slack * (1 - 1e-9))
      }),
    )
  })
  test('estimates lie below: any arcs everywhere, equal arcs at mid travel', () => {
    fc.assert(
      fc.property(drives, (x) => {
        const d = posed(x)
        const slip = slipTorqueEstimate.si(d)
        const slack = slackTorqueEstimate.si(d)
        expect(slip.anyArcs).toBeLessThanOrEqual(slip.equalArcs)
        const held = { ...d, hold: 'frictionOnly' as const }
        expect(travelLimits.si(held).slipTorque).toBeGreaterThanOrEqual(slip.anyArcs * (1 - 1e-9))
        expect(travelLimits.si({ ...held, travel: 0 }).slipTorque).toBeGreaterThanOrEqual(slip.equalArcs * (1 - 1e-6))
        const clamped = { ...d, hold: 'clampedMidPinion' as const, slackShare: 0 }
        expect(slackTorque.si(clamped).torque).toBeGreaterThanOrEqual(slack.anyArcs * (1 - 1e-9))
        const mid = { ...clamped, drumWrapTaut: d.drumWrap, drumWrapSlack: d.drumWrap }
        expect(slackTorque.si(mid).torque).toBeGreaterThanOrEqual(slack.equalArcs * (1 - 1e-6))
      }),
    )
  })
  test('the pretension for a torque holds it at the ends of travel, and no less does', () => {
    fc.assert(
      fc.property(drives, between(0.1, 20), (x, torque) => {
        const d = posed(x)
        const { pretension, againstSlip, againstSlack } = pretensionForTorque.si({ ...d, torque, requiredReserve: 1 })
        expect(pretension).toBe(Math.max(againstSlip, againstSlack))
        expect(travelLimits.si({ ...d, pretension }).holdingTorque / torque).toBeCloseTo(1, 8)
        const at = (factor: number) => driveWindup.si({ ...d, pretension: pretension * factor, torque }).state
        expect(at(1.0001)).toBe('tight')
        expect(at(0.9999)).not.toBe('tight')
      }),
    )
  })
  test('the pose at which a travel under torque begins to slip is no better', () => {
    const d = posed({
      axialRigidity: 20000,
      pretension: 60,
      pinionRadius: 0.008,
      drumRadius: 0.048,
      span: 0.02,
      pinionWrap: 6 * Math.PI,
      drumWrap: Math.PI,
      share: 330 / 360,
      friction: 0.15,
      drumFriction: 0.15,
      hold: 'frictionOnly',
    })
    const mid = { ...d, drumWrapTaut: Math.PI, drumWrapSlack: Math.PI }
    const { holdingTorque } = travelLimits.si(d)
    // Unloaded to the end of travel, then loaded there: what the end of the history says.
    const to = (165 * Math.PI) / 180
    expect(travelPath(mid, [to, to], [0, 1.002 * holdingTorque], 0.01).end).toBe('slips')
    expect(travelPath(mid, [to, to], [0, 0.998 * holdingTorque], 0.01).end).toBe('followed')
  })
})

describe('a drive', () => {
  const given = {
    pinionRadius: '8 mm',
    drumRadius: '48 mm',
    centreDistance: '60 mm',
    pinionTurns: 0,
    pinionWrap: '3 turn',
    span: '20 mm',
    drumWrap: '180 deg',
    axialRigidity: '20 kN',
    pretension: '60 N',
    friction: 0.15,
  } as const
  const d = cordDrive({ ...given, travel: '330 deg' })

  test('its limits are the least over the travel, or those of the pose asked for', () => {
    const { slipTorque: slip, holdingTorque, limit, pose, slackTorque: slack } = d.limits().atLowFriction
    expect(slip?.si).toBeCloseTo(4.94816, 5)
    expect(holdingTorque.si).toBe(slip?.si)
    expect(slack).toBeUndefined()
    expect(limit).toBe('slips')
    expect(pose.jointAngle.in('deg')).toBeCloseTo(165, 9)
    expect(pose.direction).toBe('positive')
    expect(d.limits('0 deg').atLowFriction.slipTorque?.si).toBeCloseTo(6.57216, 5)
    const other = d.limits('-90 deg').atLowFriction
    expect(other.slipTorque?.si).toBeCloseTo(5.5924, 4)
    expect(other.pose.direction).toBe('negative')
    // Without a travel: until an anchor reaches its tangent point.
    expect(cordDrive(given).limits().atLowFriction.holdingTorque.si).toBeLessThan(holdingTorque.si)
    expect(cordDrive(given).limits().atLowFriction.pose.jointAngle.in('deg')).toBeCloseTo(180, 9)
  })
  test('one call surveys the travel and names the worst pose of each result', () => {
    const survey = d.overTravel('3 N m', 101).atLowFriction
    const all = survey.poses.flatMap((p) => [p.positive, p.negative])
    expect(survey.poses).toHaveLength(101)
    expect(survey.poses[0]?.jointAngle.in('deg')).toBeCloseTo(-165, 9)
    expect(survey.state).toBe('tight')
    for (const w of all) {
      expect(Math.abs(w.windup.si)).toBeLessThanOrEqual(survey.windup.value.si * (1 + 1e-12))
      expect(w.tangentStiffness.si).toBeGreaterThanOrEqual(survey.tangentStiffness.value.si * (1 - 1e-12))
      expect(w.secantStiffness.si).toBeGreaterThanOrEqual(survey.secantStiffness.value.si * (1 - 1e-12))
      expect(w.tautTension.si).toBeLessThanOrEqual(survey.tautTension.value.si * (1 + 1e-12))
      expect(w.slackTension.si).toBeGreaterThanOrEqual(survey.slackTension.value.si * (1 - 1e-12))
    }
    const { pose, value } = survey.tautTension
    expect(d.windup('3 N m', pose.jointAngle).atLowFriction.tautTension.si).toBe(value.si)
    expect(survey.limits.holdingTorque.si).toBe(d.limits().atLowFriction.holdingTorque.si)
    expect(d.overTravel('-3 N m', 101).atLowFriction.windup.value.si).toBe(survey.windup.value.si)
  })
  test('a torque that holds at mid travel and slips at an end is found out', () => {
    expect(d.windup('5.05 N m').atLowFriction.state).toBe('tight')
    expect(d.windup('5.05 N m', '165 deg').atLowFriction.state).toBe('slips')
    const survey = d.overTravel('5.05 N m').atLowFriction
    expect(survey.state).toBe('slips')
    expect(survey.tangentStiffness.value.si).toBe(0)
    expect(survey.secantStiffness.value.si).toBe(0)
    expect(survey.poses).toHaveLength(33)
  })
  test('bad input is one clear error', () => {
    expect(() => cordDrive({ ...given, travel: '400 deg' })).toThrow(
      'capstan.cordDrive: travel is 400 deg; must not exceed twice the drum wrap, 360 deg, or an anchor leaves the drum',
    )
    expect(() => d.limits('190 deg')).toThrow('capstan.cordDrive.limits: jointAngle')
    expect(() => d.overTravel('3 N' as never)).toThrow('capstan.cordDrive.overTravel: torque')
    expect(() => d.overTravel('3 N m', 0)).toThrow('poses is 0; must be at least 1')
    expect(() => travelLimits({ ...givenLimits, travel: '370 deg' })).toThrow('must not exceed twice the drum wrap')
    expect(() => pretensionForTorque({ ...givenLimits, travel: '370 deg', torque: '3 N m' } as never)).toThrow('travel')
  })
})

const givenLimits = {
  axialRigidity: '20 kN',
  pretension: '60 N',
  pinionRadius: '8 mm',
  drumRadius: '48 mm',
  span: '20 mm',
  pinionWrap: '3 turn',
  drumWrap: '180 deg',
  friction: 0.15,
} as const

describe('strain', () => {
  const given = {
    pinionRadius: '7.5 mm',
    drumRadius: '46.5 mm',
    centreDistance: '62 mm',
    pinionTurns: 3,
    drumWrap: '200 deg',
    pretension: '140 N',
    friction: 0.1,
  } as const
  test('beyond the break of the cord is an error, at rest and under load', () => {
    expect(() => cordDrive({ ...given, axialRigidity: '35 N' })).toThrow(
      'axialRigidity is 35 N; must not let the pretension of 140 N strain the cord by 400 %, beyond its break at 5.2 %',
    )
    const soft = cordDrive({ ...given, axialRigidity: '4 kN' })
    expect(() => soft.windup('12 N m')).toThrow('capstan.cordDrive.windup: torque')
    expect(() => soft.path({ torques: ['1 N m', '12 N m'] })).toThrow('capstan.cordDrive.path: torques')
    expect(() => soft.path({ angles: ['30 deg'] })).toThrow('capstan.cordDrive.path: angles')
    expect(() => soft.travel({ steps: [{ jointAngle: '0 deg', torque: '12 N m' }], cycles: 1 })).toThrow('steps')
    // A limit beyond the break is still a limit, with a note.
    expect(soft.limits().atLowFriction.holdingTorque.notes?.[0]?.text).toContain('beyond its break at 5.2 %')
    expect(cordDrive({ ...given, axialRigidity: '4 kN', breakingStrain: '15 %' }).windup('12 N m').atLowFriction.state).toBe('tight')
  })
  test('above 2 % is noted', () => {
    const noted = cordDrive({ ...given, axialRigidity: '6.5 kN' })
    expect(noted.windup('1 N m').atLowFriction.windup.notes?.[0]?.text).toBe('strain of 2.32 % is above 2 %: the model drops its square')
    expect(cordDrive({ ...given, axialRigidity: '9 kN' }).windup('1 N m').atLowFriction.windup.notes).toBeUndefined()
    const { travel, drumWrap, ...pose } = { ...givenLimits, axialRigidity: '4 kN', travel: '1 rad' } as const
    const arcs = { drumWrapTaut: drumWrap, drumWrapSlack: drumWrap }
    for (const result of [
      slipTorque({ ...pose, ...arcs }).torque,
      slackTorque({ ...pose, ...arcs }).torque,
      driveWindup({ ...pose, ...arcs, torque: '3 N m' }).windup,
      travelLimits({ ...pose, drumWrap, travel }).holdingTorque,
    ])
      expect(result.notes?.map((note) => note.text).join()).toContain('cord strain of at most 2 %')
  })
  test('the default break is that of the table of fibres', () => {
    const most = Math.max(...fibreNames().map((name) => cordFibre(name).strength.high / cordFibre(name).modulus.low))
    expect(most).toBeLessThan(0.052)
    expect(most).toBeGreaterThan(0.051)
  })
})
