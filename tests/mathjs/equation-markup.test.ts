import { describe, expect, test } from 'vitest'
import { slackTension } from '../../src/capstan/index.js'
import { catalogue } from '../../src/catalogue/index.js'
import { formula } from '../../src/formula/index.js'
import { equationMarkup, formulaCard } from '../../src/mathjs/index.js'

const record = (equation: readonly string[]) =>
  formula('capstan.trialForce', {
    inputs: {
      load: 'force',
      wrapAngle: 'angle',
      side: { oneOf: ['left', 'right'] },
      thread: { fields: { pitch: 'length' } },
      gaps: { list: { fields: { width: 'length' } } },
    },
    output: 'force',
    equation,
    source: [{ level: 'computed', where: 'a trial' }],
    si: ({ load }) => load,
  })
/** What stands within the element that holds the whole. */
const inner = (equation: string) =>
  equationMarkup(record([equation])).map((text) => text.slice('<math display="block">'.length, -'</math>'.length))[0]

describe('equations as MathML', () => {
  test('names are words, signs those of print', () => {
    expect(inner('result = load * exp(-wrapAngle)')).toBe(
      '<mrow><mtext>trial force</mtext><mo>=</mo><mrow><mtext>load</mtext><mo>·</mo><mrow><mi mathvariant="normal">exp</mi><mrow><mo>(</mo><mrow><mo>−</mo><mtext>wrap angle</mtext></mrow><mo>)</mo></mrow></mrow></mrow></mrow>',
    )
  })

  test('a fraction, a root and a height need no brackets; the base of a height keeps its own', () => {
    expect(inner('result == (load + 1 N) / sqrt(load)^(1 + wrapAngle)')).toBe(
      '<mrow><mtext>trial force</mtext><mo>=</mo><mfrac><mrow><mtext>load</mtext><mo>+</mo><mrow><mn>1</mn><mspace width="0.17em"/><mi mathvariant="normal">N</mi></mrow></mrow><msup><msqrt><mtext>load</mtext></msqrt><mrow><mn>1</mn><mo>+</mo><mtext>wrap angle</mtext></mrow></msup></mfrac></mrow>',
    )
    expect(inner('(load - 1 N)^2')).toContain('<msup><mrow><mo>(</mo>')
  })

  test('a name that a line assigns is a word in the next', () => {
    const [first, second] = equationMarkup(record(['halfPull = load / 2', 'result = halfPull']))
    expect(first).toContain('<mtext>half pull</mtext>')
    expect(second).toContain('<mtext>half pull</mtext>')
  })

  test('cases stand one below the other, fields below their record, small numbers with a power of ten', () => {
    expect(inner('result = equalText(side, "left") ? load : (wrapAngle > 1 ? 2 N : 3 N)')).toMatch(
      /^<mrow>.*<mtable columnalign="left">(<mtr>.*?<\/mtr>){3}<\/mtable><\/mrow><\/mrow>$/,
    )
    // Below each other, none within another's line.
    expect(inner('load > 1 N ? load : (wrapAngle > 1 ? 2 N : 3 N)')?.match(/<mtable/g)).toHaveLength(1)
    expect(inner('result = equalText(side, "left") ? load : 3 N')).toContain('<mtext>side</mtext><mo>=</mo><mtext>left</mtext>')
    expect(inner('thread.pitch')).toBe('<msub><mtext>pitch</mtext><mtext>thread</mtext></msub>')
    expect(inner('1.5e-9 m')).toContain('<mn>1.5</mn><mo>·</mo><msup><mn>10</mn><mn>-9</mn></msup>')
  })

  test('a magnitude stands between bars, and a power entry by entry is raised', () => {
    expect(inner('abs(load)')).toBe('<mrow><mo>|</mo><mtext>load</mtext><mo>|</mo></mrow>')
    expect(inner('dotPow(load, 2)')).toBe('<msup><mtext>load</mtext><mn>2</mn></msup>')
  })

  test('signs of comparison do not end a tag', () => {
    expect(inner('load < 2 N')).toContain('<mo>&lt;</mo>')
  })

  test('every equation of the library is whole, and names no input by its code', () => {
    let lines = 0
    for (const each of catalogue.values()) {
      for (const text of equationMarkup(each)) {
        lines++
        const open: string[] = []
        for (const [, end, name, empty] of text.matchAll(/<(\/?)([a-z]+)[^<>]*?(\/?)>/g)) {
          if (end === '/') expect(open.pop(), each.id).toBe(name)
          else if (empty === '') open.push(name as string)
        }
        expect(open, each.id).toEqual([])
        expect(text.replaceAll(/<[^<>]*>/g, ' '), each.id).not.toMatch(/[<>]|undefined|\[object/)
        for (const name of Object.keys(each.def.inputs)) if (/[a-z][A-Z]/.test(name)) expect(text, each.id).not.toContain(`>${name}<`)
      }
    }
    expect(lines).toBeGreaterThan(600)
  })
})

test('a formula on its card shows equation, inputs, output and sources in a notebook', () => {
  const card = formulaCard(slackTension)
  const shown = (card as unknown as Record<symbol, () => Record<string, string>>)[Symbol.for('Jupyter.display')]!()
  expect(shown['text/html']).toBe(card.html)
  expect(shown['text/plain']).toBe('capstan.slackTension\nresult = load * exp(-friction * wrapAngle)')
  expect(card.html).toContain('<td><code>wrapAngle</code></td>')
  for (const part of ['<strong>slack tension</strong>', '<math', 'force', 'Assumes', 'Sources']) expect(card.html).toContain(part)
  expect(JSON.parse(JSON.stringify(card))).toEqual({ id: card.id, html: card.html })
})

test('a card lists assumptions and sources one by one, and has no heading over nothing', () => {
  const { html } = formulaCard(slackTension)
  for (const statement of slackTension.def.assumes ?? []) expect(html).toContain(`<li>${statement.replaceAll('<', '&lt;')}</li>`)
  const plain = formulaCard(record([])).html
  expect(plain).toContain('<summary>Sources</summary><ul><li>a trial (computed)</li></ul>')
  expect(plain).not.toMatch(/Assumes|Valid where/)
})
