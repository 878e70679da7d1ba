// The title block of a dimensioned drawing, in each of its files. What belongs there is listed in ISO 7200.
import { readFileSync } from 'node:fs'
import DxfParser from 'dxf-parser'
import { describe, expect, test } from 'vitest'
import { PAGE_WIDTH, textWidth } from '../../src/drawing/index.js'
import { assess, describeLeg, legDrawingNamed, legDrawings, legPoseDrawing, toDxf, toTemplate, withFields } from '../../src/leg/index.js'
import { specificationHash } from '../../src/leg/report/hash.js'
import { outside, overlaps, textBoxes } from '../drawing/boxes.js'

const read = (name: string) => describeLeg(readFileSync(new URL(`../../examples/${name}-leg-revised.yaml`, import.meta.url), 'utf8'))
const { version } = JSON.parse(readFileSync(new URL('../../package.json', import.meta.url), 'utf8')) as { version: string }
const leg = read('mudflat')
const verdict = assess(leg, { cases: ['walk', 'drop'] })
const signed = { date: '2026-03-31', by: 'A. Turner', checkedBy: 'B. Miller' }
const drawings = legDrawings(verdict, signed)
const scaled = drawings.filter((drawing) => toDxf(drawing) !== undefined)
const spoken = (texts: readonly string[]) => texts.join(' ')

const EXPECTED = (title: string) => [
  `Part: ${title}`,
  `Leg: ${leg.name}`,
  `SHA-256 begins ${specificationHash(leg).slice(0, 12)}`,
  'Sizes: mm',
  'General tolerance: none given',
  'Printed parts: 6 walls of 0.45 mm, infill 40 %',
  `limbwright ${version}`,
  'Date: 2026-03-31',
  'Drawn by: A. Turner',
  'Checked by: B. Miller',
]

describe('a drawing to scale', () => {
  test.each(scaled.map((one) => [one.id, one] as const))('%s has a title block that covers nothing, in SVG and in DXF', (_, drawing) => {
    const boxes = textBoxes(drawing.svg)
    expect(overlaps(boxes)).toEqual([])
    expect(outside(boxes, PAGE_WIDTH, drawing.height)).toEqual([])
    const picture = spoken(boxes.map(({ text }) => text))
    const file = spoken(
      (new DxfParser().parseSync(toDxf(drawing)!)!.entities as unknown as { type: string; text?: string }[])
        .filter(({ type }) => type === 'TEXT')
        .map(({ text = '' }) => text),
    )
    for (const words of EXPECTED(drawing.title)) {
      expect(picture).toContain(words)
      expect(file).toContain(words.replaceAll('’', "'"))
    }
    // On the page each view has its scale; in the file all have their size.
    const scales = [...new Set([...drawing.svg.matchAll(/, (\d+ : \d+)</g)].map(([, scale]) => scale))]
    const [, written] = /Scale: ([\d :,]+\d)/.exec(picture) as unknown as [string, string]
    expect(written.split(', ').sort()).toEqual(scales.sort())
    expect(file).toContain('Scale: 1 : 1')
    expect(picture.includes('each seen from the side')).toBe(drawing.groups.filter(({ place }) => place !== undefined).length > 1)
  })

  test('what nobody gave is room to write on, 7 mm high', () => {
    const boxes = textBoxes(legDrawingNamed(verdict, 'pin-knee')!.svg)
    const [made, drawn] = ['Made with', 'Drawn by:'].map((name) => boxes.find(({ text }) => text.startsWith(name))!)
    expect(boxes.map(({ text }) => text)).toEqual(expect.arrayContaining(['Date:', 'Drawn by:', 'Checked by:']))
    expect(drawn!.top - made!.top).toBe(28)
  })

  test('a template has it below its outlines, no text wider than its cell', () => {
    const svg = toTemplate(legDrawingNamed(verdict, 'motor-knee', signed)!)!
    const [, width] = /width="([\d.]+)mm"/.exec(svg) as unknown as [string, string]
    const texts = [...svg.matchAll(/<text [^>]*x="([\d.]+)" y="([\d.]+)">([^<]*)</g)].map(([, x, y, text]) => ({
      x: Number(x),
      y: Number(y),
      text: text!,
    }))
    const lowest = Math.max(
      ...[...svg.matchAll(/<circle cx="[\d.]+" cy="([\d.]+)" r="([\d.]+)"/g)].map(([, y, r]) => Number(y) + Number(r)),
    )
    const block = texts.slice(texts.findIndex(({ text }) => text.startsWith('Part:')))
    expect(block.length).toBeGreaterThan(9)
    for (const { x, y, text } of block) {
      expect(y).toBeGreaterThan(lowest)
      expect(x + textWidth(text, 3.5)).toBeLessThan(Number(width))
    }
    expect(spoken(block.map(({ text }) => text))).toContain('Scale: 1 : 1')
  })
})

test('charts, and pictures of a page that has its own title block, have none', () => {
  for (const { svg, id } of [...drawings.filter((one) => !scaled.includes(one)), ...legDrawings(verdict, { style: 'page' })])
    expect(svg.includes('Checked by:'), id).toBe(false)
  const onPage = legDrawingNamed(verdict, 'pin-knee', { style: 'page', ...signed })!
  expect(toDxf(onPage)).toContain('Drawn by: A. Turner')
})

test('the pose of one check is signed as well; several ways of printing are named; a long name stays inside', () => {
  expect(legPoseDrawing(verdict, verdict.governing, signed).svg).toContain('Checked by: B. Miller')
  const strong = withFields(leg, { prints: { default: { walls: 1, infill: 0.4 }, strong: { walls: 8, infill: 1 } } } as never)
  const text = spoken(textBoxes(legDrawingNamed(assess(strong, { cases: ['walk'] }), 'pin-knee')!.svg).map((box) => box.text))
  expect(text).toContain(
    'default 1 wall of 0.45 mm, infill 40 % next to fasteners; strong 8 walls of 0.45 mm, infill 100 % next to fasteners',
  )
  const long = withFields(leg, { name: `<b>${'leg of a machine '.repeat(5)}&` } as never)
  const { svg, height } = legDrawingNamed(assess(long, { cases: ['walk'] }), 'pin-knee')!
  expect([overlaps(textBoxes(svg)), outside(textBoxes(svg), PAGE_WIDTH, height)]).toEqual([[], []])
  expect(svg).toContain('&lt;b&gt;leg')
})

test.each([
  ['date', 5],
  ['by', 'two\nlines'],
  ['checkedBy', 'x'.repeat(61)],
])('%s that cannot be printed is refused by name', (name, given) => {
  for (const draw of [
    () => legDrawings(verdict, { [name]: given } as never),
    () => legPoseDrawing(verdict, verdict.governing, { [name]: given } as never),
  ])
    expect(draw).toThrow(new RegExp(`${name} is .*must be text of one line`))
})
