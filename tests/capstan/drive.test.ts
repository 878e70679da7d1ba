import { describe, expect, test } from 'vitest'
import {
  cordFibre,
  drive,
  endEfficiency,
  fibreNames,
  holdingRatio,
  overFriction,
  pulleyGeometry,
  tensionAlongWrapChart,
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
const hip = drive(given)
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
      extraTurns: 3,
    })
    expect(hip.span.si).toBe(g.span.si)
    expect(hip.pinionWrap.si).toBe(g.pinionWrapAngle.si)
    expect(hip.ratio.si).toBeCloseTo(6.2, 12)
    expect(drive({ ...given, arrangement: 'open' }).pinionWrap.si).toBeLessThan(hip.pinionWrap.si)
    expect(drive({ ...given, arrangement: 'open' }).span.si).toBeGreaterThan(hip.span.si)
  })
  test('gives slip and slack as different numbers, the solved slip above its estimate', () => {
    const { atLowFriction: low, atHighFriction: high } = hip.limits()
    expect(low.slipTorque?.si).toBeGreaterThan(low.slipEstimate?.si ?? Number.NaN)
    expect(low.slipTorque?.si).toBeLessThan(high.slipTorque?.si ?? Number.NaN)
    expect(low.slackEstimate.si).toBeCloseTo(2 * 140 * 0.0465, 12)
    expect(drive({ ...given, hold: 'clampedMidPinion' }).limits().atLowFriction.slipTorque).toBeUndefined()
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
    expect(torqueCarried.si).toBeCloseTo(hip.limits().atLowFriction.slipTorque?.si ?? 0, 9)
  })
  test('notes a tension above the allowable of the cord', () => {
    const weak = drive({ ...given, allowableTension: '150 N' })
    expect(weak.windup('6 N m').atLowFriction.windup.notes?.[0]?.text).toContain('above the allowable 150 N')
    expect(weak.windup('0.1 N m').atLowFriction.windup.notes).toBeUndefined()
    const over = drive({ ...given, allowableTension: '100 N' })
    expect(over.limits().atLowFriction.slackEstimate.notes?.[0]?.text).toContain('above the allowable')
  })
  test('loss does not depend on how finely a closed history is given', () => {
    const rough = hip.path({ torques: ['6 N m', '-6 N m', '6 N m'] }).atLowFriction
    const fine = hip.path({ torques: ['3 N m', '6 N m', '1 N m', '-6 N m', '0 N m', '6 N m'] }).atLowFriction
    expect(rough.loss.si / fine.loss.si).toBeCloseTo(1, 2)
    expect(rough.lostMotion.si / fine.lostMotion.si).toBeCloseTo(1, 2)
    expect(rough.points).toHaveLength(3)
    expect(rough.lostMotion.si).toBeGreaterThan(0)
  })
  test('an angle history past slip slides on', () => {
    const { points, slipped } = hip.path({ angles: ['3 deg'] }).atLowFriction
    expect(points[0]?.state).toBe('slips')
    expect(points[0]?.windup.in('deg')).toBeCloseTo(3, 9)
    expect(slipped.si).toBeGreaterThan(0)
  })
  test('tells the regime of travel', () => {
    const stays = hip.travel({ steps: cycle, cycles: 20 }).atLowFriction
    expect(stays.regime).toBe('elementStays')
    expect(Math.abs(stays.driftPerCycle.si)).toBeLessThan(1e-9)
    const passes = drive({ ...given, pinionWrap: '150 deg', friction: 0.5, groovePitch: '2 mm' }).travel({
      steps: cycle,
      cycles: 5,
    }).atLowFriction
    expect(passes.regime).toBe('everyElementPasses')
    expect(passes.walkPerCycle?.si).toBeGreaterThan(0)
  })
})

describe('bad input', () => {
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
    expect(() => drive({ ...base, ...change } as never)).toThrow(words)
  })
  test('a travel without cycles', () => {
    expect(() => hip.travel({ steps: cycle, cycles: 0 })).toThrow('cycles')
    expect(() => hip.travel({ steps: [], cycles: 1 })).toThrow('at least one step')
    expect(() => hip.travel({ steps: cycle, cycles: 1, resolution: '0 rad' })).toThrow('resolution')
  })
  test('a load history with an elastic contact', () => {
    expect(() => drive({ ...given, contactStiffness: '5e6 N/m^2' }).path({ torques: ['1 N m'] })).toThrow('contactStiffness')
  })
  test('unknown cords and ends name what there is', () => {
    expect(() => cordFibre('LPC' as never)).toThrow('LCP')
    expect(() => endEfficiency('glue' as never)).toThrow('bondedFerrule')
  })
})

test('friction as an interval keeps its ends apart', () => {
  const { atLowFriction, atHighFriction } = overFriction(holdingRatio, { friction: { low: 0.1, high: 0.2 }, wrapAngle: '2 turn' })
  expect(atLowFriction.si).toBeCloseTo(3.5136, 4)
  expect(atHighFriction.si).toBeCloseTo(12.3453, 4)
  expect(() => overFriction(holdingRatio, { friction: { low: 0.3, high: 0.2 }, wrapAngle: '2 turn' })).toThrow('low end')
})

test('every fibre lies within its own ranges and says where it comes from', () => {
  for (const name of fibreNames()) {
    const { strength, modulus, density, friction } = cordFibre(name)
    for (const p of [strength, modulus, density, friction]) {
      expect(p.low).toBeLessThanOrEqual(p.si)
      expect(p.si).toBeLessThanOrEqual(p.high)
      expect(p.source.where.length).toBeGreaterThan(5)
    }
  }
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
  expect(() => windupChart(hip, '0 N m')).toThrow('above 0')
})
