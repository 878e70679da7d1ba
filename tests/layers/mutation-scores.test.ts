// What makes the check of the mutants fail.
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { forgottenFolders } from '../../scripts/mutants/forgotten.js'
import { estimateOf, type Record, type Survivor, scoreOf, withDraw, withRun } from '../../scripts/mutants/record.js'
import type { Fate, Outcome } from '../../scripts/mutants/stryker.js'
import { mistakes, mistakesOf, row } from '../../scripts/mutants/table.js'

const survivor = (nth: number, verdict: 'open' | 'equivalent' = 'open', why?: string): Survivor => ({
  ...{
    key: `${nth}`,
    file: 'src/a.ts',
    line: nth,
    mutator: 'ArithmeticOperator',
    was: 'a + b',
    becomes: 'a - b',
    fate: 'survived',
    verdict,
  },
  ...(why === undefined ? {} : { why }),
})
const survivors = (count: number) => Array.from({ length: count }, (_, nth) => survivor(nth))

/** A record of one draw, of which so many are noticed today. */
function record(detected: number, left: readonly Survivor[], floor = 0, firstKilled = detected): Record {
  const mutants = detected + left.length
  const draw = { date: '2026-01-01', mutants, killed: firstKilled, timedOut: 0, survived: mutants - firstKilled, uncovered: 0 }
  const counts = { folder: 'a', mutants: 500, left: 400, drawnTo: 'f', draws: [draw], date: draw.date, detected, floor }
  return { ...counts, survivors: left, killedSince: [] }
}

const outcome = (nth: number, fate: Fate): Outcome => {
  const { fate: _, verdict: _verdict, ...mutant } = survivor(nth)
  return { ...mutant, fate }
}

test('the records of today reach their scores, and the page agrees with them', () => {
  expect(mistakes()).toEqual([])
})

describe('a folder fails', () => {
  test('below 85 %', () => {
    expect(mistakesOf('a', record(85, survivors(15)))).toEqual([])
    expect(mistakesOf('a', record(849, survivors(151)))).toEqual(['a: the score is 84.9 %, and must be at least 85 %'])
    expect(mistakesOf('a', record(8499, survivors(1501)))).toHaveLength(1)
  })

  test('below the score that it had', () => {
    expect(mistakesOf('a', record(90, survivors(10), 90))).toEqual([])
    expect(mistakesOf('a', record(89, survivors(11), 90))).toEqual(['a: the score is 89 %, and was 90 %'])
    expect(mistakesOf('a', record(80, survivors(20), 90))).toHaveLength(2)
  })

  test('without a record, or with a score that is no number', () => {
    expect(mistakesOf('a', undefined)).toEqual(['a: no mutant was run yet: npm run mutants -- a --more=60'])
    expect(mistakesOf('a', record(Number.NaN, []))).toHaveLength(2)
  })

  test('when a mutant is called equivalent without a reason', () => {
    const why = 'Differs by the last bit only.'
    expect(mistakesOf('a', record(90, [survivor(1, 'equivalent', why)]))).toEqual([])
    for (const reason of [undefined, 'same'])
      expect(mistakesOf('a', record(90, [survivor(1, 'equivalent', reason)]))).toEqual([
        'a: src/a.ts:1 is called equivalent without a reason',
      ])
  })

  test('when it has more survivors than were drawn', () => {
    const one = record(2, survivors(1))
    expect(mistakesOf('a', { ...one, survivors: survivors(4), detected: 24 })).toEqual([])
    expect(
      mistakesOf('a', {
        ...one,
        detected: 1,
        survivors: [1, 2, 3].map((nth) => survivor(nth, 'equivalent', `reason enough, no ${nth} of all`)),
      }),
    ).toEqual(['a: more survivors than were drawn'])
  })
})

test('a folder of the source that no row covers is named, unless it only passes on what others export', () => {
  const root = mkdtempSync(join(tmpdir(), 'forgotten-'))
  const write = (name: string, text: string) => {
    mkdirSync(join(root, name, '..'), { recursive: true })
    writeFileSync(join(root, name), text)
  }
  write('index.ts', "/** All of it. */\nexport * from './cord/index.js'\nexport {\n  a,\n  type B,\n} from './belt/a.js'\n")
  write('cord/a.ts', 'export const a = 1\n')
  write('cord/end/b.ts', 'export const b = 2\n')
  write('belt/index.ts', "import { a } from '../cord/a.js'\nexport const c = a\n")
  const row = (source: string, flat?: true) => ({
    name: source,
    source: join(root, source),
    tests: [],
    ...(flat === undefined ? {} : { flat }),
  })
  const of = (...rows: ReturnType<typeof row>[]) => forgottenFolders(root, rows).map((found) => found.slice(root.length + 1))
  expect(of()).toEqual(['belt', 'cord', 'cord/end'])
  expect(of(row('cord'), row('belt'))).toEqual([])
  // A row of the files of a folder alone leaves out the folders below it; a name that begins alike is another folder.
  expect(of(row('cord', true), row('bel'))).toEqual(['belt', 'cord/end'])
  rmSync(root, { recursive: true })
})

test('the score leaves equivalent mutants out, and is rounded down', () => {
  expect(scoreOf(record(2, [survivor(1), survivor(2, 'equivalent', 'a reason of some length')]))).toBe(66.6)
})

test('a run that notices less is measured against the score before it, and says so', () => {
  const before = record(9, survivors(1), 90)
  const fallen = withRun(
    before,
    [],
    [...Array.from({ length: 8 }, (_, nth) => outcome(10 + nth, 'killed')), outcome(0, 'survived'), outcome(9, 'uncovered')],
    'today',
    false,
  )
  expect(fallen.floor).toBe(90)
  expect(mistakesOf('a', fallen)).toContain('a: the score is 80 %, and was 90 %')
})

test('a further draw with survivors may bring a folder below what is required', () => {
  const before = record(9, [], 100)
  const drawn = withDraw(
    'a',
    before,
    [],
    [outcome(1, 'killed'), outcome(2, 'timedOut'), outcome(3, 'survived'), outcome(4, 'uncovered'), outcome(5, 'static')],
    'today',
    false,
  )
  expect(drawn.draws.at(-1)).toEqual({
    date: 'today',
    after: before.drawnTo,
    mutants: 4,
    killed: 1,
    timedOut: 1,
    survived: 1,
    uncovered: 1,
  })
  expect(mistakesOf('a', drawn)).toEqual(['a: the score is 84.6 %, and must be at least 85 %'])
})

test('the table marks an estimate below 85 %, even where tests were written since', () => {
  expect(row('a', record(100, [], 100, 85))).toContain('| 85 % (77 to 91 %) of 100 | 100.0 %')
  expect(row('a', record(100, [], 100, 84))).toContain('| 84 % (76 to 90 %) of 100, **below 85 %** | 100.0 %')
  expect(row('a', undefined)).toContain('| a | – | 0 | **not run yet** |')
})

test('a further part of a draw adds to its counts, and keeps where it began', () => {
  const first = withDraw('a', undefined, [], [outcome(1, 'killed'), outcome(2, 'survived')], 'today', false)
  const both = withDraw('a', first, [], [outcome(3, 'killed'), outcome(4, 'uncovered')], 'later', true)
  expect(both.draws).toEqual([{ date: 'today', after: '', mutants: 4, killed: 2, timedOut: 0, survived: 1, uncovered: 1 }])
  expect(both.survivors).toHaveLength(2)
})

test('the estimate leaves out the equivalent mutants of the last draw, and of no other', () => {
  const first = withDraw('a', undefined, [], [outcome(1, 'killed'), outcome(2, 'survived')], 'today', false)
  const both = withDraw('a', first, [], [outcome(3, 'killed'), outcome(4, 'survived')], 'today', false)
  const judged = { ...both, survivors: both.survivors.map((each) => ({ ...each, verdict: 'equivalent' as const })) }
  expect(estimateOf(both)).toMatchObject({ share: 50, of: 2, equivalent: 0 })
  expect(estimateOf(judged)).toMatchObject({ share: 100, of: 1, equivalent: 1 })
  // Of an older draw, whose beginning is not known, nothing is left out.
  expect(estimateOf({ ...judged, draws: both.draws.map((draw) => ({ ...draw, after: undefined })) })).toMatchObject({
    of: 2,
    equivalent: 0,
  })
})
