import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  allowableInterference,
  boltGroupShear,
  bossWallStress,
  clampLoadOverTime,
  clampLoadPowerLaw,
  clampLoadThroughHeat,
  compressionSleeve,
  embeddedPin,
  embeddedPinElastic,
  frustumStiffness,
  jointLoads,
  lapShear,
  loadFactor,
  memberCompliance,
  metricThread,
  pottedFerrule,
  preloadFromTorque,
  pressFit,
  tighteningTorque,
  uniformStackChance,
} from '../../src/fasteners/index.js'
import { integrate } from '../../src/numeric/index.js'
import pins from '../oracles/fasteners-pins.json' with { type: 'json' }

const near = (a: number, b: number, relative: number) =>
  expect(Math.abs(a - b), `${a} against ${b}`).toBeLessThanOrEqual(relative * Math.max(Math.abs(a), Math.abs(b)))
const range = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const polymer = { modulus: 2e9, poissonRatio: 0.38 }
const steel = { modulus: 207e9, poissonRatio: 0.29 }

describe('press fit', () => {
  const fit = { diameter: 0.004, diametralInterference: 40e-6, bossDiameter: 0.012, pinBore: 0, boss: polymer, pin: steel }

  test('a very thick wall is an endless one: p = δE/(d(1 + ν)) on a rigid pin', () => {
    const thick = pressFit.si({ ...fit, bossDiameter: 4, pin: { modulus: 1e20, poissonRatio: 0.3 } })
    near(thick.pressure, (40e-6 * 2e9) / (0.004 * 1.38), 3e-6)
    near(thick.boreHoopStress, thick.pressure, 3e-6)
  })

  test('a stiffer pin has a smaller share, down to none', () => {
    fc.assert(
      fc.property(range(1e9, 1e12), (modulus) => {
        const soft = pressFit.si({ ...fit, pin: { ...steel, modulus } })
        const stiff = pressFit.si({ ...fit, pin: { ...steel, modulus: 2 * modulus } })
        expect(stiff.pinShare).toBeLessThan(soft.pinShare)
        expect(stiff.pressure).toBeGreaterThan(soft.pressure)
      }),
    )
    expect(pressFit.si({ ...fit, pin: { ...steel, modulus: 1e20 } }).pinShare).toBeLessThan(1e-9)
  })

  test('the wall is in balance: hoop tension over the wall carries the pressure on the bore', () => {
    fc.assert(
      fc.property(range(1.05, 8), (width) => {
        const at = (radius: number) => bossWallStress.si({ pressure: 1, diameter: 2, bossDiameter: 2 * width, radius })
        near(
          integrate((r) => at(r).hoopStress, 1, width),
          1,
          1e-9,
        )
        near(at(1).radialStress, -1, 1e-12)
        expect(Math.abs(at(width).radialStress)).toBeLessThan(1e-12)
      }),
    )
  })

  test('the allowable interference, pressed in, gives just the allowable stress', () => {
    fc.assert(
      fc.property(range(1.2, 6), fc.constantFrom('hoop' as const, 'vonMises' as const, 'tresca' as const), (width, criterion) => {
        const common = { diameter: 0.004, bossDiameter: 0.004 * width, pinBore: 0, boss: polymer, pin: steel }
        const limits = { allowableInLayers: 20e6, allowableAcrossLayers: 8e6, criterion }
        const { diametralInterference } = allowableInterference.si({ ...common, ...limits, boreAxis: 'acrossLayers' })
        const made = pressFit.si({ ...common, diametralInterference })
        near({ hoop: made.boreHoopStress, vonMises: made.boreVonMises, tresca: made.boreTresca }[criterion], 20e6, 1e-12)
        const lying = allowableInterference.si({ ...common, ...limits, boreAxis: 'inLayers' })
        expect(lying.diametralInterference).toBeLessThanOrEqual(diametralInterference)
        expect(pressFit.si({ ...common, diametralInterference: lying.diametralInterference }).boreHoopStress).toBeLessThan(
          8e6 * (1 + 1e-12),
        )
      }),
    )
  })
})

describe('embedded pins against the beam equation', () => {
  test.each(pins)('arm $arm mm, depth $depth mm, foundation $foundation', ({ arm, depth, foundation, elastic, rigid }) => {
    const x = { force: 100, arm: arm / 1000, depth: depth / 1000, diameter: 0.004 }
    const soft = embeddedPinElastic.si({ ...x, pinModulus: 200e9, foundationModulus: foundation * 1e6 })
    near(soft.slenderness, elastic.slenderness, 1e-9)
    near(soft.mouthPressure, elastic.mouth * 1e6, 1e-7)
    // The far end of a long pin is a small difference of large parts in the solve.
    expect(Math.abs(soft.endPressure - elastic.end * 1e6)).toBeLessThan(1e-6 * elastic.mouth * 1e6)
    near(soft.moment, elastic.moment / 1000, 1e-6)
    const stiff = embeddedPin.si(x)
    near(stiff.mouthPressure, rigid.mouth * 1e6, 1e-9)
    near(stiff.endPressure, rigid.end * 1e6, 1e-9)
    near(stiff.moment, rigid.moment / 1000, 1e-6)
  })

  test('a stiff pin is a rigid one', () => {
    const x = { force: 100, arm: 0.005, depth: 0.01, diameter: 0.004 }
    const elastic = embeddedPinElastic.si({ ...x, pinModulus: 2e15, foundationModulus: 2e9 })
    near(elastic.mouthPressure, embeddedPin.si(x).mouthPressure, 1e-4)
    near(elastic.moment, embeddedPin.si(x).moment, 1e-4)
  })
})

describe('clamped joints', () => {
  test('the load factor goes from 0 to 1 with the softness of the parts', () => {
    expect(loadFactor.si({ boltCompliance: 1, memberCompliance: 0 })).toBe(0)
    near(loadFactor.si({ boltCompliance: 1e-12, memberCompliance: 1 }), 1, 1e-11)
  })

  test('bolt load is face load and outside load together, open or closed', () => {
    fc.assert(
      fc.property(range(0, 5000), range(0, 20000), range(0, 0.99), (clampLoad, externalLoad, factor) => {
        const { boltLoad, faceLoad } = jointLoads.si({ clampLoad, externalLoad, loadFactor: factor })
        near(boltLoad, faceLoad + externalLoad, 1e-12)
        expect(faceLoad).toBeGreaterThanOrEqual(0)
      }),
    )
  })

  const ends = { headBearing: 0.009, nutBearing: 0.009, end: 'nut' as const, halfAngle: Math.PI / 6 }

  test('a stack of one material is two frusta; cutting it into layers changes nothing', () => {
    fc.assert(
      fc.property(range(0.001, 0.03), range(0.05, 0.95), (thickness, cut) => {
        const layer = { modulus: 2e9, outerDiameter: 1, holeDiameter: 0.0045 }
        const whole = memberCompliance.si({ ...ends, layers: [{ ...layer, thickness }] })
        const layers = [
          { ...layer, thickness: cut * thickness },
          { ...layer, thickness: (1 - cut) * thickness },
        ]
        near(memberCompliance.si({ ...ends, layers }).compliance, whole.compliance, 1e-11)
        const half = { modulus: 2e9, thickness: thickness / 2, narrowDiameter: 0.009, holeDiameter: 0.0045, halfAngle: Math.PI / 6 }
        near(whole.compliance, 2 / frustumStiffness.si(half), 1e-11)
      }),
    )
  })

  test('a narrower boss is softer, and one narrower than the head is a sleeve', () => {
    const at = (outerDiameter: number) =>
      memberCompliance.si({ ...ends, layers: [{ thickness: 0.012, modulus: 2e9, outerDiameter, holeDiameter: 0.0045 }] }).compliance
    fc.assert(
      fc.property(range(0.005, 0.03), (d) => {
        expect(at(d * 1.05)).toBeLessThanOrEqual(at(d) * (1 + 1e-12))
      }),
    )
    near(at(0.008), (4 * 0.012) / (Math.PI * 2e9 * (0.008 ** 2 - 0.0045 ** 2)), 1e-12)
  })

  test("torque and preload are each other's way back", () => {
    const friction = range(0.01, 0.4)
    fc.assert(
      fc.property(
        fc.constantFrom(...metricThread.designations),
        range(1, 1e5),
        friction,
        friction,
        (name, preload, inThread, underHead) => {
          const thread = metricThread.si(name)
          const ring = { bearingDiameter: 2 * thread.diameter, holeDiameter: 1.1 * thread.diameter, prevailingTorque: 0.3 }
          const x = { thread, threadFriction: inThread, headFriction: underHead, ...ring }
          const { torque } = tighteningTorque.si({ ...x, preload })
          expect(Math.abs(preloadFromTorque.si({ ...x, torque }).preload - preload)).toBeLessThan(1e-9 * (preload + 1000))
        },
      ),
    )
  })
})

describe('clamp load over time', () => {
  const joint = { clampLoad: 1000, elasticCompliance: 0.12e-6, embedding: 0, retightenings: undefined }
  const creep = (t: number) => 1 + 0.1 * (t / 3600) ** 0.25
  const times = Array.from({ length: 40 }, (_, i) => 10 * 1.45 ** i)

  test('falls and never rises', () => {
    fc.assert(
      fc.property(range(0.01, 0.5), range(0.1, 0.9), range(0, 2), (c, n, r) => {
        const creepingLayers = [{ compliance: 1e-6, creep: (t: number) => 1 + c * (t / 3.6e5) ** n }]
        const { clampLoads } = clampLoadOverTime.si({ ...joint, elasticCompliance: r * 1e-6, creepingLayers, times })
        for (let i = 1; i < clampLoads.length; i++) expect(clampLoads[i]!).toBeLessThanOrEqual(clampLoads[i - 1]! * (1 + 1e-9) + 1e-9)
      }),
      { numRuns: 15 },
    )
  })

  test('a softer elastic side keeps more: between relaxation and no loss', () => {
    const law = { clampLoad: 1, creepingCompliance: 1, creepCoefficient: 0.1, creepExponent: 0.25, time: 3e7 }
    const left = (r: number) => clampLoadPowerLaw.si({ ...law, elasticCompliance: r }).share
    expect(left(0)).toBeLessThan(left(0.12))
    expect(left(0.12)).toBeLessThan(left(5))
    expect(left(1e6)).toBeGreaterThan(0.99999)
  })

  test('turned back in between, the joint holds more at the end, and exactly its first load just then', () => {
    const creepingLayers = [{ compliance: 1e-6, creep }]
    const day = 86400
    const plain = clampLoadOverTime.si({ ...joint, creepingLayers, times: [day, 30 * day] }).clampLoads
    const turned = clampLoadOverTime.si({ ...joint, creepingLayers, retightenings: [day], times: [day, 30 * day] }).clampLoads
    near(turned[0]!, 1000, 1e-12)
    expect(turned[1]!).toBeGreaterThan(plain[1]!)
    expect(turned[1]!).toBeLessThan(1000)
  })

  test('a hot spell ends below where a cool one ends: the ratchet', () => {
    const speedUp = (difference: number) => Math.exp(0.1 * difference)
    const softening = () => 1
    const x = {
      clampLoad: 1000,
      elasticCompliance: 0.12e-6,
      creepingCompliance: 1e-6,
      creep,
      speedUp,
      softening,
      mismatchPerKelvin: 0.5e-6,
    }
    const hot = { duration: 3600, temperatureChange: 30 }
    const cool = { duration: 3600, temperatureChange: 0 }
    const swung = clampLoadThroughHeat.si({ ...x, spells: [cool, hot, cool, hot, cool] })
    const calm = clampLoadThroughHeat.si({ ...x, spells: [cool, cool, cool, cool, cool] })
    expect(swung.startLoads[1]!).toBeGreaterThan(swung.endLoads[0]!)
    expect(swung.endLoads[2]!).toBeLessThan(calm.endLoads[2]!)
    expect(swung.endLoads[4]!).toBeLessThan(swung.endLoads[2]!)
  })

  test('cut into spells of one temperature, the decay is that of one spell and of the solver for curves', () => {
    const x = { clampLoad: 1000, elasticCompliance: 0.12e-6, creepingCompliance: 1e-6, creep, speedUp: () => 1, mismatchPerKelvin: 1e-6 }
    const spells = [1e3, 1e4, 2e5].map((duration) => ({ duration, temperatureChange: 0 }))
    const { endLoads } = clampLoadThroughHeat.si({ ...x, softening: () => 1, spells })
    const creepingLayers = [{ compliance: 1e-6, creep }]
    const { clampLoads } = clampLoadOverTime.si({ ...joint, creepingLayers, times: [1e3, 1.1e4, 2.11e5] })
    for (let i = 0; i < 3; i++) near(endLoads[i]!, clampLoads[i]!, 1e-4)
  })

  test('layers that soften more lose more while hot, and end lower when cold again', () => {
    const x = { clampLoad: 1000, elasticCompliance: 0.12e-6, creepingCompliance: 1e-6, creep, speedUp: () => 5, mismatchPerKelvin: 0 }
    const spells = [0, 30, 0].map((temperatureChange) => ({ duration: 3600, temperatureChange }))
    const at = (more: number) =>
      clampLoadThroughHeat.si({ ...x, speedUp: (d) => (d > 0 ? 5 : 1), softening: (d) => 1 + (more * d) / 30, spells })
    fc.assert(
      fc.property(range(0, 3), range(0.01, 1), (softer, more) => {
        const [less, soft] = [at(softer), at(softer + more)]
        expect(soft.startLoads[1]!).toBeLessThan(less.startLoads[1]!)
        expect(soft.endLoads[1]!).toBeLessThan(less.endLoads[1]!)
        expect(soft.endLoads[2]!).toBeLessThan(less.endLoads[2]!)
      }),
      { numRuns: 20 },
    )
  })

  test('sleeve and print carry the clamp load together', () => {
    fc.assert(
      fc.property(range(1, 5000), range(-1e-4, 1e-4), (clampLoad, shortfall) => {
        const x = { clampLoad, sleeveCompliance: 1e-8, printCompliance: 1e-7, shortfall }
        const { sleeveLoad, printLoad } = compressionSleeve.si(x)
        near(sleeveLoad + printLoad, clampLoad, 1e-12)
        expect(Math.min(sleeveLoad, printLoad)).toBeGreaterThanOrEqual(0)
      }),
    )
  })
})

describe('bonds', () => {
  test('shear along a lap adds up to the force, whatever the parts and the temperature', () => {
    fc.assert(
      fc.property(range(1e9, 2e11), range(1e9, 2e11), range(-80, 80), (innerModulus, outerModulus, temperatureChange) => {
        const x = {
          force: 1000,
          width: 0.02,
          overlap: 0.012,
          lap: 'single' as const,
          inner: { thickness: 0.003, modulus: innerModulus, thermalExpansion: 70e-6 },
          outer: { thickness: 0.002, modulus: outerModulus, thermalExpansion: 12e-6 },
          bondThickness: 0.0002,
          shearModulus: 0.6e9,
          temperatureChange,
        }
        const shear = (at: number) => lapShear.si({ ...x, at }).stress
        near(0.02 * integrate(shear, -0.006, 0.006), 1000, 1e-6)
        const { outerEndStress, innerEndStress } = lapShear.si({ ...x, at: 0 })
        expect(Math.abs(shear(0.006) - outerEndStress)).toBeLessThan(1)
        expect(Math.abs(shear(-0.006) - innerEndStress)).toBeLessThan(1)
      }),
      { numRuns: 30 },
    )
  })

  test('a short bond is evenly loaded; a long one is no stronger than its limit', () => {
    const x = {
      force: 150,
      cordDiameter: 0.0016,
      boreDiameter: 0.002,
      cordRigidity: 20000,
      socketRigidity: 1e12,
      shearModulus: 0.5e9,
      shearStrength: 15e6,
      held: 'mouth' as const,
    }
    const short = pottedFerrule.si({ ...x, length: 1e-9 })
    near(short.mouthStress, short.averageStress, 1e-9)
    const long = pottedFerrule.si({ ...x, length: 0.5 })
    near(long.elasticLimit, long.longBondLimit, 1e-9)
    fc.assert(
      fc.property(range(1e-4, 0.1), (length) => {
        const { elasticLimit, plasticLimit } = pottedFerrule.si({ ...x, length })
        expect(elasticLimit).toBeLessThanOrEqual(plasticLimit * (1 + 1e-12))
        expect(elasticLimit).toBeLessThanOrEqual(pottedFerrule.si({ ...x, length: length * 1.1 }).elasticLimit * (1 + 1e-12))
      }),
    )
  })
})

describe('groups and stacks', () => {
  const bolts = fc.array(fc.record({ x: range(-0.1, 0.1), y: range(-0.1, 0.1), area: range(1e-6, 1e-4) }), { minLength: 2, maxLength: 8 })
  const sum = (list: readonly number[]) => list.reduce((a, b) => a + b, 0)

  test('bolt forces balance the load, and turn with the frame', () => {
    fc.assert(
      fc.property(bolts, range(-500, 500), range(-500, 500), range(-0.2, 0.2), range(0, 6.28), (group, fx, fy, at, angle) => {
        fc.pre(group.some(({ x, y }) => Math.hypot(x - group[0]!.x, y - group[0]!.y) > 1e-2))
        const made = boltGroupShear.si({ bolts: group, forceX: fx, forceY: fy, atX: at, atY: -at, moment: 3 })
        const size = 1e-9 * (1 + made.largest)
        expect(Math.abs(sum(made.alongX) - fx)).toBeLessThan(size)
        expect(Math.abs(sum(made.alongY) - fy)).toBeLessThan(size)
        const moments = group.map(({ x, y }, i) => x * made.alongY[i]! - y * made.alongX[i]!)
        expect(Math.abs(sum(moments) - (at * fy + at * fx + 3))).toBeLessThan(size)
        const turn = (x: number, y: number) =>
          [x * Math.cos(angle) - y * Math.sin(angle), x * Math.sin(angle) + y * Math.cos(angle)] as const
        const [forceX, forceY] = turn(fx, fy)
        const [atX, atY] = turn(at, -at)
        const turnedGroup = group.map(({ x, y, area }) => ({ x: turn(x, y)[0], y: turn(x, y)[1], area }))
        const turned = boltGroupShear.si({ bolts: turnedGroup, forceX, forceY, atX, atY, moment: 3 })
        for (let i = 0; i < group.length; i++) expect(Math.abs(turned.sizes[i]! - made.sizes[i]!)).toBeLessThan(size)
      }),
    )
  })

  test('the exact stack is even about zero and at most a half above it', () => {
    fc.assert(
      fc.property(fc.array(range(0.1, 1), { minLength: 1, maxLength: 8 }), range(0.001, 3), (tolerances, limit) => {
        const above = uniformStackChance.si({ tolerances, limit }).exceedance
        const below = 1 - uniformStackChance.si({ tolerances, limit: -limit }).exceedance
        expect(Math.abs(above - below)).toBeLessThan(1e-9)
        expect(above).toBeGreaterThanOrEqual(-1e-9)
        expect(above).toBeLessThanOrEqual(0.5 + 1e-9)
      }),
    )
  })
})
