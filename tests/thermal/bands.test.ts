import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  calibrate,
  continuousTorque,
  intermittentTorque,
  network,
  periodicSteadyState,
  reduceNetwork,
  simulateOnce,
  timeAtTorque,
  timeToLimit,
} from '../../src/thermal/index.js'
import { networkOf } from '../../src/thermal/network.js'
import { displaced } from '../../src/thermal/network-spread.js'
import { demoLimits, demoMount } from './demo.js'

const air = { fixed: '25 degC' } as const
const mount = demoMount()
const half = (x: { readonly si: number; readonly high: number }) => x.high - x.si

/** The same half-widths by brute force: every cause moved a little to either side, in squares. */
function bruteForce(numbers: Parameters<typeof displaced>[0], of: (parts: readonly number[]) => number[]): number[] {
  const part = 0.02
  const squares = numbers.spreads.map((_, k) => {
    const at = (sign: number) => of(numbers.spreads.map((_, m) => (m === k ? sign * part : 0)))
    const [above, below] = [at(1), at(-1)]
    return above.map((x, i) => ((x - below[i]!) / (2 * part)) ** 2)
  })
  return squares[0]!.map((_, i) => Math.sqrt(squares.reduce((sum, row) => sum + row[i]!, 0)))
}

describe('time to a limit', () => {
  // T = P/G (1 - exp(-G t/C)): the time to a rise is -C/G ln(1 - G rise/P).
  const body = (linkScatter: number, capacityScatter: number) =>
    network({ a: { capacity: '100 J/K', capacityScatter, loss: '10 W' }, air }, [
      { from: 'a', to: 'air', conductance: '0.25 W/K', scatter: linkScatter },
    ])
  const closed = (g: number, c: number) => (-c / g) * Math.log(1 - (g * 30) / 10)

  test('one body: both ends of the band by its closed form', () => {
    const film = timeToLimit(body(0.2, 0), { a: '55 degC' }).time
    expect(film.si).toBeCloseTo(closed(0.25, 100), 2)
    expect(film.low).toBeCloseTo(closed(0.25 * Math.exp(-0.2), 100), 2)
    expect(film.high).toBeCloseTo(closed(0.25 * Math.exp(0.2), 100), 2)
    const store = timeToLimit(body(0, 0.3), { a: '55 degC' }).time
    expect(store.low).toBeCloseTo(closed(0.25, 100 * Math.exp(-0.3)), 2)
    expect(store.high).toBeCloseTo(closed(0.25, 100 * Math.exp(0.3)), 2)
    const { passed } = body(0.2, 0).transient({ duration: '1 h', limits: { a: '55 degC' } })
    expect([passed.a?.low, passed.a?.high]).toEqual([expect.closeTo(film.low, 2), expect.closeTo(film.high, 2)])
  })

  test('a limit just out of reach may be reached, one just in reach may not be', () => {
    const out = timeToLimit(body(0.2, 0), { a: '67 degC' })
    expect(out).toMatchObject({ time: { si: Number.POSITIVE_INFINITY, high: Number.POSITIVE_INFINITY }, node: undefined })
    expect(out.time.low).toBeCloseTo((-100 / 0.25) * Math.exp(0.2) * Math.log(1 - (0.25 * Math.exp(-0.2) * 42) / 10), 1)
    const reached = timeToLimit(body(0.2, 0), { a: '63 degC' })
    expect(reached.node).toBe('a')
    expect(reached.time.high).toBe(Number.POSITIVE_INFINITY)
  })

  test('without scatter there is no band; at a limit already passed it is zero', () => {
    const { time } = timeToLimit(body(0, 0), { a: '55 degC' })
    expect([time.low, time.high]).toEqual([time.si, time.si])
    expect(timeToLimit(body(0.2, 0), { a: '20 degC' }).time).toMatchObject({ si: 0, low: 0, high: 0 })
  })

  test('the hottest phase is followed in time, and reaches its limit before the winding as a whole', () => {
    const phase = timeAtTorque(mount, { torque: '0.9 N m' }, [{ part: 'winding', node: 'hottestPhase', limit: '130 degC' }])
    const whole = timeAtTorque(mount, { torque: '0.9 N m' }, [{ part: 'winding', node: 'winding', limit: '130 degC' }])
    expect(phase.node).toBe('hottestPhase')
    expect(phase.time.si).toBeLessThan(0.9 * whole.time.si)
    const then = mount.network({ torque: '0.9 N m' }).transient({ duration: phase.time }).at(phase.time)
    expect(2 * then.winding!.in('degC') - then.stator!.in('degC')).toBeCloseTo(130, 2)
  })
})

/** A network with its causes each at a part of its band, itself without any. */
const moved = ({ si }: ReturnType<typeof network>, parts: readonly number[]) => networkOf({ ...displaced(si.numbers, parts), spreads: [] })

test('the band of a course is that of moving every cause', () => {
  const net = mount.network({ torque: '0.35 N m' })
  const course = net.transient({ duration: '30 min' })
  const reads = (['1 min', '5 min', '30 min'] as const).flatMap((time) => [['winding', time] as const, ['mount', time] as const])
  const each = bruteForce(net.si.numbers, (parts) => {
    const other = moved(net, parts).transient({ duration: '30 min' })
    return reads.map(([node, time]) => other.at(time)[node]!.si)
  })
  reads.forEach(
    ([node, time], i) => void expect(Math.abs(half(course.at(time)[node]!) / each[i]! - 1), `${node} at ${time}`).toBeLessThan(0.01),
  )
})

test('the band of a settled cycle is that of moving every cause', () => {
  const [load, rest] = [mount.network({ torque: '0.55 N m' }), mount.network({ torque: '0 N m' })]
  const cycleOf = (a: typeof load, b: typeof load) =>
    periodicSteadyState([
      { network: a, duration: '150 s' },
      { network: b, duration: '450 s' },
    ]).peaks
  const { mount: peak } = cycleOf(load, rest)
  const [brute] = bruteForce(load.si.numbers, (parts) => [cycleOf(moved(load, parts), moved(rest, parts)).mount!.temperature.si])
  expect(Math.abs(half(peak!.temperature) / brute! - 1)).toBeLessThan(0.01)
})

describe('causes of scatter', () => {
  const twice = (scatter: readonly [object | number, object | number]) =>
    half(
      network({ a: { loss: '10 W' }, air }, [
        { name: 'one', from: 'a', to: 'air', conductance: '0.2 W/K', scatter: scatter[0] as 0 },
        { name: 'two', from: 'a', to: 'air', conductance: '0.2 W/K', scatter: scatter[1] as 0 },
      ]).steady().temperatures.a!,
    )

  test('alike they add, apart they add in squares', () => {
    // Rise 25 K; each link carries half of the heat.
    expect(twice([{ film: 0.1 }, { film: 0.1 }])).toBeCloseTo(2.5, 5)
    expect(twice([0.1, 0.1])).toBeCloseTo(2.5 / Math.SQRT2, 5)
    expect(twice([{ film: 0.1, joint: 0.2 }, 0])).toBeCloseTo((25 / 2) * Math.hypot(0.1, 0.2), 5)
  })

  test('the phases of a duty share them by name, also where one phase has more', () => {
    const of = (watts: number, scatter: Record<string, number>) =>
      network({ a: { capacity: '100 J/K', loss: [watts, 'W'] }, air }, [{ from: 'a', to: 'air', conductance: '0.2 W/K', scatter }])
    const both = simulateOnce([
      { network: of(10, { film: 0.1 }), duration: '2 h' },
      { network: of(10, { other: 0.1 }), duration: '2 h' },
    ])
    const end = simulateOnce([{ network: of(10, { other: 0.1 }), duration: '4 h' }])
    expect(half(both.peaks.a!.temperature) / half(end.peaks.a!.temperature)).toBeCloseTo(1, 2)
  })

  test('a smaller network keeps the bands of its nodes', () => {
    const net = network({ a: { loss: '5 W', lossScatter: 0.1 }, b: { loss: '1 W', lossScatter: 0.3 }, c: {}, air }, [
      { from: 'a', to: 'b', conductance: '0.5 W/K', scatter: { joint: 0.3 } },
      { from: 'b', to: 'c', conductance: '0.4 W/K', scatter: { joint: 0.2, print: 0.1 } },
      { from: 'c', to: 'air', conductance: '0.2 W/K', scatter: 0.2 },
      { from: 'b', to: 'air', conductance: '0.1 W/K', scatter: 0.2, name: 'film' },
    ])
    const { temperatures: all } = net.steady()
    const { temperatures: kept } = reduceNetwork(net, ['a', 'c']).steady()
    for (const name of ['a', 'c'] as const) {
      expect(kept[name]?.si).toBeCloseTo(all[name]!.si, 8)
      expect(half(kept[name]!) / half(all[name]!)).toBeCloseTo(1, 2)
    }
  })

  test('a negative scatter is named', () => {
    expect(() => twice([-0.1, 0])).toThrow('links[0].scatter')
    expect(() => twice([{ film: -0.1 }, 0])).toThrow('links[0].scatter.film')
  })
})

describe('what a duty allows', () => {
  test('its band is that of the governing peak over its slope in torque', () => {
    const duty = { dutyFactor: 0.25, period: '10 min' } as const
    const { torque, temperatures } = intermittentTorque(mount, demoLimits, duty)
    const step = 0.01 * torque.si
    const peakAt = (newtonMetres: number) =>
      periodicSteadyState([
        { network: mount.si.network(newtonMetres, 0), duration: '150 s' },
        { network: mount.si.network(0, 0), duration: '450 s' },
      ]).peaks.mount!.temperature.si
    const slope = (peakAt(torque.si + step) - peakAt(torque.si - step)) / (2 * step)
    expect(half(torque)).toBeCloseTo(half(temperatures.mount!) / slope, 3)
  })

  test('the hottest phase peaks before the stator does: its peak is the true one', () => {
    const limit = [{ part: 'winding', node: 'hottestPhase', limit: '130 degC' }] as const
    const { torque } = intermittentTorque(mount, limit, { dutyFactor: 0.25 })
    const { temperatures } = periodicSteadyState([
      { network: mount.si.network(torque.si, 0), duration: '150 s' },
      { network: mount.si.network(0, 0), duration: '450 s' },
    ])
    const phase = temperatures.winding!.map((t, k) => 2 * t - temperatures.stator![k]! - 273.15)
    expect(Math.max(...phase)).toBeCloseTo(130, 1)
  })
})

describe('a calibration', () => {
  const net = mount.network({ torque: '0.3 N m' })
  const { temperatures: T } = net.scaled({ links: { 'plate convection': 0.85 } }).steady()
  const reading = { mount: T.mount!, can: T.can! }
  const once = calibrate(net, { steady: reading }, { sensor: '0.3 K' })

  test('ties the paths together: where it was measured the band is that of the sensor', () => {
    const { temperatures } = once.network.withLosses({}).steady()
    // The loss' own band stays: it is told apart by the network without it.
    const silent = networkOf({
      ...once.network.si.numbers,
      spreads: once.network.si.numbers.spreads.filter(({ losses }) => losses.every((x) => x === 0)),
    }).steady().temperatures
    expect(half(silent.mount!)).toBeLessThan(1.05 * 1.96 * 0.3)
    expect(half(silent.mount!)).toBeGreaterThan(0.8 * 1.96 * 0.3)
    expect(half(temperatures.mount!)).toBeLessThan(half(net.steady().temperatures.mount!))
    // Each path alone is hardly known better.
    expect(once.corrections.find(({ name }) => name === 'stator-can')!.informed).toBe(true)
    expect(once.corrections.find(({ name }) => name === 'winding-stator')!.informed).toBe(false)
  })

  test('a second one builds on what the first left, and moves little on the same readings', () => {
    const twice = calibrate(once.network, { steady: reading }, { sensor: '0.3 K' })
    for (const { factor } of twice.corrections) expect(Math.abs(factor.si - 1)).toBeLessThan(0.05)
    expect(twice.misfitAfter.si).toBeLessThan(once.misfitAfter.si + 0.01)
  })

  test('carried to the mount it narrows the torque, and stays with parts that stay', () => {
    const corrected = mount.scaled(once.factors)
    expect(half(continuousTorque(corrected, demoLimits).torque)).toBeLessThan(half(continuousTorque(mount, demoLimits).torque))
    const boardless = corrected.changed({ controller: undefined })
    expect(boardless.network({ torque: '0.3 N m' }).links).not.toContain('board-mount')
    const factorOf = (of: typeof mount, name: string) =>
      of.network({ torque: '0.3 N m' }).si.numbers.links.find((link) => link.name === name)!.factor
    expect(factorOf(boardless, 'plate convection')).toBeCloseTo(once.factors.links!['plate convection']!, 12)
    const thicker = corrected.changed({ plate: { ...corrected.specification.plate, thickness: '9 mm' } })
    expect(factorOf(thicker, 'plate convection')).toBe(1)
    expect(factorOf(thicker, 'stator-can')).toBeCloseTo(once.factors.links!['stator-can']!, 12)
  })

  test('what cannot be corrected is said', () => {
    const bare = network({ a: { loss: '1 W' }, air }, [{ from: 'a', to: 'air', conductance: '1 W/K' }])
    expect(() => calibrate(bare, { steady: { a: '30 degC' } })).toThrow('needs links with a scatter')
    const alike = network({ a: { loss: '1 W' }, air }, [
      { from: 'a', to: 'air', conductance: '1 W/K', scatter: 0.2 },
      { from: 'a', to: 'air', conductance: '1 W/K', scatter: 0.2 },
    ])
    expect(() => calibrate(alike, { steady: { a: '30 degC' } })).toThrow('needs a name for each link')
    expect(() => net.scaled({ links: { 'plate convektion': 1 } })).toThrow('did you mean plate convection?')
  })
})

test('more scatter, wider bands', () => {
  fc.assert(
    fc.property(fc.double({ min: 0.01, max: 0.4, noNaN: true }), (scatter) => {
      const time = (s: number) =>
        timeToLimit(
          network({ a: { capacity: '50 J/K', loss: '5 W' }, air }, [{ from: 'a', to: 'air', conductance: '0.05 W/K', scatter: s }]),
          { a: '60 degC' },
        ).time
      const [narrow, wide] = [time(scatter), time(1.2 * scatter)]
      expect(wide.low).toBeLessThan(narrow.low)
      expect(wide.high).toBeGreaterThan(narrow.high)
      expect(narrow.low).toBeLessThan(narrow.si)
    }),
    { numRuns: 20 },
  )
})
