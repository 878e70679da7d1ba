import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { network } from '../../src/thermal/index.js'
import { InputError } from '../../src/units/index.js'

const ambient = { fixed: '25 degC' } as const

/** Motor, stator, mount and board with constant losses; steady state and course computed independently by matrix exponential (scipy). */
const four = () =>
  network(
    {
      W: { capacity: '23.1 J/K', loss: '6 W' },
      S: { capacity: '105 J/K', loss: '0.5 W' },
      M: { capacity: '78 J/K' },
      B: { capacity: '13.5 J/K', loss: '0.9 W' },
      air: ambient,
    },
    [
      { from: 'W', to: 'S', conductance: '1.2 W/K' },
      { from: 'S', to: 'M', conductance: '0.25 W/K' },
      { from: 'M', to: 'B', conductance: '0.02 W/K' },
      { from: 'S', to: 'air', conductance: '0.12 W/K' },
      { from: 'M', to: 'air', conductance: '0.05 W/K' },
      { from: 'B', to: 'air', conductance: '0.04 W/K' },
    ],
  )

test('two nodes by hand: 35 K and 25 K above the air', () => {
  const answer = network({ a: { loss: '5 W' }, b: {}, air: ambient }, [
    { from: 'a', to: 'b', conductance: '0.5 W/K' },
    { from: 'b', to: 'air', conductance: '0.2 W/K' },
  ]).steady()
  expect(answer.temperatures.a?.in('degC')).toBeCloseTo(60, 9)
  expect(answer.temperatures.b?.in('degC')).toBeCloseTo(50, 9)
  expect(answer.flows.map((f) => f.si)).toEqual([expect.closeTo(5, 9), expect.closeTo(5, 9)])
})

describe('four nodes', () => {
  test('steady state', () => {
    const { temperatures } = four().steady()
    const wanted = { W: 69.519651, S: 64.519651, M: 57.489083, B: 50.829694 }
    for (const [name, t] of Object.entries(wanted)) expect(temperatures[name]?.in('degC'), name).toBeCloseTo(t, 6)
  })

  test('course in time', () => {
    const course = four().transient({ duration: '1800 s', initial: '25 degC' })
    const rows = [
      ['60 s', 31.179619, 27.166127, 25.192944, 28.516015],
      ['300 s', 39.960464, 35.515992, 28.996526, 36.526222],
      ['1800 s', 61.745876, 56.877397, 49.630868, 47.562647],
    ] as const
    for (const [time, ...wanted] of rows) {
      const at = course.at(time)
      ;(['W', 'S', 'M', 'B'] as const).forEach(
        (name, i) =>
          void expect(Math.abs((at[name]?.in('degC') as number) - (wanted[i] as number)), `${name} at ${time}`).toBeLessThan(2e-4),
      )
    }
  })

  test('heat released = given + stored, and a steady state stays', () => {
    const course = four().transient({ duration: '1 h', initial: '25 degC' })
    const { released, given, stored } = course.ledger
    expect(Math.abs(released.si - given.si - stored.si)).toBeLessThan(1e-5 * released.si)
    const { temperatures } = four().steady()
    const later = four().transient({ duration: '1 h', initial: temperatures }).at('1 h')
    for (const name of ['W', 'S', 'M', 'B']) expect(later[name]?.si).toBeCloseTo(temperatures[name]?.si as number, 4)
  })

  test('limits are located in time; one never reached is missing', () => {
    const { passed } = four().transient({ duration: '2 h', initial: '25 degC', limits: { W: '60 degC', M: '90 degC' } })
    expect(passed.M).toBeUndefined()
    const at = four()
      .transient({ duration: '2 h', initial: '25 degC' })
      .at([passed.W?.si as number, 's'])
    expect(at.W?.in('degC')).toBeCloseTo(60, 3)
  })
})

test('a first-order step reaches 1 - 1/e after one time constant', () => {
  const course = network({ a: { capacity: '100 J/K', loss: '10 W' }, air: ambient }, [
    { from: 'a', to: 'air', conductance: '1 W/K' },
  ]).transient({ duration: '100 s', initial: '25 degC' })
  expect(((course.at('100 s').a?.si as number) - 298.15) / 10).toBeCloseTo(1 - Math.exp(-1), 5)
})

describe('losses that grow with temperature', () => {
  // 8 W at 20 degC in copper (234.5) through 4 K/W from 25 degC: closed form 62.3213 degC
  const winding = (watts: number) =>
    network({ w: { loss: (T) => (watts * (234.5 + T - 273.15)) / 254.5 }, air: ambient }, [
      { from: 'w', to: 'air', conductance: '0.25 W/K' },
    ])

  test('hot resistance settles at the closed form', () => {
    expect(winding(8).steady().temperatures.w?.in('degC')).toBeCloseTo(62.3213, 4)
  })

  test('from Rth P20 = 254.5 K on there is no steady state', () => {
    expect(winding((254.5 / 4) * 0.9).steady().state).toBe('steady')
    expect(winding(254.5 / 4 + 0.5).steady().state).toBe('runaway')
    expect(winding(200).steady().state).toBe('runaway')
  })
})

test('no power, no rise; order of nodes and links does not matter; more power is never cooler', () => {
  const g = fc.double({ min: 0.05, max: 3, noNaN: true })
  fc.assert(
    fc.property(g, g, g, fc.double({ min: 0, max: 20, noNaN: true }), (g1, g2, g3, power) => {
      const build = (p: number, swap: boolean) => {
        const links = [
          { from: 'a', to: 'b', conductance: [g1, 'W/K'] as const },
          { from: 'b', to: 'air', conductance: [g2, 'W/K'] as const },
          { from: 'air', to: 'a', conductance: (x: number, y: number) => g3 * Math.abs(x - y + 1e-9) ** 0.25 },
        ]
        const nodes = swap
          ? { air: ambient, b: {}, a: { loss: [p, 'W'] as const } }
          : { a: { loss: [p, 'W'] as const }, b: {}, air: ambient }
        return network(nodes, swap ? [...links].reverse() : links).steady()
      }
      expect(build(0, false).temperatures.a?.si).toBeCloseTo(298.15, 6)
      const first = build(power, false).temperatures
      const second = build(power, true).temperatures
      expect(first.a?.si).toBeCloseTo(second.a?.si as number, 6)
      expect(first.b?.si).toBeCloseTo(second.b?.si as number, 6)
      expect(build(power + 1, false).temperatures.a?.si as number).toBeGreaterThan(first.a?.si as number)
    }),
    { numRuns: 60 },
  )
})

test.each([
  [() => network({ a: {} }, []), 'at least one node of fixed temperature'],
  [() => network({ a: {}, air: ambient }, []), 'nowhere to go'],
  [() => network({ a: {}, air: ambient }, [{ from: 'a', to: 'air', conductance: '-1 W/K' }]), 'links[0].conductance'],
  [() => network({ motor: {}, air: ambient }, [{ from: 'moter', to: 'air', conductance: '1 W/K' }]), 'did you mean motor?'],
  [() => network({ a: { loss: '5 N' as never }, air: ambient }, [{ from: 'a', to: 'air', conductance: '1 W/K' }]), 'nodes.a.loss'],
  [() => network({ a: {}, air: { fixed: '25 degC', loss: '1 W' } }, [{ from: 'a', to: 'air', conductance: '1 W/K' }]), 'neither'],
  [
    () =>
      network({ a: {}, air: ambient }, [{ from: 'a', to: 'air', conductance: '1 W/K' }]).transient({ duration: '1 s', initial: '25 degC' }),
    'heat capacity of at least one node',
  ],
])('bad input %#', (build, message) => {
  expect(build).toThrow(InputError)
  expect(build).toThrow(message)
})
