import * as fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  assemblyPlan,
  assess,
  type CaseId,
  checkReserves,
  legDrawingNamed,
  legNumbers,
  markdownReport,
  withFields,
} from '../../src/leg/index.js'
import { besideLinks, singleBearings } from './rod-bearing-legs.js'

const CASES: readonly CaseId[] = ['stand', 'landing', 'hotDrop', 'season', 'coldMorning', 'hotAfternoon']
const MINE = /Bearing\.|rodCouple|shaftStack|stepped|(crank|rocker)Pin/

/** Ways to make a leg worse, each by a factor from 1 to 2. */
const WORSE: Readonly<Record<string, (factor: number) => Record<string, unknown>>> = {
  'rod farther beside the crank’s bearing': (k) => ({ 'joints.knee.through.pivots.crank.offset': `${2.5 * k} mm` }),
  'rod farther beside the drum’s bearing': (k) => ({ 'joints.knee.through.pivots.drum.offset': `${14 * k} mm` }),
  'rod farther beside the links': (k) => ({ 'joints.knee.through.planeOffset': `${-17 * k} mm` }),
  'rod farther beside the links, on the other side': (k) => ({ 'joints.knee.through.planeOffset': `${17 * k} mm` }),
  'pins in planes farther apart': (k) => ({ 'joints.knee.through.pinPlanesApart': `${1.5 * k} mm` }),
  'a larger step': (k) => ({ 'joints.knee.through.step': `${0.6 * k} mm` }),
  'a heavier robot': (k) => ({ 'robot.mass': `${7 * k} kg` }),
  'shorter crank and rocker, so more force in the rod': (k) => ({
    'joints.knee.through.crank': `${34 / k} mm`,
    'joints.knee.through.rocker': `${34 / k} mm`,
  }),
  'less tightening torque of the stack': (k) => ({ 'shafts.hipShaft.stack.tighteningTorque': `${9 / k} N m` }),
  'less clamp load left': (k) => ({ 'shafts.hipShaft.stack.clampLeft': [0.4 / k, 0.55 / k, 0.75 / k] }),
  'a narrower part round the drum’s bearing': (k) => ({
    'joints.knee.through.pivots.drum.bearing.housingDiameter': `${28.2 + 12.8 / k} mm`,
  }),
}
const ONLY_PAIRS: typeof WORSE = {
  'bearings of the drum nearer to each other': (k) => ({ 'joints.knee.through.pivots.drum.bearing.pairSpacing': `${8 + 7 / k} mm` }),
  'bearings of the pins nearer to each other': (k) => ({ 'pins.jointPin.bearing.pairSpacing': `${5 + 8 / k} mm` }),
  'rod farther beside the rocker’s cheek': (k) => ({ 'joints.knee.through.pivots.rocker.offset': `${11 * k} mm` }),
  'less tightening torque of the cap': (k) => ({ 'joints.knee.through.pivots.crank.bearing.cap.tighteningTorque': `${1.1 / k} N m` }),
}

/** Less torque spares the screw, its thread and what it presses on. */
const spared = (what: string, name: string): boolean => /less tightening/.test(what) && /crush|[tT]ightening|Stack\.shaft/.test(name)

describe('nothing bad ever raises a reserve', () => {
  const factor = fc.double({ min: 1, max: 2, noNaN: true })
  test.each([
    ['a rod on bearings', besideLinks, { ...WORSE, ...ONLY_PAIRS }],
    ['a rod on single bearings', singleBearings, WORSE],
  ] as const)('%s', (_, leg, worse) => {
    const reservesOf = (changes: Record<string, unknown>) => checkReserves(legNumbers(withFields(leg, changes as never)), CASES)
    for (const [what, change] of Object.entries(worse)) {
      let moved = false
      fc.assert(
        fc.property(factor, factor, (one, other) => {
          const [better, poorer] = [reservesOf(change(Math.min(one, other))), reservesOf(change(Math.max(one, other)))]
          for (const [name, reserve] of poorer) {
            if (!MINE.test(name) || spared(what, name)) continue
            const before = better.get(name) ?? 1000
            expect(reserve, `${what}: ${name}`).toBeLessThanOrEqual(before * (1 + 1e-9))
            if (reserve < before) moved = true
          }
        }),
        { numRuns: 6 },
      )
      expect(moved, what).toBe(true)
    }
  })
})

describe('contradictions', () => {
  const through = 'joints.knee.through.pivots'
  test.each([
    [`${through}.crank.bearing.cap`, undefined, /crank.bearing.cap is missing; is needed because .*retainedBy is cap/],
    [`${through}.drum.bearing.housingDiameter`, '27 mm', /housingDiameter is 27 mm.*must be larger than the bearing \(28 mm\)/],
    [`${through}.drum.bearing.pairSpacing`, '6 mm', /pairSpacing is 6 mm.*must be at least the width of a bearing \(8 mm\)/],
    [`${through}.crank.bearing.size`, '3x10x4', /crank.bearing.size is '3x10x4'; must have a bore of at least the pin \(4 mm\)/],
    [`${through}.crank.bearing.cap.rimDiameter`, '3.5 mm', /rimDiameter is 3.5 mm.*must be between bore and outer diameter/],
    [`${through}.crank.bearing.cap.edgeDiameter`, '6 mm', /edgeDiameter is 6 mm.*must be at least rimDiameter/],
    [`${through}.rocker.offset`, '5 mm', /rocker.offset is 5 mm.*must be at least 8 mm, half the cheek and half the eye of pins.rodPin/],
    ['shafts.hipShaft.stack.innerDiameter', '11 mm', /innerDiameter is 11 mm.*must be at least the shaft \(12 mm\)/],
    [
      'shafts.hipShaft.stack.key',
      { size: '6x6', length: '14 mm', hubDiameter: '30 mm', hubMaterial: 'PC' },
      /key.size is '6x6'; must suit the shaft/,
    ],
  ])('%s', (path, given, message) => {
    expect(() => withFields(besideLinks, { [path]: given } as never)).toThrow(message)
  })
  test('a pin of the rod has its bearings at the ends of the rod', () => {
    const bearing = { size: '4x13x5', housingDiameter: '20 mm', seatInterference: '0 mm' }
    expect(() => withFields(besideLinks, { 'pins.rodPin.bearing': bearing } as never)).toThrow(
      /pins.rodPin.bearing .*each end of the rod has its own/,
    )
  })
})

test('what is not given is not evaluated, with the reason', () => {
  const bare = withFields(besideLinks, {
    'joints.knee.through.pivots': undefined,
    'joints.knee.through.planeOffset': '0 mm',
    'joints.knee.through.step': '0 mm',
    'shafts.hipShaft.stack': undefined,
    'pins.jointPin.bearing': undefined,
  } as never)
  const { checks, notEvaluated } = assess(bare, { cases: ['stand', 'drop'] })
  expect(checks.filter(({ id }) => MINE.test(id)).map(({ id }) => id)).toEqual([])
  const why = (id: string) => notEvaluated.find((one) => one.id === id)?.why
  expect(why('crankBearing.static')).toBe('no ball bearing is given at the crank end of the rod')
  expect(why('crankPin.seat')).toBe('nothing is given of the crank end of the rod')
  expect(why('rod.stepped')).toBe('the rod is straight')
  expect(why('shaft.rodCouple')).toBe('the rod is in the plane of the links')
  expect(why('shaftStack.gape')).toBe('nothing is given of the stack on the hip shaft')
  expect(markdownReport(assess(besideLinks, { cases: ['stand'] }))).toContain('Crank and rocker of the knee are not checked as levers')
})

describe('plans of a rod on bearings', () => {
  const plan = assemblyPlan(besideLinks)
  test('every bearing, the screw of its cap and the key are bought', () => {
    const bought = (of: typeof plan) =>
      of.shopping
        .filter(({ item }) => ['bearing', 'parallel key'].includes(item))
        .map(({ size, quantity, remark }) => `${quantity} ${size}, ${remark}`)
    expect(bought(plan)).toEqual([
      '2 12 mm x 32 mm x 10 mm, hip shaft',
      '1 4x13x5, crank end of the rod',
      '1 4x13x5, rocker end of the rod',
      '2 12x28x8, drum of the rod',
      '2 5x16x5, hip pin',
      '2 5x16x5, knee pin',
    ])
    expect(plan.shopping.find(({ remark }) => remark.startsWith('cap of the bearing'))?.size).toBe('M3, class 8.8')
    expect(bought(assemblyPlan(singleBearings))).toContain(
      '2 4x4 x 14 mm, stack on the hip shaft: one for drum and link each, or one that both share and a spare',
    )
  })
  test('seats, caps and the nut of the stack stand in the order of work', () => {
    const step = (start: string) => plan.steps.find((one) => one.startsWith(start))
    expect(step('Bearing 4x13x5 of the crank end')).toMatch(/seat of 12.99 mm, against its shoulder.*M3 screw to 1.1 N m/)
    expect(step('Bearing 4x13x5 of the rocker end of the rod, in the eye of the rod')).toContain('bonded in')
    expect(step('Bearing 12x28x8')).toContain('Two of them, 15 mm from middle to middle')
    expect(step('Stack on the hip shaft')).toContain('Nut to 9 N m')
    expect(plan.steps.some((one) => one.includes('in planes 1.5 mm apart'))).toBe(true)
  })
  test('the drawing of the rod says what its plane does', () => {
    const drawing = legDrawingNamed(assess(besideLinks, { cases: ['stand', 'drop'] }), 'rod-drive')
    expect(drawing?.svg).toContain('17 mm beside the plane of the links')
  })
})
