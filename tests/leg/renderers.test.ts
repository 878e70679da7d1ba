import { describe, expect, test } from 'vitest'
import { code, facts, fold, heading, led, type Page, picture, points, section, steps, table, text } from '../../src/leg/report/blocks.js'
import { htmlBlocks } from '../../src/leg/report/html-parts.js'
import { markdownPage } from '../../src/leg/report/markdown-blocks.js'
import { textPage } from '../../src/leg/report/text-blocks.js'
import { wordsOfHtml, wordsOfMarkdown, wordsOfText } from './words-of.js'

const page: Page = {
  title: 'A page',
  blocks: [
    heading('First <b>'),
    text(['See ', { text: '3.1', to: 's3.1' }, ' and ', { text: 'a|b', strong: true }, '.']),
    led('Caution:', 'a tensioned cord & a hot motor.'),
    points(['one', ['two ', { text: 'path.of', code: true }]]),
    steps(['tighten', 'release']),
    table(
      'Sizes',
      ['part', 'size'],
      [
        ['pin', '4 mm'],
        [[{ text: 'bore', to: 'x' }], 5],
      ],
      ['x', undefined],
    ),
    facts('Title block', [
      ['leg', 'front'],
      ['name', ''],
    ]),
    section('inner', 'Part', [fold('More', [text('inside'), section('deep', 'Deeper', [text('yes')])])]),
    code('t, x\n1, 2'),
    picture({ id: 'p', title: 'Leg', answer: 'It fails.', description: 'A leg, seen from the left.', svg: '<svg><text>no</text></svg>' }),
    picture({ id: 'q', title: 'Drive', description: 'A drive.', table: { head: ['what', 'value'], rows: [['wrap', '3']] } }),
  ],
}
const html = `<body><h1>${page.title}</h1>${htmlBlocks(page.blocks)}</body>`

describe('one content, three forms', () => {
  test('HTML, Markdown and plain text have the same words in the same order', () => {
    const words = wordsOfText(textPage(page))
    expect(words).toContain('3.1')
    expect(words).toContain('bore')
    expect(wordsOfMarkdown(markdownPage(page))).toEqual(words)
    expect(wordsOfHtml(html)).toEqual(words)
  })

  test('a difference is found', () => {
    expect(wordsOfHtml(html.replace('inside', 'outside'))).not.toEqual(wordsOfText(textPage(page)))
  })

  test('HTML has what readers jump by, and pictures with their names', () => {
    expect(html).toContain('<tr id=x>')
    expect(html).toContain('<a href=#s3.1>3.1</a>')
    const scripted = htmlBlocks(page.blocks, 0, true)
    expect(scripted).not.toContain('<tr id=')
    expect(scripted).toContain('See 3.1 and')
    expect(html).toContain('<svg role=img aria-labelledby=p-title aria-describedby=p-text>')
    expect(html).toMatch(/<section id="inner" aria-labelledby="inner-title">\n<h2 id="inner-title">/)
    expect(html).toContain('<h3 id="deep">Deeper</h3>')
    expect(html).toContain('<details open>')
    expect(html).toContain('First &lt;b&gt;')
  })
})
