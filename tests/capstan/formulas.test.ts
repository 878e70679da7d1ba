import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import * as c from '../../src/capstan/index.js'

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true })

describe('friction', () => {
  test('a coefficient of 20 carries a note: a per cent sign is missing', () => {
    const held = c.slackTension({ load: '100 N', friction: 20, wrapAngle: '1 turn' })
    expect(held.notes?.map(({ text }) => text).join()).toContain('coefficient of friction of at most 2 (20 % is 0.2)')
    expect(c.slackTension({ load: '100 N', friction: '20 %', wrapAngle: '1 turn' }).notes).toBeUndefined()
  })

  test('holding, its inverses and both ends of the cord agree', () => {
    fc.assert(
      fc.property(between(1, 500), between(0.02, 0.6), between(0.1, 30), (slack, friction, wrapAngle) => {
        const taut = c.tautTension.si({ slackTension: slack, friction, wrapAngle })
        expect(c.slackTension.si({ load: taut, friction, wrapAngle }) / slack).toBeCloseTo(1, 10)
        expect(taut / slack / c.tensionRatio.si({ friction, wrapAngle })).toBeCloseTo(1, 10)
        expect(c.frictionFromTensions.si({ tautTension: taut, slackTension: slack, wrapAngle })).toBeCloseTo(friction, 10)
        expect(c.slipArc.si({ tautTension: taut, slackTension: slack, friction })).toBeCloseTo(wrapAngle, 8)
        expect(2 * Math.PI * c.wrapsNeeded.si({ tensionRatio: taut / slack, friction, requiredReserve: 1 })).toBeCloseTo(wrapAngle, 8)
        expect(c.runningTautTension.si({ slackTension: slack, friction, wrapAngle, massPerLength: 0.001, speed: 0 }).tautTension).toBe(taut)
      }),
    )
  })
  test('the fibre law runs into Coulomb friction at exponent 1, smoothly', () => {
    fc.assert(
      fc.property(between(1, 500), between(0.02, 0.5), between(0.1, 20), (slackTension, frictionFactor, wrapAngle) => {
        const at = (exponent: number) =>
          c.fibreTautTension.si({ slackTension, frictionFactor, exponent, centreLineRadius: 0.008, wrapAngle }).tautTension
        expect(at(1) / c.tautTension.si({ slackTension, friction: frictionFactor, wrapAngle })).toBeCloseTo(1, 12)
        expect(at(1 - 1e-12) / at(1)).toBeCloseTo(1, 8)
        expect(at(0.9)).toBeLessThan(at(1))
      }),
    )
  })
  test('bending stiffness costs holding, and nothing when there is none', () => {
    fc.assert(
      fc.property(
        between(2, 200),
        between(0.05, 0.4),
        between(2, 15),
        between(0, 2e-5),
        (slackTension, friction, wrapAngle, bendingRigidity) => {
          const x = { slackTension, friction, wrapAngle, bendingRigidity, centreLineRadius: 0.0085 }
          const limp = c.tautTension.si({ slackTension, friction, wrapAngle })
          const y = c.stiffCordTautTension.si(x)
          expect(y.tautTension).toBeLessThanOrEqual(limp * (1 + 1e-12))
          expect(c.stiffCordTautTension.si({ ...x, bendingRigidity: 0 }).tautTension / limp).toBeCloseTo(1, 12)
          if (bendingRigidity / (2 * slackTension * 0.0085 ** 2) < 0.02) expect(y.tautTensionSecondOrder / y.tautTension).toBeCloseTo(1, 2)
        },
      ),
    )
  })
  test('grooves add friction, a flat one none', () => {
    expect(c.vGrooveFriction.si({ friction: 0.2, grooveAngle: Math.PI }).effectiveFriction).toBeCloseTo(0.2, 12)
    expect(c.roundGrooveFriction.si({ friction: 0.2, undercutAngle: 0, seatAngle: 0 })).toBeCloseTo(0.8 / Math.PI, 12)
    expect(c.helixWrap.si({ centreLineRadius: 0.008, groovePitch: 0 }).frictionFactor).toBe(1)
  })
  test('a cord stiffer than its tension is refused; short of that the holding is found, however stiff', () => {
    const stiff = { friction: 0.3, bendingRigidity: '2e-5 N m^2', centreLineRadius: '8.5 mm', wrapAngle: '1 turn' } as const
    expect(() => c.stiffCordTautTension({ ...stiff, slackTension: '0.13 N' })).toThrow('half of bending rigidity over radius squared')
    fc.assert(
      fc.property(between(1e-6, 3), between(0, 1), between(0.01, 20), (over, friction, wrapAngle) => {
        const [EI, R] = [2e-5, 0.0085]
        const half = EI / (2 * R * R)
        const slackTension = half * (1 + over)
        const y = c.stiffCordTautTension.si({ slackTension, friction, wrapAngle, bendingRigidity: EI, centreLineRadius: R })
        const [psi, psi0] = [y.tautLiftOff, y.slackLiftOff]
        expect(Math.cos(psi)).toBeCloseTo(1 - half / y.tautTension, 9)
        const held = y.tautTension * (Math.cos(psi) - friction * Math.sin(psi))
        const given = slackTension * (Math.cos(psi0) + friction * Math.sin(psi0)) * Math.exp(friction * (wrapAngle - psi - psi0))
        expect(Math.abs(held - given)).toBeLessThan(1e-7 * y.tautTension)
        const second = friction * wrapAngle - (1 + friction ** 2) * half * (1 / slackTension - 1 / y.tautTensionSecondOrder)
        expect(Math.log(y.tautTensionSecondOrder / slackTension)).toBeCloseTo(second, 8)
      }),
    )
  })
  test('a slack end above the taut one is refused', () => {
    expect(() => c.frictionFromTensions({ tautTension: '5 N', slackTension: '6 N', wrapAngle: '1 turn' })).toThrow('slackTension')
    expect(() => c.slackTension({ load: '-1 N', friction: 0.1, wrapAngle: '1 turn' })).toThrow('load')
  })
})

describe('arcs', () => {
  test('feed is continuous where slip reaches the anchor, and its slope is its compliance', () => {
    fc.assert(
      fc.property(between(0.05, 0.4), between(0.2, 6), fc.boolean(), (friction, wrapAngle, taut) => {
        const corner = 60 * Math.exp((taut ? 1 : -1) * friction * wrapAngle)
        const at = (tension: number) =>
          c.arcWindup.si({ tension, storedTension: 60, friction, centreLineRadius: 0.008, wrapAngle, axialRigidity: 20000 })
        const [inside, outside] = [at(corner * (1 - 1e-9)), at(corner * (1 + 1e-9))]
        expect(outside.feed / inside.feed).toBeCloseTo(1, 6)
        expect(outside.compliance / inside.compliance).toBeCloseTo(1, 6)
        for (const tension of [0.4 * corner + 36, 1.3 * corner]) {
          const h = 1e-5 * tension
          expect(at(tension).compliance / ((at(tension + h).feed - at(tension - h).feed) / (2 * h))).toBeCloseTo(1, 4)
        }
      }),
    )
  })
  test('without friction an arc is free length', () => {
    const y = c.arcWindup.si({ tension: 90, storedTension: 60, friction: 0, centreLineRadius: 0.008, wrapAngle: 3, axialRigidity: 20000 })
    expect(y.feed).toBeCloseTo((30 * 0.024) / 20000, 18)
    const nearly = c.arcWindup.si({
      tension: 90,
      storedTension: 60,
      friction: 1e-9,
      centreLineRadius: 0.008,
      wrapAngle: 3,
      axialRigidity: 20000,
    })
    expect(nearly.feed / y.feed).toBeCloseTo(1, 7)
  })
  test('the cycle loss is the exact law’s leading order', () => {
    const arc = { centreLineRadius: 0.008, axialRigidity: 20000, friction: 0.15 }
    // Area between the exact branches of a settled cycle, both after reversal, between T0 − F and T0 + F.
    const [T0, F] = [60, 1.5]
    const [hi, lo] = [T0 + F, T0 - F]
    const k = arc.centreLineRadius / (arc.friction * arc.axialRigidity)
    const n = 20000
    let area = 0
    for (let i = 0; i < n; i++) {
      const T = lo + ((i + 0.5) * (hi - lo)) / n
      const down = -k * (Math.sqrt(hi) - Math.sqrt(T)) ** 2
      const up = k * (Math.sqrt(T) - Math.sqrt(lo)) ** 2 - k * (Math.sqrt(hi) - Math.sqrt(lo)) ** 2
      area += ((down - up) * (hi - lo)) / n
    }
    expect(area / c.arcCycleLoss.si({ ...arc, amplitude: F, pretension: T0 })).toBeCloseTo(1, 2)
  })
})

describe('life', () => {
  test('activated relaxation: nothing at no time, faster when warmer, never below nothing', () => {
    const x = {
      pretension: 100,
      fibreArea: 5e-7,
      axialRigidity: 37000,
      referenceRate: 1e-9,
      referenceStress: 5e8,
      referenceTemperature: 293.15,
      activationEnergy: 1.5 * 1.602176634e-19,
      activationVolume: 4.5e-29,
    }
    expect(c.activatedPretensionLeft.si({ ...x, temperature: 293.15, time: 0 }).share).toBeCloseTo(1, 12)
    fc.assert(
      fc.property(between(280, 330), between(1, 1e8), (temperature, time) => {
        const share = (T: number) => c.activatedPretensionLeft.si({ ...x, temperature: T, time }).share
        expect(share(temperature + 5)).toBeLessThanOrEqual(share(temperature))
        expect(share(temperature)).toBeGreaterThanOrEqual(0)
      }),
    )
    // Its first slope is the activated creep factor times the reference rate.
    const early = c.activatedPretensionLeft.si({ ...x, temperature: 313.15, time: 1 })
    const factor = c.activatedCreepFactor.si({
      fromTemperature: 293.15,
      toTemperature: 313.15,
      fromStress: 5e8,
      toStress: 2e8,
      activationEnergy: x.activationEnergy,
      activationVolume: x.activationVolume,
    })
    expect((100 - early.tension) / (37000 * 1e-9 * factor)).toBeCloseTo(1, 3)
  })
  test('activated relaxation keeps its digits at high stress, and at no time', () => {
    const x = {
      fibreArea: 5e-7,
      axialRigidity: 37000,
      referenceRate: 1e-9,
      referenceStress: 5e8,
      referenceTemperature: 293.15,
      temperature: 293.15,
      activationEnergy: 1.5 * 1.602176634e-19,
      activationVolume: 4.5e-29,
    }
    expect(c.activatedPretensionLeft.si({ ...x, pretension: 2000, time: 0 }).share).toBeCloseTo(1, 14)
    // Far above the thermal stress the law is that of an exponential rate: σ = (kT/V) ln of what is left of e^(-σV/kT) plus flow.
    const b = 4.5e-29 / (1.380649e-23 * 293.15)
    const rate = (37000 / 5e-7) * (1e-9 / Math.sinh(b * 5e8)) * b
    const stress = -Math.log(Math.exp(-b * 4e9) + (rate * 1e-6) / 2) / b
    expect(c.activatedPretensionLeft.si({ ...x, pretension: 2000, time: 1e-6 }).tension / (stress * 5e-7)).toBeCloseTo(1, 9)
  })
  test('heat has its sign: cold takes pretension from a cord in a printed frame, heat adds to it', () => {
    const held = {
      pretension: '60 N',
      axialRigidity: '20 kN',
      creepStrain: '0.1 %',
      frameExpansion: '70 ppm/K',
      cordExpansion: '-12 ppm/K',
    } as const
    // 20 kN × 82 ppm/K is 1.64 N/K on top of 60 − 20 N.
    expect(c.pretensionLeft({ ...held, temperatureRise: '10 K' }).tension.in('N')).toBeCloseTo(56.4, 9)
    expect(c.pretensionLeft({ ...held, temperatureRise: '-10 K' }).tension.in('N')).toBeCloseTo(23.6, 9)
    expect(c.pretensionLeft({ ...held, temperatureRise: '-30 K' })).toMatchObject({ state: 'slack', tension: { si: 0 } })
    expect(c.pretensionLeft({ pretension: '60 N', axialRigidity: '20 kN', creepStrain: '0.1 %' }).tension.in('N')).toBeCloseTo(40, 12)
  })
  test('logarithmic relaxation starts at the logarithmic creep', () => {
    const { tension } = c.logarithmicPretensionLeft.si({ pretension: 60, axialRigidity: 20000, perDecade: 1e-7, from: 1, to: 1000 })
    expect((60 - tension) / (20000 * c.logarithmicCreep.si({ perDecade: 1e-7, from: 1, to: 1000 }))).toBeCloseTo(1, 3)
  })
})

describe('parts', () => {
  test('heat enters the take-up only where it loosens', () => {
    const x = {
      workingLength: 0.45,
      pretension: 60,
      axialRigidity: 20000,
      beddingStrain: 0,
      creepStrain: 0,
      slack: 0,
      frameExpansion: 70e-6,
      cordExpansion: -12e-6,
    }
    const warm = c.takeUp.si({ ...x, temperatureRise: 30 })
    const cold = c.takeUp.si({ ...x, temperatureRise: -30 })
    expect(warm.total).toBeCloseTo(warm.elastic, 15)
    expect(cold.total).toBeCloseTo(cold.elastic + 0.45 * 30 * 82e-6, 15)
  })
  test('a tensioner’s gain is the slope of its take-up', () => {
    for (const method of ['endPull', 'spanIdler', 'returnIdler', 'centreDistance', 'splitDrum'] as const) {
      const at = (travel: number) => c.tensionerTakeUp.si({ method, travel, span: 0.03, centreDistance: 0.06 })
      expect(at(0.004).gain / ((at(0.00401).takeUp - at(0.00399).takeUp) / 2e-5)).toBeCloseTo(1, 6)
    }
  })
  test('open and crossed differ; overlapping pulleys are refused', () => {
    const x = { pinionRadius: '8 mm', drumRadius: '48 mm', centreDistance: '58 mm' } as const
    const [crossed, open] = [c.pulleyGeometry({ ...x, arrangement: 'crossed' }), c.pulleyGeometry({ ...x, arrangement: 'open' })]
    expect(crossed.pinionWrap.si).toBeGreaterThan(Math.PI)
    expect(open.pinionWrap.si).toBeLessThan(Math.PI)
    expect(crossed.span.si).toBeLessThan(open.span.si)
    const loads = { ...x, tautTension: '75 N', slackTension: '45 N' } as const
    expect(c.shaftForce({ ...loads, arrangement: 'open' }).alongCentres.si).toBeGreaterThan(
      c.shaftForce({ ...loads, arrangement: 'crossed' }).alongCentres.si,
    )
    for (const arrangement of ['crossed', 'open'] as const)
      expect(() => c.pulleyGeometry({ ...x, centreDistance: '56 mm', arrangement })).toThrow('overlap')
  })
  test('a drum without a bore bears the pressure itself, any bore doubles it', () => {
    const x = { tension: 60, centreLineRadius: 0.008, pitch: 0.0012, wallOuterRadius: 0.0075 }
    expect(c.drumHoop.si({ ...x, boreRadius: 0 }).boreHoopStress).toBeCloseTo(-6.25e6, 3)
    expect(c.drumHoop.si({ ...x, boreRadius: 1e-7 }).boreHoopStress).toBeCloseTo(-12.5e6, 0)
  })
  test('enough clamp load closes the layers, and exactly that', () => {
    const neck = {
      bendingMoment: 4,
      axialForce: 200,
      outerDiameter: 0.024,
      boreDiameter: 0.008,
      allowableAcrossLayers: 4e6,
      holeShare: 0.1,
    }
    const { clampToStayClosed } = c.delamination.si({ ...neck, clampLoad: 0 })
    expect(c.delamination.si({ ...neck, clampLoad: clampToStayClosed * 1.000001 }).state).toBe('closed')
    expect(c.delamination.si({ ...neck, clampLoad: clampToStayClosed * 0.999 }).state).toBe('heldByBond')
    expect(c.delamination.si({ ...neck, bendingMoment: 40, clampLoad: 0 }).state).toBe('splits')
  })
  test('the anchor feels at least the stored tension under a taut span, at most it under a slack one', () => {
    fc.assert(
      fc.property(between(1, 300), between(0.05, 0.4), between(0, 10), (spanTension, friction, wrapAngle) => {
        const pull = c.anchorPull.si({ spanTension, storedTension: 60, friction, wrapAngle })
        if (spanTension >= 60) expect(pull).toBeGreaterThanOrEqual(60 - 1e-9)
        else expect(pull).toBeLessThanOrEqual(60 + 1e-9)
      }),
    )
  })
})

test('the linear estimate of the pretension left is the low one', () => {
  fc.assert(
    fc.property(
      between(20, 500),
      between(5e3, 1e5),
      between(1e-6, 2e-3),
      between(1, 8),
      (pretension, axialRigidity, perDecade, decades) => {
        const later = c.logarithmicPretensionLeft.si({ pretension, axialRigidity, perDecade, from: 1, to: 10 ** decades })
        const low = c.pretensionLeft.si({
          pretension,
          axialRigidity,
          creepStrain: perDecade * decades,
          temperatureRise: 0,
          frameExpansion: 7e-5,
          cordExpansion: 0,
        })
        expect(low.tension).toBeLessThanOrEqual(later.tension * (1 + 1e-12))
      },
    ),
  )
})
