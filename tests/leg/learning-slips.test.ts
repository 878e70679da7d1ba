import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { describeLeg } from '../../src/leg/index.js'
import { type Estimated, estimate } from '../../src/leg/learning/estimate.js'
import type { MeasurementId } from '../../src/leg/learning/measurements.js'
import { benchLeg } from '../../src/leg/plans/bench.js'
import { InputError } from '../../src/units/index.js'

const read = (name: string) => readFileSync(new URL(`../../examples/${name}`, import.meta.url), 'utf8')
const leg = benchLeg(describeLeg(read('mudflat-leg-revised.yaml')))
const FILES = {
  friction: 'cordFriction knee',
  pretension: 'pretension knee',
  windup: 'windup knee',
  heating: 'heating',
  pullOut: 'pullOut knee',
} as const
type Name = keyof typeof FILES
const clean: { readonly [N in Name]: string } = {
  friction: read('stand-logs/cordFriction-knee.csv'),
  pretension: read('stand-logs/pretension-knee.csv'),
  windup: read('stand-logs/windup-knee.csv'),
  heating: read('stand-logs/heating.csv'),
  pullOut: '# log: pullOut knee\nbreaking force [N]\n1985\n2070\n2010\n1950\n2101\n',
}
const from = (name: Name, text: string): Estimated => {
  const log = FILES[name]
  return estimate(leg, [{ log, id: log.split(' ')[0] as MeasurementId, joint: 'knee', text }], {})
}
const good = Object.fromEntries((Object.keys(clean) as Name[]).map((name) => [name, from(name, clean[name])])) as { [N in Name]: Estimated }

/** A log with the cells of its rows changed. */
const cells = (change: (row: number[], i: number) => (number | string)[], header?: (line: string) => string) => (text: string) => {
  let n = -1
  return text
    .split('\n')
    .map((line) => {
      if (line.startsWith('#') || line.trim() === '') return line
      n++
      if (n === 0) return header?.(line) ?? line
      return change(
        line.split(',').map((cell) => (cell === '' ? Number.NaN : Number(cell))),
        n - 1,
      )
        .map((x) => (typeof x === 'number' && Number.isNaN(x) ? '' : x))
        .join(',')
    })
    .join('\n')
}
const column = (at: number, change: (x: number) => number) => cells((row) => row.map((x, i) => (i === at ? change(x) : x)))
const header = (change: (line: string) => string) => cells((row) => row, change)
const swap = (a: number, b: number) => cells((row) => row.map((x, i) => (i === a ? row[b]! : i === b ? row[a]! : x)))
const rows = (text: string) => text.split('\n').filter((line) => line !== '' && !line.startsWith('#'))
const lines = (change: (line: string, i: number) => string | string[]) => (text: string) =>
  text.trimEnd().split('\n').flatMap(change).join('\n')
const add = (line: string) => (text: string) => `${text.trimEnd()}\n${line}\n`
const bare = (text: string) => text.replaceAll(/^# (log|joint):.*\n/gm, '')

describe('slips that were taken without a word', () => {
  // What was found, what the message must hold, and which slip must be named first.
  test.each<[string, Name, (text: string) => string, RegExp, RegExp | undefined]>([
    ['rms current in the column of peak current', 'heating', column(1, (x) => x / Math.SQRT2), /not possible|times as far/, /rms/],
    [
      'kelvin in columns of degrees Celsius',
      'heating',
      cells(([a, b, ...t]) => [a!, b!, ...t.map((x) => x + 273.15)]),
      /can be/,
      undefined,
    ],
    ['degrees in the column of turns', 'friction', column(2, (x) => 360 * x), /wrap angle goes from/, /in deg, not in turn/],
    ['seconds in the column of minutes', 'heating', column(0, (x) => 60 * x), /the run takes an hour/, /time are in s/],
    ['mount and winding swapped', 'heating', swap(2, 3), /winding is colder than its mounting face/, /swapped/],
    [
      'hours in the header, days in the cells',
      'pretension',
      header((line) => line.replace('[day]', '[h]')),
      /unit of the header/,
      /in day, not in h/,
    ],
    [
      'the log of another joint',
      'pretension',
      (text) => text.replace('# log: pretension knee', '# log: pretension hip'),
      /says that it is the log pretension hip/,
      undefined,
    ],
    ['the sign of the torque', 'windup', column(0, (x) => -x), /sign of one column is flipped/, /sign of joint/],
    ['radians in the column of degrees', 'windup', column(1, (x) => (x * Math.PI) / 180), /./, /in rad, not in deg/],
    ['slack and taut swapped', 'friction', swap(0, 1), /taut tension is not above/, /swapped/],
    ['kilograms on one scale', 'friction', column(0, (x) => x / 9.80665), /./, /kgf/],
    ['kilograms of tension', 'pretension', column(1, (x) => x / 9.80665), /./, /kgf/],
    ['pounds of tension', 'pretension', column(1, (x) => x / 4.4482), /./, /lbf/],
    ['seconds in the column of days', 'pretension', column(0, (x) => 86_400 * x), /time goes from/, /time are in s/],
    ['milliampere in the column of ampere', 'heating', column(1, (x) => 1000 * x), /peak phase current goes from/, /mA/],
    ['Fahrenheit in columns of Celsius', 'heating', cells(([a, b, ...t]) => [a!, b!, ...t.map((x) => 32 + 1.8 * x)]), /./, undefined],
    ['newton millimetres in the column of newton metres', 'windup', column(0, (x) => 1000 * x), /joint torque goes from/, /N mm/],
    ['kilogram centimetres', 'windup', column(0, (x) => 10.1972 * x), /./, /kgf cm/],
    ['values from peak to peak', 'heating', column(1, (x) => 2 * x), /./, /peak to peak/],
    ['a cord that was tightened again', 'pretension', cells(([t, f], i) => [t!, i > 6 ? f! + 60 : f!]), /grows with time/, undefined],
    ['kilograms of breaking force', 'pullOut', column(0, (x) => x / 9.80665), /./, /kgf/],
    ['a decimal point in the wrong place', 'pullOut', column(0, (x) => x / 10), /./, /decimal point|kgf/],
  ])('%s', (_, name, change, message, slip) => {
    const text = change(clean[name])
    expect(text).not.toBe(clean[name])
    const { found, refused, remarks } = from(name, text)
    expect(found).toEqual([])
    expect(refused).toHaveLength(1)
    expect(refused[0]!.why).toMatch(message)
    if (slip !== undefined) expect(refused[0]!.explanations.join('; ')).toMatch(slip)
    expect(remarks.some(({ what, message: told }) => (what === 'implausible' || what === 'wrong file') && /insist/.test(told))).toBe(true)
  })

  test('a log that is insisted on is used, and moves what it says', () => {
    const text = column(1, (x) => x / Math.SQRT2)(clean.heating)
    const { found, refused } = estimate(leg, [{ log: 'heating', id: 'heating', joint: 'hip', text }], { insist: ['heating'] })
    expect(refused).toEqual([])
    expect(found.find(({ path }) => path.endsWith('specificHeat'))!.value).toBeLessThan(350)
  })

  test('rows that stand twice count once', () => {
    const [before] = good.windup.found
    for (const twice of [
      lines((line) => (/^\d/.test(line) ? [line, line] : line)),
      (text: string) => `${text.trimEnd()}\n${rows(text).slice(1).join('\n')}\n`,
    ]) {
      const { found, remarks } = from('windup', twice(clean.windup))
      expect(found[0]!.readings).toBe(before!.readings)
      expect(found[0]!.value / before!.value).toBeCloseTo(1, 1)
      const width = (one: typeof before) => one!.interval![1] - one!.interval![0]
      expect(width(found[0])).toBeGreaterThan(0.95 * width(before))
      expect(remarks.filter(({ what }) => what === 'duplicate')).toHaveLength(before!.readings)
    }
  })

  test('the same readings under two names are used once', () => {
    const text = bare(clean.pretension)
    const both = (['knee', 'hip'] as const).map((joint) => ({ log: `pretension ${joint}`, id: 'pretension' as const, joint, text }))
    const { refused } = estimate(leg, both, {})
    expect(refused.map(({ log, why }) => [log, why])).toEqual([['pretension hip', 'its readings are those of the log pretension knee']])
  })
})

describe('logs as people have them', () => {
  const semicolons = (text: string) => lines((line) => (line.startsWith('#') ? line : line.replaceAll(',', ';').replaceAll('.', ',')))(text)
  // Formats that must be read like the clean log.
  test.each<[string, (text: string) => string]>([
    ['semicolon and decimal comma', semicolons],
    ['semicolon and decimal point', lines((line) => (line.startsWith('#') ? line : line.replaceAll(',', ';')))],
    ['tabs', lines((line) => (line.startsWith('#') ? line : line.replaceAll(',', '\t')))],
    [
      'quotes',
      lines((line) =>
        line.startsWith('#')
          ? line
          : line
              .split(',')
              .map((cell) => `"${cell}"`)
              .join(','),
      ),
    ],
    [
      'quotes and decimal comma',
      lines((line) =>
        line.startsWith('#')
          ? line
          : line
              .split(',')
              .map((cell) => `"${cell.replace('.', ',')}"`)
              .join(','),
      ),
    ],
    ['byte order mark and CRLF', (text) => `\uFEFF${text.replaceAll('\n', '\r\n')}`],
    ['line ends of old systems', (text) => text.replaceAll('\n', '\r')],
    ['a line sep=;', (text) => `sep=;\n${semicolons(text)}`],
    ['comments that a spreadsheet quoted and filled up', lines((line) => (line.startsWith('#') ? `"${line}",,,,` : line))],
    ['rows filled up with empty cells', lines((line) => (line.startsWith('#') ? line : `${line},,`))],
    ['units in round brackets', header((line) => line.replaceAll('[', '(').replaceAll(']', ')'))],
    [
      'capitals and underscores in the header',
      header((line) => line.replaceAll(/[a-z] [a-z]/g, (two) => two.replace(' ', '_').toUpperCase())),
    ],
    ['empty lines', lines((line) => [line, ''])],
    ['blanks round the cells', lines((line) => (line.startsWith('#') ? line : line.replaceAll(',', ' , ')))],
    ['comments of other kinds', (text) => `// taken on a rainy day\n% by hand\n${text}`],
    ['a degree sign', header((line) => line.replaceAll('degC', '°C').replaceAll('[deg]', '[°]'))],
  ])('%s', (_, change) => {
    for (const name of ['friction', 'pretension', 'windup'] as const) {
      const { found, refused, remarks } = from(name, change(clean[name]))
      expect(refused).toEqual([])
      for (const [i, one] of good[name].found.entries()) expect(found[i]!.value).toBeCloseTo(one.value, 9)
      const kinds = (all: typeof remarks) => all.map(({ what }) => what).filter((what) => what !== 'format')
      expect(kinds(remarks)).toEqual(kinds(good[name].remarks))
    }
  })

  test('another unit in the header is converted and named', () => {
    const kilo = from(
      'pretension',
      cells(
        ([t, f]) => [t! * 24, f! / 1000],
        () => 'time [h],tension [kN]',
      )(clean.pretension),
    )
    expect(kilo.found[0]!.value).toBeCloseTo(good.pretension.found[0]!.value, 6)
    expect(kilo.remarks.filter(({ what }) => what === 'unit')).toHaveLength(2)
  })

  // Rows that are left out, each with its line and reason.
  test.each<[string, string, RegExp]>([
    ['a gap', '31,', /gap/],
    ['a word', '31,broken', /unreadable/],
    ['a value of a spreadsheet', '31,#DIV/0!', /gap/],
    ['not a number', '31,NaN', /gap/],
    ['infinity', '31,Infinity', /unreadable/],
    ['a decimal comma among commas', '31,156,2', /unreadable/],
    ['thousands', '31,"1,156.2"', /unreadable/],
    ['time that runs back', '2,160', /order/],
    ['time that stands still', '30,156.5', /order/],
    ['another kind of unit', '31,156 mm', /unreadable/],
    ['a spike', '31,9.2', /implausible|spike/],
    ['a negative tension', '31,-156', /implausible/],
    ['a unit in the cell', '31,0.1562 kN', /unit/],
    ['a minus sign of a typesetter', '31,\u2212156', /implausible/],
  ])('%s is named by its line', (_, row, what) => {
    const text = add(row)(clean.pretension)
    const { found, remarks } = from('pretension', text)
    const line = text.split('\n').indexOf(row) + 1
    const told = remarks.filter((one) => one.line === line)
    expect(told.map((one) => one.what).join(' ')).toMatch(what)
    // A row like that moves the result by less than its interval.
    for (const [i, { value, interval }] of good.pretension.found.entries()) {
      expect(found[i]!.value).toBeGreaterThan(interval![0])
      expect(found[i]!.value).toBeLessThan(interval![1])
      expect(Math.abs(found[i]!.value - value) / value).toBeLessThan(0.02)
    }
  })

  // Files that cannot be read at all.
  test.each<[string, (text: string) => string, RegExp]>([
    ['an empty file', () => '', /needs the column/],
    ['comments only', () => '# nothing\n', /needs the column/],
    ['no header', (text) => rows(text).slice(1).join('\n'), /needs the column/],
    ['no units', header((line) => line.replaceAll(/ \[[^\]]+\]/g, '')), /no unit/],
    ['a misspelt column', header((line) => line.replace('tension', 'tensoin')), /is tensoin meant/],
    ['a unit of another kind', header((line) => line.replace('[N]', '[mm]')), /must be in/],
    [
      'a column that is missing',
      lines((line) => (line.startsWith('#') ? line : (line.split(',')[0] as string))),
      /needs the column tension/,
    ],
    [
      'a column twice',
      cells(
        (row) => [...row, row[1]!],
        (line) => `${line},tension [N]`,
      ),
      /tension twice/,
    ],
  ])('%s', (_, change, message) => {
    expect(() => from('pretension', change(clean.pretension))).toThrow(message)
    expect(() => from('pretension', change(clean.pretension))).toThrow(InputError)
  })

  test('an unused column, few rows, and rows without information are named', () => {
    const extra = from(
      'pretension',
      cells(
        (row) => [...row, 7],
        (line) => `${line},humidity [%]`,
      )(clean.pretension),
    )
    expect(extra.remarks).toContainEqual(expect.objectContaining({ what: 'column', message: expect.stringContaining('humidity') }))
    expect(from('pretension', rows(clean.pretension).slice(0, 3).join('\n')).remarks).toContainEqual(
      expect.objectContaining({ what: 'few readings' }),
    )
    const still = from('windup', cells(() => [0, 0.1])(clean.windup))
    expect(still.found.every(({ interval }) => interval === undefined)).toBe(true)
  })

  test('what a comment says of an instrument is used; a misspelt one is named', () => {
    const better = from('pretension', `# force gain: 0.5 %\n# force zero: 0.2 N\n${clean.pretension}`)
    const width = ({ found }: Estimated) => found[0]!.interval![1] - found[0]!.interval![0]
    expect(width(better)).toBeLessThan(0.5 * width(good.pretension))
    const misspelt = from('pretension', `# force gian: 0.5 %\n${clean.pretension}`)
    expect(misspelt.remarks).toContainEqual(expect.objectContaining({ what: 'instrument', line: 1 }))
    const nonsense = from('pretension', `# force gain: much\n${clean.pretension}`)
    expect(nonsense.remarks).toContainEqual(expect.objectContaining({ what: 'instrument' }))
    expect(width(nonsense)).toBeCloseTo(width(good.pretension), 9)
  })
})
