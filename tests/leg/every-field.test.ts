import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  ALL_CASE_IDS,
  assess,
  type CaseId,
  checkReserves,
  describeLeg,
  type LegNumbers,
  legNumbers,
  withFields,
} from '../../src/leg/index.js'
import { DIRECTIONS, type Direction, patternOf } from './directions.js'
import { geared } from './gear-legs.js'
import { reservesOf } from './reserves-of.js'
import { besideLinks, flattened, ownBearings, singleBearings } from './rod-bearing-legs.js'
import { driven } from './sideways-legs.js'
import { balancedAndSprung } from './sprung-legs.js'
import { beltRevised, cordKnee, sprungBelt } from './through-legs.js'

const read = (name: string) => describeLeg(readFileSync(new URL(`../../examples/${name}.yaml`, import.meta.url), 'utf8'))
const revised = legNumbers(read('mudflat-leg-revised'))

/** The mudflat walker with bonded ends on its cords, and pulleys by the radius of their cord. */
const bonded = withFields(read('mudflat-leg-revised'), {
  ends: { glued: { length: '12 mm', socketDiameter: '2.4 mm', adhesive: 'toughened epoxy', adhesiveShearModulus: '0.2 GPa' } },
  'joints.hip.drive.ends': 'bondedFerrule',
  'joints.hip.drive.end': 'glued',
  'joints.knee.drive.ends': 'bondedFerrule',
  'joints.knee.drive.end': 'glued',
  'joints.hip.drive.pinion': { centreLineRadius: '8 mm', turns: 3, length: '14 mm' },
  'joints.hip.drive.drum': { centreLineRadius: '49.6 mm', material: 'PC', bore: '22 mm', length: '14 mm', groovePitch: '2 mm' },
})

type Place = readonly string[]
const placesOf = (x: unknown, at: Place = []): Place[] => {
  if (typeof x === 'number') return [at]
  return typeof x !== 'object' || x === null ? [] : Object.entries(x).flatMap(([name, value]) => placesOf(value, [...at, name]))
}
const numberAt = (x: unknown, place: Place) => place.reduce((of, name) => (of as Record<string, unknown>)[name], x) as number
const putting = (x: LegNumbers, place: Place, number: number): LegNumbers => {
  const copy = structuredClone(x) as unknown
  const section = place.slice(0, -1).reduce((of, name) => (of as Record<string, unknown>)[name], copy)
  ;(section as Record<string, number>)[place.at(-1) as string] = number
  return copy as LegNumbers
}

/** Fields that count things, and those that begin at nothing: the step by which they are made worse. */
const STEPS: Readonly<Record<string, number>> = {
  'bolts.*.count': 1,
  'foot.count': 1,
  'prints.*.walls': 1,
  'belts.*.mostTeeth': 3,
  'belts.*.leastTeeth': 1,
  'loadCases.events.drop.feet': 1,
  'robot.centreOfMassLeft': 0.01,
  'joints.*.through.planeOffset': 0.004,
  'joints.*.through.pinPlanesApart': 0.004,
  'joints.*.through.step': 0.004,
  'joints.*.drive.inertia': 1e-5,
}
/** A field made worse by some per cent; undefined where it can get no worse. */
function worsened(x: LegNumbers, place: Place, worse: 'more' | 'less' | 'away', share: number): LegNumbers | undefined {
  const [pattern, now] = [patternOf(place), numberAt(x, place)]
  // Of a temperature, so many hundredths of 100 K.
  const step = STEPS[pattern] ?? (pattern.endsWith('temperature') ? 100 : Math.abs(now)) * share
  const sign = worse === 'more' || (worse === 'away' && now >= 0) ? 1 : -1
  // One cheek is the least.
  if (pattern.endsWith('cheeks')) return now === 1 ? undefined : putting(x, place, 1)
  if (step === 0) return /wind|elevat/.test(pattern) && worse === 'less' ? undefined : putting(x, place, now + sign * share * 0.1)
  return putting(x, place, now + sign * step)
}

const HOPS: readonly CaseId[] = ['hop', 'coldHop']
/** Reserves by field: a hop is easier than a drop, and is looked at by itself. */
function readers(x: LegNumbers) {
  const [all, hops] = [reservesOf(x, ALL_CASE_IDS), reservesOf(x, HOPS)]
  const before = { all: all(x), hops: hops(x) }
  return (place: Place) => {
    const which = patternOf(place).startsWith('loadCases.events.hop') ? 'hops' : 'all'
    return { reserves: which === 'hops' ? hops : all, before: before[which] }
  }
}

/** What rose and what fell after a field got worse. */
function moved(
  read: ReturnType<typeof readers>,
  x: LegNumbers,
  place: Place,
  direction: Extract<Direction, { except?: object }>,
  share: number,
) {
  const harder = worsened(x, place, direction.worse, share)
  if (harder === undefined) return undefined
  const { reserves, before } = read(place)
  const after = reserves(harder)
  const except = Object.keys(direction.except ?? {})
  const changes = [...before]
    .filter(([key]) => after.has(key))
    .map(([key, reserve]) => ({ key, by: (after.get(key) as number) / reserve - 1 }))
  return {
    rose: changes
      .filter(({ key, by }) => by > 1e-9 && !except.includes(key.split(' ')[0] as string))
      .map(({ key, by }) => `${key} by ${by}`),
    fell: changes.filter(({ by }) => by < -1e-9).length,
  }
}

const isDirected = (direction: Direction | undefined): direction is Extract<Direction, { except?: object }> =>
  direction !== undefined && 'worse' in direction && !('moves' in direction)

const LEGS: readonly (readonly [name: string, x: LegNumbers])[] = [
  ['mudflat', revised],
  ['heath', legNumbers(read('heath-leg-revised'))],
  ['desk', legNumbers(read('desk-leg-revised'))],
  ['orchard', legNumbers(read('orchard-leg-revised'))],
  ['geared', legNumbers(geared)],
  ['driven sideways', legNumbers(driven)],
  ['sprung', legNumbers(balancedAndSprung)],
  ['rod beside the links', legNumbers(flattened)],
  ['rod on single bearings', legNumbers(singleBearings)],
  ['rod on bearings of its own', legNumbers(ownBearings)],
  ['belt through the hip', legNumbers(beltRevised)],
  ['cord through the hip', legNumbers(cordKnee)],
  ['sprung belt through the hip', legNumbers(sprungBelt)],
  ['bonded', legNumbers(bonded)],
]

describe('the direction of every number of a leg', () => {
  test.each(LEGS)('each number of the %s leg is in the table', (_, x) => {
    expect(
      placesOf(x)
        .filter((place) => DIRECTIONS[patternOf(place)] === undefined)
        .map(patternOf),
    ).toEqual([])
  })

  test('the table holds no field that no leg has', () => {
    const patterns = new Set(LEGS.flatMap(([, x]) => placesOf(x).map(patternOf)))
    expect(Object.keys(DIRECTIONS).filter((pattern) => !patterns.has(pattern))).toEqual([])
  })
})

/** Legs of the examples and their drives; the others have every field of their own parts tried below. */
const SEARCHED = new Set(['mudflat', 'heath', 'desk', 'orchard', 'geared', 'driven sideways'])

/** Fields that move no reserve of the mudflat leg: something else decides there. */
const DECIDED_ELSEWHERE: Readonly<Record<string, string>> = {
  'plates.bodyPlate.emissivity': 'its sink covers it',
  'plates.kneePlate.emissivity': 'its sink covers it',
  'gaits.trot.lateral': 'the walk across a slope pushes harder across the leg',
  'usage.standingTime': 'a season of walking is longer',
}

describe('no field that gets worse raises a reserve', () => {
  const sections = ['robot', 'joints', 'links', 'motors', 'plates', 'loadCases', 'the rest']
  const read = readers(revised)
  const directed = placesOf(revised).filter((place) => isDirected(DIRECTIONS[patternOf(place)]))
  test.each(sections)('%s of the revised mudflat leg', (section) => {
    const some = directed.filter(([name]) => (sections.includes(name as string) ? name === section : section === 'the rest'))
    expect(some.length).toBeGreaterThan(2)
    const rose: string[] = []
    const still: string[] = []
    for (const place of some) {
      const found = moved(read, revised, place, DIRECTIONS[patternOf(place)] as never, 0.05)
      if (found === undefined) continue
      if (found.rose.length > 0) rose.push(`${place.join('.')}: ${found.rose.join(', ')}`)
      if (found.fell === 0) still.push(place.join('.'))
    }
    expect(rose).toEqual([])
    expect(still.filter((name) => DECIDED_ELSEWHERE[name] === undefined)).toEqual([])
  })

  test('every number of a bonded end', () => {
    const x = legNumbers(bonded)
    const readBonded = readers(x)
    for (const place of placesOf(x).filter(([name]) => name === 'ends')) {
      const found = moved(readBonded, x, place, DIRECTIONS[patternOf(place)] as never, 0.05)
      expect(found?.rose, place.join('.')).toEqual([])
      expect(found?.fell, place.join('.')).toBe(2)
    }
  })

  test.each(LEGS)('fields of the %s leg, drawn at random', (name, x) => {
    const read = readers(x)
    const some = placesOf(x).filter((place) => isDirected(DIRECTIONS[patternOf(place)]))
    fc.assert(
      fc.property(fc.constantFrom(...some), fc.double({ min: 0.001, max: 0.3, noNaN: true }), (place, share) => {
        const found = moved(read, x, place, DIRECTIONS[patternOf(place)] as never, share)
        expect(found?.rose ?? [], place.join('.')).toEqual([])
      }),
      { numRuns: SEARCHED.has(name) ? 12 : 6 },
    )
  })
})

describe('no field of the parts that the mudflat leg lacks raises a reserve where it gets worse', () => {
  const has = new Set(placesOf(revised).map(patternOf))
  test.each(LEGS.slice(1))('%s', (_, x) => {
    const some = placesOf(x).filter((place) => !has.has(patternOf(place)) && isDirected(DIRECTIONS[patternOf(place)]))
    const read = readers(x)
    const rose = some.flatMap((place) => {
      const found = moved(read, x, place, DIRECTIONS[patternOf(place)] as never, 0.05)
      return found === undefined || found.rose.length === 0 ? [] : [`${place.join('.')}: ${found.rose.join(', ')}`]
    })
    expect(rose).toEqual([])
  })
})

type Change = Readonly<Record<string, unknown>>
const changed = (leg: ReturnType<typeof read>, change: Change) => withFields(leg, change as never)

describe('fields that move ranges and the foot', () => {
  const leg = read('mudflat-leg-revised')
  const cases: readonly CaseId[] = ['walk', 'coldDrop', 'hotDrop']
  const worst = (of: typeof leg) =>
    new Map(assess(of, { cases }).checks.map(({ id, joint, range }) => [`${id} ${joint ?? ''}`, range.worst as number]))
  const before = worst(leg)
  // A cord presses hardest at some friction inside the range: its checks are off by less than this at the ends.
  const INSIDE = 0.002
  test.each<[string, Change]>([
    ['friction of the hip', { 'joints.hip.drive.friction': { low: 0.05, typical: 0.14, high: 0.26 } }],
    ['friction of the knee', { 'joints.knee.drive.friction': { low: 0.05, typical: 0.14, high: 0.26 } }],
    ['pretension that is left', { 'cords.braid.pretensionLeft': { low: 0.7, typical: 0.9, high: 0.99 } }],
    ['cooling', { 'environment.coolingFactor': { low: 0.6, typical: 1, high: 1.5 } }],
    ['friction on the ground', { 'foot.groundFriction': { low: 0.2, typical: leg.foot.groundFriction.typical, high: 0.95 } }],
    ['setting of the hip', { 'joints.hip.drive.pretensionScatter': 0.15 }],
    ['setting of the knee', { 'joints.knee.drive.pretensionScatter': 0.15 }],
  ])('a wider range of %s raises the worst reserve of no check, and lowers some', (name, change) => {
    const by = /^friction of/.test(name) ? INSIDE : 1e-6
    const after = worst(changed(leg, change))
    const rose = [...before].filter(([key, reserve]) => (after.get(key) as number) > reserve * (1 + by))
    expect(rose).toEqual([])
    expect([...before].some(([key, reserve]) => (after.get(key) as number) < reserve * (1 - 1e-6))).toBe(true)
  })

  test.each<[string, typeof leg, Change]>([
    ['friction', cordKnee, { 'joints.knee.through.friction': { low: 0.05, typical: 0.14, high: 0.26 } }],
    ['setting', cordKnee, { 'joints.knee.through.pretensionScatter': 0.3 }],
    ['setting', beltRevised, { 'joints.knee.through.pretensionScatter': 0.35 }],
    ['the clamp load that is left', besideLinks, { 'shafts.hipShaft.stack.clampLeft': { low: 0.25, typical: 0.55, high: 0.9 } }],
  ])('a wider range of %s of the other parts does no better', (name, of, change) => {
    const worstOf = (one: typeof leg) =>
      new Map(
        assess(one, { cases: name === 'the clamp load that is left' ? ['walk'] : ['coldDrop'] }).checks.map(({ id, joint, range }) => [
          `${id} ${joint ?? ''}`,
          range.worst as number,
        ]),
      )
    const [narrow, wide] = [worstOf(of), worstOf(changed(of, change))]
    const by = name === 'friction' ? INSIDE : 1e-6
    expect([...narrow].filter(([key, reserve]) => (wide.get(key) as number) > reserve * (1 + by))).toEqual([])
    expect([...narrow].some(([key, reserve]) => (wide.get(key) as number) < reserve * (1 - 1e-6))).toBe(true)
  })

  const error = (of: typeof leg) => assess(of, { cases: ['stand'] }).foot.error.together.worstCorner.si
  test.each<[string, typeof leg, Change]>([
    ['runout', leg, { 'joints.knee.drive.drum.runout': '0.4 mm' }],
    ['runout of the drum on the knee', cordKnee, { 'joints.knee.through.kneeDrum.runout': '0.4 mm' }],
    ['encoder counts', leg, { 'motors.main.encoderCounts': 256 }],
    ['encoder accuracy', leg, { 'motors.main.encoderAccuracy': '2 deg' }],
    ['backlash', geared, { 'joints.knee.drive.backlash': '0.4 mm' }],
    ['clearance of a belt', read('orchard-leg-revised'), { 'belts.wide.clearance': '0.2 mm' }],
  ])('worse %s moves the foot farther', (_, of, change) => {
    expect(error(changed(of, change))).toBeGreaterThan(error(of))
  })
})

describe('fields that act in other legs', () => {
  const leg = read('mudflat-leg-revised')
  const reserve = (of: typeof leg, id: string, cases: readonly CaseId[]) =>
    Math.min(...[...checkReserves(legNumbers(of), cases)].filter(([key]) => key.startsWith(id)).map(([, found]) => found))

  test.each([
    ['hip', { lowest: '-85 deg', highest: '20 deg' }],
    ['hip', { lowest: '-55 deg', highest: '45 deg' }],
    ['knee', { lowest: '20 deg', highest: '125 deg' }],
  ])('a limit of the %s nearer to the stride leaves less room: %j', (joint, range) => {
    const room = (of: typeof leg) => reserve(of, `leg.range ${joint}`, ALL_CASE_IDS)
    expect(room(changed(leg, { [`joints.${joint}.range`]: range }))).toBeLessThanOrEqual(room(leg))
  })

  test('damp air weakens a polyamide', () => {
    const damp = (humidity: number) => changed(leg, { 'links.lower.material': 'PA-CF', 'environment.humidity': humidity })
    const [dry, wet] = [0.3, 0.9].map((humidity) => reserve(damp(humidity), 'lowerLink.bending', ['drop']))
    expect(wet).toBeLessThan(dry as number)
  })

  test('sparser infill holds threads and seats worse', () => {
    const sparse = (infill: number) =>
      reserve(changed(leg, { 'prints.default.infill': infill, 'prints.default.walls': 2 }), 'boss.zone', ['stand'])
    expect(sparse(0.1)).toBeLessThanOrEqual(sparse(0.9))
  })

  test('clamped prints without sleeves relax the longer, the more', () => {
    const bare = (time: string) =>
      changed(leg, { 'bolts.stack.sleeves': false, 'loadCases.ages.season.time': time, 'loadCases.ages.season.daysWalked': 70 })
    const [short, long] = ['70 day', '700 day'].map((time) => reserve(bare(time), 'stackBolt.separation', ['season', 'walk']))
    expect(long).toBeLessThan(short as number)
  })
})
