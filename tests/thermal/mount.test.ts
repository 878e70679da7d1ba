import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  assessMount,
  calibrate,
  checkLimits,
  compareMountRemedies,
  continuousTorque,
  cooledSurface,
  currentsForTorque,
  fitStepResponse,
  intermittentTorque,
  motor,
  motorMount,
  naturalConvection,
  network,
  polymerLimit,
  radiationCoefficient,
  remedyChart,
  standardRemedies,
  temperatureChart,
  thermalMaterials,
  timeAtTorque,
  torqueDutyChart,
} from '../../src/thermal/index.js'
import { degC, InputError, Nm } from '../../src/units/index.js'
import { demoLimits, demoMotor, demoMount, demoSpecification } from './demo.js'

const mount = demoMount()
const noBoard = motorMount(demoMotor(), { ...demoSpecification, controller: undefined })

describe('the network of a motor on its plate', () => {
  test('no power, no rise', () => {
    for (const T of Object.values(noBoard.network({ torque: '0 N m' }).steady().temperatures)) expect(T.in('degC')).toBeCloseTo(38, 6)
  })

  test('heat released is heat shed, and the store of the plate carries nothing at rest', () => {
    const net = mount.network({ torque: '0.3 N m', speed: '50 rad/s' })
    const { flows, temperatures } = net.steady()
    expect(flows[net.links.indexOf('plate store')]?.si).toBeCloseTo(0, 8)
    expect(temperatures.plate?.si).toBeCloseTo(temperatures.mount?.si as number, 8)
    const out = net.si.numbers.links.reduce((sum, { b }, i) => sum + (b >= net.nodes.length ? (flows[i]?.si as number) : 0), 0)
    const T = net.si.steady().T
    const released = net.si.numbers.losses.reduce(
      (sum, { on, watts }) => sum + (typeof watts === 'number' ? watts : watts(...on.map((i) => T[i] as number))),
      0,
    )
    expect(out).toBeCloseTo(released, 7)
  })

  test('hotter with torque, with warmer air and at altitude; cooler in a draught', () => {
    const at = (
      torque: number,
      surroundings: (typeof demoSpecification)['surroundings'] | Record<string, string> = demoSpecification.surroundings,
    ) =>
      motorMount(demoMotor(), { ...demoSpecification, surroundings: surroundings as { air: '38 degC' } })
        .network({ torque: Nm(torque) })
        .steady().temperatures.mount?.si as number
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 0.4, noNaN: true }), (torque) => {
        const hold = (t: number) => mount.network({ torque: Nm(t) }).steady().temperatures.mount?.si as number
        expect(hold(torque * 1.05)).toBeGreaterThan(hold(torque))
      }),
      { numRuns: 20 },
    )
    expect(at(0.3, { air: '45 degC' })).toBeGreaterThan(at(0.3) + 5)
    expect(at(0.3, { air: '38 degC', altitude: '3000 m' })).toBeGreaterThan(at(0.3))
    expect(at(0.3, { air: '38 degC', airSpeed: '2 m/s' })).toBeLessThan(at(0.3) - 5)
    expect(at(0.3, { air: '38 degC', radiant: '60 degC' })).toBeGreaterThan(at(0.3) + 2)
  })

  test('while it turns the currents make the drag as well, or less of the torque where the load drives', () => {
    const { constantDrag } = demoMotor().si
    const winding = (torque: number, speed: number) => {
      const net = mount.si.network(torque, speed)
      const loss = net.si.numbers.losses.find(({ on }) => on[0] === net.nodes.indexOf('winding') && on.length === 2)!
      return (loss.watts as (...T: number[]) => number)(350, 340)
    }
    expect(winding(0.2, 100)).toBeCloseTo(winding(0.2 + constantDrag, 0), 9)
    expect(winding(-0.2, -100)).toBeCloseTo(winding(0.2 + constantDrag, 0), 9)
    expect(winding(0.2, -100)).toBeCloseTo(winding(0.2 - constantDrag, 0), 9)
    expect(winding(0, 100)).toBeCloseTo(winding(constantDrag, 0), 9)
  })

  test('a draught cools a square plate lying flat as it cools one on edge', () => {
    const inWind = (attitude: 'vertical' | 'motorUp') =>
      motorMount(demoMotor(), {
        ...demoSpecification,
        plate: { ...demoSpecification.plate, attitude },
        surroundings: { air: '38 degC', airSpeed: '3 m/s' },
      })
        .network({ torque: '0.3 N m' })
        .steady().temperatures.mount?.si
    expect(inWind('motorUp')).toBeCloseTo(inWind('vertical')!, 6)
  })

  test('between cool air and warm walls an idle plate stands where its own film balances', () => {
    const net = motorMount(demoMotor(), { ...demoSpecification, surroundings: { air: '38 degC', radiant: '65 degC' } }).si.network(0, 0)
    const [air, walls] = [311.15, 338.15]
    const net0 = (T: number) =>
      naturalConvection.si({
        surface: 'verticalPlate',
        length: 0.08,
        surfaceTemperature: T,
        airTemperature: air,
        pressure: 101325,
        tilt: 0,
      }).coefficient *
        (T - air) +
      radiationCoefficient.si({ emissivity: 0.9, surface: T, surroundings: walls, viewFactor: 1 }) * (T - walls)
    let [low, high] = [air, walls]
    for (let k = 0; k < 60; k++) {
      const middle = (low + high) / 2
      if (net0(middle) < 0) low = middle
      else high = middle
    }
    const at = (name: string, far: number) => {
      const { g } = net.si.numbers.links.find((link) => link.name === name)!
      return (g as (from: number, to: number) => number)(low, far) * (low - far)
    }
    // Two passes of the films are good to 3 % of either flow here.
    expect(Math.abs(at('plate convection', air) / -at('plate radiation', walls) - 1)).toBeLessThan(0.03)
  })

  test('switches that run away on their own take the board with them: an answer, not an error', () => {
    const hot = motorMount(demoMotor(), {
      ...demoSpecification,
      controller: { ...demoSpecification.controller, junctionToBoard: '400 K/W', switchResistance: '0.5 ohm' },
    })
    expect(hot.network({ torque: '0.4 N m' }).steady().state).toBe('runaway')
    expect(hot.network({ torque: '0.4 N m' }).transient({ duration: '1 h' }).state).toBe('runaway')
  })

  test('a turning can cools only when asked', () => {
    const turning = motorMount(demoMotor(), { ...demoSpecification, rotationCools: true })
    const load = { torque: '0.3 N m', speed: '150 rad/s' } as const
    expect(turning.network(load).steady().temperatures.can?.si).toBeLessThan(
      (mount.network(load).steady().temperatures.can?.si as number) - 1,
    )
  })

  test('every option builds: sink on either end, insert, links, attitudes', () => {
    const plain = mount.network({ torque: '0.3 N m' }).steady().temperatures.mount?.si as number
    const sink = {
      width: '40 mm',
      height: '40 mm',
      finLength: '12 mm',
      finThickness: '1 mm',
      fins: 6,
      baseThickness: '2 mm',
      joint: '1 K/W',
    } as const
    const bar = { length: '165 mm', perimeter: '80 mm', section: '200 mm^2', conductivity: '0.2 W/(m K)' } as const
    for (const change of [
      { sink: { ...sink, on: 'mount' } },
      { sink: { ...sink, on: 'stator' } },
      { insert: { diameter: '60 mm', thickness: '2 mm' } },
      { links: [bar, bar] },
    ] as const) {
      const T = motorMount(demoMotor(), { ...demoSpecification, ...change })
        .network({ torque: '0.3 N m' })
        .steady().temperatures.mount?.si
      expect(T, Object.keys(change)[0]).toBeLessThan(plain)
    }
    const lying = (['motorUp', 'motorDown'] as const).map((attitude) => {
      const T = motorMount(demoMotor(), { ...demoSpecification, plate: { ...demoSpecification.plate, attitude } })
        .network({ torque: '0.3 N m' })
        .steady().temperatures.mount?.si as number
      expect(Math.abs(T - plain)).toBeLessThan(10)
      return T
    })
    // The free face is the larger one: it had better be the one whose heat can rise.
    expect(lying[0]).toBeGreaterThan(lying[1]! + 0.2)
  })

  test('a runaway is an answer, in the steady state and in the course', () => {
    const hot = mount.network({ torque: '0.9 N m' })
    expect(hot.steady().state).toBe('runaway')
    expect(hot.transient({ duration: '4 h' }).state).toBe('runaway')
    const verdict = assessMount(mount, { torque: '0.9 N m' }, [...demoLimits, { part: 'glue', node: 'mount' }])
    expect(verdict).toMatchObject({ state: 'runaway', temperatures: {}, governing: undefined })
    expect(verdict.parts.map(({ state }) => state)).toEqual(['fails', 'fails', 'fails', 'fails', 'unknown'])
  })

  test('a steady state stays, warming never overshoots it', () => {
    const net = mount.network({ torque: '0.3 N m' })
    const { temperatures } = net.steady()
    const later = net.transient({ duration: '2 h', initial: temperatures }).at('2 h')
    for (const name of net.nodes) expect(later[name]?.si).toBeCloseTo(temperatures[name]?.si as number, 3)
    const { peaks } = net.transient({ duration: '6 h' })
    for (const name of net.nodes) expect(peaks[name]?.temperature.si).toBeLessThan((temperatures[name]?.si as number) + 1e-3)
  })

  test('parts that do not fit are all named', () => {
    const wrong = {
      ...demoSpecification,
      body: { ...demoSpecification.body, ringInnerDiameter: '40 mm' },
      insert: { diameter: '20 mm', thickness: '8 mm' },
    } as const
    expect(() => motorMount(demoMotor(), wrong)).toThrow(/ringInnerDiameter[\s\S]*insert.diameter[\s\S]*insert.thickness/)
    expect(() => motorMount(demoMotor(), { ...demoSpecification, surroundings: { air: '38 K' as never } })).toThrow('surroundings.air')
    expect(() => motorMount(demoMotor(), { ...demoSpecification, plate: { ...demoSpecification.plate, thickness: '0 mm' } })).toThrow(
      'plate.thickness',
    )
  })
})

describe('what a mount allows', () => {
  const limit = continuousTorque(mount, demoLimits)

  test('at the continuous torque the governing part is at its limit and the others below', () => {
    expect(limit.governs).toBe('plate')
    expect(limit.temperatures.mount?.in('degC')).toBeCloseTo(85, 2)
    const verdict = assessMount(mount, { torque: limit.torque }, demoLimits)
    expect(verdict.governing?.part).toBe('plate')
    for (const part of verdict.parts) expect(part.margin?.si).toBeGreaterThan(-0.01)
    expect(limit.torque.low).toBeLessThan(limit.torque.si)
    expect(limit.torque.high).toBeGreaterThan(limit.torque.si)
  })

  test('a catalogue speed constant widens its band by its own five percent, in squares', () => {
    const relative = (speedConstantBasis: 'catalogue' | 'spunPeakLineToLine') => {
      const machine = motor({ speedConstant: '110 rpm/V', speedConstantBasis, terminalResistance: '0.18 ohm' })
      const { torque } = continuousTorque(motorMount(machine, { ...demoSpecification, controller: undefined }), demoLimits.slice(0, 1))
      return (torque.high - torque.si) / torque.si
    }
    // For one loss, and so for one temperature, torque is in proportion to the constant.
    expect(Math.hypot(relative('spunPeakLineToLine'), 0.05)).toBeCloseTo(relative('catalogue'), 4)
  })

  test('cold resistance would overstate it', () => {
    // The same mount with copper that does not heat up: its torque is larger by the root of the resistance ratio, roughly.
    const winding = limit.temperatures.winding?.in('degC') as number
    const magnets = limit.temperatures.can?.in('degC') as number
    const cold = Math.sqrt((234.5 + winding) / 254.5 / (1 - 0.0011 * (magnets - 20)) ** 2)
    expect(cold).toBeGreaterThan(1.15)
  })

  test('less rest, less torque; full duty tends to the continuous torque; time at a torque is infinite below it', () => {
    const at = (dutyFactor: number) => intermittentTorque(mount, demoLimits, { dutyFactor, period: '10 min' }).torque.si
    const [quarter, half, most] = [at(0.25), at(0.5), at(0.98)]
    expect(quarter).toBeGreaterThan(half)
    expect(half).toBeGreaterThan(most)
    expect(most / limit.torque.si).toBeCloseTo(1, 1)
    const inTime = demoLimits.filter(({ node }) => node !== 'hottestPhase')
    expect(timeAtTorque(mount, { torque: limit.torque.times(0.95) }, inTime).time.si).toBe(Number.POSITIVE_INFINITY)
    const soon = timeAtTorque(mount, { torque: '0.8 N m' }, inTime)
    const later = timeAtTorque(mount, { torque: '0.6 N m' }, inTime)
    expect(soon.time.si).toBeLessThan(later.time.si)
    expect(soon.governs).toBe('plate')
  })

  test('air that is already too hot allows nothing', () => {
    const hot = motorMount(demoMotor(), { ...demoSpecification, surroundings: { air: '90 degC' } })
    expect(continuousTorque(hot, demoLimits)).toMatchObject({ state: 'tooHot' })
  })

  test('a polymer is bound by the least of its temperatures, and says by which', () => {
    const given = { glassTransition: '105 degC', heatDeflection045: '95 degC' } as const
    expect(polymerLimit({ ...given, heatDeflection180: '82 degC' }).governs).toBe('heatDeflection180')
    expect(polymerLimit({ ...given, guard: '5 K' }).governs).toBe('heatDeflection045')
    expect(polymerLimit(given).governs).toBe('glassTransition')
  })

  test('a part without a limit is unknown, not safe', () => {
    const { parts, governing } = checkLimits({ a: degC(50) }, [{ part: 'glue', node: 'a' }])
    expect(parts[0]?.state).toBe('unknown')
    expect(governing).toBeUndefined()
    expect(() => continuousTorque(mount, [{ part: 'glue', node: 'can' }])).toThrow('at least one part with a limit')
    expect(() => continuousTorque(mount, [{ part: 'glue', node: 'tin', limit: '80 degC' }])).toThrow('limits[0].node')
  })

  test('remedies: metal spreads, thickness does not; the table holds mass and gain', () => {
    const rows = compareMountRemedies(mount, demoLimits, standardRemedies(mount), { torque: '0.35 N m' })
    expect(rows).toHaveLength(9)
    const by = (word: string) => rows.find(({ name }) => name.includes(word))!
    expect(by('aluminium plate').torque.si).toBeGreaterThan(1.3 * rows[0]!.torque.si)
    expect(by('thick').torque.si / rows[0]!.torque.si).toBeCloseTo(1, 1)
    expect(by('insert').gain.si).toBeGreaterThan(0)
    expect(by('insert').percentPerGram).toBeCloseTo((100 * by('insert').gain.si) / rows[0]!.torque.si / by('insert').addedMass.in('g'), 9)
    expect(by('rests').percentPerGram).toBeUndefined()
    // Half the time at rest: its mount temperature is the peak of the cycle, below that of holding on.
    expect(by('rests').mountTemperature!.si).toBeLessThan(rows[0]!.mountTemperature!.si - 10)
    const better = standardRemedies(mount, { limits: demoLimits, part: 'plate' })
    const [, polymer] = compareMountRemedies(
      mount,
      demoLimits,
      better.filter(({ name }) => name.includes('25 K')),
      { torque: '0.35 N m' },
    )
    expect(polymer!.torque.si).toBeGreaterThan(1.05 * rows[0]!.torque.si)
    expect(() => standardRemedies(mount, { limits: demoLimits, part: 'plait' })).toThrow('better.part')
    expect(JSON.stringify(remedyChart(rows))).toContain('as it is')
  })

  test('a remedy of another plate keeps nothing of the old one across its layers', () => {
    const other = ['aluminium plate, 3 mm', 'carbon-filled PET']
    const limits = (conductivityAcross: object) => {
      const from = demoMount({ ...demoSpecification, plate: { ...demoSpecification.plate, ...conductivityAcross } })
      return standardRemedies(from).flatMap((remedy) =>
        other.includes(remedy.name) ? [continuousTorque(remedy.mount, demoLimits).torque.si] : [],
      )
    }
    expect(limits({})).toHaveLength(2)
    expect(limits({ conductivityAcross: '0.05 W/(m K)' })).toEqual(limits({}))
    expect(thermalMaterials.printedCarbonFilled.conductivity.conditions).toMatch(/^PET .*across the layers/)
  })

  test('charts carry limits and temperatures in degrees Celsius', () => {
    const course = mount.network({ torque: '0.35 N m' }).transient({ duration: '1 h' })
    const text = JSON.stringify(temperatureChart(course, demoLimits, ['winding', 'mount']))
    expect(text).toContain('limit of plate')
    expect(text).toContain('"at":85')
    const duty = torqueDutyChart(mount, demoLimits, '2 min')
    expect(duty.description).toContain('plate')
    // The band of each cycle, beside its line.
    const rows = JSON.stringify(duty).match(/\{[^{}]*"low":[^{}]*\}/g) ?? []
    expect(rows).toHaveLength(8)
  })
})

describe('calibration', () => {
  const net = mount.network({ torque: '0.3 N m' })
  const truth = net.scaled({ links: { 'can convection': 1.25, 'plate convection': 0.85, 'stator-can': 0.9 } })

  test('from one settled state: the misfit goes, bands shrink, nothing moves further than its scatter', () => {
    const { temperatures: T } = truth.steady()
    const result = calibrate(net, { steady: { winding: T.winding!, can: T.can!, mount: T.mount! } }, { sensor: '0.3 K' })
    expect(result.misfitAfter.si).toBeLessThan(0.3)
    expect(result.misfitAfter.si).toBeLessThan(0.3 * result.misfitBefore.si)
    expect(result.state).toBe('consistent')
    const fixed = result.network.steady().temperatures
    expect(Math.abs((fixed.mount?.si as number) - T.mount!.si)).toBeLessThan(0.5)
    for (const { low, factor, high, before } of result.corrections) {
      expect(low.si).toBeLessThan(factor.si)
      expect(high.si / low.si).toBeLessThanOrEqual(Math.exp(2 * before.si) * 1.001)
    }
    expect(result.corrections.some(({ informed }) => informed)).toBe(true)
    // The same factors carried to the whole mount.
    const corrected = mount.scaled(result.factors).network({ torque: '0.3 N m' }).steady().temperatures
    expect(corrected.mount?.si).toBeCloseTo(fixed.mount?.si as number, 6)
  })

  test('from a log: a wrong heat capacity is found within its interval', () => {
    const one = (joules: number, watts = 0.25) =>
      network({ a: { capacity: [joules, 'J/K'], loss: '10 W' }, air: { fixed: '25 degC' } }, [
        { from: 'a', to: 'air', conductance: [watts, 'W/K'], scatter: 0.3, name: 'film' },
      ])
    const course = one(115, 0.28).transient({ duration: '30 min' })
    const times = [60, 200, 400, 700, 1000, 1400, 1800].map((s) => [s, 's'] as const)
    const log = { times, temperatures: { a: times.map((t) => course.at(t).a!) } }
    const { corrections, misfitAfter } = calibrate(one(100), { log }, { sensor: '0.2 K' })
    expect(misfitAfter.si).toBeLessThan(0.2)
    const capacity = corrections.find(({ of }) => of === 'capacity')!
    expect(capacity.low.si).toBeLessThan(1.15)
    expect(capacity.high.si).toBeGreaterThan(1.15)
    const film = corrections.find(({ name }) => name === 'film')!
    expect(film.factor.si).toBeCloseTo(0.28 / 0.25, 1)
  })

  test('readings that no likely change explains are called inconsistent', () => {
    expect(calibrate(net, { steady: { mount: '150 degC', can: '40 degC' } }, { sensor: '0.5 K' }).state).toBe('inconsistent')
  })

  test('bad measurements are named', () => {
    expect(() => calibrate(net, {})).toThrow('measured')
    expect(() => calibrate(net, { steady: { mont: '80 degC' } })).toThrow('did you mean mount?')
    expect(() => calibrate(net, { log: { times: ['60 s'], temperatures: { mount: [] } } })).toThrow('log.temperatures.mount')
  })

  test('one exponential gives back resistance and capacity', () => {
    const times = [0, 120, 300, 600, 900, 1500, 2400].map((s) => [s, 's'] as const)
    const noise = [0.1, -0.1, 0.05, -0.12, 0.08, -0.04, 0.02]
    const temperatures = times.map(([s], i) => [25 + 40 * (1 - Math.exp(-s / 800)) + (noise[i] as number), 'degC'] as const)
    const fit = fitStepResponse({ times, temperatures, power: '10 W', before: '25 degC' })
    expect(Math.abs(fit.timeConstant.si - 800)).toBeLessThan(fit.timeConstant.high - fit.timeConstant.si)
    expect(fit.resistance?.si).toBeCloseTo(4, 1)
    expect(fit.capacity!.si).toBeCloseTo(fit.timeConstant.si / fit.resistance!.si, 6)
    for (const [told, wanted] of [
      [fit.resistance!, 4],
      [fit.capacity!, 200],
      [fit.final, 338.15],
    ] as const) {
      expect(told.low).toBeLessThan(wanted)
      expect(told.high).toBeGreaterThan(wanted)
      expect(told.high - told.low).toBeLessThan(0.1 * wanted)
    }
    expect(() => fitStepResponse({ times, temperatures, power: '-10 W', before: '25 degC' })).toThrow('sign of the change')
    expect(() => fitStepResponse({ times: [...times].reverse(), temperatures })).toThrow('later than the time before')
    expect(() => fitStepResponse({ times, temperatures, power: '10 W' })).toThrow('before')
  })
})

test('a sink radiates from its envelope and its base, not from its fins', () => {
  const sink = {
    width: '40 mm',
    height: '50 mm',
    finLength: '12 mm',
    finThickness: '1 mm',
    fins: 6,
    baseThickness: '2 mm',
    joint: '1 K/W',
  } as const
  const net = motorMount(demoMotor(), { ...demoSpecification, sink }).network({ torque: '0.3 N m' })
  const { flows, temperatures } = net.steady()
  const envelope = 0.04 * 0.05 + 2 * 0.012 * (0.04 + 0.05)
  const wanted = envelope * 0.8 * 5.670374419e-8 * (temperatures.sink!.si ** 4 - 311.15 ** 4)
  expect(flows[net.links.indexOf('sink radiation')]?.si).toBeCloseTo(wanted, 6)
})

test('controller loss at the junction temperature that it makes itself', () => {
  const controller = {
    ...demoSpecification.controller,
    quiescent: '0 W',
    supplyVoltage: '0 V',
    junctionToBoard: '30 K/W',
    switchResistance: '20 mohm',
  } as const
  const net = motorMount(demoMotor(), { ...demoSpecification, controller }).network({ torque: '0.3 N m' })
  const board = net.si.numbers.losses.find(({ node }) => net.nodes[node] === 'board')!
  const loss = (board.watts as (...T: number[]) => number)(330, 293.15)
  const cold = 1.5 * currentsForTorque({ torque: '0.3 N m', backEmfConstant: demoMotor().backEmfConstant }).peakPhase.si ** 2 * 0.02
  // Six switches share the loss: each junction stands 30 K/W times a sixth of it above the board.
  expect(loss).toBeCloseTo(cold * (1 + 0.005 * (330 + (30 * loss) / 6 - 298.15)), 9)
})

test('a longer motor has more constant, less inner resistance and more mass, all by its length', () => {
  const longer = standardRemedies(mount).find(({ name }) => name.includes('longer'))!
  expect(longer.mount.motor.motorConstant.si / mount.motor.motorConstant.si).toBeCloseTo(Math.sqrt(1.4), 9)
  expect(longer.mount.si.x.body.windingToStator).toBeCloseTo(mount.si.x.body.windingToStator / 1.4, 12)
  expect(longer.mount.mass.si - mount.mass.si).toBeCloseTo(0.4 * 0.21, 9)
})

test('a cooled surface is two links with their scatter, and says what is wrong with it', () => {
  const links = cooledSurface('box', {
    area: '100 cm^2',
    shape: 'verticalPlate',
    length: '100 mm',
    emissivity: 0.9,
    surroundings: { air: '20 degC' },
  })
  const { temperatures } = network({ box: { loss: '5 W' }, air: { fixed: '20 degC' } }, links).steady()
  expect(temperatures.box?.in('degC')).toBeGreaterThan(50)
  expect((temperatures.box!.high - temperatures.box!.si) / (temperatures.box!.si - 293.15)).toBeGreaterThan(0.08)
  expect(() =>
    cooledSurface('box', { area: '1 m^2', shape: 'plate' as never, length: '1 m', emissivity: 2, surroundings: { air: '20 degC' } }),
  ).toThrow(InputError)
})
