import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { type NetworkLink, type NetworkNode, network, periodicSteadyState } from '../../src/thermal/index.js'

/** A random network in numbers: every node hangs on an earlier one or on the air, some links grow with the difference as still air does. */
const drawn = fc
  .array(
    fc.record({
      capacity: fc.double({ min: 1, max: 500, noNaN: true }),
      watts: fc.oneof(fc.constant(0), fc.double({ min: 0, max: 15, noNaN: true })),
      conductance: fc.double({ min: 0.02, max: 3, noNaN: true }),
      parent: fc.nat(),
      natural: fc.boolean(),
      toAir: fc.double({ min: 0.01, max: 0.5, noNaN: true }),
    }),
    { minLength: 1, maxLength: 6 },
  )
  .map((rows) => {
    const nodes: [string, NetworkNode][] = rows.map(({ capacity, watts }, i) => [
      `n${i}`,
      { capacity: [capacity, 'J/K'], loss: [watts, 'W'] },
    ])
    nodes.push(['air', { fixed: '25 degC' }])
    const links: NetworkLink[] = rows.flatMap(({ conductance, parent, natural, toAir }, i): NetworkLink[] => {
      const film: NetworkLink['conductance'] = natural ? (a, b) => toAir * (1 + 0.3 * Math.abs(a - b)) ** 0.25 : [toAir, 'W/K']
      const shed: NetworkLink = { from: `n${i}`, to: 'air', conductance: film }
      return i === 0 ? [shed] : [shed, { from: `n${parent % i}`, to: `n${i}`, conductance: [conductance, 'W/K'] }]
    })
    return {
      nodes,
      links,
      watts: rows.map(({ watts }) => watts),
      power: rows.reduce((sum, { watts }) => sum + watts, 0),
      count: rows.length,
    }
  })
type Drawn = typeof drawn extends fc.Arbitrary<infer T> ? T : never
const build = ({ nodes, links }: Pick<Drawn, 'nodes' | 'links'>) => network(Object.fromEntries(nodes), links)
const temperatureOf = (steady: ReturnType<ReturnType<typeof build>['steady']>, name: string) => steady.temperatures[name]?.si as number

describe('any network', () => {
  test('what is released arrives in the air, and no node is below it', () => {
    fc.assert(
      fc.property(drawn, (x) => {
        const steady = build(x).steady()
        const given = x.links.reduce((sum, { to }, i) => sum + (to === 'air' ? (steady.flows[i]?.si as number) : 0), 0)
        expect(given).toBeCloseTo(x.power, 6)
        for (let i = 0; i < x.count; i++) expect(temperatureOf(steady, `n${i}`)).toBeGreaterThanOrEqual(298.15 - 1e-7)
      }),
    )
  })

  test('order of nodes and links, and the direction of links, do not matter', () => {
    fc.assert(
      fc.property(drawn, fc.integer(), (x, seed) => {
        const shuffled = <T>(items: readonly T[]) =>
          items
            .map((item, i) => [Math.sin(seed + 7 * i), item] as const)
            .sort(([a], [b]) => a - b)
            .map(([, item]) => item)
        const turned = shuffled(x.links).map(({ from, to, conductance }) => ({ from: to, to: from, conductance }))
        const [a, b] = [build(x).steady(), build({ nodes: shuffled(x.nodes), links: turned }).steady()]
        for (let i = 0; i < x.count; i++) expect(temperatureOf(a, `n${i}`)).toBeCloseTo(temperatureOf(b, `n${i}`), 6)
      }),
    )
  })

  test('splitting a link in two by a node without loss changes nothing', () => {
    fc.assert(
      fc.property(drawn, fc.nat(), fc.double({ min: 0.05, max: 0.95, noNaN: true }), (x, pick, share) => {
        const constant = x.links.filter(({ conductance }) => Array.isArray(conductance))
        fc.pre(constant.length > 0)
        const chosen = constant[pick % constant.length] as NetworkLink
        const [g] = chosen.conductance as unknown as [number]
        const links = [
          ...x.links.filter((link) => link !== chosen),
          { from: chosen.from, to: 'between', resistance: [share / g, 'K/W'] as const },
          { from: 'between', to: chosen.to, resistance: [(1 - share) / g, 'K/W'] as const },
        ]
        const [a, b] = [build(x).steady(), build({ nodes: [...x.nodes, ['between', { capacity: '1 J/K' }]], links }).steady()]
        for (let i = 0; i < x.count; i++) expect(temperatureOf(b, `n${i}`)).toBeCloseTo(temperatureOf(a, `n${i}`), 6)
      }),
    )
  })

  test('more loss anywhere makes no node cooler', () => {
    fc.assert(
      fc.property(drawn, fc.nat(), (x, pick) => {
        const name = `n${pick % x.count}`
        const more = build(x).withLosses({ [name]: [(x.watts[pick % x.count] as number) + 1, 'W'] })
        const [a, b] = [build(x).steady(), more.steady()]
        for (let i = 0; i < x.count; i++) expect(temperatureOf(b, `n${i}`)).toBeGreaterThanOrEqual(temperatureOf(a, `n${i}`) - 1e-7)
        expect(temperatureOf(b, name)).toBeGreaterThan(temperatureOf(a, name))
      }),
    )
  })

  test('in time: never above the steady state from cold, always rising, the ledger closes, and the steady state stays', () => {
    fc.assert(
      fc.property(drawn, fc.double({ min: 30, max: 7200, noNaN: true }), (x, duration) => {
        const net = build(x)
        const { temperatures } = net.steady()
        const course = net.transient({ duration: [duration, 's'] })
        for (const name of net.nodes) {
          expect(course.peaks[name]?.temperature.si).toBeLessThanOrEqual((temperatures[name]?.si as number) + 2e-4)
          const rows = course.temperatures[name] as Float64Array
          for (let k = 1; k < rows.length; k++) expect(rows[k]).toBeGreaterThanOrEqual((rows[k - 1] as number) - 2e-4)
        }
        const { released, given, stored } = course.ledger
        expect(released.si).toBeCloseTo(x.power * duration, 4)
        expect(Math.abs(released.si - given.si - stored.si)).toBeLessThan(1e-4 * released.si + 0.05)
        const stays = net.transient({ duration: [duration, 's'], initial: temperatures }).at([duration, 's'])
        for (const name of net.nodes) expect(stays[name]?.si).toBeCloseTo(temperatures[name]?.si as number, 3)
      }),
      { numRuns: 40 },
    )
  })

  test('a settled cycle is where a long march of cycles arrives', () => {
    fc.assert(
      fc.property(
        drawn,
        fc.double({ min: 30, max: 600, noNaN: true }),
        fc.double({ min: 0.1, max: 0.9, noNaN: true }),
        (x, period, duty) => {
          fc.pre(x.power > 0.1)
          const load = build(x)
          const rest = load.withLosses(Object.fromEntries(load.nodes.map((name) => [name, '0 W' as const])))
          const cycle = periodicSteadyState([
            { network: load, duration: [duty * period, 's'] },
            { network: rest, duration: [(1 - duty) * period, 's'] },
          ])
          expect(cycle.state).toBe('settled')
          let T: Record<string, unknown> = cycle.end
          // From 5 K off: the march must come nearer, cycle by cycle, and from the cycle itself it must not move.
          const march = (start: Record<string, unknown>) => {
            const mid = load.transient({ duration: [duty * period, 's'], initial: start as never }).at([duty * period, 's'])
            return rest.transient({ duration: [(1 - duty) * period, 's'], initial: mid }).at([(1 - duty) * period, 's'])
          }
          const again = march(T)
          for (const name of load.nodes) expect(again[name]?.si).toBeCloseTo(cycle.end[name]?.si as number, 2)
          T = Object.fromEntries(load.nodes.map((name) => [name, [(cycle.end[name]?.si as number) + 5, 'K'] as const]))
          const nearer = march(T)
          for (const name of load.nodes) expect(Math.abs((nearer[name]?.si as number) - (cycle.end[name]?.si as number))).toBeLessThan(5)
        },
      ),
      { numRuns: 15 },
    )
  })
})
