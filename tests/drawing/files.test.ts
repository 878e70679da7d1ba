import DxfParser from 'dxf-parser'
import { describe, expect, test } from 'vitest'
import {
  type Drawing,
  drawingSvg,
  Figure,
  type Item,
  type Point,
  pathData,
  rectangle,
  textAt,
  textWidth,
  toDxf,
  toTemplate,
  View,
  wrapped,
} from '../../src/drawing/index.js'

interface Entity {
  readonly type: string
  readonly layer: string
  readonly vertices?: readonly { readonly x: number; readonly y: number }[]
  readonly shape?: boolean
  readonly radius?: number
  readonly center?: { readonly x: number; readonly y: number }
  readonly text?: string
  readonly startPoint?: { readonly x: number; readonly y: number }
  readonly textHeight?: number
  readonly rotation?: number
  readonly halign?: number
}
const read = (text: string) => new DxfParser().parseSync(text)!
const entities = (drawing: Pick<Drawing, 'groups'>) => read(toDxf(drawing)!).entities as unknown as readonly Entity[]
const corners = ({ vertices = [] }: Entity) => vertices.map(({ x, y }) => [x, y])
const figure = (...views: View[]) =>
  views.reduce((all, view) => all.view(view), new Figure({ id: 'plate', title: 'Plate & <pin>', answer: 'It holds' })).done()
const svgOf = (...items: Item[]) =>
  drawingSvg({ id: 'x', title: 'T', description: 'D', groups: [{ name: 'part', items }], height: 100 } as unknown as Drawing)
const inside = (svg: string) => /<g>(.*)<\/g>/s.exec(svg)?.[1]

describe('DXF, by an independent reader', () => {
  // A plate of 30 by 20 mm with a hole, drawn at 1 : 1 or any other scale.
  const plate = (options: object = {}) =>
    new View('Plate', options).area(rectangle(-10, -5, 20, 15)).circle({ centre: [0, 0], radius: 4 }, 'hidden')

  test.each([5, 1, 0.1])('sizes are millimetres whatever the scale of the picture: %d', (scale) => {
    const all = entities(figure(plate({ scale })))
    const outline = all.find(({ type }) => type === 'POLYLINE')!
    // The highest point of the first view is at 0.
    expect(corners(outline)).toEqual(
      [
        [-10, -20],
        [20, -20],
        [20, 0],
        [-10, 0],
      ].map(([x, y]) => [expect.closeTo(x!, 6), expect.closeTo(y!, 6)]),
    )
    expect([outline.shape, outline.layer]).toEqual([true, 'thick'])
    const hole = all.find(({ type }) => type === 'CIRCLE')!
    expect(hole).toMatchObject({ layer: 'hidden', radius: expect.closeTo(4, 6), center: { x: 0, y: expect.closeTo(-15, 6) } })
  })

  test('a second view is below the first one, 20 mm away', () => {
    const [first, second] = entities(figure(plate({ scale: 1 }), plate({ scale: 2 }))).filter(({ type }) => type === 'POLYLINE')
    expect(Math.max(...corners(second!).map(([, y]) => y!))).toBeCloseTo(Math.min(...corners(first!).map(([, y]) => y!)) - 20, 5)
    expect(corners(second!)[0]![0]).toBeCloseTo(-10, 6)
  })

  test('a line of two points is a line, one that ends where it began is closed, and one of a point is nothing', () => {
    const drawn = (points: readonly Point[], closed = false) => {
      const view = new View('x', { scale: 1 })
      return entities(figure(closed ? view.area(points) : view.line(points))).map(({ type, shape, vertices }) => [
        type,
        shape,
        vertices?.length,
      ])
    }
    const triangle: Point[] = [
      [0, 0],
      [10, 0],
      [0, 10],
    ]
    expect(drawn(triangle.slice(0, 2))).toEqual([['LINE', undefined, 2]])
    expect(drawn(triangle)).toEqual([['POLYLINE', false, 3]])
    expect(drawn(triangle, true)).toEqual([['POLYLINE', true, 3]])
    expect(drawn([...triangle, [0, 0]])).toEqual([['POLYLINE', true, 3]])
    expect(
      drawn([
        [0, 0],
        [10, 0],
        [0, 0],
      ]),
    ).toEqual([['LINE', undefined, 2]])
    expect(
      drawn([
        [2, 2],
        [2, 2],
      ]),
    ).toEqual([['LINE', undefined, 2]])
    const dot = figure(new View('x', { scale: 1 }).line([[0, 0]])).groups.filter(({ name }) => name === 'x')
    expect(toDxf({ groups: dot })).toBeUndefined()
    expect(entities({ groups: [...dot, ...figure(plate()).groups] })).toEqual(entities(figure(plate())))
  })

  test('texts keep their place, height, turn and words in letters that every program reads', () => {
    const view = new View('x', { scale: 1 })
      .area(rectangle(0, 0, 40, 40))
      .dimension([0, 0], [40, 0], 'below', 'Ø 5 ± 0.1 °')
      .dimension([0, 0], [0, 40], 'left')
    const [across, upright] = entities(figure(view)).filter(({ type }) => type === 'TEXT')
    expect(toDxf(figure(view))).toContain('\n%%c 5 %%p 0.1 %%d\n')
    // Letters of 11 units are 2.75 mm at 1 : 1; capitals take 72 per cent of that.
    expect(across).toMatchObject({ textHeight: expect.closeTo(0.72 * 2.75, 6), layer: 'text', halign: 1 })
    expect(across!.startPoint!.x).toBeCloseTo(20, 6)
    expect([across!.rotation ?? 0, upright!.rotation]).toEqual([0, 90])
    // Between the extension lines, beyond the edge of the part.
    expect(across!.startPoint!.y).toBeLessThan(-40)
    expect(upright!.startPoint!.x).toBeLessThan(0)
    const odd = {
      groups: [{ name: 'x', items: [textAt([0, 0], 'Ω−–')], place: { scale: 4, to: ([x, y]: Point): Point => [4 * x, -4 * y] } }],
    }
    expect(toDxf(odd)).toContain('\n?--\n')
  })

  test('heads of dimensions are outlines on the layer of dimensions; dots and coloured heads are left out', () => {
    const view = new View('x', { scale: 1 })
      .area(rectangle(0, 0, 40, 40))
      .dimension([0, 0], [40, 0], 'below')
      .arrow([20, 20], 0, 100, 5)
      .label([10, 10], 'pin', { end: 'dot' })
    const all = entities(figure(view))
    expect(all.filter(({ type, layer }) => type === 'POLYLINE' && layer === 'fine')).toHaveLength(2)
    expect(all.filter(({ layer }) => layer === 'force').map(({ type }) => type)).toEqual(['LINE'])
    expect(all.filter(({ type }) => type === 'CIRCLE')).toEqual([])
    expect(new Set(all.map(({ layer }) => layer))).toEqual(new Set(['thick', 'fine', 'force', 'text']))
  })

  test('layers are named after what lines mean, with the patterns of hidden and centre lines, in millimetres', () => {
    const { tables, header } = read(toDxf(figure(plate()))!) as unknown as {
      header: Record<string, unknown>
      tables: {
        layer: { layers: Record<string, unknown> }
        lineType: { lineTypes: Record<string, { pattern?: number[]; patternLength: number }> }
      }
    }
    expect(header.$INSUNITS).toBe(4)
    expect(Object.keys(tables.layer.layers)).toEqual(expect.arrayContaining(['thick', 'hidden', 'axis', 'text']))
    expect(tables.lineType.lineTypes.HIDDEN).toMatchObject({ pattern: [3, -1.5], patternLength: 4.5 })
    expect(tables.lineType.lineTypes.CENTER).toMatchObject({ patternLength: 11 })
  })
})

describe('a template', () => {
  const numbersOf = (text: string | undefined) => [...(text ?? '').matchAll(/-?\d+(?:\.\d+)?/g)].map(Number)
  const flat = (scale: number) =>
    new View('Flat', { template: true, scale })
      .area(rectangle(-10, -5, 60, 15), { hatch: { angle: 45, spacing: 5 } })
      .circle({ centre: [0, 0], radius: 4 })

  test('the outline has its size in millimetres on a page in millimetres, whatever the scale of the picture', () => {
    for (const scale of [0.5, 1, 2]) {
      const svg = toTemplate(figure(flat(scale)))!
      const [, outline] = /<path d="(M[^"]*Z)"\/>/.exec(svg) as unknown as [string, string]
      // Left and above it 8 mm of border, above that 20 for the bar that is to be measured.
      expect(numbersOf(outline)).toEqual([8, 48, 78, 48, 78, 28, 8, 28])
      expect(svg).toContain('<circle cx="18" cy="43" r="4"/>')
      const [, width, height] = /width="([\d.]+)mm" height="([\d.]+)mm" viewBox="0 0 \1 \2"/.exec(svg) as unknown as [
        string,
        string,
        string,
      ]
      expect(Number(height)).toBe(28 + 20 + 8)
      const words = 8 + 50 + 3 + textWidth('must measure 50 mm: print without scaling', 3.5) + 8
      expect(Number(width)).toBeCloseTo(Math.max(words, 70 + 16), 3)
      expect(svg).toContain('h50')
      // The bar is 14 mm below the top of the page, its text beside it.
      expect(svg).toContain('M8,14h50')
      expect(svg).toContain('x="8" y="10">Plate')
      expect(svg).toContain('x="61" y="15">must measure')
    }
  })

  test('it has outlines alone, thin ones thinner, and the views below each other', () => {
    const view = new View('Flat', { template: true, scale: 1 })
      .area(rectangle(0, 0, 200, 30), { line: 'thin' })
      .dimension([0, 0], [200, 0], 'below')
      .mark(({ to }) => [{ kind: 'lines', line: 'axis', pieces: [[to([0, 0]), to([200, 30])]] }, textAt(to([5, 5]), 'words')], [0, 0])
    const svg = toTemplate(figure(view, flat(1)))!
    expect(svg).toContain('<path d="M8,58L208,58L208,28L8,28Z" stroke-width="0.13"/><path d="M8,58L208,28" stroke-width="0.13"/>')
    // 8 mm below the first view.
    expect(svg).toContain('<path d="M8,86L78,86L78,66L8,66Z"/>')
    expect(svg).toContain('width="216mm"')
    expect(svg).not.toContain('words')
    expect(svg.match(/<text/g)).toHaveLength(2)
    expect(svg).toContain('Plate &amp; &lt;pin&gt;: template at full size')
  })

  test('a drawing without a flat view has none', () => {
    expect(toTemplate(figure(new View('Side').area(rectangle(0, 0, 10, 10))))).toBeUndefined()
  })
})

describe('SVG', () => {
  test('a file brings its style; a page has it already; both name title and description', () => {
    const drawing = figure(new View('Side').area(rectangle(0, 0, 10, 10)))
    const [file, page] = [drawingSvg(drawing), drawingSvg(drawing, { style: 'page' })]
    expect([file, page].map((svg) => [svg.includes('<style>'), svg.includes('xmlns=')])).toEqual([
      [true, true],
      [false, false],
    ])
    for (const svg of [file, page]) expect(svg).toContain('<title id="plate-picture-title">Plate &amp; &lt;pin&gt;</title>')
    expect(page).toContain(`viewBox="0 0 360 ${drawing.height}"`)
  })

  test('texts come after all lines, with size, place, turn and colour', () => {
    const svg = svgOf(
      textAt([1.26, 2], 'a & "b"', { anchor: 'end', bold: true, ink: 'bad', size: 13 }),
      textAt([3, 4.04], 'up', { turned: true, anchor: 'middle' }),
      {
        kind: 'lines',
        line: 'axis',
        pieces: [
          [
            [0, 0],
            [5, 0],
          ],
        ],
      },
    )
    expect(inside(svg)).toBe(
      '<path class="axis" d="M0,0h5"/><text class="strong ink-bad end" font-size="13" x="1.3" y="2">a &amp; &quot;b&quot;</text><text class="middle" transform="translate(3,4)rotate(-90)">up</text>',
    )
    expect(svgOf(textAt([1, 2], 'x'))).toContain('<text x="1" y="2">x</text>')
  })

  test('lines of one look are one path; what is filled follows lines of the same ink, and covers what came before where it must', () => {
    const line = (y: number, name: 'thick' | 'fine' = 'thick'): Item => ({
      kind: 'path',
      line: name,
      points: [
        [0, y],
        [5, y],
      ],
    })
    const head: Item = {
      kind: 'path',
      line: 'none',
      points: [
        [0, 0],
        [1, 1],
        [0, 1],
      ],
      closed: true,
      fill: 'solid',
    }
    expect(inside(svgOf(line(0), head, line(2, 'fine'), line(4)))).toBe(
      '<path class="thick" d="M0,0h5m-5,4h5"/><path class="fine" d="M0,2h5"/><path class="fill-solid" d="M0,0l1,1h-1z"/>',
    )
    const paper: Item = { kind: 'path', line: 'thin', points: rectangle(0, 0, 2, 2), closed: true, fill: 'paper' }
    // A line before paper is covered by it, one behind it is not.
    expect(inside(svgOf(line(0), paper, line(0)))).toBe(
      '<path class="thick" d="M0,0h5"/><path class="thin fill-paper" d="M0,0h2v2h-2z"/><path class="thick" d="M0,0h5"/>',
    )
    expect(inside(svgOf(paper, paper))?.match(/<path/g)).toHaveLength(2)
  })

  test('circles have their radius to hundredths; a dot is a line of no length with round ends', () => {
    const circle = (more: object): Item => ({ kind: 'circle', line: 'thick', centre: [10, 20], radius: 3.456, ...more }) as Item
    expect(inside(svgOf(circle({})))).toBe('<circle class="thick" cx="10" cy="20" r="3.46"/>')
    expect(inside(svgOf(circle({ fill: 'tone' })))).toBe('<circle class="thick fill-tone" cx="10" cy="20" r="3.46"/>')
    expect(inside(svgOf(circle({ line: 'none', radius: 1.8, fill: 'solid' })))).toBe('<path class="dots" d="M10,20h0"/>')
    expect(inside(svgOf(circle({ line: 'none', radius: 1.8, fill: 'bad' })))).toBe('<path class="dots fill-bad" d="M10,20h0"/>')
    expect(inside(svgOf(circle({ line: 'none', radius: 3, fill: 'bad' })))).toBe('<circle class="fill-bad" cx="10" cy="20" r="3"/>')
  })

  test('paths go on from line to line by the difference, closed ones from where they began', () => {
    const square = rectangle(0, 0, 2, 2)
    expect(
      pathData([
        { points: square, closed: true },
        {
          points: [
            [5, 5],
            [6, 7],
            [6, 7],
            [8, 8],
          ],
        },
      ]),
    ).toBe('M0,0h2v2h-2zm5,5l1,2,2,1')
    expect(
      pathData([
        {
          points: [
            [-0.5, 0.25],
            [0, -0.5],
          ],
        },
      ]),
    ).toBe('M-.5,.3l.5-.8')
    // Six points and more: those that lie on the line between others are left out, a corner never.
    const straight = Array.from({ length: 9 }, (_, i): Point => [i, i < 8 ? 0.2 * (i % 2) : 5])
    expect(pathData([{ points: straight }])).toBe('M0,0l7,.2,1,4.8')
    expect(pathData([{ points: straight.slice(0, 5) }])).toBe('M0,0l1,.2,1-.2,1,.2,1-.2')
    const loop: Point[] = [
      [0, 0],
      [4, 0],
      [8, 0],
      [8, 4],
      [4, 4],
      [0, 4],
      [0, 0],
    ]
    expect(pathData([{ points: loop }])).toBe('M0,0h8v4h-8v-4')
  })
})

test('texts are as wide as their letters; a number stays with its unit, a size with its sign', () => {
  expect(textWidth('1.5', 10)).toBeCloseTo(6.4 + 3.4 + 6.4, 9)
  expect(textWidth('m', 10, true)).toBeCloseTo(9.9 * 1.13, 9)
  expect(textWidth('Ж', 10)).toBe(10)
  for (const together of ['12 mm', '4 × 5', '3 N m', 'reserve 1.51'])
    expect(wrapped(`a ${together}`, textWidth(together, 11) + 1, 11)).toEqual(['a', together])
  expect(wrapped('one two', 1, 11)).toEqual(['one', 'two'])
  expect(wrapped('one two', textWidth('one two', 11), 11)).toEqual(['one two'])
})

test('a drawing without a view to scale has no file: an empty one would be taken for the part', () => {
  const chart = new Figure({ id: 'chart', title: 'Chart', answer: 'It holds' })
    .block('Plot', () => ({ items: [textAt([10, 10], 'words')], height: 20 }))
    .text('Nothing here has a size.')
    .done()
  expect([toDxf(chart), toDxf({ groups: [] }), toTemplate(chart)]).toEqual([undefined, undefined, undefined])
})
