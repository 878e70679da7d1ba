import { expect, test } from 'vitest'
import { PAGE_WIDTH } from '../../src/drawing/index.js'
import { assess, describeLeg, legDrawingNamed, legDrawings, toDxf, withFields } from '../../src/leg/index.js'
import { outside, overlaps, textBoxes } from '../drawing/boxes.js'
import { dxfSizes } from '../drawing/dxf-sizes.js'
import { beltFirst, beltRevised, cordKnee, cordText } from './through-legs.js'

const cases = ['stand', 'walk', 'coldDrop', 'shelf'] as const

test.each([
  ['belt', beltRevised, /^(kneeBelt|kneePulley|upperLink\.(squeeze|buckling))/],
  ['crossed cord', cordKnee, /^(kneeCord|kneeDrum|kneeAnchor|kneeTensioner|upperLink\.(squeeze|buckling))/],
] as const)('a %s along the upper link is drawn with its checks, and nothing of the leg fails to be drawn', (_, leg, ids) => {
  const verdict = assess(leg, { cases })
  const drawings = legDrawings(verdict)
  expect(drawings.filter(({ answer }) => answer.includes('cannot be drawn')).map(({ id }) => id)).toEqual([])
  const { table, description } = drawings.find(({ id }) => id === 'through-drive')!
  const rows = table.rows.map(([name]) => name)
  const own = verdict.checks.filter(({ id }) => ids.test(id))
  expect(own.length).toBeGreaterThan(5)
  for (const { part, mode } of own) expect(rows).toContain(`${part}: ${mode}`)
  expect(description).toContain('press the upper link together')
  const leaf = drawings.find(({ id }) => id === 'leg')!
  for (const words of leg === beltRevised ? ['pulley on the knee', 'Ø76.4'] : ['drum on the knee', 'Ø65.6'])
    expect(leaf.svg).toContain(words)
})

test('sizes of the drawing are those of the document', () => {
  const { table } = legDrawingNamed(assess(beltRevised, { cases }), 'through-drive')!
  const value = (name: string) => Number(table.rows.find(([one]) => one === name)![1])
  expect(value('radius of the pulley on the hip axis')).toBeCloseTo((40 * 5) / (2 * Math.PI), 1)
  expect(value('radius of the pulley on the knee')).toBeCloseTo((48 * 5) / (2 * Math.PI), 1)
  expect(value('upper link, from hip to knee')).toBe(200)
  expect(value('turns of the pulley on the hip axis for one of the knee')).toBe(1.2)
})

test('the belt that jumps is marked in the leg of the first design', () => {
  const drawing = legDrawingNamed(assess(beltFirst, { cases }), 'leg')!
  expect(drawing.answer).toContain('✕ Tooth belt along the upper link')
  expect(drawing.svg).toContain('class="badSecond"')
  expect(legDrawingNamed(assess(beltFirst, { cases }), 'rod-drive')).toBeUndefined()
})

const row = (drawing: { table: { rows: readonly (readonly string[])[] } }, name: string) =>
  Number(drawing.table.rows.find(([one]) => one === name)![1]!.replace('−', '-'))
const has = (diameters: readonly number[], wanted: number) => diameters.some((one) => Math.abs(one - wanted) < 2e-4)

test('belt: pulleys of both stages, teeth, adjustment and the distance of the axes are drawn', () => {
  const drawing = legDrawingNamed(assess(beltRevised, { cases }), 'through-drive')!
  const { circles } = dxfSizes(toDxf(drawing))
  for (const teeth of [40, 48, 120]) expect(has(circles, (5 * teeth) / Math.PI)).toBe(true)
  for (const word of ['40 teeth', '48 teeth', 'belt 124 teeth', 'of 5, 25 wide', '±3', 'larger angles']) expect(drawing.svg).toContain(word)
  // A belt of 124 teeth of 5 mm round pulleys of 40 and 48: length less half of both pulleys is two spans, but for what their difference adds.
  const [span, straight] = [row(drawing, 'free span'), row(drawing, 'hip to knee, belt straight')]
  expect(2 * straight).toBeCloseTo(620 - 5 * 44 - (5 * 8) ** 2 / (4 * Math.PI ** 2 * straight), 1)
  expect(span).toBeCloseTo(Math.sqrt(row(drawing, 'hip to knee, tensioned') ** 2 - ((5 * 8) / (2 * Math.PI)) ** 2), 1)
})

test.each(['crossed', 'open'] as const)('%s cord: turns, anchors, tensioner and the travel of the drum are drawn', (arrangement) => {
  const leg = describeLeg(cordText.replace(/arrangement: crossed(?=\n\s+hipDrum)/, `arrangement: ${arrangement}`))
  const verdict = assess(leg, { cases: ['stand'] })
  const drawing = legDrawingNamed(verdict, 'through-drive')!
  const { circles } = dxfSizes(toDxf(drawing))
  const cord = 1000 * leg.cords.braid!.diameter.si
  // Rims of grooves 0.33 cord diameters deep on 52 and 64 mm, the bore of the knee drum, posts.
  for (const diameter of [52 + 0.66 * cord, 64 + 0.66 * cord, 10, 4]) expect(has(circles, diameter)).toBe(true)
  const [small, large] = [52 + cord, 64 + cord]
  const apart = 165
  const reach = (large + (arrangement === 'crossed' ? small : -small)) / 2
  expect(row(drawing, 'free span')).toBeCloseTo(Math.sqrt(apart ** 2 - reach ** 2), 1)
  // The drum turns with the hip, and with the knee by the ratio, against it where the spans cross.
  const n = ((arrangement === 'crossed' ? -1 : 1) * large) / small
  expect(row(drawing, 'turns of the drum on the hip axis for one of the knee')).toBeCloseTo(n, 3)
  const [hip, knee] = [leg.joints.hip.range, leg.joints.knee.range].map(({ lowest, highest }) =>
    [lowest, highest].map(({ si }) => (si * 180) / Math.PI),
  )
  const drums = hip!.flatMap((one) => knee!.map((other) => one + n * other))
  expect(row(drawing, 'drum on the hip axis, lowest angle')).toBeCloseTo(Math.min(...drums), 1)
  expect(row(drawing, 'drum on the hip axis, highest angle')).toBeCloseTo(Math.max(...drums), 1)
  expect(drawing.svg).toMatch(/hip drum groove/)
  expect(drawing.svg).toContain('Tensioner, from backed right out')
  const grooves = legDrawingNamed(verdict, 'groove-through')!
  expect(row(grooves, 'drum, bottom of the groove')).toBe(64)
  for (const { id, svg, height } of [drawing, grooves]) {
    const boxes = textBoxes(svg)
    expect([...overlaps(boxes), ...outside(boxes, PAGE_WIDTH, height)].map((flaw) => `${id}: ${flaw}`)).toEqual([])
  }
})

test('a bonded ferrule on the cord along the link has its section, with its own check', () => {
  const bonded = withFields(cordKnee, {
    'ends.potted': { length: '20 mm', socketDiameter: '2.2 mm', adhesive: 'epoxy' },
    'joints.knee.through.ends': 'bondedFerrule',
    'joints.knee.through.end': 'potted',
  })
  expect(legDrawingNamed(assess(cordKnee, { cases: ['stand'] }), 'ferrule-through')).toBeUndefined()
  const ferrule = legDrawingNamed(assess(bonded, { cases: ['stand', 'walk'] }), 'ferrule-through')!
  expect([row(ferrule, 'bonded length'), row(ferrule, 'bore of the ferrule')]).toEqual([20, 2.2])
  expect(ferrule.table.rows.some(([name, value]) => /^bonded end.*upper link|ferrule/.test(name!) && /reserve/.test(value!))).toBe(true)
})

test('the cord along the link relaxes in the drawing of a year like those of the joints', () => {
  const year = legDrawingNamed(assess(cordKnee, { cases }), 'year')!
  expect(row(year, 'pretension of the upper link, set')).toBe(330)
  // The share that a year leaves: nine tenths for the splices of this leg's cord, as of its hip.
  const share = row(year, 'pretension of the hip after a year') / row(year, 'pretension of the hip, set')
  expect(row(year, 'pretension of the upper link after a year') / 330).toBeCloseTo(share, 3)
  expect(year.table.rows.map(([name]) => name)).toContain('pretension of the knee, set')
})
