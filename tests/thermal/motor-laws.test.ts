import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { chebyshev } from '../../src/numeric/index.js'
import { lawPlace } from '../../src/thermal/chebyshev-law.js'
import { RISES } from '../../src/thermal/cooling-laws.js'
import {
  canLaw,
  copperLossForTorque,
  motor,
  motorBalance,
  motorConstant,
  motorMount,
  motorStall,
  motorWarmUp,
  mountLaw,
  plateLaw,
  plateStore,
  ringArea,
  ringOnRectangularPlate,
  ringsOnPlate,
  runawayLoss,
  runawayTorque,
  surfaceCoefficient,
  surfaceResistance,
} from '../../src/thermal/index.js'
import { motorState, motorStateAt } from '../../src/thermal/motor-heat.js'
import { FILMS } from '../../src/thermal/plate-law.js'
import { InputError } from '../../src/units/index.js'
import { demoSpecification } from './demo.js'

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true })

const plate = {
  innerRadius: 0.006,
  outerRadius: 0.0175,
  width: 0.08,
  height: 0.08,
  x: 0,
  y: 0,
  thickness: 0.007,
  conductivity: 0.2,
} as const
const still = { air: 311.15, radiant: 311.15, airSpeed: 0, pressure: 101325, factor: 1 } as const
const contact = surfaceResistance.si({ coefficient: 1500, area: ringArea.si({ innerRadius: 0.006, outerRadius: 0.0175 }) })
const mountOf = (shape: Parameters<typeof plateLaw.si>[0], air = still) =>
  mountLaw.si({ ...plateLaw.si(shape), contact, height: shape.height, emissivity: 0.9, ...air })
const canOf = (air = still) => canLaw.si({ diameter: 0.052, length: 0.022, emissivity: 0.6, mountToCan: 6, ...air })
const lawsOf = (shape: Parameters<typeof plateLaw.si>[0] = { ...plate, behind: 0 }, air = still) => {
  const mount = mountOf(shape, air)
  const can = canOf(air)
  return {
    air: air.air,
    radiant: air.radiant,
    mountConductance: mount.conductance,
    mountRadiantShare: mount.radiantShare,
    canConductance: can.conductance,
    canShare: can.canShare,
    canRadiantShare: can.radiantShare,
  }
}
const laws = lawsOf()
const machine = {
  backEmfConstant: 0.0868,
  magnetCoefficient: -0.0011,
  terminalResistance: 0.18,
  otherLoss: 0,
  windingToMount: 1.1,
} as const

describe('laws', () => {
  test.each([
    [0.2, 0.007, 0],
    [0.53, 0.007, 0],
    [0.12, 0.01, 0],
    [167, 0.003, 0],
    [167, 0.003, 0.04],
  ])(
    'the table of a plate of %s W/(m K), %s m, %s m² K/W behind it, is within 0.06 percent of its series at any film',
    (conductivity, thickness, behind) => {
      const law = plateLaw.si({ ...plate, conductivity, thickness, behind })
      for (let film = 0.55; film < 195; film *= 1.17) {
        const series = ringOnRectangularPlate.si({
          ...plate,
          conductivity,
          thickness,
          motorFaceCoefficient: film,
          freeFaceCoefficient: 1 / (behind + 1 / film),
          underMotor: 'covered',
        })
        expect(Math.abs(Math.exp(chebyshev(law.ring, lawPlace(FILMS, film))) / series.ring - 1)).toBeLessThan(6e-4)
      }
    },
  )

  test.each([
    [0, 0.9],
    [3, 0.9],
    [0, 0.05],
  ])('the law of a mount in %s m/s, emissivity %s, is within 0.02 percent of plain rounds of plate and film', (airSpeed, emissivity) => {
    for (const shape of [
      { ...plate, behind: 0 },
      { ...plate, conductivity: 167, thickness: 0.003, behind: 0 },
    ]) {
      const table = plateLaw.si(shape)
      const law = mountLaw.si({ ...table, contact, height: 0.08, emissivity, ...still, airSpeed })
      for (let rise = 0.011; rise < 440; rise *= 1.9) {
        let film = 10
        let resistance = 0
        for (let k = 0; k < 300; k++) {
          resistance = contact + Math.exp(chebyshev(table.ring, lawPlace(FILMS, film)))
          const temperature = 311.15 + (rise * Math.exp(chebyshev(table.mean, lawPlace(FILMS, film)))) / resistance
          film = surfaceCoefficient.si({ shape: 'verticalPlate', length: 0.08, temperature, emissivity, ...still, airSpeed }).total
        }
        expect(Math.abs(Math.exp(chebyshev(law.conductance, lawPlace(RISES, rise))) * resistance - 1)).toBeLessThan(2e-4)
      }
    }
  })
})

describe('balance', () => {
  const at = (torque: number, more: Partial<Parameters<typeof motorBalance.si>[0]> = {}) =>
    motorBalance.si({ torque, ...machine, ...laws, ...more })

  test('heat in is heat out, and more torque or more loss is never cooler', () => {
    fc.assert(
      fc.property(between(0, 0.4), between(0, 3), between(0, 60), (torque, otherLoss, glow) => {
        const x = { torque, ...machine, ...laws, otherLoss, radiant: laws.air + glow }
        const steady = motorBalance.si(x)
        fc.pre(steady.state === 'steady')
        const { surplus } = motorStateAt(x, steady.mount, motorState())
        if (steady.mount > laws.air + 0.01) expect(Math.abs(surplus)).toBeLessThan(1e-6 * (1 + steady.loss))
        expect(motorBalance.si({ ...x, torque: torque + 0.01 }).mount).toBeGreaterThanOrEqual(steady.mount)
        expect(motorBalance.si({ ...x, otherLoss: otherLoss + 0.1 }).mount).toBeGreaterThan(steady.mount)
      }),
      { numRuns: 200 },
    )
  })

  test('is the first place at which a scan of rises finds as much heat leaving as entering, and none where the scan finds none', () => {
    const state = motorState()
    fc.assert(
      fc.property(
        between(0.05, 0.6),
        between(0.2, 8),
        between(-0.004, 0),
        between(0, 20),
        (torque, windingToMount, magnetCoefficient, otherLoss) => {
          const x = { torque, ...machine, ...laws, windingToMount, magnetCoefficient, otherLoss }
          const rises = Array.from({ length: 900 }, (_, i) => 0.5 * (i + 1))
          const first = rises.find((rise) => motorStateAt(x, x.air + rise, state).surplus <= 0)
          const found = motorBalance.si(x)
          expect(found.state).toBe(first === undefined ? 'runaway' : 'steady')
          if (first !== undefined) expect(Math.abs(found.mount - x.air - first + 0.25)).toBeLessThan(0.2501)
        },
      ),
      { seed: 4, numRuns: 300 },
    )
  })

  test('no torque is as warm as the air; a torque beyond the last that settles runs away', () => {
    expect(at(0).mount).toBeCloseTo(laws.air, 9)
    let low = 0.3
    let high = 3
    for (let k = 0; k < 40; k++) {
      const middle = (low + high) / 2
      if (at(middle).state === 'steady') low = middle
      else high = middle
    }
    expect(at(high)).toMatchObject({ state: 'runaway', mount: Number.POSITIVE_INFINITY, winding: Number.POSITIVE_INFINITY })
    expect(at(low).mount).toBeLessThan(laws.air + RISES.high)
    expect(at(50).state).toBe('runaway')
  })

  test('the network of the same motor reads up to 7 % less, because its metal base spreads the heat over the ring', () => {
    const { controller: _, ...specification } = demoSpecification
    const mount = motorMount(motor({ backEmfConstant: '0.0868 V s/rad', terminalResistance: '0.18 ohm' }), specification)
    // The same ways: winding and base in one row, the can behind the stator.
    for (const [torque, most] of [
      [0.1, 0.07],
      [0.25, 0.07],
      [0.35, 0.07],
    ] as const) {
      const { temperatures } = mount.network({ torque: [torque, 'N m'] }).steady()
      const lumped = at(torque, { windingToMount: 0.8 + 0.3 })
      const rise = temperatures.mount!.si - laws.air
      const ratio = (lumped.mount - laws.air) / rise
      expect(ratio, `${torque} N m`).toBeGreaterThan(1)
      expect(ratio, `${torque} N m`).toBeLessThan(1 + most)
    }
  })
})

describe('stall', () => {
  const store = plateStore.si({ ...plate, density: 1070, specificHeat: 1300, behind: 0, contact, film: 12, time: 60 })
  const body = { capacity: 100, storeCapacity: store.capacity, storeConductance: store.conductance }
  const at = (torque: number, time: number, more: object = {}) => motorStall.si({ torque, ...machine, ...laws, ...body, time, ...more })

  test('the steps keep 0.1 K, in about a dozen states a minute or less', () => {
    for (const [torque, time] of [
      [0.6, 60],
      [0.9, 60],
      [0.9, 20],
      [0.45, 600],
    ] as const) {
      const { mount, states } = at(torque, time)
      // The same by classical fourth-order steps, far finer.
      const state = motorState()
      const x = { torque, ...machine, ...laws }
      const rate = (T: number, S: number) => (motorStateAt(x, T, state).surplus - store.conductance * (T - S)) / body.capacity
      const take = (T: number, S: number) => (store.conductance * (T - S)) / store.capacity
      let T = laws.air
      let S = laws.air
      const h = time / 4000
      for (let k = 0; k < 4000; k++) {
        const [a, b] = [rate(T, S), take(T, S)]
        const [c, d] = [rate(T + (h / 2) * a, S + (h / 2) * b), take(T + (h / 2) * a, S + (h / 2) * b)]
        const [e, f] = [rate(T + (h / 2) * c, S + (h / 2) * d), take(T + (h / 2) * c, S + (h / 2) * d)]
        const [g, i] = [rate(T + h * e, S + h * f), take(T + h * e, S + h * f)]
        T += (h / 6) * (a + 2 * c + 2 * e + g)
        S += (h / 6) * (b + 2 * d + 2 * f + i)
      }
      expect(Math.abs(mount - T)).toBeLessThan(0.1)
      expect(states).toBeLessThan(time > 60 ? 45 : 17)
    }
  })

  test('a long stall ends in the balance; what the plate stores only ever cools; a stall beyond runs away in time', () => {
    expect(at(0.3, 36000).mount).toBeCloseTo(motorBalance.si({ torque: 0.3, ...machine, ...laws }).mount, 1)
    expect(at(0.9, 60, { storeCapacity: 0, storeConductance: 0 }).mount).toBeGreaterThan(at(0.9, 60).mount + 0.1)
    expect(at(1.2, 3600)).toMatchObject({ state: 'runaway', winding: Number.POSITIVE_INFINITY })
    expect(at(9, 1).state).toBe('runaway')
  })

  test('from warm it is never cooler than from cold, and a gentle one is as hot as where it begins', () => {
    for (const initial of [laws.air + 5, laws.air + 15, laws.air + 30])
      for (const time of [1, 60, 600]) {
        const warm = at(0.6, time, { initial })
        expect(warm.mount).toBeGreaterThan(at(0.6, time).mount)
        expect(warm.mount).toBeGreaterThanOrEqual(initial)
      }
    expect(at(0.6, 60, { initial: laws.air })).toEqual(at(0.6, 60))
    const gentle = at(0.05, 600, { initial: laws.air + 40 })
    expect(gentle.mount).toBe(laws.air + 40)
    expect(gentle.winding).toBeCloseTo(gentle.mount + machine.windingToMount * gentle.loss, 9)
    expect(gentle).toMatchObject({ state: 'finished', store: laws.air + 40 })
    // The second half of a stall goes on where the first has left off, as far as mounting face and store are alike by then.
    const half = at(0.3, 7200)
    expect(at(0.3, 7200, { initial: half.mount }).mount).toBeCloseTo(at(0.3, 14400).mount, 1)
  })

  test('a run of two stretches is the run of both, within the steps', () => {
    const stretch = (initial: number, initialStore: number, time: number) =>
      motorWarmUp.si({ otherLoss: 10, initial, initialStore, ...laws, ...body, time })
    const half = stretch(laws.air, laws.air, 120)
    expect(Math.abs(stretch(half.mount, half.store, 120).mount - stretch(laws.air, laws.air, 240).mount)).toBeLessThan(0.1)
    const cooling = motorWarmUp.si({ otherLoss: 0, initial: 350, initialStore: 350, ...laws, ...body, time: 600 })
    expect(cooling.mount).toBeLessThan(350)
    expect(cooling.mount).toBeGreaterThan(laws.air)
  })
})

describe('several motors on one plate', () => {
  const two = (distance: number) =>
    ringsOnPlate.si({
      x: [-distance / 2, distance / 2],
      y: [0, 0],
      innerRadius: [0.006, 0.006],
      outerRadius: [0.0175, 0.0175],
      width: 0.12,
      height: 0.06,
      thickness: 0.003,
      conductivity: 167,
      motorFaceCoefficient: 12,
      freeFaceCoefficient: 12,
      underMotor: 'covered',
    }).resistances

  test('each warms the other as it is warmed, less the farther apart, and less than itself', () => {
    for (const distance of [0.036, 0.05, 0.08]) {
      const [own, other, back, its] = two(distance)
      expect(other).toBeCloseTo(back!, 12)
      expect(own).toBeCloseTo(its!, 9)
      expect(own).toBeGreaterThan(other!)
    }
    expect(two(0.036)[1]).toBeGreaterThan(two(0.08)[1]!)
  })

  test('places and sizes that cannot be are refused by name', () => {
    const good = {
      x: ['-25 mm', '25 mm'],
      y: ['0 mm', '0 mm'],
      innerRadius: ['6 mm', '6 mm'],
      outerRadius: ['17.5 mm', '17.5 mm'],
      width: '110 mm',
      height: '60 mm',
      thickness: '7 mm',
      conductivity: '0.2 W/(m K)',
      motorFaceCoefficient: '12 W/(m^2 K)',
      freeFaceCoefficient: '12 W/(m^2 K)',
    } as const
    expect(ringsOnPlate(good).resistances).toHaveLength(4)
    expect(() => ringsOnPlate({ ...good, x: ['-10 mm', '10 mm'] })).toThrow('apart')
    expect(() => ringsOnPlate({ ...good, x: ['-25 mm', '50 mm'] })).toThrow('on the plate')
    expect(() => ringsOnPlate({ ...good, y: ['0 mm'] })).toThrow('as many')
    expect(() => ringsOnPlate({ ...good, width: '400 mm' })).toThrow('five times')
    const one = { ...good, innerRadius: '6 mm', outerRadius: '17.5 mm', x: '0 mm', y: '0 mm' } as const
    expect(() => ringOnRectangularPlate({ ...one, width: '34 mm' })).toThrow(InputError)
    expect(() => ringOnRectangularPlate({ ...one, height: '600 mm' })).toThrow('five times')
  })
})

test('a motor settles wherever some rise sheds more heat than enters, also where a warmer guess runs away', () => {
  // A winding far from its mount, and loss beside it that warms mount and magnets.
  const hot = { ...machine, ...laws, torque: 0.22, windingToMount: 12 }
  const states = new Set<string>()
  for (let otherLoss = 0; otherLoss < 40; otherLoss += 0.5) {
    const x = { ...hot, otherLoss }
    let settles = false
    for (let rise = 0.5; rise < 450 && !settles; rise *= 1.01) settles = motorStateAt(x, x.air + rise, motorState()).surplus <= 0
    const { state } = motorBalance.si(x)
    expect(state, `${otherLoss} W`).toBe(settles ? 'steady' : 'runaway')
    states.add(state)
  }
  expect(states.size).toBe(2)
})

test('the largest torque with a balance is that of a fine scan of rises, and motors settle up to it and not beyond', () => {
  const state = motorState()
  const edges = { inside: 0, none: 0 }
  fc.assert(
    fc.property(
      between(0.01, 30),
      between(-0.0019, 0),
      between(0, 60),
      between(0, 30),
      between(0.02, 2),
      (windingToMount, magnetCoefficient, otherLoss, glow, terminalResistance) => {
        const x = { ...machine, ...laws, windingToMount, magnetCoefficient, otherLoss, terminalResistance, radiant: laws.air + glow }
        const { torque, mount } = runawayTorque.si(x)
        // The heat that a torque makes at a rise, against what leaves there: by halving, for each rise of the scan.
        const bears = (q: number, rise: number) => motorStateAt({ ...x, torque: q }, x.air + rise, state).surplus <= 0
        let scanned = 0
        for (let rise = 450; rise > 0.01; rise /= 1.02)
          if (bears(scanned + 1e-6, rise)) {
            let [low, high] = [scanned + 1e-6, 50]
            for (let k = 0; k < 40; k++) {
              const middle = (low + high) / 2
              if (bears(middle, rise)) low = middle
              else high = middle
            }
            scanned = low
          }
        expect(torque).toBeGreaterThanOrEqual(scanned * (1 - 1e-9))
        expect(torque).toBeLessThanOrEqual(scanned * 1.0005 + 2e-6)
        if (torque === 0) {
          edges.none++
          expect(motorBalance.si({ ...x, torque: 1e-9 }).state).toBe('runaway')
          return
        }
        edges.inside++
        // Just below it the balance is between rises that a search by steps would pass over.
        const near = motorBalance.si({ ...x, torque: torque * (1 - 1e-7) })
        expect(near.state).toBe('steady')
        expect(near.mount).toBeLessThanOrEqual(mount + 1e-3)
        expect(motorBalance.si({ ...x, torque: torque * (1 + 1e-7) })).toMatchObject({
          state: 'runaway',
          winding: Number.POSITIVE_INFINITY,
        })
      },
    ),
    { numRuns: 200 },
  )
  expect(edges.inside).toBeGreaterThan(100)
})

test('with constant magnets and a constant resistance to the air, the loss at the largest torque nears that of the closed form', () => {
  // A winding far from a mount that sheds heat at once: its own resistance is all there is, and the pole of its balance the end.
  const x = { ...machine, ...laws, magnetCoefficient: 0, windingToMount: 5000 }
  const { torque } = runawayTorque.si(x)
  const lossAt20 = copperLossForTorque.si({ torque, motorConstant: motorConstant.si(x) })
  expect(lossAt20 / runawayLoss.si({ thermalResistance: 5000 })).toBeCloseTo(1, 2)
})
