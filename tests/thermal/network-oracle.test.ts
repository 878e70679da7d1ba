import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import {
  annularFin,
  intermittentDuty,
  naturalConvection,
  network,
  periodicSteadyState,
  radiationCoefficient,
  reduceNetwork,
  shortTimeDuty,
  simulateOnce,
  timeConstants,
  timeToLimit,
} from '../../src/thermal/index.js'
import { InputError } from '../../src/units/index.js'

const oracle: {
  five: { steady: Record<string, number[]>; course: Record<string, number[]>; mountAt55: number }
  cycle: { start: number[]; peaks: number[]; peakAt: number[]; end: number[]; means: number[]; timeConstants: number[] }
} = JSON.parse(readFileSync(new URL('../oracles/thermal-networks.json', import.meta.url), 'utf8'))

const AIR = 298.15
const NAMES = ['W', 'S', 'R', 'M', 'B'] as const

/** Winding, stator, can, mount and board with films, radiation and hot copper: the definition of the oracle. */
const five = (torque: number) => {
  const current = torque / ((Math.sqrt(3) / 2) * (60 / (2 * Math.PI * 100)))
  const film = (surface: 'verticalPlate' | 'horizontalCylinder', length: number, T: number) =>
    naturalConvection.si({ surface, length, surfaceTemperature: T, airTemperature: AIR, pressure: 101325, tilt: 0 }).coefficient
  const radiation = (emissivity: number, surface: number) =>
    radiationCoefficient.si({ emissivity, surface, surroundings: AIR, viewFactor: 1 })
  return network(
    {
      W: { capacity: '23.1 J/K', loss: (T) => (0.75 * current ** 2 * 0.2 * (234.5 + T - 273.15)) / 254.5 },
      S: { capacity: '68.3 J/K' },
      R: { capacity: '36.8 J/K' },
      M: { capacity: '25 J/K' },
      B: { capacity: '13.5 J/K', loss: '0.9 W' },
      air: { fixed: '25 degC' },
    },
    [
      { from: 'W', to: 'S', conductance: '1.2 W/K' },
      { from: 'S', to: 'R', conductance: '0.15 W/K' },
      { from: 'S', to: 'M', conductance: [1500 * Math.PI * (0.0175 ** 2 - 0.006 ** 2), 'W/K'] },
      { from: 'M', to: 'B', conductance: '0.02 W/K' },
      {
        from: 'R',
        to: 'air',
        conductance: (T) => (Math.PI * 0.05 * 0.02 + Math.PI * 0.025 ** 2) * (film('horizontalCylinder', 0.05, T) + radiation(0.85, T)),
      },
      { from: 'B', to: 'air', conductance: (T) => 0.0032 * (film('verticalPlate', 0.04, T) + radiation(0.9, T)) },
      {
        from: 'M',
        to: 'air',
        conductance: (T) => {
          const h = film('verticalPlate', 0.08, T) + radiation(0.9, T)
          const fin = annularFin.si({
            innerRadius: 0.0175,
            outerRadius: 0.08 / Math.sqrt(Math.PI),
            thickness: 0.006,
            conductivity: 0.2,
            coefficient: h,
          })
          return fin.conductance + (Math.PI * 0.0175 ** 2) / (0.006 / 0.2 + 1 / h)
        },
      },
    ],
  )
}

describe('five nodes with films, radiation and hot copper', () => {
  test.each(Object.entries(oracle.five.steady))('steady at %s N m, as scipy solves it', (torque, wanted) => {
    const { temperatures, residual } = five(Number(torque)).steady()
    expect(residual.si).toBeLessThan(1e-8)
    NAMES.forEach((name, i) => void expect(temperatures[name]?.in('degC'), name).toBeCloseTo(wanted[i] as number, 4))
  })

  test('course of an hour, as an implicit solver of scipy follows it', () => {
    const course = five(0.35).transient({ duration: '1 h', limits: { M: '55 degC', W: '200 degC' } })
    for (const [time, wanted] of Object.entries(oracle.five.course)) {
      const at = course.at([Number(time), 's'])
      NAMES.forEach(
        (name, i) =>
          void expect(Math.abs((at[name]?.in('degC') as number) - (wanted[i] as number)), `${name} at ${time} s`).toBeLessThan(5e-4),
      )
    }
    expect(course.passed.M?.si).toBeCloseTo(oracle.five.mountAt55, 1)
    expect(course.passed.W).toBeUndefined()
    const { released, given, stored } = course.ledger
    expect(Math.abs(released.si - given.si - stored.si)).toBeLessThan(1e-5 * released.si)
    expect(timeToLimit(five(0.35), { M: '55 degC' }).time.si).toBeCloseTo(oracle.five.mountAt55, 1)
  })
})

const four = (watts: number) =>
  network(
    {
      W: { capacity: '23.1 J/K', loss: [watts, 'W'] },
      S: { capacity: '105 J/K', loss: '0.5 W' },
      M: { capacity: '78 J/K' },
      B: { capacity: '13.5 J/K', loss: '0.9 W' },
      air: { fixed: '25 degC' },
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

describe('short-time duty', () => {
  test('a short load is followed until its heat has passed through every node', () => {
    const none = { S: '0 W', B: '0 W' } as const
    const duty = { load: four(40).withLosses(none), rest: four(0).withLosses(none), loadTime: '20 s' } as const
    const long = shortTimeDuty({ ...duty, restTime: '1 h' })
    const { peaks } = shortTimeDuty(duty)
    for (const name of four(0).nodes) expect(peaks[name]?.temperature.si).toBeCloseTo(long.peaks[name]?.temperature.si as number, 3)
    expect(peaks.M?.time.si).toBeGreaterThan(100)
  })
})

describe('periodic duty', () => {
  test('a fan that runs only in the rest counts: links of all phases are weighed', () => {
    const grown = (watts: number, film: number) =>
      network({ a: { capacity: '100 J/K', loss: (T) => (watts * (234.5 + T - 273.15)) / 254.5 }, air: { fixed: '25 degC' } }, [
        { from: 'a', to: 'air', conductance: [film, 'W/K'] },
      ])
    // Alone the loaded phase has no balance (40 W through 0.1 W/K), with the rest it has.
    expect(grown(40, 0.1).steady().state).toBe('runaway')
    const cycle = periodicSteadyState([
      { network: grown(40, 0.1), duration: '20 s' },
      { network: grown(0, 2), duration: '60 s' },
    ])
    expect(cycle.state).toBe('settled')
    expect(cycle.end.a?.si).toBeLessThan(400)
  })

  test('a cycle far shorter than the network is slow settles on the steady state of its mean', () => {
    const cycle = periodicSteadyState([
      { network: four(15), duration: '0.2 s' },
      { network: four(0), duration: '0.3 s' },
    ])
    const { temperatures } = four(6).steady()
    for (const name of ['W', 'S', 'M', 'B'] as const) expect(cycle.means[name]?.si).toBeCloseTo(temperatures[name]?.si as number, 2)
  })

  const phases = [
    { network: four(20), duration: '180 s' },
    { network: four(0), duration: '420 s' },
  ] as const

  test('the settled cycle, as matrix exponentials give it: peaks, their times, means, return', () => {
    const cycle = periodicSteadyState(phases)
    expect(cycle.state).toBe('settled')
    ;(['W', 'S', 'M', 'B'] as const).forEach((name, i) => {
      expect(cycle.peaks[name]?.temperature.in('degC'), name).toBeCloseTo(oracle.cycle.peaks[i] as number, 3)
      expect(Math.abs((cycle.peaks[name]?.time.si as number) - (oracle.cycle.peakAt[i] as number)), name).toBeLessThan(1)
      expect(cycle.end[name]?.in('degC'), name).toBeCloseTo(oracle.cycle.end[i] as number, 3)
      expect(cycle.means[name]?.in('degC'), name).toBeCloseTo(oracle.cycle.means[i] as number, 2)
    })
  })

  test('its course runs through both phases in order, ends where it starts and passes each peak where that is said to be', () => {
    const { times, temperatures, peaks, period } = periodicSteadyState(phases)
    expect(times[0]).toBe(0)
    expect(times.at(-1)).toBeCloseTo(period.si, 9)
    expect(period.si).toBe(600)
    expect(Array.from(times)).toEqual(Array.from(times).sort((x, y) => x - y))
    for (const name of ['W', 'S', 'M', 'B'] as const) {
      const course = temperatures[name]!
      expect(course.at(-1)).toBeCloseTo(course[0]!, 2)
      const highest = course.indexOf(Math.max(...course))
      expect(Math.abs(times[highest]! - peaks[name]!.time.si), name).toBeLessThan(10)
    }
  })

  test('mount and stator peak after switch-off; the first cycle and the mean of losses both flatter', () => {
    const cycle = periodicSteadyState(phases)
    expect(cycle.peaks.M?.time.si).toBeGreaterThan(200)
    const first = simulateOnce(phases)
    expect(first.peaks.W?.temperature.si).toBeLessThan((cycle.peaks.W?.temperature.si as number) - 5)
    const mean = four(6).steady().temperatures.W?.si as number
    expect(mean).toBeLessThan((cycle.peaks.W?.temperature.si as number) - 5)
  })

  test('a settled cycle repeats itself', () => {
    const cycle = periodicSteadyState(phases)
    const again = simulateOnce(phases, cycle.end)
    for (const name of ['W', 'S', 'M', 'B']) expect(again.end[name]?.si).toBeCloseTo(cycle.end[name]?.si as number, 3)
  })

  test('short-time duty starts cold and its mount goes on heating in the rest', () => {
    const short = shortTimeDuty({ load: four(30), rest: four(0), loadTime: '5 min', restTime: '20 min' })
    expect(short.state).toBe('finished')
    expect(short.peaks.W?.time.si).toBeCloseTo(300, 0)
    expect(short.peaks.M?.time.si).toBeGreaterThan(310)
  })

  test('a duty that never rests, a runaway duty, and unlike networks are said plainly', () => {
    expect(() => intermittentDuty({ load: four(20), rest: four(0), dutyFactor: 1 })).toThrow('never rests')
    expect(() => periodicSteadyState([])).toThrow(InputError)
    const other = network({ X: { capacity: '1 J/K' }, air: { fixed: '25 degC' } }, [{ from: 'X', to: 'air', conductance: '1 W/K' }])
    expect(() => periodicSteadyState([phases[0], { network: other, duration: '1 s' }])).toThrow('phases[1].network')
    const hot = (watts: number) =>
      network({ w: { capacity: '20 J/K', loss: (T) => (watts * (234.5 + T - 273.15)) / 254.5 }, air: { fixed: '25 degC' } }, [
        { from: 'w', to: 'air', conductance: '0.25 W/K' },
      ])
    expect(intermittentDuty({ load: hot(300), rest: hot(0), dutyFactor: 0.5, period: '60 s' }).state).toBe('runaway')
    expect(intermittentDuty({ load: hot(60), rest: hot(0), dutyFactor: 0.5, period: '60 s' }).state).toBe('settled')
  })
})

test('time constants', () => {
  timeConstants(four(6)).forEach((t, i) => void expect(t.si).toBeCloseTo(oracle.cycle.timeConstants[i] as number, 6))
})

test('a reduced network keeps the steady state and the sum of the heat capacities', () => {
  const small = reduceNetwork(four(6), ['W', 'M'])
  const whole = four(6).steady().temperatures
  const { temperatures } = small.steady()
  expect(temperatures.W?.si).toBeCloseTo(whole.W?.si as number, 8)
  expect(temperatures.M?.si).toBeCloseTo(whole.M?.si as number, 8)
  expect(timeConstants(small)[0]?.si).toBeGreaterThan(0.9 * (timeConstants(four(6))[0]?.si as number))
  expect(timeConstants(small)[0]?.si).toBeLessThan(1.1 * (timeConstants(four(6))[0]?.si as number))
  // W hangs on S alone: of what M and the air hold of S by their conductances, W has 1.2 of 1.57, M 0.25 (and B's 0.02 of 0.06 more).
  const [w, m] = small.si.numbers.capacities
  expect(w).toBeCloseTo(23.1 + (105 * 1.2) / 1.57, 6)
  expect(m).toBeCloseTo(78 + (105 * 0.25) / 1.57 + 13.5 / 3, 6)
  expect(() => reduceNetwork(four(6), ['Q'])).toThrow('must name a node')
  expect(() => reduceNetwork(four(6), ['W', 'W'])).toThrow('once')
})

test('two series links are one of the sum of their resistances', () => {
  const chain = network({ a: { loss: '3 W' }, b: {}, air: { fixed: '25 degC' } }, [
    { from: 'a', to: 'b', resistance: '2 K/W' },
    { from: 'b', to: 'air', resistance: '5 K/W' },
  ])
  const one = network({ a: { loss: '3 W' }, air: { fixed: '25 degC' } }, [{ from: 'a', to: 'air', resistance: '7 K/W' }])
  expect(chain.steady().temperatures.a?.si).toBeCloseTo(one.steady().temperatures.a?.si as number, 9)
})

test('bands: one link, its relative scatter is that of the rise; two links add in squares by their share', () => {
  const one = network({ a: { loss: '10 W' }, air: { fixed: '25 degC' } }, [{ from: 'a', to: 'air', conductance: '0.5 W/K', scatter: 0.2 }])
  const T = one.steady().temperatures.a!
  expect(T.high - T.si).toBeCloseTo(0.2 * 20, 6)
  const two = network({ a: { loss: '10 W', lossScatter: 0.1 }, b: {}, air: { fixed: '25 degC' } }, [
    { from: 'a', to: 'b', conductance: '1 W/K', scatter: 0.3 },
    { from: 'b', to: 'air', conductance: '0.5 W/K', scatter: 0.2 },
  ])
  const U = two.steady().temperatures.a!
  expect(U.high - U.si).toBeCloseTo(Math.hypot(0.3 * 10, 0.2 * 20, 0.1 * 30), 6)
})

test('magnets that weaken: the lower, stable balance or none, never the upper one', () => {
  // 1/(1 − 0.0011 ΔT)² and hot copper: beyond some loss no balance is left, and near it two stand close together.
  const weak = (watts: number) =>
    network(
      { w: { loss: (T) => (watts * (234.5 + T - 273.15)) / 254.5 / (1 - 0.0011 * (T - 293.15)) ** 2 }, air: { fixed: '25 degC' } },
      [{ from: 'w', to: 'air', conductance: '0.25 W/K' }],
      { ceiling: '700 degC' },
    )
  const balance = (watts: number, T: number) => (watts * (T - 38.65)) / 254.5 / (1 - 0.0011 * (T - 293.15)) ** 2 - 0.25 * (T - 298.15)
  for (let watts = 1; watts < 40; watts += 0.5) {
    const { state, temperatures } = weak(watts).steady()
    // The first crossing from cold, on a fine scan.
    let first: number | undefined
    for (let T = 298.15; T < 973; T += 0.05)
      if (balance(watts, T) <= 0) {
        first = T
        break
      }
    expect(state, `${watts} W`).toBe(first === undefined ? 'runaway' : 'steady')
    if (first !== undefined) expect(Math.abs((temperatures.w?.si as number) - first), `${watts} W`).toBeLessThan(0.1)
  }
})

test('several mistakes are told at once', () => {
  try {
    network({ a: { loss: { on: ['b'], watts: (T) => T } }, air: { fixed: '25 degC' } }, [
      { from: 'a', to: 'air' },
      { from: 'a', to: 'are', resistance: '1 K/W' },
    ])
    expect.unreachable()
  } catch (error) {
    expect(error).toBeInstanceOf(InputError)
    expect((error as InputError).issues.map(({ path }) => path)).toEqual(['nodes.a.loss.on[0]', 'links[0]', 'links[1].to'])
  }
})
