// The ways out of a wish that no leg meets, with the search itself replaced by a rule that is written here: so that every way is known by hand.
import { readFileSync } from 'node:fs'
import { beforeEach, describe, expect, test } from 'vitest'
import { describeWish } from '../../src/leg/index.js'
import { easingsOf, largerParts } from '../../src/leg/proposal/easings.js'
import { Judge, type JudgedLeg } from '../../src/leg/proposal/judge.js'
import { nearestLeg } from '../../src/leg/proposal/nearest.js'
import type { EasedWish } from '../../src/leg/proposal/refusal.js'
import { startOf } from '../../src/leg/proposal/start.js'
import type { LegWishData } from '../../src/leg/proposal/wish-fields.js'
import { WorkPieces } from '../../src/leg/proposal/work.js'
import { Quantity } from '../../src/units/index.js'

/** Whether a leg can be found for a wish. */
let rule: (wish: LegWishData) => boolean
let asked: LegWishData[]

const search = (one: Judge, sizes: JudgedLeg['sizes']): JudgedLeg => {
  one.evaluations++
  asked.push(one.wish)
  return { sizes, deficit: rule(one.wish) ? 0 : 1, margin: 1, governing: 'pin.bending knee', short: [], margins: new Map() }
}

const wish = describeWish(
  readFileSync(new URL('../../examples/wishes/cellar-inspector.yaml', import.meta.url), 'utf8').replace(', ASA: 32', ''),
)
const stock = { motor: 'can 54', cord: 'thin aramid', frame: 'PETG', drum: 'PETG' }
const wished = { wish, stock }
const judge = new Judge(wish, stock)
const judged: JudgedLeg = {
  ...{ sizes: startOf(wish, stock), deficit: 1, margin: 0.5, governing: 'pin.bending knee' },
  ...{ short: [['pin.bending knee', 0.5]], margins: new Map([['pin.bending knee', 0.5]]) },
}
const nearest = (work = new WorkPieces('', 1e6, {})) => nearestLeg({ judge, stock, judged }, 1, work, search)

const given = { step: wish.walk.stepLength.si, speed: wish.walk.speed.si, drop: wish.obstacles.drop.si, mass: wish.robot.mass.si }
const eases = {
  step: ({ walk }: LegWishData) => walk.stepLength.si <= 0.7 * given.step,
  speed: ({ walk }: LegWishData) => walk.speed.si <= 0.9 * given.speed,
  drop: ({ obstacles }: LegWishData) => obstacles.drop.si <= 0.5 * given.drop,
  bed: ({ printer }: LegWishData) => printer.bed.si >= 1.4 * wish.printer.bed.si,
  motor: ({ motors }: LegWishData) => motors['can 54']!.canLength.si >= 1.2 * wish.motors['can 54']!.canLength.si,
}

/** The wish with some entries as a way says. */
const withWay = (way: readonly EasedWish[]): LegWishData =>
  way.reduce<{ wish: LegWishData; stock: typeof stock }>((all, { path, given: from, met }) => {
    const easing = [...easingsOf(wished), ...largerParts(wished)].find((one) => one.path === path)!
    const at = (share: number) => easing.at(share) as Quantity
    const share = met instanceof Quantity ? (met.si - (from as Quantity).si) / (at(1).si - at(0).si) : 1
    return easing.put(all, share) as typeof all
  }, wished).wish

const paths = (ways: readonly (readonly EasedWish[])[]) => ways.map((way) => way.map(({ path }) => path))

beforeEach(() => {
  asked = []
})

describe('the ways out of a wish', () => {
  test.each([
    ['one entry', (x: LegWishData) => eases.step(x), [['walk.stepLength']]],
    ['one entry of two', (x: LegWishData) => eases.step(x) || eases.bed(x), [['walk.stepLength'], ['printer.bed']]],
    ['two entries together', (x: LegWishData) => eases.step(x) && eases.drop(x), [['walk.stepLength', 'obstacles.drop']]],
    [
      'one entry of four, of which three are named',
      (x: LegWishData) => [eases.step, eases.speed, eases.drop, eases.bed].some((each) => each(x)),
      3,
    ],
    ['a larger part alone', (x: LegWishData) => eases.motor(x), [['motors.can 54.canLength']]],
  ] as const)('%s', (_, law, expected) => {
    rule = law
    const { ways, contradicts, message } = nearest()
    if (expected === 3) expect(ways).toHaveLength(3)
    else expect(new Set(paths(ways).map(String))).toEqual(new Set(expected.map(String)))
    expect(new Set(contradicts)).toEqual(new Set(paths(ways).flat()))
    expect(new Set(contradicts).size).toBe(paths(ways).flat().length)
    for (const way of ways) {
      // Each is enough by itself, and nothing of it can be left out.
      expect(law(withWay(way))).toBe(true)
      for (const one of way) expect(law(withWay(way.filter((other) => other !== one)))).toBe(false)
      // Four halvings: a sixteenth of the way nearer to what was wished is not enough.
      for (const { path, given: from, met } of way) {
        const easing = [...easingsOf(wished), ...largerParts(wished)].find((one) => one.path === path)!
        const whole = (easing.at(1) as Quantity).si - (from as Quantity).si
        const share = ((met as Quantity).si - (from as Quantity).si) / whole
        expect(share).toBeGreaterThan(0)
        expect(share).toBeLessThanOrEqual(1)
        if (way.length > 1) continue
        const nearer = new Quantity((met as Quantity).si - whole / 16 - 1e-9 * whole, (met as Quantity).kind)
        expect(law(withWay([{ path, given: from, met: nearer }])), `${path} ${nearer}`).toBe(false)
        expect(message).toContain(`${path} ${met} instead of ${from}`)
      }
    }
  })

  test('of entries that are each enough no more than three are looked for, however many there are', () => {
    rule = ({ walk, obstacles, printer, place, supply }) =>
      walk.stepLength.si < given.step ||
      walk.speed.si < given.speed ||
      obstacles.drop.si < given.drop ||
      printer.bed.si > wish.printer.bed.si ||
      place.stallTime.si < wish.place.stallTime.si ||
      supply.voltage.si > wish.supply.voltage.si
    expect(nearest().ways).toHaveLength(3)
  })

  test('a wish that no easing helps has none, and the message says that all were tried together', () => {
    rule = () => false
    const { ways, message } = nearest()
    expect(ways).toEqual([])
    expect(message).toContain('No change of the entries that were tried is enough, not even of all together.')
    // The first leg that was asked for has every entry eased at once.
    const all = easingsOf(wished).reduce<{ wish: LegWishData }>((one, easing) => easing.put(one as never, 1) as never, wished).wish
    expect(asked[0]!.walk).toEqual(all.walk)
    expect(asked[0]!.robot).toEqual(all.robot)
  })
})
