import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { logarithmicPretensionLeft } from '../../src/capstan/index.js'
import { compare, comparisonsOf } from '../../src/leg/assess/compare.js'
import { calculationOf } from '../../src/leg/calculation.js'
import {
  ALL_CASE_IDS,
  assess,
  CASE_IDS,
  type CaseId,
  describeLeg,
  governingReserve,
  htmlReport,
  type LegNumbers,
  legFormula,
  legNumbers,
  markdownReport,
} from '../../src/leg/index.js'
import { CHECKS } from '../../src/leg/parts/index.js'
import { strideLoads } from '../../src/leg/parts/motion/stride.js'
import { pretensionInMonth } from '../../src/leg/parts/transmission/pretension-left.js'
import { reservesOf } from './reserves-of.js'

const text = readFileSync(new URL('../../examples/mudflat-leg-revised.yaml', import.meta.url), 'utf8')
const revised = legNumbers(describeLeg(text))
const ALL = ALL_CASE_IDS
const G = 9.80665

/** A leg without weight, standing or walking. */
const light = {
  hipOffset: 0,
  upperLink: 0.15,
  lowerLink: 0.16,
  upperMass: 0,
  upperCentre: 0,
  lowerCentre: 0,
  upperInertia: 0,
  lowerInertia: 0,
  kneeRotorAtHip: 0,
  rotorCoupling: 0,
  lowerMass: 0,
  hipRotorInertia: 0,
  kneeRotorInertia: 0,
  knee: 'forward',
  height: 0.26,
  mass: 40 / G,
  gravity: G,
  legShare: 1,
  dutyFactor: 1,
  shape: 'rectangular',
  tractionLowest: 0,
  tractionHighest: 0,
  lateral: 0,
  speed: 0,
  stepLength: 0,
  clearance: 0,
  blocked: false,
  mayBreak: false,
} as const

test.each([0.335, 0.5, Number.NaN])('a landing over %s m, out of reach of the links, has no reserve', (travel) => {
  const numbers = structuredClone(revised)
  for (const event of [numbers.loadCases.events.hop, numbers.loadCases.events.drop]) (event as { travel: number }).travel = travel
  expect(governingReserve(revised, ALL).reserve).toBeGreaterThan(0)
  expect(governingReserve(numbers, ALL).reserve).toBe(0)
})

describe('torques of a pose and a stance against statics by hand', () => {
  test('a foot held sideways loads the sideways hip from either side', () => {
    // 40 N upright, a quarter of it across the leg, 260 mm below the axis and 45 mm beside it: moments 40 · 0.045 and 10 · 0.26 (computed).
    const { sidewaysTorque, hipTorque, kneeTorque, forward } = strideLoads.si({ ...light, hipOffset: 0.045, lateral: 0.25 })
    expect(sidewaysTorque).toBeCloseTo(40 * 0.045 + 10 * 0.26, 12)
    const straight = strideLoads.si({ ...light, hipOffset: 0.045 })
    expect([hipTorque, kneeTorque]).toEqual([straight.hipTorque, straight.kneeTorque])
    expect(forward).toBeCloseTo(10, 12)
  })

  test('an oblique landing loads hip and knee by its push along the ground', () => {
    // 132.3898 N on two feet, 0.3966908 of it forward, hip 290 mm high: hip 7.615082, knee 7.571378 N m (computed from moments about the joints).
    const landing = { ...light, mass: 132.3898 / 2 / G, height: 0.29, tractionLowest: -0.3966908, tractionHighest: 0.3966908 }
    const { hipTorque, kneeTorque } = strideLoads.si(landing)
    expect(Math.abs(hipTorque)).toBeCloseTo(7.615082, 4)
    expect(Math.abs(kneeTorque)).toBeCloseTo(7.571378, 4)
    // At the bottom, 210 mm, with the foot still under the hip: 5.51437 and 10.48982.
    const folded = strideLoads.si({ ...landing, height: 0.21 })
    expect(Math.abs(folded.hipTorque)).toBeCloseTo(5.51437, 4)
    expect(Math.abs(folded.kneeTorque)).toBeCloseTo(10.48982, 4)
  })

  test('knee torque of an upright force rises as the leg folds', () => {
    // |torque| = F l1 l2 sin(knee) / D: 80 N at 240 mm is 7.841751 N m (computed from statics).
    const folded = strideLoads.si({ ...light, mass: 80 / G, height: 0.24 })
    expect(Math.abs(folded.kneeTorque)).toBeCloseTo(7.841751, 6)
    fc.assert(
      fc.property(fc.double({ min: 0.06, max: 0.29, noNaN: true }), (height) => {
        const at = (h: number) => Math.abs(strideLoads.si({ ...light, height: h }).kneeTorque)
        expect(at(height)).toBeGreaterThan(at(height + 0.01) - 1e-12)
      }),
    )
  })

  test('force along the ground: moment about the hip is the force times the height', () => {
    const { hipTorque } = strideLoads.si({ ...light, tractionLowest: -0.25, tractionHighest: 0.25 })
    expect(Math.abs(hipTorque)).toBeCloseTo(40 * 0.25 * 0.26, 9)
  })

  test('a mirrored leg that walks backward has the same torques, and a wider traction none that is smaller', () => {
    const stance = { ...light, dutyFactor: 0.75, legShare: 0.75, stepLength: 0.1, speed: 0.1, blocked: true } as const
    const forward = strideLoads.si({ ...stance, tractionLowest: -0.1, tractionHighest: 0.25 })
    const mirrored = strideLoads.si({ ...stance, knee: 'backward', tractionLowest: -0.25, tractionHighest: 0.1 })
    const wider = strideLoads.si({ ...stance, tractionLowest: -0.25, tractionHighest: 0.25 })
    for (const name of ['hipTorque', 'kneeTorque', 'hipShaftRms', 'kneeShaftRms'] as const) {
      expect(Math.abs(mirrored[name])).toBeCloseTo(Math.abs(forward[name]), 12)
      expect(Math.abs(wider[name])).toBeGreaterThanOrEqual(Math.abs(forward[name]) - 1e-12)
    }
    expect(Math.abs(wider.kneeTorque)).toBeGreaterThan(Math.abs(forward.kneeTorque))
  })
})

type Writable<T> = { -readonly [N in keyof T]: Writable<T[N]> }
type Draft = Writable<LegNumbers>
type Change = (x: Draft, f: number) => void
type Of<T> = T[keyof T]
/** Every part of a section. */
const each =
  <S extends object>(section: (x: Draft) => S, change: (part: NonNullable<Of<S>>, f: number) => void): Change =>
  (x, f) => {
    for (const part of Object.values(section(x))) change(part, f)
  }
const eventNamed =
  (names: readonly string[], change: (event: { angle: number; height: number; time: number }, f: number) => void): Change =>
  (x, f) => {
    for (const name of names) change(x.loadCases.events[name] as never, f)
  }
const airNamed =
  (name: string, degrees: number): Change =>
  (x, f) => {
    ;(x.loadCases.airs[name] as { temperature: number }).temperature += degrees * (f - 1)
  }
type Cord = Extract<Draft['joints']['knee']['drive'], { kind: 'cord' }>
const drives = (change: (drive: Cord, f: number) => void): Change =>
  each(
    (x) => ({ hip: x.joints.hip, knee: x.joints.knee }),
    ({ drive }, f) => change(drive as Cord, f),
  )

/** Harder work, weather and loads, smaller and weaker parts: `f` from 1 up. No check may gain. */
const HARDER: Readonly<Record<string, Change>> = {
  'a heavier robot': (x, f) => {
    x.robot.mass *= f
  },
  'a higher centre of mass': (x, f) => {
    x.robot.centreOfMassHeight = (x.robot.centreOfMassHeight as number) * f
  },
  'feet closer together': (x, f) => {
    x.robot.hipSpacing /= f
    x.robot.hipTrack /= f
  },
  'more traction': each(
    (x) => x.gaits,
    (gait, f) => {
      gait.traction = { lowest: gait.traction.lowest * f, highest: gait.traction.highest * f }
    },
  ),
  'a steeper slope': eventNamed(['slopeUp', 'slopeDown'], (event, f) => {
    event.angle *= f
  }),
  'a higher drop': eventNamed(['drop'], (event, f) => {
    event.height *= f
  }),
  'a higher hop': eventNamed(['hop'], (event, f) => {
    event.height *= f
  }),
  'a longer stall': eventNamed(['stall'], (event, f) => {
    event.time *= f
  }),
  'standing longer': (x, f) => {
    x.usage.standingTime *= f
  },
  'walking longer': (x, f) => {
    x.usage.walkingTime *= f
  },
  'more strides': (x, f) => {
    x.usage.stridesPerDay *= f
  },
  'more days': (x, f) => {
    const season = x.loadCases.ages.season as { daysWalked: number; time: number }
    season.daysWalked *= f
    season.time *= f
  },
  'longer on the shelf': (x, f) => {
    ;(x.loadCases.ages.aged as { time: number }).time *= f
  },
  'a warmer shelf': airNamed('shelf', 20),
  'hotter air': airNamed('hot', 20),
  'colder air': airNamed('cold', -20),
  'less wind': each(
    (x) => x.loadCases.airs,
    (air, f) => {
      air.wind /= f
    },
  ),
  'thinner air': (x, f) => {
    x.environment.altitude += 1000 * (f - 1)
  },
  'less cooling': (x, f) => {
    const { low, typical, high } = x.environment.coolingFactor
    x.environment.coolingFactor = { low: low / f, typical: typical / f, high: high / f }
  },
  'losses in the drives': drives((drive, f) => {
    drive.efficiency /= f
  }),
  'a softer supply': (x, f) => {
    x.supply.internalResistance *= f
  },
  'an emptier supply': (x, f) => {
    x.supply.voltage /= f
  },
  'a smaller fuse': (x, f) => {
    x.supply.currentLimit /= f
  },
  'a weaker controller': each(
    (x) => x.controllers,
    (controller, f) => {
      controller.currentLimit /= f
      controller.onResistance *= f
    },
  ),
  'a worse way out of the winding': each(
    (x) => x.motors,
    (motor, f) => {
      motor.windingToMount *= f
    },
  ),
  'a slower loop and bus': each(
    (x) => x.controllers,
    (controller, f) => {
      controller.loopRate /= f
      controller.busDelay += 0.001 * (f - 1)
    },
  ),
  'shallower holes in the motor': each(
    (x) => x.motors,
    (motor, f) => {
      if (motor.tapDepth !== undefined) motor.tapDepth /= f
    },
  ),
  'more inductance': each(
    (x) => x.motors,
    (motor, f) => {
      motor.phaseInductance *= f
    },
  ),
  'holes that scatter more, nearer to the edge': each(
    (x) => x.bosses,
    (boss, f) => {
      boss.holeScatter *= f
      boss.edgeDistance /= f
    },
  ),
  'smaller anchors and tensioners': drives((drive, f) => {
    drive.anchor.edgeDistance /= f
    drive.anchor.postLength /= f
    drive.tensioner.travel /= f
  }),
  'thinner links': (x, f) => {
    for (const { section } of [x.links.upper, x.links.lower]) {
      section.wall /= f
      const { box } = section
      if (box !== undefined) for (const side of Object.keys(box)) (box as Record<string, number>)[side]! /= f
    }
  },
  'a longer arm of the stack': (x, f) => {
    ;(x.bolts.stack?.pattern as { leverArm: number }).leverArm *= f
  },
  'a smaller circle of motor bolts': (x, f) => {
    ;(x.bolts.motor?.pattern as { diameter: number }).diameter /= f
  },
  'a thinner cap and less thread in the shaft': each(
    (x) => x.shafts,
    (shaft, f) => {
      shaft.capThickness /= f
      shaft.innerEngagement /= f
    },
  ),
  'narrower toes': (x, f) => {
    ;(x.foot as { width: number }).width /= f
  },
  'sparser prints': each(
    (x) => x.prints,
    (print, f) => {
      print.walls = Math.floor(print.walls / f)
      print.infill /= f
    },
  ),
}

/**
 * What is not monotone, with the reason, and how far it may rise. Feet closer together bear more on slopes, and fail there first. On the level the weight
 * only passes from foot to foot at other times of the stance: the heat of a level walk falls by some hundredths where it decides, and with it what the magnets of a
 * landing lose, and what warm layers add to their bolts.
 */
const MAY_RISE: Readonly<Record<string, { readonly checks: readonly string[]; readonly by: number }>> = {
  'feet closer together': {
    // On the level the weight only passes to other times of the stance; a stall begins as warm as that walk leaves it.
    checks: [
      'stackBolt.headPressure',
      'stackBolt.overload',
      ...['motor.current', 'motor.winding', 'motor.magnet', 'motor.touch', 'motor.plate', 'cord.heat', 'controller.heat'].flatMap((id) => [
        `${id} hip`,
        `${id} knee`,
      ]),
    ],
    by: 0.06,
  },
}

const TEXTS = ['../../examples/mudflat-leg-first.yaml', '../../examples/mudflat-leg-revised.yaml', './legs/workbench.yaml']
describe.each(TEXTS)('nothing bad raises a reserve: %s', (file) => {
  const numbers = legNumbers(describeLeg(readFileSync(new URL(file, import.meta.url), 'utf8')))
  const reserves = reservesOf(numbers)
  const before = reserves(numbers)

  test.each(Object.entries(HARDER))('%s', (name, change) => {
    const exempt = MAY_RISE[name]
    fc.assert(
      fc.property(fc.double({ min: 1.001, max: 1.5, noNaN: true }), (f) => {
        const harder = structuredClone(numbers) as Draft
        change(harder, f)
        const after = reserves(harder as LegNumbers)
        for (const [key, reserve] of before) {
          const rise = exempt?.checks.includes(key) ? exempt.by : 1e-9
          if (after.has(key)) expect(after.get(key), key).toBeLessThanOrEqual(reserve * (1 + rise))
        }
      }),
      { numRuns: 2 },
    )
  })
})

describe('cold, heat and age', () => {
  test('cold air and an aged cord together take more from the slack limit than either alone', () => {
    const calculation = calculationOf(revised)
    const slack = CHECKS.filter(({ id }) => id === 'cord.slack')
    const at = (id: CaseId) => {
      const [one] = comparisonsOf(calculation, slack, [id]).filter(({ joint }) => joint === 'knee')
      const found = compare(calculation, one!)
      if (typeof found === 'string') throw new Error(found)
      return found.reserve
    }
    expect(at('coldDrop')).toBeLessThan(at('drop'))
  })

  test('pretension falls by equal creep in each decade of its first year, as the law of the cord module', () => {
    for (const left of [0.3, 0.75, 0.95])
      for (const months of [0.1, 1, 3, 12]) {
        const share = (perDecade: number, to: number) =>
          logarithmicPretensionLeft.si({ pretension: 200, axialRigidity: 20_000, from: 3600, to, perDecade }).share
        const perDecade = (1 / left - 1) / (1 / share(1, 31_557_600) - 1)
        expect(pretensionInMonth(200, left, months)).toBeCloseTo(200 * share(perDecade, (months / 12) * 31_557_600), 9)
      }
    expect(pretensionInMonth(200, 0.75, 0)).toBe(200)
    expect(pretensionInMonth(200, 0.75, 36)).toBeCloseTo(200 * 0.75 ** 3, 12)
  })
})

describe('an assessment', () => {
  const workbench = describeLeg(readFileSync(new URL('./legs/workbench.yaml', import.meta.url), 'utf8'))
  const all = assess(workbench)

  test('runs every load case unless some are named, and so do the fast and the swept form', () => {
    expect(all.cases.map(({ id }) => id)).toEqual(ALL_CASE_IDS)
    const worst = all.governing
    expect(governingReserve(legNumbers(workbench)).case).toBe(worst.case)
    expect(legFormula(workbench)({}).si).toBe(worst.reserve / worst.requiredReserve)
  })

  test('finds what one load case of each sort leaves out: a leg that fails at the end of a landing in the cold', () => {
    const some = assess(workbench, { cases: CASE_IDS })
    expect(some.checks.find(({ id, joint }) => id === 'cord.slack' && joint === 'knee')?.reserve).toBeGreaterThan(1)
    const slack = all.checks.find(({ id, joint }) => id === 'cord.slack' && joint === 'knee')
    expect(slack?.case).toBe('coldDrop')
    expect(slack?.reserve).toBeLessThan(1)
    for (const check of some.checks) {
      const same = all.checks.find(({ id, joint }) => id === check.id && joint === check.joint)
      expect(same?.reserve, check.id).toBeLessThanOrEqual(check.reserve)
    }
  })

  test('both reports hold a governing load case, with its picture', () => {
    for (const page of [markdownReport(all), htmlReport(all)]) {
      expect(page).toContain('End of a landing in the cold, after a year')
      expect(page.replace(/<script[\s\S]*?<\/script>/g, '')).not.toMatch(/undefined|NaN/)
    }
  })
})

describe('torques at the ends of a stance', () => {
  test('are those of the leg held there, and the middle of half a sine is its peak', () => {
    const stance = { ...light, dutyFactor: 0.75, legShare: 0.75, stepLength: 0.1, speed: 0.1, blocked: true } as const
    const whole = strideLoads.si({ ...stance, tractionLowest: -0.25, tractionHighest: 0.25 })
    // Upright force times distance, and force along the ground times height: 40 N, 50 mm, a quarter of 40 N, 260 mm.
    expect(Math.abs(whole.hipTorque)).toBeCloseTo(40 * 0.05 + 10 * 0.26, 9)
    // Knee of 0.15/0.16 m with its foot 50 mm behind, braking: 5.414183 N m (computed from statics).
    expect(Math.abs(whole.kneeTorque)).toBeCloseTo(5.414183, 6)
    const trot = strideLoads.si({ ...stance, shape: 'halfSine' })
    expect(trot.vertical).toBeCloseTo(((Math.PI / 2) * 40 * 0.75) / 0.75, 9)
  })
})
