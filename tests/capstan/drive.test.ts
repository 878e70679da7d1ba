import { describe, expect, test } from 'vitest'
import {
  arcCycleLoss,
  type CordDrive,
  cordDrive,
  cordFibre,
  driveWindup,
  frictionBand,
  loadPath,
  overFriction,
  pulleyGeometry,
  slipTorqueEstimate,
  tensionAlongWrapChart,
  tensionRatio,
  travelPath,
  windupChart,
} from '../../src/capstan/index.js'

const given = {
  pinionRadius: '7.5 mm',
  drumRadius: '46.5 mm',
  centreDistance: '62 mm',
  pinionTurns: 3,
  drumWrap: '200 deg',
  axialRigidity: '35 kN',
  pretension: '140 N',
  friction: { low: 0.1, high: 0.18 },
} as const
const hip = cordDrive(given)
const R1 = {
  pinionRadius: '8 mm',
  drumRadius: '48 mm',
  centreDistance: '60 mm',
  pinionTurns: 0,
  pinionWrap: '3 turn',
  span: '20 mm',
  drumWrap: '180 deg',
  axialRigidity: '20 kN',
  pretension: '60 N',
} as const
/** A history of corners in equal steps. */
const finely = (corners: readonly number[], perLeg: number) =>
  corners.flatMap((to, k) =>
    Array.from({ length: perLeg }, (_, i) => (corners[k - 1] ?? 0) + ((to - (corners[k - 1] ?? 0)) * (i + 1)) / perLeg),
  )
const cycle = [
  { jointAngle: '0 deg', torque: '6 N m' },
  { jointAngle: '-40 deg', torque: '6 N m' },
  { jointAngle: '-40 deg', torque: '0 N m' },
  { jointAngle: '0 deg', torque: '0 N m' },
] as const

describe('a drive', () => {
  test('takes its geometry from the formulas', () => {
    const g = pulleyGeometry({
      arrangement: 'crossed',
      pinionRadius: '7.5 mm',
      drumRadius: '46.5 mm',
      centreDistance: '62 mm',
      pinionTurns: 3,
    })
    expect(hip.span.si).toBe(g.span.si)
    expect(hip.pinionWrap.si).toBe(g.pinionWrap.si)
    expect(hip.ratio.si).toBeCloseTo(6.2, 12)
    expect(cordDrive({ ...given, arrangement: 'open' }).pinionWrap.si).toBeLessThan(hip.pinionWrap.si)
    expect(cordDrive({ ...given, arrangement: 'open' }).span.si).toBeGreaterThan(hip.span.si)
  })
  test('more friction holds more, and a clamp cannot slip', () => {
    const { atLowFriction: low, atHighFriction: high } = hip.limits()
    expect(low.slipTorque?.si).toBeLessThan(high.slipTorque?.si ?? Number.NaN)
    expect(cordDrive({ ...given, hold: 'clampedMidPinion' }).limits().atLowFriction.slipTorque).toBeUndefined()
  })
  test('is odd in torque and stays between its bounds at both ends of friction', () => {
    for (const end of ['atLowFriction', 'atHighFriction'] as const) {
      const [plus, minus] = [hip.windup('6 N m')[end], hip.windup('-6 N m')[end]]
      expect(minus.windup.si).toBe(-plus.windup.si)
      expect(minus.tangentStiffness.si).toBe(plus.tangentStiffness.si)
      expect(plus.secantStiffness.si).toBeLessThan(plus.stiffnessAtMost.si)
      expect(plus.secantStiffness.si).toBeGreaterThan(plus.secantStiffnessAtLeast.si)
    }
    expect(hip.windup('6 N m').atHighFriction.windup.si).toBeLessThan(hip.windup('6 N m').atLowFriction.windup.si)
  })
  test('answers a torque above slip', () => {
    const { state, torqueCarried } = hip.windup('20 N m').atLowFriction
    expect(state).toBe('slips')
    expect(torqueCarried.si).toBeCloseTo(hip.limits('0 deg').atLowFriction.slipTorque?.si ?? 0, 9)
  })
  test('notes a tension above the allowable of the cord', () => {
    const weak = cordDrive({ ...given, allowableTension: '150 N' })
    expect(weak.windup('6 N m').atLowFriction.windup.notes?.[0]?.text).toContain('above the allowable 150 N')
    expect(weak.windup('0.1 N m').atLowFriction.windup.notes).toBeUndefined()
    const over = cordDrive({ ...given, allowableTension: '100 N' })
    expect(over.limits().atLowFriction.holdingTorque.notes?.[0]?.text).toContain('above the allowable')
  })
  test('takes the whole range of a friction that is a property', () => {
    const { friction } = cordFibre('LCP')
    const { atLowFriction, atHighFriction } = cordDrive({ ...given, friction }).si
    expect([atLowFriction.friction, atHighFriction.friction]).toEqual([friction.low, friction.high])
    expect([atLowFriction.drumFriction, atHighFriction.drumFriction]).toEqual([friction.low, friction.high])
  })
  test('is asked at a pose: towards one end the short arc saturates, torque the other way finds the long one', () => {
    const { atLowFriction: low } = hip.si
    const by = (torque: number, taut: number, slack: number) =>
      driveWindup.si({ ...low, torque, drumWrapTaut: taut, drumWrapSlack: slack, drumFriction: 0.1, contactStiffness: undefined }).windup
    const [wrap, turned] = [(200 * Math.PI) / 180, (160 * Math.PI) / 180]
    expect(hip.windup('6 N m', '160 deg').atLowFriction.windup.si).toBeCloseTo(by(6, wrap + turned, wrap - turned), 12)
    expect(hip.windup('-6 N m', '160 deg').atLowFriction.windup.si).toBeCloseTo(-by(6, wrap - turned, wrap + turned), 12)
    expect(hip.windup('-6 N m', '160 deg').atLowFriction.windup.si).not.toBeCloseTo(
      -hip.windup('6 N m', '160 deg').atLowFriction.windup.si,
      5,
    )
    expect(() => hip.windup('6 N m', '200 deg')).toThrow(
      "capstan.cordDrive.windup: jointAngle is '200 deg'; must be less than the drum wrap of 200 deg",
    )
  })
  test('passes on the notes of what it is asked', () => {
    const torque = driveWindup({
      torque: '20 N m',
      axialRigidity: '35 kN',
      pretension: '60 N',
      pinionRadius: '7.5 mm',
      drumRadius: '46.5 mm',
      span: '20 mm',
      pinionWrap: '3 turn',
      drumWrapTaut: '200 deg',
      drumWrapSlack: '200 deg',
      friction: 0.1,
    }).torqueCarried
    const text = torque.notes?.[0]?.text
    expect(text).toContain('no slip')
    expect(hip.windup(torque).atLowFriction.windup.notes?.[0]?.text).toBe(text)
    expect(hip.path({ torques: [torque] }).atHighFriction.loss.notes?.[0]?.text).toBe(text)
    const one = { jointAngle: '0 deg', torque } as const
    expect(hip.travel({ steps: [one], cycles: 1 }).atHighFriction.peakTension.notes?.[0]?.text).toBe(text)
    const lost = { torque, returnTorque: '0 N m', stroke: '40 deg', bearingFriction: 0, bearingRadius: '4 mm', bendingLoss: 0 } as const
    expect(hip.losses(lost).atHighFriction.passed.notes?.[0]?.text).toBe(text)
  })
  test('notes a limit that lies above the allowable of the cord, though the pretension does not', () => {
    const { slipTorque } = cordDrive({ ...given, allowableTension: '274 N' }).limits('0 deg').atLowFriction
    expect(slipTorque?.notes?.[0]?.text).toContain('above the allowable 274 N')
  })
  test('notes a tension above the allowable in any cycle of a travel', () => {
    const steps = [
      { jointAngle: '-60 deg', torque: '10 N m' },
      { jointAngle: '0 deg', torque: '0 N m' },
    ] as const
    const free = hip.travel({ steps, cycles: 6 }).atLowFriction
    const first = hip.travel({ steps, cycles: 1 }).atLowFriction.peakTension.si
    expect(first).toBeGreaterThan(free.peakTension.si + 0.1)
    const limited = cordDrive({ ...given, allowableTension: [first - 0.05, 'N'] }).travel({ steps, cycles: 6 }).atLowFriction
    expect(limited.points[0]?.tautTension.notes?.[0]?.text).toContain('above the allowable')
  })
  test('loss does not depend on how finely a closed history is given', () => {
    const rough = hip.path({ torques: ['6 N m', '-6 N m', '6 N m'] }).atLowFriction
    const fine = hip.path({ torques: ['3 N m', '6 N m', '1 N m', '-6 N m', '0 N m', '6 N m'] }).atLowFriction
    expect(rough.loss.si / fine.loss.si).toBeCloseTo(1, 2)
    expect((rough.lostMotion?.si ?? 0) / (fine.lostMotion?.si ?? 0)).toBeCloseTo(1, 2)
    expect(rough.points).toHaveLength(3)
    expect(rough.lostMotion?.si).toBeGreaterThan(0)
  })
  test('lost motion of load and release is the angle that is left; it is absent where the torque never comes back', () => {
    const d = cordDrive({ ...R1, friction: 0.15 })
    const once = d.path({ torques: ['2 N m', '0 N m'] }).atLowFriction
    expect(once.lostMotion?.si).toBeCloseTo(once.points.at(-1)?.windup.si ?? Number.NaN, 15)
    // The arcs' recovery in closed form, four of them, taut side and slack side.
    expect(once.lostMotion?.in('mrad')).toBeCloseTo(0.70724, 5)
    expect(d.path({ torques: ['0 N m', '2 N m', '0 N m'] }).atLowFriction.lostMotion?.si).toBeCloseTo(once.lostMotion?.si ?? Number.NaN, 15)
    expect(d.path({ torques: ['2 N m'] }).atLowFriction.lostMotion).toBeUndefined()
    expect(d.path({ torques: ['0 N m'] }).atLowFriction.lostMotion?.si).toBeCloseTo(0, 15)
    expect(d.path({ angles: ['1 mrad'] }).atLowFriction.lostMotion).toBeUndefined()
  })
  test('a swing past zero loses what is left when it passes, however uneven', () => {
    const swing = hip.path({ torques: ['6 N m', '-6 N m'] }).atLowFriction
    const release = hip.path({ torques: ['6 N m', '0 N m'] }).atLowFriction
    expect(swing.lostMotion?.si).toBeCloseTo(release.points[1]?.windup.si ?? Number.NaN, 12)
    const uneven = hip.path({ torques: ['6 N m', '-5.3 N m', '6 N m', '-5.3 N m'] }).atLowFriction
    const parted = hip.path({ torques: ['6 N m', '0 N m', '-5.3 N m', '0 N m', '6 N m', '0 N m', '-5.3 N m'] }).atLowFriction
    expect(uneven.lostMotion?.si).toBeCloseTo(parted.lostMotion?.si ?? Number.NaN, 12)
    // The same by angle: its torque passes zero between the given steps.
    const byAngle = hip.path({ angles: uneven.points.map((p) => p.windup) }).atLowFriction
    expect((byAngle.lostMotion?.si ?? 0) / (uneven.lostMotion?.si ?? 1)).toBeCloseTo(1, 8)
    expect(byAngle.loss.si / uneven.loss.si).toBeCloseTo(1, 4)
  })
  test('loss is good to the digits that are printed', () => {
    const legs = ['6 N m', '-5.3 N m', '6 N m', '-5.3 N m'] as const
    const path = loadPath(hip.si.atLowFriction, 'torque', finely([6, -5.3, 6, -5.3], 20000))
    let work = 0
    path.forEach((p, i) => {
      const before = i === 0 ? { torque: 0, windup: 0 } : path[i - 1]
      work += 0.5 * (p.torque + (before?.torque ?? 0)) * (p.windup - (before?.windup ?? 0))
    })
    expect(hip.path({ torques: legs }).atLowFriction.loss.si / work).toBeCloseTo(1, 4)
  })
  test('a torque above slip slides the pinion on without limit: no length is given', () => {
    const { points, slipped, lostMotion } = hip.path({ torques: ['20 N m', '0 N m'] }).atLowFriction
    expect(points[0]?.state).toBe('slips')
    expect(points[0]?.torque.si).toBeCloseTo(hip.limits('0 deg').atLowFriction.slipTorque?.si ?? 0, 6)
    expect(slipped).toBeUndefined()
    expect(lostMotion?.si).toBe(points[1]?.windup.si)
    expect(hip.path({ torques: ['6 N m'] }).atLowFriction.slipped?.si).toBe(0)
  })
  test('lost motion is the angle between what is left from either side', () => {
    const { points, lostMotion } = hip.path({ torques: ['6 N m', '0 N m', '-6 N m', '0 N m'] }).atLowFriction
    const [, fromAbove, , fromBelow] = points.map((p) => p.windup.si)
    expect(fromAbove).toBeGreaterThan(0)
    expect(fromBelow).toBeLessThan(0)
    expect(lostMotion?.si).toBeCloseTo((fromAbove ?? 0) - (fromBelow ?? 0), 9)
  })
  test('an angle history past slip slides on', () => {
    const { points, slipped } = hip.path({ angles: ['3 deg'] }).atLowFriction
    expect(points[0]?.state).toBe('slips')
    expect(points[0]?.windup.in('deg')).toBeCloseTo(3, 9)
    expect(slipped?.si).toBeGreaterThan(0)
  })
  test('tells the regime of travel', () => {
    const stays = hip.travel({ steps: cycle, cycles: 20 }).atLowFriction
    expect(stays.regime).toBe('elementStays')
    expect(Math.abs(stays.driftPerCycle.si)).toBeLessThan(1e-9)
    const passes = cordDrive({ ...given, pinionWrap: '150 deg', friction: 0.5, groovePitch: '2 mm' }).travel({
      steps: cycle,
      cycles: 5,
    }).atLowFriction
    expect(passes.regime).toBe('everyElementPasses')
    expect(passes.walkPerCycle?.si).toBeGreaterThan(0)
  })
})

test('the pretension at the end is the mean of both spans, also under load', () => {
  const { pretensionAtEnd, points } = hip.travel({ steps: [...cycle, { jointAngle: '0 deg', torque: '3 N m' }], cycles: 2 }).atLowFriction
  const end = points.at(-1)
  expect((end?.tautTension.si ?? 0) - (end?.slackTension.si ?? 0)).toBeCloseTo(3 / 0.0465, 9)
  expect(pretensionAtEnd.si).toBeCloseTo(((end?.tautTension.si ?? 0) + (end?.slackTension.si ?? 0)) / 2, 9)
})

test('the regime is that of the last cycle: first cycles may sweep what then stays', () => {
  const settles = cordDrive({
    pinionRadius: '8 mm',
    drumRadius: '48 mm',
    centreDistance: '60 mm',
    pinionTurns: 1,
    pinionWrap: '10 rad',
    span: '20 mm',
    drumWrap: '4 rad',
    axialRigidity: '20 kN',
    pretension: '60 N',
    friction: 0.3,
  })
  const torque = [0.7 * slipTorqueEstimate.si(settles.si.atLowFriction).equalArcs, 'N m'] as const
  const steps = [
    { jointAngle: '0 rad', torque },
    { jointAngle: '1 rad', torque },
    { jointAngle: '1 rad', torque: '0 N m' },
    { jointAngle: '0 rad', torque: '0 N m' },
  ] as const
  expect(settles.travel({ steps, cycles: 1 }).atLowFriction.regime).toBe('between')
  const { regime, driftPerCycle } = settles.travel({ steps, cycles: 20 }).atLowFriction
  expect(regime).toBe('elementStays')
  expect(Math.abs(driftPerCycle.si)).toBeLessThan(1e-8)
})

test('drift is that of the pinion against the joint, whichever of them drives', () => {
  const passing = cordDrive({ ...given, pinionTurns: 0, friction: 0.45, groovePitch: '2 mm' })
  const byJoint = passing.travel({ steps: cycle, cycles: 20 }).atLowFriction
  const byMotor = passing.travel({
    steps: cycle.map(({ jointAngle, torque }) => ({ pinionAngle: jointAngle === '0 deg' ? '0 deg' : '-248 deg', torque }) as const),
    cycles: 20,
  }).atLowFriction
  expect(byJoint.regime).toBe('between')
  expect(byMotor.regime).toBe('between')
  // The motor's stroke differs from the joint's by the windup, some 1 %.
  expect(byMotor.driftPerCycle.si / byJoint.driftPerCycle.si).toBeCloseTo(1, 1.5)
  const turn = (pinion: number, joint: number) => pinion - 6.2 * joint
  const [end, before] = [byMotor.points.at(-1), byMotor.points.at(-5)]
  expect(byMotor.driftPerCycle.si).toBeCloseTo(
    turn(end?.pinionAngle.si ?? 0, end?.jointAngle.si ?? 0) - turn(before?.pinionAngle.si ?? 0, before?.jointAngle.si ?? 0),
    12,
  )
  expect(byMotor.walkPerCycle?.si).toBeCloseTo((Math.abs(byMotor.driftPerCycle.si) * 0.002) / (2 * Math.PI), 12)
  // A stroke that does not come back is no drift.
  expect(hip.travel({ steps: [{ jointAngle: '10 deg', torque: '0 N m' }], cycles: 1 }).atLowFriction.driftPerCycle.si).toBeCloseTo(0, 12)
})

test('the least tension of a travel is looked for between its steps too', () => {
  const steps = [
    { jointAngle: '40 deg', torque: '6 N m' },
    { jointAngle: '0 deg', torque: '-6 N m' },
  ] as const
  const { leastTension, points } = hip.travel({ steps, cycles: 3 }).atLowFriction
  const atSteps = Math.min(...points.flatMap((p) => [p.tautTension.si, p.slackTension.si]))
  const inner = [0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1].flatMap((share) => [
    { jointAngle: [40 - 40 * share, 'deg'], torque: [6 - 12 * share, 'N m'] } as const,
  ])
  const fine = hip.travel({ steps: [steps[0], ...inner], cycles: 3 }).atLowFriction
  expect(leastTension.si).toBeLessThanOrEqual(atSteps)
  expect(leastTension.si).toBeCloseTo(fine.leastTension.si, 6)
})

describe('losses', () => {
  const cycle = { stroke: '40 deg', bearingFriction: 0.002, bearingRadius: '4 mm', bendingLoss: 0.01 } as const
  test('small load cycles lose what the arcs lose, to leading order', () => {
    for (const end of ['atLowFriction', 'atHighFriction'] as const) {
      const { microSlip, state } = hip.losses({ ...cycle, torque: '0.2 N m', returnTorque: '-0.2 N m' })[end]
      const { friction } = hip.si[end]
      const arcs = [0.0075, 0.0465].map((centreLineRadius) =>
        arcCycleLoss.si({ amplitude: 0.2 / (2 * 0.0465), pretension: 140, friction, centreLineRadius, axialRigidity: 35000 }),
      )
      expect(state).toBe('tight')
      expect(microSlip.energy.si / (2 * arcs.reduce((a, b) => a + b, 0))).toBeCloseTo(1, 2)
    }
  })
  test('each term is its own: micro-slip comes with the swing of torque, bearings and bending with travel', () => {
    const swing = hip.losses({ ...cycle, torque: '6 N m', returnTorque: '-6 N m' }).atLowFriction
    const steady = hip.losses({ ...cycle, torque: '6 N m', returnTorque: '6 N m' }).atLowFriction
    expect(swing.microSlip.energy.si).toBeGreaterThan(0.01)
    expect(Math.abs(steady.microSlip.energy.si)).toBeLessThan(1e-9)
    const far = hip.losses({ ...cycle, stroke: '80 deg', torque: '6 N m', returnTorque: '-6 N m' }).atLowFriction
    expect(far.microSlip.energy.si).toBeCloseTo(swing.microSlip.energy.si, 12)
    for (const name of ['bearings', 'bending'] as const) expect(far[name].energy.si / swing[name].energy.si).toBeCloseTo(2, 12)
    expect(swing.passed.si).toBeCloseTo((2 * 6 * 40 * Math.PI) / 180, 12)
    expect(far.creep?.energy.si).toBeGreaterThan(1.5 * (swing.creep?.energy.si ?? Number.NaN))
    expect(swing.creep?.share.si).toBeCloseTo((swing.creep?.energy.si ?? 0) / swing.passed.si, 14)
  })
  test('bending takes its share of the mean pull at each of two pulleys', () => {
    const { bending } = hip.losses({ ...cycle, torque: '0 N m', returnTorque: '0 N m' }).atLowFriction
    // Twice (out and back) two pulleys, 140 N in both spans, 40 degrees at 46.5 mm.
    expect(bending.energy.si).toBeCloseTo(2 * 2 * 0.01 * 140 * 0.0465 * ((40 * Math.PI) / 180), 9)
  })
  test('each way of the cycle loses at its own tensions', () => {
    const swing = { torque: '6 N m', returnTorque: '-1 N m' } as const
    const { bending } = hip.losses({ ...cycle, ...swing }).atLowFriction
    const { points } = hip.path({
      torques: Array.from({ length: 8 }, (_, i) => (i % 2 === 0 ? swing.torque : swing.returnTorque)),
    }).atLowFriction
    const rim = 0.0465 * ((40 * Math.PI) / 180)
    const [out, back] = points.slice(-2).map((p) => ({ sum: p.tautTension.si + p.slackTension.si }))
    expect(bending.energy.si).toBeCloseTo(0.01 * rim * ((out?.sum ?? 0) + (back?.sum ?? 0)), 9)
  })
  test('creep without load is none, and less than the law of an endless belt says', () => {
    const idle = hip.losses({ ...cycle, torque: '0 N m', returnTorque: '0 N m' }).atLowFriction
    expect(Math.abs(idle.creep?.energy.si ?? Number.NaN)).toBeLessThan(1e-9)
    for (const [torque, returnTorque] of [
      [6, -1],
      [6, 0],
      [-4, 2],
      [3, 3],
    ] as const) {
      const { creep, travel } = hip.losses({ ...cycle, torque: [torque, 'N m'], returnTorque: [returnTorque, 'N m'] }).atLowFriction
      const belt = ((40 * Math.PI) / 180) * 0.0465 * (((torque / 0.0465) ** 2 + (returnTorque / 0.0465) ** 2) / 35000)
      expect(travel).toBe('followed')
      expect(creep?.energy.si).toBeGreaterThan(0)
      expect(creep?.energy.si).toBeLessThan(belt)
    }
  })
  test('a stroke that cannot be followed has no creep, and the end is named', () => {
    const far = hip.losses({ ...cycle, stroke: '500 deg', torque: '6 N m', returnTorque: '0 N m' }).atLowFriction
    expect(far.creep).toBeUndefined()
    expect(far.travel).toBe('anchorLeavesDrum')
    const slips = hip.losses({ ...cycle, torque: '20 N m', returnTorque: '0 N m' }).atLowFriction
    expect(slips.creep).toBeUndefined()
    expect(slips.travel).toBe('slips')
  })
  test('an unloaded return still bends cord and turns bearings', () => {
    const { bending, bearings } = hip.losses({ ...cycle, torque: '6 N m', returnTorque: '0 N m' }).atLowFriction
    expect(bending.energy.si).toBeGreaterThan(0)
    expect(bearings.energy.si).toBeGreaterThan(0)
  })
  test('says when the pinion slips in it', () => {
    expect(hip.losses({ ...cycle, torque: '20 N m', returnTorque: '0 N m' }).atLowFriction.state).toBe('slips')
  })
})

describe('a clamped drive', () => {
  const clamped = cordDrive({ ...given, hold: 'clampedMidPinion' })
  test('has a slack limit above that of equal changes, and is followed beyond it', () => {
    const { slackTorque, slipTorque } = clamped.limits('0 deg').atLowFriction
    expect(slipTorque).toBeUndefined()
    expect(slackTorque?.si).toBeGreaterThan(2 * 140 * 0.0465)
    const { points } = clamped.path({ torques: ['10 N m', '25 N m', '0 N m'] }).atLowFriction
    expect(points.map((p) => p.state)).toEqual(['tight', 'slackSpan', 'tight'])
    expect(points[1]?.looseLength.si).toBeGreaterThan(0)
    expect(points[1]?.torque.si).toBeCloseTo(25, 9)
  })
})

test('travel can be driven by the motor', () => {
  const byMotor = cycle.map(({ jointAngle, torque }) => ({ pinionAngle: jointAngle === '0 deg' ? '0 deg' : '-248 deg', torque }) as const)
  const { points, end, regime } = hip.travel({ steps: byMotor, cycles: 3 }).atLowFriction
  expect(end).toBe('followed')
  expect(regime).toBe('elementStays')
  // Forty degrees at the joint, but for the windup under load.
  const windup = hip.windup('6 N m').atLowFriction.windup.in('deg')
  expect(points[1]?.pinionAngle.in('deg')).toBeCloseTo(-248, 9)
  expect(Math.abs((points[1]?.jointAngle.in('deg') ?? 0) + 40)).toBeGreaterThan(0.5 * windup)
  expect(Math.abs((points[1]?.jointAngle.in('deg') ?? 0) + 40)).toBeLessThan(2 * windup)
})

describe('bad input', () => {
  test('a step of a travel that is not a record', () => {
    expect(() => hip.travel({ steps: [5 as never], cycles: 1 })).toThrow(/steps\[0\]/)
  })

  test.each([
    ['negative tension', { pretension: '-5 N' }, 'pretension'],
    ['overlapping pulleys', { centreDistance: '50 mm' }, 'overlap'],
    ['a friction interval upside down', { friction: { low: 0.3, high: 0.1 } }, 'low end'],
    ['wraps that do not fit the pinion', { groovePitch: '2 mm', pinionLength: '5 mm' }, 'hold the wraps'],
    ['wraps that do not fit the drum', { groovePitch: '2 mm', drumLength: '3 mm' }, 'hold the wraps of both tracks'],
    ['a name that is not an input', { pretention: '5 N' }, 'did you mean'],
    ['a torque as tension', { pretension: '5 N m' }, 'pretension'],
  ])('%s is one clear error', (_, change, words) => {
    const { pretension, ...rest } = given
    const base = 'pretention' in change ? rest : given
    void pretension
    expect(() => cordDrive({ ...base, ...change } as never)).toThrow(words)
  })
  test.each([
    ['no cycles', { steps: cycle, cycles: 0 }, 'cycles is 0; must be at least 1'],
    ['no steps', { steps: [], cycles: 1 }, 'steps is an empty list'],
    ['nothing', undefined, 'must be an object with'],
    ['a resolution of nothing', { steps: cycle, cycles: 1, resolution: '0 rad' }, 'resolution'],
    ['a step without torque', { steps: [{ jointAngle: '1 deg' }], cycles: 1 }, 'steps[0].torque is missing'],
    ['two angles that drive', { steps: [cycle[0], { pinionAngle: '1 deg', torque: '1 N m' }], cycles: 1 }, 'mixed'],
  ])('a travel with %s', (_, given, words) => {
    expect(() => hip.travel(given as never)).toThrow(words)
    expect(() => hip.travel(given as never)).toThrow('capstan.cordDrive.travel')
  })
  test.each([
    ['nothing', undefined, 'must be an object with torques'],
    ['an empty list', { torques: [] }, 'torques is an empty list'],
    ['both', { torques: ['1 N m'], angles: ['1 deg'] }, 'is not an input'],
    ['a force', { torques: ['1 N m', '3 N'] }, "torques[1] is '3 N'"],
  ])('a path of %s', (_, given, words) => {
    expect(() => hip.path(given as never)).toThrow(words)
    expect(() => hip.path(given as never)).toThrow('capstan.cordDrive.path')
  })
  test('a torque that is none, and numbers that are not finite', () => {
    expect(() => hip.windup('3 N' as never)).toThrow("capstan.cordDrive.windup: torque is '3 N'")
    expect(() => loadPath(hip.si.atLowFriction, 'torque', [1, Number.NaN])).toThrow('steps[1] is NaN; must be finite')
    expect(() => travelPath(hip.si.atLowFriction, [0], [Number.POSITIVE_INFINITY], 0.01)).toThrow('torque[0]')
    expect(() => overFriction(tensionRatio, { wrapAngle: '1 turn' } as never)).toThrow('friction.low is missing')
  })
  test('a load history with an elastic contact', () => {
    const elastic = cordDrive({ ...given, contactStiffness: '5e6 N/m^2' })
    expect(elastic.windup('1 N m').atLowFriction.windup.si).toBeGreaterThan(hip.windup('1 N m').atLowFriction.windup.si)
    expect(() => elastic.path({ torques: ['1 N m'] })).toThrow('capstan.cordDrive.path: contactStiffness')
    expect(() => elastic.travel({ steps: cycle, cycles: 1 })).toThrow('capstan.cordDrive.travel: contactStiffness')
    expect(() => windupChart(elastic, '1 N m')).toThrow('contactStiffness')
    expect(() => tensionAlongWrapChart(elastic, '1 N m')).toThrow('contactStiffness')
  })
})

test('friction keeps its ends apart through every result: each is that of a drive with this friction alone', () => {
  const friction = { low: 0.11, high: 0.19 }
  const drumFriction = { low: 0.15, high: 0.3 }
  const asked = (d: CordDrive) => ({
    limits: d.limits(),
    windup: d.windup('6 N m', '20 deg'),
    path: d.path({ torques: ['6 N m', '-3 N m', '1 N m'] }),
    angles: d.path({ angles: ['0.2 deg', '-0.1 deg'] }),
    losses: d.losses({
      torque: '6 N m',
      returnTorque: '1 N m',
      stroke: '40 deg',
      bearingFriction: 0.002,
      bearingRadius: '4 mm',
      bendingLoss: 0.01,
    }),
    travel: d.travel({ steps: cycle, cycles: 2 }),
  })
  const both = asked(cordDrive({ ...given, friction, drumFriction }))
  const [low, high] = (['low', 'high'] as const).map((end) =>
    asked(cordDrive({ ...given, friction: friction[end], drumFriction: drumFriction[end] })),
  )
  for (const name of Object.keys(both) as (keyof typeof both)[]) {
    expect(both[name].atLowFriction).toEqual(low?.[name].atLowFriction)
    expect(both[name].atHighFriction).toEqual(high?.[name].atHighFriction)
    expect(both[name].atHighFriction).not.toEqual(both[name].atLowFriction)
  }
  // The drum's own friction is not the pinion's.
  expect(asked(cordDrive({ ...given, friction })).windup.atLowFriction.windup.si).toBeGreaterThan(both.windup.atLowFriction.windup.si)
})

test('friction as an interval keeps its ends apart', () => {
  const { atLowFriction, atHighFriction } = overFriction(tensionRatio, { friction: { low: 0.1, high: 0.2 }, wrapAngle: '2 turn' })
  expect(atLowFriction.si).toBeCloseTo(3.5136, 4)
  expect(atHighFriction.si).toBeCloseTo(12.3453, 4)
  expect(() => overFriction(tensionRatio, { friction: { low: 0.3, high: 0.2 }, wrapAngle: '2 turn' })).toThrow('low end')
  expect(overFriction(tensionRatio, { friction: 0.1, wrapAngle: '2 turn' }).atHighFriction.si).toBeCloseTo(3.5136, 4)
})

test('a band over friction keeps its order and finds what lies between the ends', () => {
  const lost = (friction: number) =>
    cordDrive({ ...given, friction }).path({ torques: ['6 N m', '-6 N m', '6 N m', '-6 N m'] }).atLowFriction.lostMotion
  const { least, leastAt, most, mostAt } = frictionBand({ low: 0.05, high: 0.18 }, lost)
  expect(least.si).toBe(lost(0.18)?.si)
  expect(leastAt.si).toBe(0.18)
  expect(mostAt.si).toBeGreaterThan(0.06)
  expect(mostAt.si).toBeLessThan(0.12)
  for (const friction of [0.05, 0.07, 0.08, 0.085, 0.09, 0.1, 0.12, 0.18])
    expect(most.si).toBeGreaterThanOrEqual(lost(friction)?.si ?? Number.NaN)
  // What rises with friction all the way has its band at the ends, also from a property and from one number.
  const { friction } = cordFibre('LCP')
  const slips = (at: number) => cordDrive({ ...given, friction: at }).limits().atLowFriction.slipTorque
  const band = frictionBand(friction, slips)
  expect([band.leastAt.si, band.mostAt.si]).toEqual([friction.low, friction.high])
  expect(band.least.si).toBe(slips(friction.low)?.si)
  expect(frictionBand(0.1, slips).most.si).toBe(frictionBand(0.1, slips).least.si)
  expect(() => frictionBand(0.1, () => undefined)).toThrow(
    'of is a function; must return a result over the whole interval; it returns no result at a friction of 0.1',
  )
  expect(() => frictionBand({ low: 0.3, high: 0.2 }, slips)).toThrow('capstan.frictionBand: friction is 0.3 to 0.2')
})

test('the chart along the cord parts the sides at a clamp, and says what gives', () => {
  const short = cordDrive({ ...given, pinionTurns: 0, hold: 'clampedMidPinion' })
  // The clamp lies between two of the chart's points.
  const chart = tensionAlongWrapChart(short, '10 N m') as unknown as {
    description: string
    layer: { data: { values: { x: number; y: number; series: string }[] } }[]
  }
  const { pinionWrap, tautTension, slackTension } = { pinionWrap: short.pinionWrap.si, ...short.windup('10 N m').atLowFriction }
  const middle = 1000 * (0.0465 * short.si.atLowFriction.drumWrapTaut + short.span.si + (0.0075 * pinionWrap) / 2)
  const low = (chart.layer[0]?.data.values ?? []).filter((v) => v.series === 'low friction')
  const [before, after] = [low.filter((v) => v.x <= middle + 1e-6).at(-1), low.find((v) => v.x > middle + 1e-6)]
  // Slip has reached the clamp on both sides: tension jumps there.
  expect(before?.y).toBeCloseTo(tautTension.si * Math.exp(-0.1 * (pinionWrap / 2 - (middle - (before?.x ?? 0)) / 7.5)), 4)
  const beyond = ((after?.x ?? 0) - middle) / 7.5
  expect(after?.y).toBeCloseTo(slackTension.si * Math.exp(0.1 * (pinionWrap / 2 - beyond)), 4)
  expect(tensionAlongWrapChart(hip, '20 N m').description).toContain(
    '20 N m. At low friction the pinion slips: the line holds for 13.11 N m',
  )
  expect(tensionAlongWrapChart(short, '50 N m').description).toContain('At high friction the slack span is loose.')
})

test('charts carry finite points in order', () => {
  const along = tensionAlongWrapChart(hip, '6 N m') as unknown as {
    layer: { data: { values: { x: number; y: number; series: string }[] } }[]
  }
  const values = along.layer[0]?.data.values ?? []
  const low = values.filter((v) => v.series === 'low friction')
  // Slip has reached the anchor here: the drum's wrap of 200° does not use up the span's tension.
  expect(low[0]?.y).toBeCloseTo(hip.windup('6 N m').atLowFriction.tautTension.si * Math.exp((-0.1 * 200 * Math.PI) / 180), 6)
  expect(Math.max(...low.map((v) => v.y))).toBeCloseTo(hip.windup('6 N m').atLowFriction.tautTension.si, 6)
  expect(Math.min(...low.map((v) => v.y))).toBeCloseTo(hip.windup('6 N m').atLowFriction.slackTension.si, 6)
  expect(low.every((v, i) => i === 0 || v.x >= (low[i - 1]?.x ?? 0))).toBe(true)
  const loop = windupChart(hip, '6 N m') as unknown as { layer: { data: { values: { x: number; y: number }[] } }[] }
  expect(loop.layer[0]?.data.values.every((v) => Number.isFinite(v.x) && Number.isFinite(v.y))).toBe(true)
  const most = Math.max(...(loop.layer[0]?.data.values ?? []).map((v) => v.x))
  expect(most / hip.windup('6 N m').atLowFriction.windup.in('deg')).toBeCloseTo(1, 2)
  expect(Math.max(...(loop.layer[0]?.data.values ?? []).map((v) => v.y))).toBeCloseTo(6, 9)
  // The drum's own friction rules on the drum.
  const gripping = cordDrive({ ...given, drumFriction: 0.14 })
  const first = (tensionAlongWrapChart(gripping, '6 N m') as unknown as typeof along).layer[0]?.data.values[0]
  const taut = gripping.windup('6 N m').atLowFriction.tautTension.si
  expect(first?.y).toBeCloseTo(Math.max(140, taut * Math.exp((-0.14 * 200 * Math.PI) / 180)), 6)
  expect(() => windupChart(hip, '0 N m')).toThrow('capstan.windupChart: amplitude')
  expect(() => windupChart(hip, '3 N' as never)).toThrow('capstan.windupChart: amplitude')
  expect(() => tensionAlongWrapChart(hip, '3 N' as never)).toThrow('capstan.tensionAlongWrapChart: torque')
})
