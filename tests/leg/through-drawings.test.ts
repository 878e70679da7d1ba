import { expect, test } from 'vitest'
import { assess, legDrawingNamed, legDrawings } from '../../src/leg/index.js'
import { beltFirst, beltRevised, cordKnee } from './through-legs.js'

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
  expect(leaf.svg).toContain(leg === beltRevised ? 'knee pulley Ø76.4' : 'knee drum Ø65.6')
})

test('sizes of the drawing are those of the document', () => {
  const { table } = legDrawingNamed(assess(beltRevised, { cases }), 'through-drive')!
  const value = (name: string) => Number(table.rows.find(([one]) => one === name)![1])
  expect(value('radius of the pulley on the hip axis')).toBeCloseTo((40 * 5) / (2 * Math.PI), 1)
  expect(value('radius of the pulley on the knee')).toBeCloseTo((48 * 5) / (2 * Math.PI), 1)
  expect(value('upper link, from hip to knee')).toBe(200)
  expect(value('turns of the drum for one of the knee')).toBe(1.2)
})

test('the belt that jumps is marked in the leg of the first design', () => {
  const drawing = legDrawingNamed(assess(beltFirst, { cases }), 'leg')!
  expect(drawing.answer).toContain('✕ Tooth belt along the upper link')
  expect(drawing.svg).toContain('class="badSecond"')
  expect(legDrawingNamed(assess(beltFirst, { cases }), 'rod-drive')).toBeUndefined()
})
