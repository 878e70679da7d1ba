import { readFileSync } from 'node:fs'
import * as fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { assess, describeLeg, type Leg, learn, learntText, withFields } from '../../src/leg/index.js'
import { corrections } from '../../src/leg/learning/corrections.js'
import { estimate } from '../../src/leg/learning/estimate.js'
import { legModel } from '../../src/leg/leg-model.js'
import { legNumbers } from '../../src/leg/numbers.js'
import { airTemperature, stallTime, surroundings, after as walksBefore, wind } from '../../src/leg/parts/load/fields.js'
import { driveMotion } from '../../src/leg/parts/motion/values.js'
import { heat } from '../../src/leg/parts/motors/heat.js'
import { benchLeg } from '../../src/leg/plans/bench.js'
import { at, calculationFor } from '../../src/leg/what-if.js'
import { InputError } from '../../src/units/index.js'
import { cordDrive } from './cord-drive.js'

const leg = describeLeg(readFileSync(new URL('./legs/workbench.yaml', import.meta.url), 'utf8'))
const cases = { cases: ['walk', 'season'] } as const
const bench = benchLeg(leg)

// Logs made by hand from the published law each measurement stands for, with a fixed scatter.
const scatter = (i: number) => 0.01 * Math.sin(78.233 * (i + 1) ** 2)
const friction = (mu: number, n = 12) =>
  `slack tension [N],taut tension [N],wrap angle [turn]\n${Array.from({ length: n }, (_, i) => {
    const turns = 0.5 + (i % 4) * 0.25
    return `5,${5 * Math.exp((mu + scatter(i)) * 2 * Math.PI * turns)},${turns}`
  }).join('\n')}\n`
/** Loss per decade of time from one hour: T = T0 / (1 + a log10(t / 1 h)). */
const decay = (start: number, a: number) =>
  `# invented\ntime [day],tension [N]\n${Array.from({ length: 20 }, (_, i) => {
    const days = 0.05 * 1.5 ** i
    return `${days},${start / (1 + a * Math.log10(days * 24)) + 5 * scatter(i)}`
  }).join('\n')}\n`

/** A dial gauge that does not start at zero. */
const give = (slope: number) =>
  `upright force [N],upright deflection [mm]\n${[0, 5, 10, 15, 20, 25, 20, 15, 10, 5, 0].map((f, i) => `${f},${0.2 + slope * f + 0.2 * scatter(i)}`).join('\n')}`

const HEATING = 'time [min],peak phase current [A],winding temperature [degC],mount temperature [degC],air temperature [degC]'

const bandOf = (one: Leg, joint: 'hip' | 'knee') => cordDrive(one, joint).friction

describe('what a log teaches', () => {
  test('friction from two weights: the mean, its confidence, and a band that holds single readings', () => {
    const { leg: next, moved } = corrections(leg, { 'cordFriction knee': friction(0.2) })
    expect(bandOf(next, 'knee').typical).toBeCloseTo(0.2, 2)
    expect(bandOf(next, 'knee').low).toBeLessThan(0.195)
    expect(bandOf(next, 'knee').high).toBeGreaterThan(0.205)
    expect(bandOf(next, 'hip')).toEqual(bandOf(leg, 'hip'))
    expect(moved[0]).toMatchObject({ path: 'joints.knee.drive.friction', state: 'corrected', readings: 12 })
  })

  test('pretension and its year from a month of decay', () => {
    const a = 0.05
    const { leg: next } = corrections(leg, { 'pretension knee': decay(170, a) })
    const year = 1 / (1 + a * Math.log10(365.25 * 24))
    expect(cordDrive(next, 'knee').pretension.in('N')).toBeCloseTo(170, 0)
    expect(next.cords.braid!.pretensionLeft.typical).toBeCloseTo(year, 2)
  })

  test('thermal resistance from a held current: the rise over the copper loss at the temperature of the winding', () => {
    // 3/4 I² R, R by 234.5 + T over 254.5 (copper): Shigley-style hand chain for one current.
    const rows = Array.from({ length: 15 }, (_, i) => {
      const winding = 40 + 2 * i
      const loss = 0.75 * 10 ** 2 * 0.075 * ((234.5 + winding) / 254.5)
      return `${i},10,${winding},${winding - 1.1 * loss + 0.1 * scatter(i)},20`
    })
    const log = `${HEATING}\n${rows.join('\n')}`
    // The mounting face follows no law of cooling here, so that the log is not believed without insisting.
    expect(corrections(leg, { heating: log }).moved[0]).toMatchObject({ state: 'notApplied' })
    const { leg: next, moved } = corrections(leg, { heating: log }, { insist: ['heating'] })
    // Zeros of the thermometers are estimated too, and take a little of what the mount does not follow.
    expect(Math.abs(next.motors.main!.windingToMount.in('K/W') - 1.1)).toBeLessThan(0.02)
    const [low, high] = moved[0]!.interval!.map(Number.parseFloat) as [number, number]
    expect(low).toBeLessThan(1.1)
    expect(high).toBeGreaterThan(1.1)
  })

  describe('a heating curve', () => {
    const real = withFields(leg, {
      'environment.coolingFactor': [0.7, 0.7, 0.7],
      'motors.main.specificHeat': '520 J/(kg K)',
      'motors.main.windingToMount': '1 K/W',
    })
    const prepared = legModel(legNumbers(real))
    const asked = { torque: 4, shaftTorque: 0, shaftRms: 0, speed: 0, loadedSpeed: 0, lowest: 0, highest: 0 }
    // Made along another way than the one it is read by: a stall of so many minutes, its loss with the copper as warm as it gets.
    const after = (minutes: number) => {
      const calculation = calculationFor(prepared)
      const here = at(calculation, { joint: 'knee', event: 'stall', air: 'normalStill' }) as never
      // On the stand the motor is as cold as the room: no walk comes before.
      for (const [leaf, x] of [
        [walksBefore, []],
        [airTemperature, 293.15],
        [wind, 0],
        [surroundings, 293.15],
        [stallTime, 60 * minutes],
      ] as const)
        calculation.set(leaf as typeof wind, here, x as number)
      calculation.pin(driveMotion, here, asked)
      return calculation.get(heat, here)
    }
    const row = (minutes: number, shift = 0) => {
      const { heatingCurrent, windingMean, mount } = after(Math.max(minutes, 1e-6))
      return `${minutes + shift},${heatingCurrent},${windingMean - 273.15},${mount - 273.15},20`
    }

    test('tells what air carries off, what the motor takes up, and the way out of the winding', () => {
      const log = [HEATING, ...Array.from({ length: 31 }, (_, i) => row(2 * i))].join('\n')
      const { leg: next, moved } = corrections(leg, { heating: log })
      expect(moved.map(({ path }) => path)).toEqual(['motors.main.windingToMount', 'environment.coolingFactor', 'motors.main.specificHeat'])
      expect(next.motors.main!.windingToMount.in('K/W')).toBeCloseTo(1, 4)
      expect(next.environment.coolingFactor.typical).toBeCloseTo(0.7, 2)
      expect(next.motors.main!.specificHeat.in('J/(kg K)')).toBeGreaterThan(510)
      expect(next.motors.main!.specificHeat.in('J/(kg K)')).toBeLessThan(530)
    })

    test('that has settled tells nothing of what the motor takes up', () => {
      const log = [HEATING, ...Array.from({ length: 12 }, (_, i) => row(1e4, i + 0.001 * scatter(i)))].join('\n')
      const { leg: next, moved } = corrections(leg, { heating: log })
      expect(next.environment.coolingFactor.typical).toBeCloseTo(0.7, 2)
      expect(next.motors.main!.specificHeat).toEqual(leg.motors.main!.specificHeat)
      expect(moved.find(({ path }) => path === 'motors.main.specificHeat')?.state).toBe('undetermined')
    })

    test('of a motor that cools less than the film formulas say moves the verdict to the bad side', () => {
      const log = [HEATING, ...Array.from({ length: 31 }, (_, i) => row(2 * i))].join('\n')
      const { comparison } = learn(leg, { heating: log }, { cases: ['stall'] })
      const plate = comparison.checks.find(({ id, after: now }) => id === 'motor.plate' && now?.joint === 'knee')!
      expect(plate.after!.reserve).toBeLessThan(plate.before!.reserve)
    })
  })

  // With next to no friction the arcs stretch freely: K = EA r² (1/a + 1/b), a = b = span + half pinion arc + drum arc of each branch.
  const slick = withFields(leg, { 'joints.hip.drive.friction': [1e-6, 1e-6, 1e-6], 'joints.knee.drive.friction': [1e-6, 1e-6, 1e-6] })
  const hooke = ([R, r, C]: readonly [number, number, number], rigidity: number, noise = 0.001) => {
    const theta = Math.PI + 2 * Math.asin((R + r) / C)
    const span = Math.sqrt(C * C - (R + r) ** 2)
    const free = span + (r * (theta + 6 * Math.PI)) / 2 + (R * theta) / 2
    const stiffness = (2 * rigidity * R * R) / free
    const rows = [0, 2, 4, 6, 8, 6, 4, 2, 0].map(
      (torque, i) => `${torque},${((torque / stiffness) * 180) / Math.PI + 0.3 + noise * scatter(i)}`,
    )
    return `joint torque [N m],joint angle [deg]\n${rows.join('\n')}`
  }
  const [knee, hip] = [
    [0.0448, 0.008, 0.118],
    [0.0496, 0.008, 0.074],
  ] as const

  test('axial rigidity from the windup of a clamped drive without friction: Hooke over spans and arcs', () => {
    const { leg: next } = corrections(slick, { 'windup knee': hooke(knee, 30e3) })
    expect(next.cords.braid!.axialRigidity.in('kN')).toBeCloseTo(30, 1)
  })

  test('two logs of one cord are taken together, each by its certainty, and a disagreement is told', () => {
    const alone = corrections(slick, { 'windup hip': hooke(hip, 30e3, 1) })
    const both = corrections(slick, { 'windup knee': hooke(knee, 30e3, 1), 'windup hip': hooke(hip, 30e3, 1) })
    const width = ({ moved }: typeof both) => {
      const [low, high] = moved.at(-1)!.interval!.map(Number.parseFloat) as [number, number]
      return high - low
    }
    expect(Math.abs(both.leg.cords.braid!.axialRigidity.in('kN') - 30)).toBeLessThan(width(both))
    expect(width(both)).toBeLessThan(width(alone))
    expect(both.remarks).toEqual([])
    const apart = corrections(slick, { 'windup knee': hooke(knee, 20e3), 'windup hip': hooke(hip, 30e3) })
    expect(apart.leg.cords.braid!.axialRigidity.in('kN')).toBeGreaterThan(20)
    expect(apart.leg.cords.braid!.axialRigidity.in('kN')).toBeLessThan(30)
    expect(apart.remarks.map(({ what }) => what)).toEqual(['disagreement'])
  })

  test('the give of the foot corrects nothing, but is laid beside the model', () => {
    const { predicted } = corrections(leg, { footDeflection: give(0.04) }).compared[0]!
    const model = predicted.in('mm/N')
    const at = (slope: number) => corrections(leg, { footDeflection: give(slope) })
    const agreeing = at(model).compared[0]!
    expect(agreeing.state).toBe('agrees')
    // A straight line through readings whose scatter sums to nothing in the first order: the slope they were made with.
    expect(agreeing.measured!.in('mm/N')).toBeCloseTo(model, 3)
    expect(at(2 * model).compared[0]!.state).toBe('above')
    expect(at(0.5 * model).compared[0]!.state).toBe('below')
    expect(at(2 * model).leg).toEqual(leg)
    expect(learntText(learn(leg, { footDeflection: give(2 * model) }, { cases: ['walk'] }))).toContain('look for play')
  })

  test('a row whose time runs back is told and left out', () => {
    const log = 'time [day],tension [N]\n0.1,180\n1,170\n0.5,300\n2,168\n3,167\n5,165\n'
    const { remarks, moved } = corrections(leg, { 'pretension knee': log })
    expect(remarks).toMatchObject([{ line: 4, what: 'order' }, { what: 'misfit' }])
    expect(moved[0]!.readings).toBe(5)
  })

  test('drives that hold no load give without end in the model: nothing measured is softer', () => {
    const loose = withFields(leg, {
      'joints.hip.drive.hold': 'frictionOnly',
      'joints.knee.drive.hold': 'frictionOnly',
      'joints.knee.drive.friction': [0.001, 0.001, 0.001],
    })
    const [foot] = corrections(loose, { footDeflection: give(0.3) }).compared
    expect(foot!.predicted.si).toBe(Number.POSITIVE_INFINITY)
    expect(foot!.state).not.toBe('above')
    expect(learntText(learn(loose, { footDeflection: give(0.3) }, { cases: ['walk'] }))).toContain('the drives hold no load')
  })

  test('ends pulled to failure', () => {
    const { leg: next } = corrections(leg, { 'pullOut hip': 'breaking force [N]\n1600\n1650\n1700\n1580\n1620\n' })
    // 1630 N of 2300 N, with the digits that five ends justify.
    expect(cordDrive(next, 'hip').endRetention?.typical).toBe(0.709)
  })

  test('the new verdict is that of the corrected leg', () => {
    const { leg: next, comparison } = learn(leg, { 'pretension knee': decay(120, 0.1) }, cases)
    expect(comparison.after.checks.map(({ reserve }) => reserve)).toEqual(assess(next, cases).checks.map(({ reserve }) => reserve))
    const slack = comparison.checks.find(({ id, after }) => id === 'cord.slack' && after?.joint === 'knee')
    expect(slack!.factor!).toBeLessThan(1)
  })

  test('any friction is found again', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.05, max: 0.4, noNaN: true }), (mu) => {
        const text = friction(mu)
        const { found } = estimate(bench, [{ log: 'cordFriction hip', id: 'cordFriction', joint: 'hip', text }], {})
        expect(Math.abs(found[0]!.value - mu)).toBeLessThan(0.006)
      }),
      { numRuns: 20 },
    )
  })
})

describe('logs that are not clean', () => {
  const lines = friction(0.2).trim().split('\n')
  const remarksOf = (text: string, options = {}) => corrections(leg, { 'cordFriction knee': text }, options)

  test('a gap, a decimal comma and a word are left out and named by line', () => {
    const { remarks, moved } = remarksOf([...lines, '5,,1', '5,7,5,1', '5,broken,1'].join('\n'))
    expect(remarks.map(({ line, what }) => [line, what])).toEqual(
      expect.arrayContaining([
        [14, 'gap'],
        [15, 'unreadable'],
        [16, 'unreadable'],
      ]),
    )
    expect(moved[0]!.readings).toBe(12)
  })

  test('a cell with its own unit and a header in another unit are converted and named', () => {
    const clean = remarksOf(lines.join('\n'))
    const own = remarksOf([lines[0], ...lines.slice(1, -1), lines.at(-1)!.replace(/^5,/, '5000 mN,')].join('\n'))
    expect(own.moved[0]!.after).toBe(clean.moved[0]!.after)
    expect(own.remarks).toContainEqual(expect.objectContaining({ line: 13, what: 'unit' }))
    const kilo = remarksOf(
      [lines[0]!.replace('slack tension [N]', 'slack tension [kN]'), ...lines.slice(1).map((line) => line.replace(/^5,/, '0.005,'))].join(
        '\n',
      ),
    )
    expect(kilo.remarks).toContainEqual(expect.objectContaining({ line: 1, what: 'unit' }))
    expect(cordDrive(kilo.leg, 'knee').friction.typical).toBeCloseTo(cordDrive(clean.leg, 'knee').friction.typical, 10)
  })

  test('a spike is named, left out, and kept when asked', () => {
    const text = [...lines, `5,${5 * Math.exp(0.8 * Math.PI)},0.5`].join('\n')
    const out = remarksOf(text)
    expect(out.remarks).toContainEqual(expect.objectContaining({ line: 14, what: 'spike' }))
    expect(cordDrive(out.leg, 'knee').friction.typical).toBeCloseTo(0.2, 2)
    const kept = remarksOf(text, { spikes: 'keep' })
    expect(cordDrive(kept.leg, 'knee').friction.typical).toBeGreaterThan(0.22)
    expect(learntText(learn(leg, { 'cordFriction knee': text }, cases))).toMatch(/line 14 \(spike\)/)
  })

  test('too few readings teach nothing and say so', () => {
    const { moved, remarks, leg: next } = remarksOf(lines.slice(0, 3).join('\n'))
    expect(moved).toEqual([])
    expect(remarks).toContainEqual(expect.objectContaining({ what: 'few readings' }))
    expect(next.joints).toEqual(leg.joints)
  })

  test('insisting on a log that is not there is refused', () => {
    const logs = { 'cordFriction knee': lines.join('\n') }
    expect(() => learn(leg, logs, { insist: ['cordFricton knee'] })).toThrow(/insist.*cordFriction knee/)
    expect(corrections(leg, logs, { insist: ['cordFriction knee'] }).moved).toHaveLength(1)
  })

  test.each([
    [{}, /at least one log/],
    [{ 'cordFricton knee': 'x' }, /did you mean cordFriction knee/],
    [{ 'windup knee': 3 as never }, /text of a CSV/],
    [{ 'windup knee': '' }, /needs the column joint torque \[N m\]/],
    [{ 'windup knee': 'joint torqe [N m],joint angle [deg]\n' }, /is joint torqe meant/],
    [{ 'windup knee': 'joint torque [N],joint angle [deg]\n' }, /must be in/],
    [{ 'windup knee': 'joint torque,joint angle [deg]\n' }, /no unit/],
  ])('%j is refused', (logs, message) => {
    expect(() => learn(leg, logs)).toThrow(message)
    expect(() => learn(leg, logs)).toThrow(InputError)
  })
})

test('a motor whose document gives no current of the idle motor learns it', () => {
  const [name] = Object.keys(leg.motors)
  const path = `motors.${name}.noLoadCurrent`
  const idle = withFields(leg, { [path]: '0 A' })
  const log = `voltage [V],current [A]\n${[6, 8, 10, 12, 14].map((volt, i) => `${volt},${0.6 + 0.01 * (volt - 10) + 0.2 * scatter(i)}`).join('\n')}\n`
  const { moved, remarks } = corrections(idle, { noLoad: log })
  expect(remarks.filter(({ what }) => what === 'implausible')).toEqual([])
  expect(moved[0]).toMatchObject({ path, state: 'corrected' })
  expect(Number.parseFloat(moved[0]!.after)).toBeGreaterThan(590)
  expect(Number.parseFloat(moved[0]!.after)).toBeLessThan(610)
  // Milliamperes in a column of amperes are still not believed.
  const slip = corrections(idle, { noLoad: log.replaceAll(/,(0\.\d+)/g, (_, x) => `,${1000 * Number(x)}`) })
  expect(slip.moved[0]).toMatchObject({ path, state: 'notApplied' })
})
