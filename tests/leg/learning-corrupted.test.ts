import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { describeLeg } from '../../src/leg/index.js'
import { corrections } from '../../src/leg/learning/corrections.js'
import { InputError } from '../../src/units/index.js'

const read = (name: string) => readFileSync(new URL(`../../examples/${name}`, import.meta.url), 'utf8')
const leg = describeLeg(read('mudflat-leg-revised.yaml'))
const table = (head: string, rows: readonly (readonly number[])[]) => `${head}\n${rows.map((row) => row.join(',')).join('\n')}\n`
const wave = (i: number) => Math.sin(78.233 * (i + 1) ** 2)

/** Torque per ampere of 110 rpm/V: 3/2 · peak phase EMF over speed. */
const PER_AMPERE = (1.5 / Math.sqrt(3) / 110) * (60 / (2 * Math.PI))
const CLEAN = {
  'cordFriction knee': read('stand-logs/cordFriction-knee.csv'),
  'windup knee': read('stand-logs/windup-knee.csv'),
  'pretension knee': read('stand-logs/pretension-knee.csv'),
  heating: read('stand-logs/heating.csv'),
  'pullOut knee': table('breaking force [N]', [[1985], [2070], [2010], [1950], [2101]]),
  torqueConstant: table(
    'peak phase current [A],motor torque [N m]',
    [4, 8, 12, 16, 20, 24, 28, 32].map((ampere, i) => [ampere, Number((PER_AMPERE * ampere + 0.004 * wave(i)).toFixed(4))]),
  ),
  noLoad: table(
    'voltage [V],current [A]',
    [6, 8, 10, 12, 14, 16].map((volt, i) => [volt, Number((0.6 + 0.012 * (volt - 10) + 0.004 * wave(i)).toFixed(3))]),
  ),
  footDeflection: table(
    'upright force [N],upright deflection [mm]',
    [0, 6, 12, 18, 24, 18, 12, 6, 0].map((force, i) => [force, Number((0.2 + 0.02 * force + 0.005 * wave(i)).toFixed(3))]),
  ),
} as const
type Log = keyof typeof CLEAN

const learnt = (log: Log, text: string) => corrections(leg, { [log]: text })
const good = new Map((Object.keys(CLEAN) as Log[]).map((log) => [log, learnt(log, CLEAN[log])]))

/** Rows changed, header and comments kept. */
const rows = (change: (row: number[], i: number) => readonly (number | string)[]) => (text: string) => {
  let n = -2
  return text
    .split('\n')
    .map((line) => {
      if (line.startsWith('#') || line.trim() === '') return line
      n++
      return n < 0 ? line : change(line.split(',').map(Number), n).join(',')
    })
    .join('\n')
}
const column = (at: number, change: (x: number, i: number) => number) => rows((row, i) => row.map((x, k) => (k === at ? change(x, i) : x)))
const head = (from: string | RegExp, to: string) => (text: string) => text.replace(from, to)
const add = (line: string) => (text: string) => `${text.trimEnd()}\n${line}\n`
const swapped = (a: number, b: number) => rows((row) => row.map((x, k) => (k === a ? row[b]! : k === b ? row[a]! : x)))
const body = (text: string) => text.split('\n').filter((line) => /^[-\d]/.test(line))

/** Every corrupted log: the slip, the log that it happens to, and how. */
const CORRUPTED: readonly (readonly [what: string, log: Log, change: (text: string) => string])[] = [
  // Slips of units, columns and signs.
  ['rms current in the column of peak current', 'heating', column(1, (x) => x / Math.SQRT2)],
  ['current from peak to peak', 'heating', column(1, (x) => 2 * x)],
  ['milliampere', 'heating', column(1, (x) => 1000 * x)],
  ['kelvin for degrees Celsius', 'heating', rows((row) => row.map((x, k) => (k > 1 ? x + 273.15 : x)))],
  ['degrees Fahrenheit', 'heating', rows((row) => row.map((x, k) => (k > 1 ? 32 + 1.8 * x : x)))],
  ['seconds for minutes', 'heating', column(0, (x) => 60 * x)],
  ['winding and mount swapped', 'heating', swapped(2, 3)],
  ['mount and air swapped', 'heating', swapped(3, 4)],
  ['the winding is another thermometer on the mount', 'heating', rows((row) => row.map((x, k) => (k === 2 ? row[3]! : x)))],
  ['the air thermometer lies on the plate', 'heating', rows((row) => row.map((x, k) => (k === 4 ? row[3]! - 0.2 : x)))],
  ['degrees for turns', 'cordFriction knee', column(2, (x) => 360 * x)],
  ['radians for turns', 'cordFriction knee', column(2, (x) => 2 * Math.PI * x)],
  ['slack and taut swapped', 'cordFriction knee', swapped(0, 1)],
  ['kilograms on one scale', 'cordFriction knee', column(1, (x) => x / 9.80665)],
  ['one wrap for all rows', 'cordFriction knee', column(2, () => 5)],
  ['radians for degrees', 'windup knee', column(1, (x) => (x * Math.PI) / 180)],
  ['newton millimetres for newton metres', 'windup knee', column(0, (x) => 1000 * x)],
  ['the torque of the motor, not of the joint', 'windup knee', column(0, (x) => x / 5.6)],
  ['the angle of the motor, not of the joint', 'windup knee', column(1, (x) => 5.6 * x)],
  ['the sign of the torque', 'windup knee', column(0, (x) => -x)],
  ['a lever of half the length', 'windup knee', column(0, (x) => 2 * x)],
  ['hours in the header, days in the cells', 'pretension knee', head('[day]', '[h]')],
  ['seconds for days', 'pretension knee', column(0, (x) => 86_400 * x)],
  ['kilograms of tension', 'pretension knee', column(1, (x) => x / 9.80665)],
  ['pounds of tension', 'pretension knee', column(1, (x) => x / 4.4482)],
  ['both spans together', 'pretension knee', column(1, (x) => 2 * x)],
  ['a cord that was tightened again', 'pretension knee', column(1, (x, i) => (i > 6 ? x + 60 : x))],
  ['the log of another joint', 'pretension knee', head('# log: pretension knee', '# log: pretension hip')],
  ['kilograms of breaking force', 'pullOut knee', column(0, (x) => x / 9.80665)],
  ['a decimal point in the wrong place', 'pullOut knee', column(0, (x) => x / 10)],
  ['rms current in the column of peak current', 'torqueConstant', column(0, (x) => x / Math.SQRT2)],
  ['newton millimetres', 'torqueConstant', column(1, (x) => 1000 * x)],
  ['the scale in kilograms as torque', 'torqueConstant', column(1, (x) => x / 9.80665)],
  ['the sign of the torque', 'torqueConstant', column(1, (x) => -x)],
  ['current and torque swapped', 'torqueConstant', swapped(0, 1)],
  ['milliampere', 'noLoad', column(1, (x) => 1000 * x)],
  ['millivolt', 'noLoad', column(0, (x) => 1000 * x)],
  ['voltage and current swapped', 'noLoad', swapped(0, 1)],
  ['the current with the cord on', 'noLoad', column(1, (x) => 5 * x)],
  ['kilonewton of force', 'footDeflection', column(0, (x) => 1000 * x)],
  ['metres of deflection', 'footDeflection', column(1, (x) => 1000 * x)],
  // Rows that cannot be used.
  ['a gap', 'pretension knee', add('31,')],
  ['a word', 'pretension knee', add('31,broken')],
  ['an error of a spreadsheet', 'pretension knee', add('31,#DIV/0!')],
  ['infinity', 'pretension knee', add('31,Infinity')],
  ['a decimal comma among commas', 'pretension knee', add('31,156,2')],
  ['time that runs back', 'pretension knee', add('2,160')],
  ['a spike', 'pretension knee', add('31,9.2')],
  ['a negative tension', 'pretension knee', add('31,-156')],
  ['a unit of another kind in the cell', 'pretension knee', add('31,156 mm')],
  ['an end that slipped out at once', 'pullOut knee', add('12')],
  ['a row of zeros', 'torqueConstant', add('0,9')],
  // Rows that say nothing new.
  [
    'every row twice',
    'windup knee',
    (text) =>
      text
        .split('\n')
        .flatMap((line) => (/^[-\d]/.test(line) ? [line, line] : [line]))
        .join('\n'),
  ],
  ['the whole run pasted twice', 'windup knee', (text) => `${text.trimEnd()}\n${body(text).join('\n')}\n`],
  [
    'two rows',
    'pretension knee',
    (text) =>
      text
        .split('\n')
        .slice(0, text.split('\n').findIndex((line) => /^\d/.test(line)) + 2)
        .join('\n'),
  ],
  ['a load that never changes', 'windup knee', rows(() => [0, 0.1])],
  ['a current that never changes', 'torqueConstant', rows(() => [8, 0.6])],
  // Files that are no such log.
  ['an empty file', 'heating', () => ''],
  ['no header', 'noLoad', (text) => body(text).join('\n')],
  ['no units', 'torqueConstant', head(/ \[[^\]]+\]/g, '')],
  ['a unit of another kind', 'pullOut knee', head('[N]', '[mm]')],
  ['a column twice', 'footDeflection', head('[mm]', '[mm],upright deflection [mm]')],
  ['the file of another measurement', 'cordFriction knee', () => CLEAN['windup knee']],
]

describe(`${CORRUPTED.length} corrupted logs`, () => {
  test('are at least thirty-two and twenty more, of every kind of log', () => {
    expect(CORRUPTED.length).toBeGreaterThanOrEqual(52)
    expect(new Set(CORRUPTED.map(([what, log]) => `${what}, ${log}`)).size).toBe(CORRUPTED.length)
    expect(new Set(CORRUPTED.map(([, log]) => log)).size).toBe(Object.keys(CLEAN).length)
    // The clean ones teach their fields, or are compared.
    for (const [log, { moved, compared }] of good) {
      expect(moved.filter(({ state }) => state === 'corrected' || state === 'confirmed').length + compared.length, log).toBeGreaterThan(0)
      expect(
        moved.filter(({ state }) => state === 'notApplied'),
        log,
      ).toEqual([])
    }
  })

  test.each(CORRUPTED)('%s (%s): named, and no field moves in silence', (_, log, change) => {
    const text = change(CLEAN[log])
    expect(text).not.toBe(CLEAN[log])
    let found: ReturnType<typeof learnt>
    try {
      found = learnt(log, text)
    } catch (error) {
      expect(error).toBeInstanceOf(InputError)
      return
    }
    const clean = good.get(log)!
    const named = found.remarks.filter(({ what }) => what !== 'format' && !clean.remarks.some((one) => one.what === what))
    const refused = found.moved.filter(({ state }) => state === 'notApplied' || state === 'undetermined')
    const odd = found.compared.filter(({ state }) => state !== clean.compared[0]?.state)
    expect([
      ...named.map(({ what, message }) => `${what}: ${message}`),
      ...refused.map(({ why }) => why),
      ...odd.map(({ means }) => means),
    ]).not.toEqual([])
    // A field that comes out elsewhere than with the clean log has a remark that names the rows or the misfit.
    for (const one of found.moved) {
      if (one.state !== 'corrected' && one.state !== 'confirmed') continue
      const before = clean.moved.find(({ path }) => path === one.path)!
      const [low, high] = before.interval!.map(Number.parseFloat) as [number, number]
      const after = Number.parseFloat(one.after)
      if (after < low || after > high)
        expect(
          named.map(({ what }) => what),
          `${one.path}: ${before.after} -> ${one.after}`,
        ).not.toEqual([])
    }
  })
})
