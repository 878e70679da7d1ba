import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { calculationOf, placeOf } from '../../src/leg/calculation.js'
import { assemblyPlan, assemblyText, assess, describeLeg, legNumbers, legUrdf, shoppingCsv, withFields } from '../../src/leg/index.js'
import { legModel } from '../../src/leg/leg-model.js'
import { body } from '../../src/leg/parts/links/values.js'
import { legInverse } from '../../src/leg/pose.js'

const plain = describeLeg(readFileSync(new URL('../../examples/mudflat-leg-revised.yaml', import.meta.url), 'utf8'))
const WEIGHTS = { upper: { mass: '0.4 kg', beyond: '60 mm' }, lower: { mass: '0.25 kg', beyond: '45 mm' } } as const
const balanced = withFields(plain, { 'links.upper.counterweight': WEIGHTS.upper, 'links.lower.counterweight': WEIGHTS.lower })
const G = 9.80665

describe('counterweights', () => {
  test('mass, centre and inertia of a link, from its parts as points about the joint', () => {
    for (const [link, m, b] of [
      ['upper', 0.4, 0.06],
      ['lower', 0.25, 0.045],
    ] as const) {
      const of = (leg: typeof plain) => {
        const calculation = calculationOf(legNumbers(leg))
        return calculation.get(body, calculation.instances.implied(placeOf(calculation, { leg: 'leg', link })) as never)
      }
      const [before, after] = [of(plain), of(balanced)]
      expect(after.mass).toBeCloseTo(before.mass + m, 12)
      expect(after.mass * after.centre).toBeCloseTo(before.mass * before.centre - m * b, 12)
      const aboutJoint = ({ mass, centre, inertia }: typeof before) => inertia + mass * centre ** 2
      expect(aboutJoint(after)).toBeCloseTo(aboutJoint(before) + m * b ** 2, 12)
    }
  })

  test('joint torques differ by the slope of the potential energy of both weights', () => {
    const upper = plain.links.upper.length.si
    const height = (hip: number, knee: number) =>
      0.4 * 0.06 * Math.cos(hip) + 0.25 * (-upper * Math.cos(hip) + 0.045 * Math.cos(hip + knee))
    const torques = (leg: typeof plain, q: readonly [number, number]) => {
      const out = new Float64Array(3)
      const none = new Float64Array(3)
      legInverse(legModel(legNumbers(leg)), G).torqueInto(out, 0, Float64Array.of(0, ...q), none, none, 0, 0, 0)
      return out
    }
    const h = 1e-5
    for (const [hip, knee] of [
      [-0.5, 1.1],
      [0.3, 0.4],
    ] as const) {
      const [with_, without] = [torques(balanced, [hip, knee]), torques(plain, [hip, knee])]
      const slope = (of: (d: number) => number) => (G * (of(h) - of(-h))) / (2 * h)
      expect(with_[1]! - without[1]!).toBeCloseTo(
        slope((d) => height(hip + d, knee)),
        8,
      )
      expect(with_[2]! - without[2]!).toBeCloseTo(
        slope((d) => height(hip, knee + d)),
        8,
      )
    }
  })

  test('are in plan, list, cautions and URDF', () => {
    const plan = assemblyPlan(balanced)
    expect(plan.drives.filter(({ kind }) => kind === 'counterweight').map(({ joint }) => joint)).toEqual(['hip', 'knee'])
    expect(shoppingCsv(plan)).toContain('counterweight,250 g,1,"lower link, 45 mm beyond the knee"')
    expect(plan.cautions.join()).toContain('A counterweight swings')
    expect(assemblyText(plan)).toContain('counterweight of the knee')
    const masses = (leg: typeof plain) => [...legUrdf(leg).matchAll(/<mass value="([^"]+)"/g)].map(([, mass]) => Number(mass))
    const [before, after] = [masses(plain), masses(balanced)]
    expect(after.reduce((sum, one) => sum + one, 0) - before.reduce((sum, one) => sum + one, 0)).toBeCloseTo(0.65, 6)
  })

  test('a heavier counterweight is not lighter to swing: the trot of a balanced leg does not gain in every check', () => {
    const least = (mass: string) =>
      assess(withFields(plain, { 'links.lower.counterweight': { mass, beyond: '120 mm' } }), { cases: ['trot'] }).checks.find(
        ({ id, joint }) => id === 'motor.current' && joint === 'knee',
      )!.reserve
    expect(least('2 kg')).toBeLessThan(least('0.2 kg'))
  })

  test.each([
    ['links.lower.counterweight', { mass: '0.2 kg' }, /links.lower.counterweight.beyond/],
    ['links.lower.counterweight', { mass: '-1 g', beyond: '20 mm' }, /counterweight.mass/],
    ['links.lower.counterweight', { mass: '0.2 kg', beyond: '-20 mm' }, /counterweight.beyond/],
    ['links.lower.counterweight', { mass: '15 kg', beyond: '20 mm' }, /robot.mass .*must be more than the counterweights of all legs/],
    ['links.lower.counterweight', { mass: '0.2 kg', beyond: '20 mm', at: '1 mm' }, /at/],
  ])('%s: %o is rejected', (path, given, message) => {
    expect(() => withFields(plain, { [path]: given })).toThrow(message)
  })
})
