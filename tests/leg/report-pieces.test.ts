// The parts that reports are made of, each by itself, with its words as they are to be read.
import { describe, expect, test } from 'vitest'
import { barChart, lineChart, pointChart } from '../../src/chart/index.js'
import type { Assessment } from '../../src/leg/index.js'
import {
  amount,
  amounts,
  documentAmount,
  exactAmount,
  exactAmounts,
  listed,
  one,
  remarkWords,
  roundedBeyond,
  roundedIn,
} from '../../src/leg/report/amounts.js'
import {
  type Block,
  captionOf,
  code,
  facts,
  fold,
  heading,
  led,
  picture,
  points,
  section,
  small,
  steps,
  subheading,
  table,
  text,
} from '../../src/leg/report/blocks.js'
import { chartTable, withColumns } from '../../src/leg/report/chart-table.js'
import { compactSvg } from '../../src/leg/report/compact-svg.js'
import {
  bandText,
  checkList,
  checkWords,
  footText,
  measurementText,
  priorsText,
  reserveText,
  restsText,
  standing,
  temperatureText,
  verdictText,
} from '../../src/leg/report/content.js'
import { equationWords, wordsOf } from '../../src/leg/report/equation-words.js'
import { fieldName } from '../../src/leg/report/fields-list.js'
import { htmlBlocks, htmlSection } from '../../src/leg/report/html-parts.js'
import { boltsName, instanceName } from '../../src/leg/report/instance-words.js'
import { markdownPage } from '../../src/leg/report/markdown-blocks.js'
import { inPage } from '../../src/leg/report/page-svg.js'
import { forPhone } from '../../src/leg/report/phone-chart.js'
import { placesText, placesTexts } from '../../src/leg/report/places.js'
import { plainTable, textPage } from '../../src/leg/report/text-blocks.js'
import { unitsInHead } from '../../src/leg/report/unit-heads.js'
import { Quantity } from '../../src/units/index.js'

describe('numbers', () => {
  test('results have few digits, given values all of them; of one unit it stands once', () => {
    expect([amount('force', 1234.5678), exactAmount('force', 1234.5678)]).toEqual(['1.235 kN', '1.2345678 kN'])
    expect([
      amount('time', 0),
      amount('force', Number.NaN),
      amount('force', Number.POSITIVE_INFINITY),
      amount('force', Number.NEGATIVE_INFINITY),
    ]).toEqual(['0 s', 'not a number', 'infinite', 'minus infinity'])
    expect(amounts('length', [0.001, 0.0025])).toBe('1, 2.5 mm')
    expect(amounts('length', [0.001, 12])).toBe('1 mm, 12 m')
    expect(amounts('ratio', [0.5, 2])).toBe('0.5, 2')
    expect(exactAmounts('length', [0.00123456, 0.002])).toBe('1.23456, 2 mm')
    expect(documentAmount('energy', 1.602176634e-19 * 2)).toBe('2 eV')
    expect(documentAmount('ratio', 1 / 3)).toBe('0.333333333')
    expect(documentAmount('ratio', Number.POSITIVE_INFINITY)).toBe('infinite')
  })

  test('a proposed value is rounded away from the present one, to a tenth of the change or so', () => {
    expect([
      roundedBeyond(7, 7.46),
      roundedBeyond(7, 6.54),
      roundedBeyond(7, 7),
      roundedBeyond(100, 173),
      roundedBeyond(1, 1.0312),
    ]).toEqual([7.5, 6.5, 7, 180, 1.035])
    // 12.3 from 10 degrees, in degrees: steps of 0.2.
    expect((roundedIn('angle', (10 * Math.PI) / 180, (12.3 * Math.PI) / 180) * 180) / Math.PI).toBeCloseTo(12.4, 9)
    expect(roundedIn('length', 0.004, 0.00423)).toBeCloseTo(0.00424, 12)
    expect(roundedIn('ratio', 2, 3.3)).toBe(3.4)
  })

  test('reserves over 100 are not told apart; a band says where its least value was only found', () => {
    expect([reserveText(99.96), reserveText(100), reserveText(1.2345)]).toEqual(['100', 'over 100', '1.23'])
    const check = (monotone: boolean) => ({ range: { worst: 0.5, best: 120, monotone } }) as never
    expect([bandText(check(true)), bandText(check(false))]).toEqual(['0.5 to over 100', '0.5 (least found) to over 100'])
    expect(bandText({ range: { worst: 2, best: 2, monotone: true } } as never)).toBe('none')
    expect([0.99, 1, 1.19, 1.2].map((reserve) => standing({ reserve, requiredReserve: 1.2 } as never))).toEqual([
      'fails',
      'short',
      'short',
      'holds',
    ])
    expect([temperatureText(undefined), temperatureText(new Quantity(300, 'temperature'))]).toEqual(['unsteady', '26.85 degC'])
  })

  test('units stand in the head of a column where all of its numbers have the same', () => {
    const head = ['part', 'force', 'size']
    expect(
      unitsInHead({
        head,
        rows: [
          ['pin', '5 N', '4 mm'],
          ['bore', '-6.5 N', '5 m'],
        ],
      }),
    ).toEqual({
      head: ['part', 'force, N', 'size'],
      rows: [
        ['pin', '5', '4 mm'],
        ['bore', '-6.5', '5 m'],
      ],
    })
    const linked = [['1e-3 kg', { text: '[2]' }]]
    expect(unitsInHead({ head: ['mass'], rows: [linked, ['2 kg']] } as never)).toEqual({
      head: ['mass, kg'],
      rows: [[['1e-3', { text: '[2]' }]], ['2']],
    })
    // A word among numbers has no unit; one number keeps its own, with a word beside it as well.
    expect(unitsInHead({ head: ['warm'], rows: [['5 K'], ['infinite'], ['7 K']] })).toEqual({
      head: ['warm, K'],
      rows: [['5'], ['infinite'], ['7']],
    })
    expect(unitsInHead({ head: ['turn'], rows: [['5 K'], ['0.3'], ['7 K']] }).head).toEqual(['turn'])
    expect(unitsInHead({ head: ['force'], rows: [['5 N']] }).head).toEqual(['force'])
    expect(unitsInHead({ head: ['force'], rows: [['5 N'], ['none']] }).rows).toEqual([['5 N'], ['none']])
  })
})

describe('words', () => {
  test('names of the document and of formulas become words; designations stay', () => {
    expect(['centreDistance', 'poissonRatio', 'M4', '10x26x8', 'motor2 axis', 'bore12'].map(one)).toEqual([
      'centre distance',
      'Poisson’s ratio',
      'M4',
      '10x26x8',
      'motor 2 axis',
      'bore 12',
    ])
    expect([listed([]), listed(['a']), listed(['a', 'b']), listed(['a', 'b', 'c'])]).toEqual(['', 'a', 'a and b', 'a, b and c'])
    expect(remarkWords('see `capstan.bendRatio` and wrapAngle at 5 kJ')).toBe('see bend ratio and wrap angle at 5 kJ')
    expect(fieldName('joints.knee.drive.drum.bore')).toBe('joints, knee, drive, drum: bore')
    expect(fieldName('bolts.stack.stack[0].thickness')).toBe('bolts, stack, stack, 1: thickness')
    expect(fieldName('name')).toBe('name')
    expect([boltsName('stack'), boltsName('motorBolts'), instanceName('upperMotor')]).toEqual(['stack bolts', 'motor bolts', 'upper motor'])
    expect(wordsOf('thread.pitchLine')).toBe('pitch line of thread')
  })

  test('equations are written as by hand', () => {
    const names = new Set(['load', 'friction', 'wrapAngle', 'kind'])
    const written = (line: string) => equationWords(line, names)
    expect(written('result = load * exp(-friction * wrapAngle)')).toBe('result = load · exp(−friction · wrap angle)')
    expect(written('load == sqrt(friction^2 + pi .^ 3) - 180 deg')).toBe('load = √(friction² + π³) − 180°')
    expect(written('equalText(kind, "twoPlates") ? -load : log(load^2.5)')).toBe('kind is two plates ? −load : ln(load^2.5)')
  })

  test('a step says where it belongs: shared instances together, none where there are many', () => {
    expect(placesText([{ joint: 'knee', event: 'drop', air: 'cold', age: 'year' } as never])).toBe('knee, drop, cold air, after a year')
    expect(placesText([{ joint: 'hip' }, { joint: 'knee' }, { joint: 'knee' }] as never)).toBe('hip and knee')
    expect(placesText([{ link: 'upper', boltGroup: 'stack', material: 'PC', motor: 'main' } as never])).toBe('upper link, stack bolts, PC')
    expect(placesText(['walk', 'trot', 'drop', 'hop'].map((event) => ({ event, joint: 'hip' })) as never)).toBe('hip')
    expect(placesText(['walk', 'trot', 'dropEnd'].map((event) => ({ event })) as never)).toBe('walk and trot and end of a landing')
    // What several steps have in common stands once, where that saves a line of letters.
    const cold = (joint: string) => [{ joint, event: 'drop', air: 'cold', age: 'year' }] as never
    expect(placesTexts([cold('hip'), cold('knee')])).toEqual({ common: 'drop, cold air, after a year', own: ['hip', 'knee'] })
    expect(placesTexts([[{ joint: 'hip', plate: 'p' }], [{ joint: 'hip' }]] as never)).toEqual({ common: '', own: ['hip, p', 'hip'] })
  })

  test('checks are named by part, joint and mode; the first four of a list, then a count', () => {
    expect(checkWords('boss.split knee')).toMatch(/^boss, knee: /)
    expect(checkWords('toe.strain')).toMatch(/^toe.*: /)
    expect(checkWords('no.such knee')).toBe('no.such knee')
    expect(checkList(['no.a (hip)', 'no.a (knee)', 'no.b'])).toBe('whether the no.a (hip and knee); whether the no.b')
    const many = (count: number) => checkList(Array.from({ length: count }, (_, i) => `no.${i}`))
    expect(many(5).split('; ')).toHaveLength(5)
    expect(many(6)).toBe('whether the no.0; whether the no.1; whether the no.2; whether the no.3; and 2 more')
  })
})

describe('the verdict in sentences', () => {
  const check = (reserve: number, joint?: string) => ({
    part: 'pin',
    joint,
    mode: 'bends',
    caseTitle: 'Drop',
    reserve,
    requiredReserve: 1.2,
    id: 'pin.bending',
  })
  const verdict = (reserves: number[], more: object = {}) =>
    ({
      passes: reserves.every((reserve) => reserve >= 1),
      meetsTarget: reserves.every((reserve) => reserve >= 1.2),
      governing: check(reserves[0] as number, 'knee'),
      checks: reserves.map((reserve) => check(reserve, 'knee')),
      requiredReserve: 1.2,
      coupling: 'settled',
      ...more,
    }) as unknown as Assessment

  test('how many fail, which first, and with what', () => {
    expect(verdictText(verdict([0.5, 0.9, 2]))).toBe(
      'This leg fails: 2 of 3 checks are below 1. First to fail: the pin (knee) bends, in the case "drop", with a reserve of 0.5.',
    )
    expect(verdictText(verdict([0.5, 2]))).toContain('1 of 2 checks is below 1')
    // The governing check is nearest to its required reserve, and may hold where another fails.
    expect(verdictText(verdict([1.1, 0.9]))).toContain('with a reserve of 0.9.')
  })

  test('what passes, and what is short', () => {
    expect(verdictText(verdict([1.3, 2]))).toBe(
      'This leg passes: every one of 2 checks has its required reserve (1.2, or less where the table lists a lower one). The nearest failure, with a reserve of 1.3 where 1.2 is required: the pin (knee) bends, in the case "drop".',
    )
    expect(verdictText(verdict([1.3]))).toContain('its one check has the required reserve')
    expect(verdictText(verdict([1.1, 1.2]))).toContain('This leg passes, but 1 of 2 checks is short of its required reserve (1.2')
    expect(verdictText(verdict([1.1, 1]))).toContain('2 of 2 checks are short of their required reserve')
    expect(verdictText(verdict([1.3], { coupling: 'diverges' }))).toMatch(
      / In some load cases heat and resistance do not converge: see "Load cases without a thermal steady state"\.$/,
    )
    expect(verdictText(verdict([1.3], { governing: check(1.3) }))).toContain('the pin bends')
  })

  test('shares of priors, and where the uncertain values of a check come from', () => {
    expect(priorsText({ priors: { share: 0.456, undecided: 0.1 } } as Assessment)).toMatch(
      /^46 % of the sources .* 10 % of the checks pass at one end/,
    )
    const side = (measured: number, published = 0, unverified = 0) => ({
      measured,
      published,
      unverified,
      assumed: 1 - measured - published - unverified,
    })
    const rests = (demand?: object, capacity?: object) => restsText({ restsOn: { demand, capacity } } as never)
    expect(rests()).toBeUndefined()
    expect(rests(side(1), side(1))).toBe('Uncertain: both sides measured here.')
    expect(rests(side(0, 1))).toBe('Uncertain: demand published.')
    expect(rests(undefined, side(0.96))).toBe('Uncertain: capacity measured here.')
    expect(rests(side(0.5, 0.25), side(0))).toBe('Uncertain: demand 50 % measured here, 25 % published, 25 % assumed; capacity assumed.')
    expect(rests(side(0.95))).toBe('Uncertain: demand 95 % measured here, 5 % assumed.')
  })

  test('the measurement that narrows the reserve most, with the range that it can leave', () => {
    const found = (key: string) => ({
      bestMeasurement: { check: key, test: 'weigh the leg', before: { worst: 0.5, best: 2 }, after: { worst: 0.9, best: 1.1 } },
    })
    expect(measurementText(verdict([1.1]))).toBeUndefined()
    expect(measurementText(verdict([1.1], found('pin.bending knee')))).toBe(
      'The smallest reserve: the pin (knee) bends. The measurement that narrows it most: weigh the leg. The reserve is 0.5 to 2 now. An exact measurement of the typical value would leave 0.9 to 1.1.',
    )
    const second = verdict([1.1], { ...found('pin.bending'), checks: [check(1.05, 'knee'), check(1.1)] })
    expect(measurementText(second)).toMatch(/^The smallest reserve that a measurement can narrow: the pin bends\./)
  })

  test('the foot: error by cause, stiffness, push to the side, resonance; what is not calculated says why', () => {
    const q = (si: number, kind: 'length' | 'force' | 'frequency') => new Quantity(si, kind)
    const foot = (more: object) =>
      footText({
        foot: {
          error: {
            lines: [{ name: 'backlash', worstCorner: q(0.001, 'length') }],
            together: { worstCorner: q(0.002, 'length'), rss: q(0.0015, 'length') },
          },
          sideways: { push: q(0, 'force') },
          resonance: {},
          ...more,
        },
      } as never)
    const bare = foot({})
    expect(bare).toEqual([
      'Error of the foot: backlash up to 1 mm; together up to 2 mm, root sum of squares 1.5 mm.',
      expect.stringMatching(/^The drives slip, or are too soft/),
      expect.stringMatching(/^No elastic part between rotors and joints/),
    ])
    const sides = { push: q(10, 'force'), deflection: q(0.003, 'length'), ofLinks: q(0.001, 'length') }
    const whole = foot({
      stiffness: { x: 'X', y: 'Y', z: 'Z' },
      deflection: { z: q(0.004, 'length') },
      sideways: { ...sides, play: q(0.0005, 'length') },
      resonance: { hip: { motorLocked: q(20, 'frequency') }, knee: { motorLocked: q(30, 'frequency') } },
      usableBandwidth: q(6, 'frequency'),
    })
    expect(whole.slice(1)).toEqual([
      'Stiffness of the free foot: forward X, sideways Y, vertical Z. The vertical deflection of the foot under the standing load is 4 mm.',
      'Under a push to the side of 10 N, as on a walk across the slope, the foot deflects by 3 mm. The links account for 1 mm of it. The knee has play on its pin: up to 500 µm to either side at the foot.',
      'Resonance with the leg in the air and the motor locked: hip 20 Hz, knee 30 Hz. The bandwidth that a controller on the motor side can usually reach is 6 Hz.',
    ])
    expect(foot({ sideways: sides })[2]).not.toContain('play')
    expect(foot({ resonance: { knee: { motorLocked: q(30, 'frequency') } }, usableBandwidth: q(9, 'frequency') })[2]).toContain(
      'locked is 30 Hz. The bandwidth that a controller on the motor side can usually reach there is 9 Hz.',
    )
    expect(foot({ stiffness: { x: 'X' } })[1]).toMatch(/^The drives slip/)
  })
})

describe('the numbers of a chart', () => {
  const words = { title: 'T', description: 'D' }
  const [x, y] = [
    { title: 'turns', unit: '1' },
    { title: 'force', unit: 'N' },
  ]

  test('bars with ends, labels and groups', () => {
    const bars = [
      { name: 'pin', to: 1.23456, group: 'weak' },
      { name: 'bore', to: 2, label: 'two' },
    ]
    expect(chartTable(barChart({ ...words, value: y, bars }))).toEqual({
      head: ['what', 'force [N]', 'label', 'group'],
      rows: [
        ['pin', '1.235', '1.23', 'weak'],
        ['bore', '2', 'two', ''],
      ],
    })
  })

  test('lines by series, thinned to about seven points with both ends, and rules at their axis', () => {
    const line = (name: string, count: number) => ({
      name,
      points: Array.from({ length: count }, (_, i) => [i, 2 * i] as [number, number]),
    })
    const rules = [
      { name: 'level', at: 5 },
      { name: 'end', at: 3, axis: 'x' as const },
    ]
    const { head, rows } = chartTable(lineChart({ ...words, x, y, series: [line('a', 13), line('b', 2)], rules }))
    expect(head).toEqual(['series', 'turns', 'force [N]'])
    expect(rows).toEqual([
      ...[0, 2, 4, 6, 8, 10, 12].map((i) => ['a', String(i), String(2 * i)]),
      ['b', '0', '0'],
      ['b', '1', '2'],
      ['level', '', '5'],
      ['end', '3', ''],
    ])
    const uneven = chartTable(lineChart({ ...words, x, y, series: [line('a', 12)] })).rows.map(([, at]) => Number(at))
    expect([uneven[0], uneven.at(-1)]).toEqual([0, 11])
    const guided = chartTable(pointChart({ ...words, x, y, series: [line('a', 1)], lines: [line('limit', 2)] })).rows
    expect(guided.map(([name]) => name)).toEqual(['limit', 'limit', 'a'])
  })

  test('of a cloud the marks that are outermost in both directions, of however many', () => {
    const cloud = Array.from({ length: 400 }, (_, i): [number, number] => [Math.cos(i) ** 2, Math.sin(7 * i) ** 2])
    const { rows } = chartTable(pointChart({ ...words, x, y, series: [{ name: 'a', points: [...cloud, [2, 0], [0, 3]] }] }))
    const printed = rows.map(([, at, value]) => [Number(at), Number(value)] as const)
    expect([printed[0], printed.at(-1)]).toEqual([
      [0, 3],
      [2, 0],
    ])
    for (const [at, value] of printed) expect(cloud.filter((other) => other[0] > at + 1e-3 && other[1] > value + 1e-3)).toEqual([])
  })

  test('lines over the same points and bars of the same names stand beside each other', () => {
    const line = (name: string, at: number[]) => ({ name, points: at.map((one) => [one, 2 * one] as [number, number]) })
    const beside = (at: number[], rules: { name: string; at: number; axis?: 'x' }[]) =>
      withColumns(chartTable(lineChart({ ...words, x, y, series: [line('a', [0, 1, 2]), line('b', at)], rules })))
    expect(beside([0, 2], [{ name: 'level', at: 5 }])).toEqual({
      head: ['turns', 'a [N]', 'b [N]', 'level [N]'],
      rows: [
        ['0', '0', '0', '5'],
        ['1', '2', '', '5'],
        ['2', '4', '4', '5'],
      ],
    })
    // A point of its own, or a line across, keeps one row for each point.
    expect(beside([0, 1.5], []).head[0]).toBe('series')
    expect(beside([0, 2], [{ name: 'end', at: 1, axis: 'x' }]).head[0]).toBe('series')
    const bar = (name: string, group: string, to: number) => ({ name, group, to, label: to > 1 ? `${to} mm` : '' })
    const bars = [bar('pin', 'less', 1), bar('pin', 'more', 2), bar('bore', 'less', 3), bar('bore', 'more', 0.5)]
    expect(withColumns(chartTable(barChart({ ...words, value: y, bars })))).toEqual({
      head: ['what', 'force [N], less', 'more'],
      rows: [
        ['pin', '1', '2 (2 mm)'],
        ['bore', '3 (3 mm)', '0.5'],
      ],
    })
    expect(withColumns(chartTable(barChart({ ...words, value: y, bars: bars.slice(1) }))).head[3]).toBe('group')
  })

  test('on a phone names break into lines, and clouds keep every fourth point', () => {
    const chart = (name: string) => forPhone(barChart({ ...words, value: y, bars: [{ name, to: 1 }] })) as unknown as Record<string, never>
    const wide = chart('a name that is longer than one line')
    expect(wide).toMatchObject({ width: 360, height: { step: 31 } })
    const { layer } = wide as unknown as { layer: { data: { values: { name: string }[] }; encoding: { y: { axis: object } } }[] }
    expect(layer[0]?.data.values[0]?.name).toBe('a name that is longer\nthan one line')
    expect(layer[0]?.encoding.y.axis).toMatchObject({ labelLimit: 0 })
    const exact = chart('twenty two letters are') as unknown as { layer: { data: { values: { name: string }[] } }[] }
    expect(exact.layer[0]?.data.values[0]?.name).toBe('twenty two letters are')
    const cloud = forPhone(
      pointChart({ ...words, x, y, series: [{ name: 'a', points: Array.from({ length: 9 }, (_, i) => [i, i] as [number, number]) }] }),
    )
    expect(cloud).toMatchObject({ height: 240 })
    expect((cloud.layer as { data: { values: { x: number }[] } }[])[0]?.data.values.map((value) => value.x)).toEqual([0, 4, 8])
  })
})

describe('a page in three forms, piece by piece', () => {
  const [html, scripted] = [(block: Block) => htmlBlocks([block]), (block: Block) => htmlBlocks([block], 0, true)]
  const plain = (block: Block) =>
    textPage({ title: 'T', blocks: [block] })
      .slice('T\n=\n\n'.length)
      .trimEnd()
  const markdown = (block: Block) =>
    markdownPage({ title: 'T', blocks: [block] })
      .slice('# T\n\n'.length)
      .trimEnd()
  const three = (block: Block) => [html(block), markdown(block), plain(block)]

  test('headings, paragraphs, lists, code', () => {
    expect(three(heading('A & B'))).toEqual(['<h2>A &amp; B</h2>', '## A & B', 'A & B\n-----'])
    expect(three(subheading('A'))).toEqual(['<h3>A</h3>', '### A', 'A\n-'])
    expect(three(text('see [a](b) < c'))).toEqual(['<p>see [a](b) &lt; c', 'see [a]\\(b) &lt; c', 'see [a](b) < c'])
    expect(three(led('Mind:', 'it')).map((one) => one.trim())).toEqual(['<p><strong>Mind:</strong> it', '**Mind:** it', 'Mind: it'])
    expect(html(small('x'))).toBe('<p class=small>x')
    expect(html({ kind: 'text', text: 'x', tone: 'fails' })).toBe('<p class="verdict fails">x')
    expect(markdown({ kind: 'text', text: 'x', tone: 'fails' })).toBe('**x**')
    expect(three(points(['a', 'b']))).toEqual(['<ul><li>a<li>b</ul>', '- a\n- b', '- a\n- b'])
    expect(three(steps(['a', 'b']))).toEqual(['<ol><li>a<li>b</ol>', '1. a\n2. b', '1. a\n2. b'])
    expect([html(points(['a'])), scripted(points(['a']))]).toEqual(['<ul><li>a</ul>', '<p>a'])
    expect(three(code('t, x\n1\n')).slice(1)).toEqual(['```\nt, x\n1\n```', 't, x\n1'])
    expect(three(fold('More', [text('in')]))).toEqual([
      '<details open><summary>More</summary><p>in</details>',
      '**More**\n\nin',
      'More\n\nin',
    ])
  })

  test('emphasis, code, tones and links of a paragraph', () => {
    const words = text([
      { text: 'a', strong: true },
      ' ',
      { text: 'b.c', code: true },
      ' ',
      { text: 'd', to: 'e' },
      { text: 'f', id: 'g', tone: 'short' },
    ])
    expect(three(words)).toEqual([
      '<p><strong>a</strong> <code>b.c</code> <a href=#e>d</a><span id=g class=short>f</span>',
      '**a** `b.c` df',
      'a b.c df',
    ])
    // The script of a report makes references to numbered places from their texts.
    expect(
      scripted(
        text([
          { text: '3.1', to: 's3.1' },
          { text: 'F12', id: 'F12' },
          { text: 'x', to: 'other' },
        ]),
      ),
    ).toBe('<p>3.1F12<a href=#other>x</a>')
    expect(html(text([{ text: 'a', code: true }, '; ', { text: 'b', code: true }]))).toBe('<p><code>a; b</code>')
  })

  test('tables: names of parts, cells of one tone, empty ends, places of rows', () => {
    const rows = [
      [[{ text: 'Knee', strong: true }], '', ''],
      ['pin', [{ text: 'fails', tone: 'fails' }], ''],
      ['a|b', '', '3'],
    ]
    const block = table('Sizes "x"', ['part', '', 'n'], rows, [undefined, 'p1', undefined])
    expect(html(block)).toBe(
      '<div class=wide tabindex=0 role=group aria-label="Sizes &quot;x&quot;"><table>\n<caption>Sizes "x"</caption>\n<thead><tr><th>part<td><th>n<tbody><tr><th colspan=3>Knee<tr id=p1><td>pin<td class=fails>fails<tr><td>a|b<td><td>3</table></div>',
    )
    expect(scripted(block)).toContain('<div class=wide><table>')
    expect(scripted(block)).not.toContain('id=p1')
    expect(markdown(block)).toBe('|part||n|\n|---|---|---|\n|**Knee**|||\n|pin|fails||\n|a\\|b||3|')
    expect(plain(block)).toBe('part         n\n----  -----  -\nKnee\npin   fails\na|b          3')
    expect(
      plainTable({
        head: [],
        rows: [
          ['a', 'b'],
          ['long', 'c'],
        ],
      }),
    ).toBe('a     b\nlong  c')
    // Named by its heading, where that says the same.
    expect(html(section('s', 'Sizes', [table('Sizes', ['a'], [['b']])]))).not.toContain('<caption>')
    expect(html(section('s', 'Other', [table('Sizes', ['a'], [['b']])]))).toContain('<caption>Sizes</caption>')
    expect(
      html(
        facts('Who', [
          ['leg', 'left & right'],
          ['name', ''],
        ]),
      ),
    ).toBe(
      '<table class="facts"><caption>Who</caption><tbody><tr><th scope="row">leg</th><td>left &amp; right</td></tr><tr><th scope="row">name</th><td class="blank"></td></tr></tbody></table>',
    )
  })

  test('sections have levels: one is a part of the page, those within are headings with places', () => {
    const block = section('a', 'A', [section('b', 'B', [section('f3', 'C', [text('x')])])])
    expect(html(block)).toBe(
      '<section id="a" aria-labelledby="a-title">\n<h2 id="a-title">A</h2>\n\n<h3 id="b">B</h3>\n<h4>C</h4><p>x\n</section>',
    )
    expect(markdown(block)).toBe('## A\n\n### B\n\n#### C\n\nx')
    expect(htmlSection('p', { title: 'Page', blocks: [heading('H')] })).toBe(
      '<section aria-labelledby="p">\n<h2 id="p">Page</h2>\n<h3>H</h3>\n</section>',
    )
    expect(htmlBlocks([block], 1)).toContain('<h3 id="a-title">A</h3>\n\n<h4 id="b">B</h4>')
  })

  test('a picture has heading, answer, caption and numbers; its caption does not repeat the answer', () => {
    const own = {
      id: 'p',
      title: 'Leg',
      answer: 'It fails',
      description: 'It fails. Seen from the left.',
      table: { head: ['n'], rows: [['3']] },
    }
    expect(captionOf(own)).toBe('Seen from the left.')
    expect(captionOf({ ...own, answer: 'Other' })).toBe('It fails. Seen from the left.')
    expect(markdown(picture(own))).toBe('## Leg\n\n**It fails**\n\nSeen from the left.\n\n|n|\n|---|\n|3|')
    expect(plain(picture(own))).toBe('Leg\n---\n\nIt fails\n\nSeen from the left.\n\nn\n-\n3')
    const drawn = html(
      picture({ ...own, wide: true, svg: '<svg viewBox="0 0 3 4"><title id="t">x</title><desc>y</desc><g><path d="M0,0"/></g></svg>' }),
    )
    expect(drawn).toContain('<figure id=p class=wholeWidth>')
    expect(drawn).toContain('<p class=answer>It fails</p>')
    expect(drawn).toContain('<figcaption id=p-text>Seen from the left.</figcaption>')
    expect(drawn).toContain('<svg role=img aria-labelledby=p-title aria-describedby=p-text viewBox="0 0 3 4"><g><path d=M0,0 /></g></svg>')
    const { answer: _, table: __, ...bare } = own
    expect(html(picture(bare))).toBe(
      '<figure id=p>\n<div class=picture><h2 id=p-title>Leg</h2>\n</div>\n<figcaption id=p-text>It fails. Seen from the left.</figcaption>\n</figure>',
    )
  })

  test('a drawing in a page loses its answer and its results, which stand beside it, and the height that they took', () => {
    const svg = `<svg class="drawing" viewBox="0 0 360 200" role="img" aria-labelledby="x-picture-title" aria-describedby="x-picture-desc">
<title id="x-picture-title">T</title>
<desc id="x-picture-desc">D</desc>
<!-- answer -->
<g><text x="8" y="19">one</text><text x="8" y="36">two</text></g>
<!-- view -->
<g><path class="thick" d="M0,0h1"/></g>
<!-- results -->
<g><text x="8" y="171.4">r</text></g>
</svg>
`
    const out = inPage(svg, 'x')
    // Two lines of 17 above; below, the page ends where the letters of the results began, 11 above their line.
    expect(out).toContain('viewBox="0 34 360 127"')
    expect(out).not.toMatch(/one|two|<title|<desc|<!--|>r</)
    expect(out).toContain('<path class=thick d=M0,0h1 />')
    expect(inPage('<p>none</p>', 'x')).toBe('<p>none</p>')
    expect(inPage(svg.replace(/<!-- results[\s\S]*?<\/g>\n/, ''), 'x')).toContain('viewBox="0 34 360 166"')
  })
})

describe('a rendered chart, made small', () => {
  // Groups that say nothing are left out.
  const drawn = (inner: string) => /<svg [^>]*>(.*)<\/svg>/s.exec(compactSvg(`<svg width="10" height="10">${inner}</svg>`))?.[1]
  test('what nobody sees is left out', () => {
    expect(drawn('<g><text opacity="0" transform="translate(1,2)">hidden</text></g>')).toBeUndefined()
    expect(
      drawn(
        '<path d=""/><path d="M0,0h1"/><rect display="none" width="3"/><rect class="a" aria-hidden="true" opacity="1" width="3" fill="red"/>',
      ),
    ).toBe('<rect width="3" fill="red"/>')
  })

  test('lines of one look are one path, at their places; another look begins a new one', () => {
    const line = (x: number, y: number, stroke = 'red') => `<line transform="translate(${x},${y})" x2="0" y2="5" stroke="${stroke}"/>`
    expect(drawn(`<g>${line(1, 2)}${line(4, 2)}${line(7, 2, 'blue')}</g>`)).toBe(
      '<path stroke="red" d="M1,2v5m3-5v5"/><path stroke="blue" d="M7,2v5"/>',
    )
    expect(drawn('<g><path d="M0,0L10,5L20,0" stroke="red"/></g>')).toBe('<path stroke="red" d="M0,0l10,5,10-5"/>')
  })

  test('marks of one shape are one path, each at its place', () => {
    const mark = (x: number, y: number) => `<path transform="translate(${x},${y})" d="M-2,-2h4v4h-4Z" fill="red"/>`
    expect(drawn(`<g>${mark(10, 20)}${mark(30, 5)}</g>`)).toBe('<path fill="red" d="M8,18h4v4h-4zM28,3h4v4h-4z"/>')
    const round = (x: number) => `<path transform="translate(${x},0)" d="M3,0A3,3,0,1,1,-3,0A3,3,0,1,1,3,0" fill="red"/>`
    expect(drawn(`<g>${round(10)}${round(20)}</g>`)).toBe(
      '<path fill="red" d="M13,0a3,3,0,1,1,-6,0a3,3,0,1,1,6,0M23,0a3,3,0,1,1,-6,0a3,3,0,1,1,6,0"/>',
    )
  })

  test('three texts and more say once what they have in common', () => {
    const label = (x: number, fill = 'red') => `<text text-anchor="middle" transform="translate(${x},2)" fill="${fill}">${x}</text>`
    expect(drawn(`<g>${label(1)}${label(2)}${label(3)}<rect width="4" fill="blue"/></g>`)).toBe(
      '<rect width="4" fill="blue"/><g fill="red" text-anchor="middle"><text x="1" y="2">1</text><text x="2" y="2">2</text><text x="3" y="2">3</text></g>',
    )
  })
})
