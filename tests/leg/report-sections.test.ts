// What holds of a whole report: each reference leads somewhere, each list is complete, and what is said is there.
import { createHash } from 'node:crypto'
import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { barChart } from '../../src/chart/index.js'
import { clampLoadAt } from '../../src/leg/clamp-load-at.js'
import { type Assessment, assess, describeLeg, type Leg, legDrawings, legNumbers } from '../../src/leg/index.js'
import { legModel } from '../../src/leg/leg-model.js'
import { drivenBy, seasonDays } from '../../src/leg/numbers.js'
import { type Block, type Picture, plainWords, type Words } from '../../src/leg/report/blocks.js'
import { casesSection } from '../../src/leg/report/cases-section.js'
import { cautionsOf } from '../../src/leg/report/cautions.js'
import { firstChange } from '../../src/leg/report/changes-section.js'
import { chartTable } from '../../src/leg/report/chart-table.js'
import { drawingPictures } from '../../src/leg/report/drawing-pictures.js'
import { policyHash, specificationHash } from '../../src/leg/report/hash.js'
import { reached } from '../../src/leg/report/reach.js'
import { reportPage } from '../../src/leg/report/report-page.js'
import { linesOf } from '../../src/leg/report/step-lines.js'
import { clampOverSeason } from '../../src/leg/report/year-charts.js'
import { beltOrCordOf } from '../../src/leg/second-stage.js'
import { beltFirst, cordKnee, cordOnRotor } from './through-legs.js'

const read = (name: string) => describeLeg(readFileSync(new URL(`../../examples/${name}.yaml`, import.meta.url), 'utf8'))
const EXAMPLES = ['mudflat', 'heath', 'desk', 'orchard', 'shingle'].map((name) => read(`${name}-leg-first`))
const [mudflat, heath] = EXAMPLES as unknown as [Leg, Leg]
const verdict = assess(heath, { cases: ['walk', 'drop'] })
const drawings = legDrawings(verdict, { style: 'page', only: ['leg', 'pin-knee', 'rod-drive', 'bolt-stack'] })
const page = reportPage(verdict, { drawings, pictures: [] })

/** All blocks of a page, those within others too. */
const within = (blocks: readonly Block[]): readonly Block[] =>
  blocks.flatMap((block) => [block, ...('blocks' in block ? within(block.blocks) : [])])
const blocks = within(page.blocks)
const sectionOf = (id: string, of = blocks) => {
  const found = of.find((block) => block.kind === 'section' && block.id === id)
  return found?.kind === 'section' ? within(found.blocks) : undefined
}
const pictures = blocks.flatMap((block): readonly Picture[] =>
  block.kind === 'picture' ? [block] : block.kind === 'pictures' ? block.pictures : [],
)
const tables = [...blocks.flatMap((block) => (block.kind === 'table' ? [block] : [])), ...pictures.flatMap(({ table }) => table ?? [])]
const tableOf = (id: string) => sectionOf(id)!.find((block) => block.kind === 'table') as Extract<Block, { kind: 'table' }>
const words: readonly Words[] = [
  ...blocks.flatMap((block): readonly Words[] => {
    if (block.kind === 'text') return [block.text]
    if (block.kind === 'points' || block.kind === 'steps') return block.lines
    return block.kind === 'facts' ? block.rows.map(([, value]) => value) : []
  }),
  ...tables.flatMap(({ rows }) => rows.flat()),
]
const pieces = words.flatMap((one) => (typeof one === 'string' ? [] : one.flatMap((piece) => (typeof piece === 'string' ? [] : [piece]))))

test('every reference of a report leads to a place of it, and no place is there twice', () => {
  const places = [
    ...pieces.flatMap(({ id }) => id ?? []),
    ...tables.flatMap(({ ids = [] }) => ids.flatMap((id) => id ?? [])),
    ...blocks.flatMap((block) => (block.kind === 'section' ? [block.id] : [])),
    // Of steps as columns the heads of the table are their places.
    ...tables.flatMap(({ head }) => head.filter((name) => /^\d+\.\d+$/.test(name)).map((name) => `s${name}`)),
  ]
  expect(places.filter((id, i) => places.indexOf(id) < i)).toEqual([])
  const known = new Set(places)
  const kinds = new Set<string>()
  for (const { text, to } of pieces)
    if (to !== undefined) {
      kinds.add(to.replace(/\d.*$/, ''))
      expect(known.has(to), `${text} → ${to}`).toBe(true)
    }
  // Fields, tables, constants, sources, steps, and numbers of the ranking.
  expect([...kinds]).toEqual(expect.arrayContaining(['F', 'T', 'C', 'Q', 's']))
})

test('every value of a table and every constant has its source or the fields that it follows from', () => {
  for (const { rows } of [tableOf('tables'), tableOf('constants')]) {
    expect(rows.length).toBeGreaterThan(5)
    for (const row of rows) {
      // An origin that several values have stands with the first of them.
      const [, first] = /^as ([TC]\d+)$/.exec(plainWords(row[3] as Words)) ?? []
      const source = (first === undefined ? row : rows.find(([ref]) => plainWords(ref as Words) === first)!)[3] as Words
      expect(plainWords(source), plainWords(row[1] as Words)).toMatch(/^(\[Q\d+\](, \[Q\d+\])*)?((, for |from )\[F\d+\](, \[F\d+\])*)?$/)
      expect(plainWords(source)).not.toBe('')
    }
  }
  const followed = tableOf('tables').rows.filter((row) => /(, for |from )\[F/.test(plainWords(row[3] as Words)))
  expect(followed.length).toBeGreaterThan(3)
})

test('columns of a table of steps are inputs, then results with an equals sign; a step of one part says which', () => {
  const own = sectionOf('steps')!.flatMap((block) => (block.kind === 'table' && block.head[0] === 'step' ? [block] : []))
  expect(own.length).toBeGreaterThan(3)
  for (const { head, rows } of own) {
    const aside = /^\d+\.\d+$/.test(head[1]!)
    const names = aside ? rows.map((row) => plainWords(row[0]!)) : head.slice(1)
    const columns = names.filter((name) => name !== 'for')
    const first = columns.findIndex((name) => name.startsWith('= '))
    expect(first, head.join()).toBeGreaterThanOrEqual(0)
    expect(
      columns.slice(first).every((name) => name.startsWith('= ')),
      head.join(),
    ).toBe(true)
  }
  const places = own.flatMap(({ head, rows }) => (head[1] === 'for' ? rows.map((row) => plainWords(row[1] as Words)) : []))
  expect(places.filter((place) => /knee|hip/.test(place)).length).toBeGreaterThan(5)
  const lines = sectionOf('steps')!.flatMap((block) => (block.kind === 'points' ? block.lines.map(plainWords) : []))
  expect(lines.filter((line) => /^\d+\.\d+ \([^)]*(hip|knee)/.test(line)).length).toBeGreaterThan(5)
})

test('a result that is the only one, and has no name of its own, stands without one', () => {
  const step = { number: '4.1', places: [] } as never
  const line = (names: readonly string[]) => {
    const block = linesOf(
      [step],
      [''],
      [],
      names.map((name, i) => ({ name, cells: [`${i + 5} N`] })),
    )
    return block.kind === 'points' ? plainWords(block.lines[0]!) : ''
  }
  expect([line(['result']), line(['force']), line(['result', 'pull'])]).toEqual(['4.1: 5 N', '4.1: force 5 N', '4.1: result 5 N, pull 6 N'])
})

test('a drawing in a report names each of its checks once, by its number in the ranking, and keeps every size', () => {
  const [first, ...others] = drawingPictures(verdict, drawings)
  expect(pictures.map(({ id }) => id)).toEqual([first!.id, ...others.map(({ id }) => id)])
  expect(others.map(({ id }) => id).sort()).toEqual(['bolt-stack', 'pin-knee', 'rod-drive'])
  for (const [i, { id, table }] of [first!, ...others].entries()) {
    const rows = drawings[i]!.table.rows
    const results = rows.filter(([, value = '']) => / against .*, reserve /.test(value))
    const checks = table!.rows.find(([name]) => name === 'checks')
    expect(results.length, id).toBeGreaterThan(0)
    const ranks = (checks![1] as Exclude<Words, string>).flatMap((piece) => (typeof piece === 'string' ? [] : [piece.to as string]))
    expect(ranks, id).toHaveLength(results.length)
    expect(new Set(ranks).size, id).toBe(results.length)
    expect(table!.rows.filter(([name]) => name !== 'checks').map(([name]) => plainWords(name!))).toEqual(
      rows.filter((row) => !results.includes(row)).map(([name]) => name),
    )
  }
  expect(sectionOf('drawings')!.flatMap((block) => (block.kind === 'pictures' ? block.pictures.length : []))).toEqual([3])
  expect(
    sectionOf('drawings', within(reportPage(verdict, { steps: 'decisive', drawings: drawings.slice(0, 1), pictures: [] }).blocks)),
  ).toBeUndefined()
})

test('the chart of the reserves, which the ranking repeats, is there only where charts are drawn; a report without any says so', () => {
  const chart = barChart({ title: 'Bars', description: 'Bars.', value: { title: 'x', unit: '1' }, bars: [{ name: 'a', to: 1 }] })
  const of = (svg: string | undefined) => {
    const picture = (id: string) => ({ id, chart, svg }) as never
    const own = reportPage(verdict, { steps: 'decisive', drawings, pictures: [picture('reserves'), picture('stall')] })
    const found = sectionOf('charts', within(own.blocks))!
    return {
      ids: found.flatMap((block) => (block.kind === 'pictures' ? block.pictures.map(({ id }) => id) : [])),
      said: found.some((block) => block.kind === 'text' && /^The charts are not drawn/.test(plainWords(block.text))),
    }
  }
  expect(of('<svg></svg>')).toEqual({ ids: ['chart-reserves', 'chart-stall'], said: false })
  expect(of(undefined)).toEqual({ ids: ['chart-stall'], said: true })
})

describe('cautions', () => {
  const legs = [...EXAMPLES, beltFirst, cordKnee, cordOnRotor]
  test('each hazard of a leg has its caution, once, and no other', () => {
    for (const { name, x } of legs.map((leg) => ({ name: leg.name, x: legNumbers(leg) }))) {
      const found = cautionsOf(x)
      expect(new Set(found).size, name).toBe(found.length)
      const says = (pattern: RegExp) => found.some((one) => pattern.test(one))
      const along = beltOrCordOf(x)?.kind
      for (const [kind, pattern] of [
        ['belt', /tensioned belt/],
        ['gear', /^Gears pull/],
        ['direct', /^A direct drive holds nothing/],
        ['cord', /cord/],
      ] as const)
        expect(says(pattern), `${name}: ${kind}`).toBe(drivenBy(x, kind).length > 0 || along === kind)
    }
  })
})

describe('changes', () => {
  test('a check that no single change mends has no list of changes', () => {
    const { governing: check } = verdict
    const none = firstChange(verdict, [{ check, changes: [] }])
    expect(none).toHaveLength(1)
    expect(none[0]!.kind === 'text' && plainWords(none[0]!.text)).toBe(
      `${check.remedy}. No single size, up to three times or down to a third, gives this check its required reserve.`,
    )
    const one = { path: 'a', name: 'a size', from: '1 mm', to: '2 mm', harms: [] }
    const [lead, list] = firstChange(verdict, [{ check, changes: [one] }])
    expect(lead!.kind === 'text' && plainWords(lead!.text)).toMatch(/^this change alone gives/)
    expect(list!.kind === 'points' && list!.lines.map(plainWords)).toEqual([
      '2 mm instead of 1 mm (a size), and every other check keeps its reserve.',
    ])
    expect(plainWords((firstChange(verdict, [{ check, changes: [one, one] }])[0] as { text: Words }).text)).toMatch(
      /^each of these changes/,
    )
  })

  test('a number of a leg is found and replaced at its path', () => {
    const leg = { stack: [{ thickness: 1 }, { thickness: 2 }], name: { size: 3 } } as never
    expect([reached(leg, 'stack[1].thickness'), reached(leg, 'name.size'), reached(leg, 'stack[5].thickness')]).toEqual([2, 3, undefined])
    expect(reached(leg, 'stack[1].thickness', 9)).toEqual({ stack: [{ thickness: 1 }, { thickness: 9 }], name: { size: 3 } })
    expect(leg).toEqual({ stack: [{ thickness: 1 }, { thickness: 2 }], name: { size: 3 } })
  })
})

test('load cases without a steady state are listed by joint and reason; a leg without such cases has no such list', () => {
  const loop = 'Copper loss and resistance'
  const one = (id: string, joint: string, why: string) => ({ case: id, joint, loop, why })
  const unsettled = [one('walk', 'hip', 'Too hot.'), one('drop', 'knee', 'Too hot.'), one('walk', 'knee', 'Not at all.')]
  const listOf = (found: unknown) => sectionOf('unsettled', within([casesSection({ ...verdict, unsettled: found } as Assessment)]))
  expect(listOf([])).toBeUndefined()
  const [list] = listOf(unsettled)!
  expect(list!.kind === 'points' && list!.lines.map(plainWords)).toEqual([
    'Copper loss and resistance of the hip do not converge. Too hot. Load cases: walk.',
    'Copper loss and resistance of the knee do not converge. Too hot. Load cases: drop.',
    'Copper loss and resistance of the knee do not converge. Not at all. Load cases: walk.',
  ])
})

test('the clamp load of a bolt falls day by day over the whole season, from the preload after embedding', () => {
  const model = legModel(legNumbers(mudflat))
  const days = seasonDays(model.x)
  const { rows } = chartTable(clampOverSeason(model))
  const bolts = [...new Set(rows.map(([name]) => name))]
  expect(bolts).toEqual(['stack bolts', 'motor bolts'])
  for (const [name, group] of [
    ['stack bolts', model.x.plates[model.x.joints.hip.plate ?? '']!.bolts!],
    ['motor bolts', model.x.joints.knee.motorBolts!],
  ] as const) {
    const own = rows.filter(([one]) => one === name).map(([, day, load]) => [Number(day), Number(load)] as const)
    expect(own.length).toBeGreaterThan(5)
    expect(own[0]).toEqual([0, expect.closeTo(clampLoadAt(model, group).preload, 0)])
    expect(own.at(-1)![0]).toBeCloseTo(days, 0)
    for (const [i, [day, load]] of own.slice(1).entries()) {
      expect(day).toBeGreaterThan(own[i]![0])
      expect(load).toBeLessThanOrEqual(own[i]![1])
    }
  }
})

describe('hashes', () => {
  /** By RFC 8785's order of names, written here once more. */
  const sorted = (value: unknown): unknown => {
    const plain = typeof value === 'object' && value !== null && 'toJSON' in value ? (value.toJSON as () => unknown)() : value
    if (Array.isArray(plain)) return plain.map(sorted)
    if (typeof plain !== 'object' || plain === null) return plain
    return Object.fromEntries(
      Object.entries(plain)
        .sort(([a], [b]) => (a < b ? -1 : 1))
        .map(([name, inner]) => [name, sorted(inner)]),
    )
  }

  test('a specification has the SHA-256 of its JSON with sorted names; a field that is not there does not count', () => {
    for (const leg of EXAMPLES) {
      const { defaults: _, ...data } = leg
      expect(specificationHash(leg)).toBe(
        createHash('sha256')
          .update(JSON.stringify(sorted(data)))
          .digest('hex'),
      )
      expect(specificationHash({ ...leg, remark: undefined } as never)).toBe(
        specificationHash({ ...leg, remark: undefined, more: undefined } as never),
      )
    }
  })

  test('a text of a page has the base 64 of its SHA-256', () => {
    for (const text of ['', 'a', 'bodies { }', 'é ✕'])
      expect(policyHash(text)).toBe(`sha256-${createHash('sha256').update(text).digest('base64')}`)
  })
})
