import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { compare, comparisonsOf } from '../../src/leg/assess/compare.js'
import type { CaseId } from '../../src/leg/cases/events.js'
import { ALL_CASE_IDS, describeLeg, type Leg, legNumbers, withFields } from '../../src/leg/index.js'
import { type LegModel, legModel } from '../../src/leg/leg-model.js'
import { CHECKS } from '../../src/leg/parts/index.js'
import { calculationFor, caseState } from '../../src/leg/what-if.js'
import { materialByName } from '../../src/materials/index.js'
import { driven } from './sideways-legs.js'

const read = (name: string) => describeLeg(readFileSync(new URL(`../../examples/${name}.yaml`, import.meta.url), 'utf8'))
const modelOf = (leg: Leg) => legModel(legNumbers(leg))

function sides(leg: LegModel, id: CaseId, check: string, joint = 'hip'): { demand: number; capacity: number } {
  const calculation = calculationFor(leg)
  const checks = CHECKS.filter((one) => one.id === check)
  const one = comparisonsOf(calculation, checks, [id]).find((found) => found.joint === joint)!
  const found = compare(calculation, one)
  if (typeof found === 'string') throw new Error(found)
  return found
}

describe('a landing comes in the middle of a walk', () => {
  const leg = modelOf(read('mudflat-leg-revised'))
  const { speedConstant } = leg.x.motors.main!
  // By hand: a peak phase current makes √3/2 of the line-to-line back-EMF constant as torque; magnets lose 0.11 % for each kelvin above 20 °C.
  const currentOf = (torque: number, can: number) => (2 / Math.sqrt(3)) * (torque / ((1 / speedConstant) * (1 - 0.0011 * (can - 293.15))))
  // The walks that leave a motor warm, in the air of the landing: still air for ordinary days.
  const AFTER = { hotDrop: ['hotAfternoon', 'hotWalkBack'], landing: ['walk', 'walkBack'], drop: ['walk', 'walkBack'] } as const
  const still = modelOf(withFields(read('mudflat-leg-revised'), { 'loadCases.airs.normal.wind': '0 m/s' }))

  test.each(Object.entries(AFTER))('%s takes its current with the magnets that a walk leaves', (id, walks) => {
    for (const joint of ['hip', 'knee'] as const) {
      const { heat } = caseState(still, id as CaseId).joints[joint]
      const cans = walks.map((walk) => caseState(still, walk).joints[joint].heat.can)
      expect(heat.current / currentOf(heat.motorTorque, Math.max(...cans))).toBeCloseTo(1, 9)
      expect(heat.can).toBe(Math.max(...cans))
    }
  })
  test('an air that moves cools the walk, and not the landing in still air', () => {
    const { landing, walk } = { landing: caseState(leg, 'landing').joints.knee.heat, walk: caseState(still, 'walk').joints.knee.heat }
    expect(landing.can).toBeGreaterThanOrEqual(walk.can)
  })
  test('first steps on a cold morning have cold motors, a landing in the cold has warm ones', () => {
    const [first, drop] = (['coldSteps', 'coldDrop'] as const).map((id) => caseState(leg, id).joints.knee.heat)
    expect(first!.can).toBe(caseState(leg, 'coldSteps').air)
    expect(drop!.can).toBeGreaterThan(first!.can + 1)
    expect(drop!.winding).toBeGreaterThan(drop!.can)
  })
  test('only first steps on a cold morning and the shelf have motors as cold as the air', () => {
    const cold = ALL_CASE_IDS.filter((id) => caseState(leg, id).joints.knee.heat.can === caseState(leg, id).air)
    expect(cold).toEqual(['coldMorning', 'coldSteps', 'coldStepsBack', 'shelf'])
  })
})

/** Share of a held stress that Findley's creep 1 + c (t / 1 h)^n leaves: the Mittag-Leffler function as a spectrum of decays (Gorenflo & Mainardi 1997). */
function kept(c: number, n: number, hours: number): number {
  let gamma = 0
  for (let x = 5e-5; x < 60; x += 1e-4) gamma += x ** n * Math.exp(-x) * 1e-4
  const late = (c * gamma * hours ** n) ** (1 / n)
  let sum = 0
  for (let u = -120; u < 40; u += 1e-3)
    sum += (Math.exp(n * u - late * Math.exp(u)) / (Math.exp(2 * n * u) + 2 * Math.exp(n * u) * Math.cos(n * Math.PI) + 1)) * 1e-3
  return (Math.sin(n * Math.PI) / Math.PI) * sum
}

describe('a ring that a press fit alone holds in print', () => {
  const polymer = 'PETG'
  const of = (name: string) => (materialByName(polymer) as unknown as Record<string, { si: number }>)[name]!.si
  const [c, n, energy] = [of('creepCoefficient'), of('creepExponent'), of('activationEnergy')]
  const faster = (celsius: number) => Math.exp((energy / 8.31446261815324) * (1 / 296.15 - 1 / (273.15 + celsius)))
  const build = (fields: object) =>
    modelOf(
      withFields(driven, {
        'environment.humidity': 0.1,
        'bearings.side': { size: '12x28x8', spacing: '60 mm', overhang: '30 mm', seatMaterial: polymer, seatInterference: '0.12 mm' },
        ...fields,
      } as never),
    )
  const leg = build({ 'loadCases.airs.normal.temperature': '20 degC', 'loadCases.airs.hot.temperature': '40 degC' })
  /** Hours at 23 °C that the fit has relaxed: a season in ordinary air or the time on the shelf, whichever is more, and a day of the afternoon. */
  const hours = (ordinary: number, model = leg) => {
    const { ages, airs } = model.x.loadCases
    const shelf = (ages.aged!.time / 3600) * faster(airs.shelf!.temperature - 273.15)
    return Math.max((ages.season!.time / 3600) * faster(Math.max(23, ordinary)), shelf) + 24 * faster(40)
  }
  const grow = (of('thermalExpansion') - 11.9e-6) * 28 * 20
  const thick = (outer: number, inner: number) => (outer ** 2 + inner ** 2) / (outer ** 2 - inner ** 2)
  const [left, fresh] = [kept(c, n, hours(20)), kept(c, n, faster(40))]

  test('holds with what a season and a year on the shelf leave of its press, and the heat of the afternoon takes', () => {
    // Lame: ring 28 mm, raceway at 0.3 of its section, housing half as wide again; what heat takes away is as stiff as after an hour.
    const modulus = of('modulus') * 1e-6 * fresh
    const interference = (0.12 * left) / fresh - grow
    const pressure =
      interference / 28 / ((thick(42, 28) + of('poissonRatio')) / modulus + (thick(28, (12 + 28) / 2 + 0.3 * 16) - 0.29) / 207e3)
    const { capacity } = sides(leg, 'hotAfternoon', 'sidewaysBearing.seatGrip')
    expect(capacity / (of('frictionOnSteel') * pressure * Math.PI * 28 * 8)).toBeCloseTo(1, 4)
  })
  test('loosens as soon as heat takes what relaxation leaves', () => {
    const { demand, capacity } = sides(leg, 'hotAfternoon', 'sidewaysBearing.seatLoose')
    expect(capacity / ((0.12e-3 * left) / fresh)).toBeCloseTo(1, 5)
    expect(demand / (grow * 1e-3)).toBeCloseTo(1, 5)
    // A day alone left this much more.
    expect(kept(c, n, 24 * faster(40)) / left).toBeGreaterThan(1.2)
  })
  test('has to hold the pull of a trot and of a slope as well, not that of a walk alone', () => {
    const pull = (id: CaseId) => sides(leg, id, 'sidewaysBearing.seatGrip').demand
    // The axis of the sideways hip points forward: the feet pull along it as they push and brake.
    for (const id of ['hotTrot', 'hotSlope', 'stall'] as const) expect(pull(id), id).toBeGreaterThanOrEqual(pull('hotAfternoon'))
    expect(pull('hotTrot')).toBeGreaterThan(1.4 * pull('hotAfternoon'))
  })
  test('relaxes faster in a warm room, and longer on a long stand', () => {
    const grip = (fields: object) => sides(build(fields), 'hotAfternoon', 'sidewaysBearing.seatGrip').capacity
    const usual = grip({})
    expect(grip({ 'loadCases.ages.aged.time': '5 year' })).toBeLessThan(0.95 * usual)
    expect(grip({ 'loadCases.ages.season.time': '300 day', 'loadCases.airs.normal.temperature': '33 degC' })).toBeLessThan(0.95 * usual)
    expect(grip({ 'loadCases.airs.normal.temperature': '5 degC' })).toBe(usual)
  })
})

test('a pin in its bosses has to hold what a trot and a slope drag at it, bolts what a stall does', () => {
  const leg = modelOf(read('mudflat-leg-revised'))
  const ofGrip = (id: CaseId) => sides(leg, id, 'boss.grip', 'knee').demand
  expect(ofGrip('hotTrot')).toBeGreaterThan(ofGrip('hotAfternoon'))
  expect(ofGrip('hotSlope')).toBeGreaterThan(0)
  for (const check of ['motorBolt.slip', 'stackBolt.slip', 'stackBolt.separation'])
    expect(sides(leg, 'stall', check).demand, check).toBeGreaterThan(0)
})

describe('bolts through print after the hottest days', () => {
  // Cold air as warm as the workshop: nothing shrinks, so that only what has crept counts.
  const leg = modelOf(withFields(read('mudflat-leg-first'), { 'loadCases.airs.cold.temperature': '20 degC' }))
  test('keep no more in the cold a year later than the creep of a year and of hot walks leaves', () => {
    // M4 8.8 at 0.8 N m through 15 mm of damp ASA with two washers: mm and N, as in leg-hand-checks.py.
    const modulus = 2100 * 0.94
    const H = 0.7 * (Math.sqrt(3) / 2)
    const [d2, d3] = [4 - (3 * H) / 4, 4 - (17 * H) / 12]
    const torquePerForce =
      (d2 / 2) * Math.tan(Math.atan(0.7 / (Math.PI * d2)) + Math.atan(0.14 / Math.cos(Math.PI / 6))) + (0.14 * (6.53 + 4.5)) / 4
    const preload = 800 / torquePerForce
    const [nominal, root] = [(Math.PI / 4) * 16, (Math.PI / 4) * d3 ** 2]
    const bolt = (1.6 / nominal + (15 + 1.6 + 2) / root + 1.6 / nominal) / 205e3
    const s = 2 * 7.5 * Math.tan(Math.PI / 6)
    const parts =
      (2 * Math.log(((s + 9 - 4.5) * (9 + 4.5)) / ((s + 9 + 4.5) * (9 - 4.5)))) / (Math.PI * modulus * 4.5 * Math.tan(Math.PI / 6))
    const settled = preload - 0.04 / (bolt + parts)
    const mounts = (['hotAfternoon', 'hotWalkBack'] as const).map((id) => caseState(leg, id).joints.hip.heat.mount - 273.15)
    const stack = (Math.max(...mounts) + 40) / 2
    const hours = (days: number) => 24 * days + 70 * Math.exp((150000 / 8.31446261815324) * (1 / 296.15 - 1 / (273.15 + stack)))
    const left = (days: number) => (settled * (bolt + parts)) / (bolt + parts * (1 + 0.155 * hours(days) ** 0.27))
    expect(sides(leg, 'drop', 'stackBolt.slip').capacity / (0.4 * left(70))).toBeCloseTo(1, 6)
    expect(sides(leg, 'coldDrop', 'stackBolt.slip').capacity / (0.4 * left(365.25))).toBeCloseTo(1, 6)
  })
  test('hold no load case better than the hot afternoon leaves them', () => {
    const most = (check: string, joint: string) => sides(leg, 'hotAfternoon', check, joint).capacity
    for (const [check, joint] of [
      ['stackBolt.slip', 'hip'],
      ['motorBolt.slip', 'hip'],
      ['motorBolt.slip', 'knee'],
    ] as const)
      for (const id of ['trot', 'drop', 'coldTrot', 'coldDrop', 'slope', 'coldSlope', 'season'] as const)
        expect(sides(leg, id, check, joint).capacity, `${check} ${id}`).toBeLessThanOrEqual(most(check, joint) * (1 + 1e-12))
  })
})
