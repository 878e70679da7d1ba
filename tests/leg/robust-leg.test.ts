// A leg made robust, with search and verdict of a draw replaced by rules that are written here: a draw breaks a leg that is not strong enough for its friction.
import { readFileSync } from 'node:fs'
import { beforeEach, describe, expect, test, vi } from 'vitest'
import { type Assessment, describeWish, legCorrelations, legFormula } from '../../src/leg/index.js'
import { legDocument } from '../../src/leg/proposal/document.js'
import { Judge, type JudgedLeg } from '../../src/leg/proposal/judge.js'
import { type ProposedLeg, proposedLeg } from '../../src/leg/proposal/proposed-leg.js'
import { robustBy } from '../../src/leg/proposal/robust-leg.js'
import type { LegSizes } from '../../src/leg/proposal/sizes.js'
import { startOf } from '../../src/leg/proposal/start.js'
import { leastShare, mostFailures, scenarios } from '../../src/study/index.js'

/** Wall that the search makes of a wall, when it mends and when it makes lighter. */
let steps: { mend: (wall: number, worst: number) => number; slim: (wall: number) => number }
let verdict: object
/** Strength that the worst draw needs of those that a leg must bear. */
let worst = 0

const judgedAs = (judge: Judge, sizes: LegSizes): JudgedLeg => {
  judge.evaluations++
  return { sizes, deficit: 0, margin: 1, governing: '', short: [], margins: new Map() }
}
const means = {
  mend: (judge: Judge, sizes: LegSizes) => judgedAs(judge, { ...sizes, upperWall: steps.mend(sizes.upperWall, worst) }),
  slim: (judge: Judge, { sizes }: JudgedLeg) => judgedAs(judge, { ...sizes, upperWall: steps.slim(sizes.upperWall) }),
  assess: () => verdict as Assessment,
}

const wish = describeWish(readFileSync(new URL('../../examples/wishes/cellar-inspector.yaml', import.meta.url), 'utf8'))
const stock = { motor: 'can 54', cord: 'thin aramid', frame: 'PETG', drum: 'PETG' }
const start = startOf(wish, stock)
const leg = new Judge(wish, stock).leg(start)

/** Draws of the leg's uncertain values, and the wall that each needs: its friction among three hundred others, from 0 to 1. */
const [formula, correlations] = [legFormula(leg), legCorrelations(leg)]
const drawsOf = (seed: number, count: number) => {
  const { draw } = scenarios(formula, {}, { seed, correlations })
  return Array.from({ length: count }, (_, k) => draw(k))
}
const frictionOf = (values: unknown) => (values as { joints: { knee: { drive: { friction: number } } } }).joints.knee.drive.friction
const all = drawsOf(77, 300)
  .map(frictionOf)
  .sort((a, b) => a - b)
const needed = (values: unknown) => all.filter((one) => one < frictionOf(values)).length / all.length
const brokenBy = (wall: number, seed: number, draws: number) =>
  drawsOf(seed, draws)
    .map(needed)
    .filter((need) => need > wall).length

const walls = new WeakMap<object, number>()

const DRAWS = 60
const proposedWith = (wall: number): ProposedLeg => {
  const sizes = { ...start, upperWall: wall }
  const goals = { mass: 2 * wall, energyPerMetre: wall, printVolume: 1 + wall, cost: 3, margin: 1 }
  return { title: 'lightest', stock, sizes, goals, document: legDocument(wish, stock, start), leg, boundBy: [] } as never
}
const robust = (wall: number, options: object = {}) =>
  robustBy(means, wish, proposedWith(wall), { draws: DRAWS, chance: 0.6, evaluations: 10, ...options })

beforeEach(() => {
  vi.spyOn(Judge.prototype, 'judge').mockImplementation(function (this: Judge, sizes) {
    return judgedAs(this, sizes)
  })
  vi.spyOn(Judge.prototype, 'leg').mockImplementation((sizes) => {
    const made = { ...leg }
    walls.set(made, sizes.upperWall)
    return made
  })
  vi.spyOn(Judge.prototype, 'under').mockImplementation((made, values) => {
    const deficit = Math.max(0, needed(values) - walls.get(made)!)
    return { deficit, reserves: new Map(), broken: deficit > 0 ? ['pin.bending knee'] : [] }
  })
  vi.spyOn(Judge.prototype, 'bear').mockImplementation((values) => {
    worst = Math.max(worst, needed(values))
  })
  vi.spyOn(Judge.prototype, 'goals').mockImplementation(({ sizes }) => ({
    ...{ mass: 2 * sizes.upperWall, energyPerMetre: sizes.upperWall, printVolume: 1 + sizes.upperWall, cost: 3, margin: 1 },
  }))
  worst = 0
  steps = { mend: (wall, most) => Math.max(wall, most), slim: (wall) => wall }
  verdict = { meetsTarget: true }
})

describe('a leg that is made robust', () => {
  test('bears the draws that it was mended for, and fresh ones show it', () => {
    const told: string[] = []
    const found = robust(0.4, { onProgress: (text: string) => told.push(text) })
    const { atTypical, atRobust, state, price, failures, message } = found
    const wall = found.robust.sizes.upperWall
    // The draws that count are fresh: of the next seed.
    expect(atTypical).toEqual({ borne: DRAWS - brokenBy(0.4, 2, DRAWS), draws: DRAWS, least: expect.any(Number) })
    expect(atRobust.borne).toBe(DRAWS - brokenBy(wall, 2, DRAWS))
    expect(atRobust.least).toBe(leastShare(atRobust.borne, DRAWS, 0.95))
    expect(state).toBe(atRobust.least >= 0.6 ? 'held' : 'notShown')
    // Fewer failures than would show the share: no more than are allowed by two deviations of the difference of two draws.
    const allowed = mostFailures(DRAWS, 0.6, 0.95)
    const aimed = Math.max(0, Math.floor(allowed - 2 * Math.sqrt(2 * allowed)))
    expect(brokenBy(wall, 1, DRAWS)).toBeLessThanOrEqual(aimed)
    // The wall is that of the worst draw but those: no thicker than it must be.
    const needs = drawsOf(1, DRAWS)
      .map(needed)
      .sort((a, b) => b - a)
    expect(wall).toBe(needs[aimed])
    expect(told).toEqual([
      `round 0: ${brokenBy(0.4, 1, DRAWS)} of ${DRAWS} draws break a check`,
      `round 1: ${brokenBy(wall, 1, DRAWS)} of ${DRAWS} draws break a check`,
    ])
    expect(price.mass).toBeCloseTo(wall / 0.4 - 1, 12)
    expect(price.printVolume).toBeCloseTo((1 + wall) / 1.4 - 1, 12)
    expect(price.cost).toBe(0)
    expect(failures).toEqual([[expect.stringMatching(/pin/), brokenBy(0.4, 1, DRAWS) / DRAWS]])
    expect(message).toContain(`mass +${(100 * (wall / 0.4 - 1)).toFixed(1)} %`)
    expect(message).toContain('money +0.0 %')
    expect(message).toMatch(state === 'held' ? /60 % is shown/ : /60 % is not shown/)
  })

  test('is not made lighter where that breaks draws, and is where it breaks none more', () => {
    steps.slim = (wall) => wall - 0.3
    expect(robust(0.9, { rounds: 0 }).robust.sizes.upperWall).toBe(0.9)
    steps.slim = () => 0.05
    const mended = robust(0.4).robust.sizes.upperWall
    expect(mended).toBeGreaterThan(0.4)
    // A leg that needs nothing of its wall, because every draw needs less.
    steps.slim = () => 1
    expect(robust(1.4, { rounds: 0 }).robust.sizes.upperWall).toBe(1)
    expect(robust(1.4, { rounds: 0 }).price.mass).toBeCloseTo(1 / 1.4 - 1, 12)
    // One that breaks more already than is aimed at may break as many afterwards, and no more.
    const spared = Math.max(
      ...drawsOf(1, DRAWS)
        .map(needed)
        .filter((need) => need <= 0.3),
    )
    steps.slim = () => spared
    expect(robust(0.3, { rounds: 0 }).robust.sizes.upperWall).toBe(spared)
    steps.slim = () => spared - 1e-6
    expect(robust(0.3, { rounds: 0 }).robust.sizes.upperWall).toBe(0.3)
  })

  test('is not called so where too few draws show it, or where its verdict has not its target', () => {
    steps.mend = (wall) => wall
    expect(robust(0.5).state).toBe('notShown')
    expect(robust(0.5).message).toContain('60 % is not shown')
    expect(robust(1).state).toBe('held')
    verdict = { meetsTarget: false }
    expect(robust(1).state).toBe('notShown')
  })

  test('is looked for in no more rounds than asked for', () => {
    const told: string[] = []
    steps.mend = (wall) => wall + 0.01
    robust(0.1, { rounds: 3, onProgress: (text: string) => told.push(text.slice(0, 7)) })
    expect(told).toEqual(['round 0', 'round 1', 'round 2'])
  })
})

test('a proposed leg is bound by the checks within a twentieth of what is required, each with the joint that it is of', () => {
  const check = (part: string, reserve: number, more: object) => ({ part, mode: 'bends', reserve, requiredReserve: 1.3, ...more })
  const checks = [
    check('upper link', 1.31, {}),
    check('pin', 1.36, { joint: 'knee' }),
    check('pin', 1.37, { joint: 'hip' }),
    check('foot', 1.04, { requiredReserve: 1 }),
  ]
  const found = { stock, judged: judgedAs(new Judge(wish, stock), start), goals: {} } as never
  verdict = { meetsTarget: true, checks }
  const [proposed] = proposedLeg(wish, 'lightest', found, means.assess)
  expect(proposed!.boundBy).toEqual(['upper link: bends, reserve 1.31', 'pin (knee): bends, reserve 1.36', 'foot: bends, reserve 1.04'])
  verdict = { meetsTarget: false, checks }
  expect(proposedLeg(wish, 'lightest', found, means.assess)).toEqual([])
})
