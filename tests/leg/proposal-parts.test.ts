// The parts of the search for a leg, each by itself: goals and first sizes by hand, models and searches on margins that are written here.
import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { describeWish } from '../../src/leg/index.js'
import { motorMass } from '../../src/leg/proposal/document.js'
import { densityOf, pulleys, SINK } from '../../src/leg/proposal/document-parts.js'
import { plainGoals } from '../../src/leg/proposal/goals.js'
import { Judge, type JudgedLeg } from '../../src/leg/proposal/judge.js'
import { MarginModel, stepsTaken } from '../../src/leg/proposal/margin-model.js'
import { mendByModel, slimByModel } from '../../src/leg/proposal/model-search.js'
import { reasonsOf } from '../../src/leg/proposal/reasons.js'
import { mend, slim } from '../../src/leg/proposal/search.js'
import { LEVERS, type LegSizes, SIZES } from '../../src/leg/proposal/sizes.js'
import { startOf } from '../../src/leg/proposal/start.js'
import { Quantity } from '../../src/units/index.js'

const cellar = readFileSync(new URL('../../examples/wishes/cellar-inspector.yaml', import.meta.url), 'utf8')
const wish = describeWish(cellar)
const stock = { motor: 'can 54', cord: 'thin aramid', frame: 'PETG', drum: 'ASA' }
const sizes = startOf(wish, stock)

describe('goals of a leg', () => {
  const { mass, cost, printVolume } = plainGoals(wish, stock, sizes)

  test('each price counts with what is bought: two motors, the printed mass of each polymer', () => {
    const raised = (change: Partial<typeof wish>) => plainGoals({ ...wish, ...change }, stock, sizes).cost - cost
    const motor = { ...wish.motors['can 54']!, price: new Quantity(wish.motors['can 54']!.price.si + 1, 'ratio') }
    expect(raised({ motors: { 'can 54': motor } } as never)).toBeCloseTo(2, 9)
    const polymer = (name: string) =>
      ({ plastics: { ...wish.plastics, [name]: new Quantity(wish.plastics[name]!.si + 1, 'ratio') } }) as never
    // Drums: discs of 14 mm on the centre line of the cord.
    const drums = (['hip', 'knee'] as const).reduce(
      (sum, joint) => sum + Math.PI * pulleys(joint, 1.2e-3, sizes).drumRadius ** 2 * 0.014,
      0,
    )
    expect(raised(polymer('ASA')) / (drums * densityOf('ASA'))).toBeCloseTo(1, 6)
    const side = 0.054 + sizes.plateMargin
    const sinks = 2 * side ** 2 * sizes.sinkThickness * densityOf(SINK)
    const printed = mass - 2 * motorMass(wish, stock) - sinks
    expect(raised(polymer('PETG')) / (printed - drums * densityOf('ASA'))).toBeCloseTo(1, 6)
    expect(printVolume / (drums + (printed - drums * densityOf('ASA')) / densityOf('PETG'))).toBeCloseTo(1, 9)
  })

  test('what is printed is links, bosses, plates and drums: each size adds what it adds to them', () => {
    const volume = (change: Partial<LegSizes>) => plainGoals(wish, stock, { ...sizes, ...change }).printVolume - printVolume
    // Boxes as wide as three quarters of their depth, by outer less inner section.
    const box = (depth: number, wall: number) => 0.75 * depth ** 2 - (0.75 * depth - 2 * wall) * (depth - 2 * wall)
    const both = box(sizes.upperDepth, sizes.upperWall) + box(sizes.lowerDepth, sizes.lowerWall)
    expect(volume({ linkLength: sizes.linkLength + 0.01 }) / (0.01 * both)).toBeCloseTo(1, 6)
    const side = 0.054 + sizes.plateMargin
    expect(volume({ plateThickness: sizes.plateThickness + 1e-3 }) / (2e-3 * side ** 2)).toBeCloseTo(1, 6)
    // Two bosses to a joint, round a pin of 4 mm, which is the third in the list.
    const boss = (Math.PI / 4) * (sizes.kneeBoss * 4e-3) ** 2
    expect(volume({ kneeCheek: sizes.kneeCheek + 1e-3 }) / (2e-3 * boss)).toBeCloseTo(1, 6)
    expect(volume({ sinkThickness: 0 })).toBe(0)
  })
})

describe('the sizes that a search begins with', () => {
  const of = (change: (text: string) => string) => startOf(describeWish(change(cellar)), stock)
  test('a link is long enough for step and obstacle, and no longer than the bed', () => {
    // 1.3 steps of 80 mm are less than 110 mm; 2.2 obstacles of 30 mm and 60 mm are 126 mm.
    expect(sizes.linkLength).toBeCloseTo(0.126, 9)
    expect(of((text) => text.replace('stepLength: 80', 'stepLength: 110')).linkLength).toBeCloseTo(0.143, 9)
    expect(of((text) => text.replace('height: 30', 'height: 10')).linkLength).toBeCloseTo(0.11, 9)
    const most = of((text) => text.replace('stepLength: 80', 'stepLength: 300')).linkLength
    expect(most).toBeLessThan(0.2)
    expect(of((text) => text.replace('stepLength: 80', 'stepLength: 300').replace('bed: 200', 'bed: 230')).linkLength - most).toBeCloseTo(
      0.03,
      9,
    )
    expect(sizes.landing).toBeCloseTo(0.4 * 0.126, 9)
  })

  test('a heavy robot has thicker pins, cheeks and lugs', () => {
    const heavy = of((text) => text.replace('mass: 5 kg', 'mass: 20 kg'))
    expect([sizes.hipPin, sizes.kneePin, heavy.hipPin, heavy.kneePin]).toEqual([2, 2, 4, 4])
    for (const name of ['hipCheek', 'kneeCheek', 'hipLug', 'kneeLug', 'sidewaysHold'] as const)
      expect(heavy[name] / sizes[name], name).toBeCloseTo(2, 9)
  })

  test('its cords carry the torque of a landing, with their required reserve, and not several times of it', () => {
    // Two and a half times half of the weight, at six tenths of a link about the knee.
    const torque = (2.5 * 5 * 9.80665 * 0.6 * 0.126) / 2
    const { pinionRadius, ratio } = pulleys('knee', 1.2e-3, sizes)
    expect(ratio).toBeGreaterThanOrEqual(5)
    // A clamped cord hangs slack on one side where the other has twice its pretension.
    const slack = 2 * sizes.kneePretension * pinionRadius * ratio
    expect(slack).toBeGreaterThan(1.3 * torque)
    expect(slack).toBeLessThan(6 * torque)
    expect(sizes.hipPretension).toBe(sizes.kneePretension)
    // Whatever it weighs, as long as a drive is found: the same multiple of its torque, for the reserve, a season and a cold morning.
    const over = (kg: number) => {
      const own = of((text) => text.replace('mass: 5 kg', `mass: ${kg} kg`))
      const pulley = pulleys('knee', 1.2e-3, own)
      return (2 * own.kneePretension * pulley.pinionRadius * pulley.ratio) / ((torque * kg) / 5)
    }
    for (const kg of [2.5, 4, 5]) expect(Math.abs(over(kg) - 2.49)).toBeLessThan(0.05)
    // No drive fits a robot that is too heavy for the cord: it begins with usual sizes.
    expect(of((text) => text.replace('mass: 5 kg', 'mass: 9 kg'))).toMatchObject({ kneeRatio: 6, bendRatio: 10, kneePretension: 150 })
  })
})

test('a leg that contradicts itself is refused for the contradiction', () => {
  const judge = new Judge(wish, stock)
  const judged = judge.judge({ ...sizes, linkLength: 0.39 })
  expect(reasonsOf({ judge, stock, judged })).toEqual([`such a leg contradicts itself: ${judged.governing}`])
})

/** Steps of a size away from those that the search begins with. */
function stepsOf(from: LegSizes, to: LegSizes, name: keyof LegSizes): number {
  const { times, by } = LEVERS[name]
  return times === undefined ? (to[name] - from[name]) / by! : Math.log(to[name] / from[name]) / Math.log(times)
}

/** A judge of margins that are written here, by steps of each size. */
function judgeOf(marginsOf: (steps: (name: keyof LegSizes) => number) => Record<string, number> | undefined) {
  const seen: JudgedLeg[] = []
  const judge = {
    evaluations: 0,
    judge(to: LegSizes): JudgedLeg {
      judge.evaluations++
      const found = marginsOf((name) => stepsOf(sizes, to, name))
      const margins = new Map(Object.entries(found ?? {}))
      const short = [...margins].filter(([, margin]) => margin < 1).sort((a, b) => a[1] - b[1])
      const [governing, margin] = [...margins].reduce((a, b) => (b[1] < a[1] ? b : a), ['contradiction', found === undefined ? 0 : 9])
      const deficit = found === undefined ? 1e4 : short.reduce((sum, [, one]) => sum - Math.log(one), 0)
      const judged = { sizes: to, deficit, margin, governing, short, margins }
      seen.push(judged)
      return judged
    },
    goals: ({ sizes: own }: JudgedLeg) => ({ ...plainGoals(wish, stock, own), energyPerMetre: 1, margin: 1 }),
    goalOf: (goal: string, own: LegSizes) => (plainGoals(wish, stock, own) as unknown as Record<string, number>)[goal],
  }
  return { judge: judge as unknown as Judge, seen }
}

/** Margins as products of powers: what a model of their logarithms describes exactly. */
const powers = (steps: (name: keyof LegSizes) => number) => ({
  bends: 0.8 * Math.exp(0.1 * steps('upperDepth') + 0.05 * steps('upperWall')),
  heat: 0.9 * Math.exp(0.08 * steps('plateMargin') - 0.04 * steps('upperDepth')),
  slack: 1.2 * Math.exp(0.06 * steps('kneePretension')),
})

describe('a model of margins', () => {
  test('of products of powers its first leg has every margin that it aimed at, by the shortest steps', () => {
    const { judge, seen } = judgeOf(powers)
    const start = judge.judge(sizes)
    const model = new MarginModel(judge, start, 'both')
    expect(model.best.deficit).toBe(Math.min(...seen.map(({ deficit }) => deficit)))
    expect(model.best.deficit).toBeLessThan(start.deficit)
    const t = model.steps(start, { target: 0.005, reach: 6 })
    const tried = judge.judge(stepsTaken(sizes, t))
    for (const [name, margin] of tried.margins) expect(margin, name).toBeGreaterThan(0.995)
    expect(tried.margins.get('bends')).toBeLessThan(1.02)
    // What moves no margin that is short stays.
    for (const [j, name] of SIZES.entries())
      if (!['upperDepth', 'upperWall', 'plateMargin'].includes(name)) expect(t[j], name).toBeCloseTo(0, 9)
    // Of two sizes that serve alike the steeper one goes further.
    expect(t[SIZES.indexOf('upperDepth')]!).toBeGreaterThan(t[SIZES.indexOf('upperWall')]!)
    for (const step of model.steps(start, { target: 0.005, reach: 0.5 })) expect(Math.abs(step)).toBeLessThanOrEqual(0.5)
  })

  test('a leg that shows another slope corrects the model, which then finds the leg', () => {
    const bent = (steps: (name: keyof LegSizes) => number) => ({
      bends: 0.6 * Math.exp(0.1 * steps('upperDepth') - 0.004 * steps('upperDepth') ** 2),
    })
    const { judge } = judgeOf(bent)
    const start = judge.judge(sizes)
    const model = new MarginModel(judge, start, 'both')
    const missing = () => {
      const t = model.steps(start, { target: 0, reach: 12 })
      const tried = judge.judge(stepsTaken(sizes, t))
      model.learn(start, tried, t)
      return tried.deficit
    }
    const [first, second, third] = [missing(), missing(), missing()]
    expect(first).toBeGreaterThan(0.01)
    expect(second).toBeLessThan(first)
    expect(third).toBeLessThan(second)
  })

  test('mends a leg for the slopes of one side and a leg or two, and makes it lighter where no check is against it', () => {
    const { judge } = judgeOf(powers)
    const mended = mendByModel(judge, judge.judge(sizes), 1000, () => undefined)
    expect(mended.deficit).toBe(0)
    expect(judge.evaluations).toBeLessThan(SIZES.length + 6)
    const slimmed = slimByModel(judge, mended, 'mass', 1000)
    expect(slimmed.deficit).toBe(0)
    const mass = (of: JudgedLeg) => plainGoals(wish, stock, of.sizes).mass
    expect(mass(slimmed)).toBeLessThan(0.95 * mass(mended))
  })
})

describe('a search', () => {
  test('goes on size by size where the document contradicts itself, so that there is no margin to model', () => {
    const { judge } = judgeOf((steps) => (steps('bearingSpacing') > 0.5 ? { bends: 1.1 } : undefined))
    expect(mend(judge, sizes, 1, 1000).deficit).toBe(0)
  })

  test('moves two sizes at once where no single one helps, and gives up where nothing does', () => {
    const moved = (steps: (name: keyof LegSizes) => number) => SIZES.filter((name) => Math.abs(steps(name)) > 0.5).length
    const pair = judgeOf((steps) => (moved(steps) > 1 ? { bends: 1.1 } : undefined))
    expect(mend(pair.judge, sizes, 1, 2000).deficit).toBe(0)
    const none = judgeOf(() => undefined)
    const found = mend(none.judge, sizes, 1, 100_000)
    expect(found.sizes).toEqual(sizes)
    // Up to eight steps of each size, then 150 pairs, and the leg that it starts from.
    expect(none.judge.evaluations).toBeLessThanOrEqual(1 + 8 * SIZES.length + 150)
    expect(none.judge.evaluations).toBeGreaterThan(150)
  })

  test('ends at its budget, and gives the same leg for the same seed', () => {
    for (const budget of [1, 30, 200]) {
      const [one, other] = [judgeOf(() => ({ bends: 0.1 })), judgeOf(() => ({ bends: 0.1 }))]
      expect(mend(one.judge, sizes, 5, budget)).toEqual(mend(other.judge, sizes, 5, budget))
      expect(one.judge.evaluations).toBeLessThanOrEqual(Math.max(1, budget))
    }
  })

  test('makes a leg lighter while all checks hold, also where the models see nothing of it', () => {
    // The depth may fall by two steps and a half: a wall that no logarithm of a margin announces.
    const { judge } = judgeOf((steps) => ({ bends: steps('upperDepth') < -2.5 ? 0.5 : 1.05 }))
    const slimmed = slim(judge, judge.judge(sizes), 'mass', 1, 4000)
    expect(slimmed.deficit).toBe(0)
    expect(stepsOf(sizes, slimmed.sizes, 'upperDepth')).toBeLessThan(-1)
    expect(stepsOf(sizes, slimmed.sizes, 'upperDepth')).toBeGreaterThan(-2.5)
    expect(slimmed.sizes.plateThickness).toBeCloseTo(LEVERS.plateThickness.low, 9)
  })
})
