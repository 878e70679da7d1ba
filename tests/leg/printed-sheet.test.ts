import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import type { AnyFormula } from '../../src/formula/index.js'
import { recordedOf } from '../../src/leg/assess/recorded.js'
import { assess, describeLeg, markdownReport } from '../../src/leg/index.js'
import { type NumberedStep, Numbering } from '../../src/leg/report/numbering.js'
import { PROCEDURES } from '../../src/leg/report/procedures.js'
import { type Calculation, SheetMaker } from '../../src/leg/run/index.js'
import { inputPlaces, outputPlaces, type Place } from '../../src/leg/run/links.js'
import { type Kind, quantity } from '../../src/units/index.js'
import { type PrintedGroup, type PrintedInput, type PrintedSheet, readSheet } from './run/printed-reader.js'

const legs = ['first', 'revised'].map((name) => {
  const verdict = assess(describeLeg(readFileSync(new URL(`../../examples/mudflat-leg-${name}.yaml`, import.meta.url), 'utf8')))
  const { calculation, checks } = recordedOf(verdict)
  const order = verdict.checks.flatMap(
    ({ id, joint }) => checks.find(({ key }) => key === (joint === undefined ? id : `${id} ${joint}`)) ?? [],
  )
  const cells = order.flatMap(({ findings: [hardest] }) => [hardest!.comparison.demand, hardest!.comparison.capacity])
  const numbering = new Numbering(new SheetMaker(calculation as unknown as Calculation<never>), cells)
  return [name, { verdict, numbering, printed: readSheet(markdownReport(verdict, { steps: 'all' })) }] as const
})

/** A printed number as SI, and half of its last digit. */
function read(kind: Kind, printed: string): { readonly si: number; readonly half: number } {
  const text = printed
    .replaceAll('²', '^2')
    .replaceAll('³', '^3')
    .replaceAll('⁴', '^4')
    .replace('Ω', 'ohm')
    .replace(/µ(?=H|m\/N)/, 'u')
    .replace(/ ?°$/, ' deg')
  if (text === 'infinite') return { si: Number.POSITIVE_INFINITY, half: 0 }
  if (text === 'minus infinity') return { si: Number.NEGATIVE_INFINITY, half: 0 }
  if (text === 'not a number') return { si: Number.NaN, half: 0 }
  const [, mantissa = '', decimals = '', power = '0', unit = ''] = /^-?(\d+)(?:\.(\d+))?(?:e(-?\d+))?(?: (.+))?$/.exec(text) ?? []
  expect(mantissa, text).not.toBe('')
  // Trailing zeros are not printed, and those of a large number are no digits: each stands for one of four digits at least.
  const digits = mantissa === '0' ? decimals.replace(/^0+/, '').length : mantissa.length + decimals.length
  const last = 10 ** (Number(power) - decimals.length + (decimals === '' ? digits - 4 : Math.min(0, digits - 4)))
  const of = (number: number) => quantity(kind, (unit === '' ? number : [number, unit]) as never).si
  const si = of(Number(text.split(' ')[0]))
  return { si, half: 0.5 * Math.abs(of(last) - of(0)) }
}

const PROPER: Readonly<Record<string, string>> = { poisson: 'Poisson’s', emf: 'EMF', dc: 'DC', mises: 'Mises', tresca: 'Tresca' }
const wordOf = (path: string) =>
  path
    .split('.')
    .reverse()
    .map((part) =>
      part
        .replaceAll(/([a-z0-9])([A-Z])/g, (_, a: string, b: string) => `${a} ${b.toLowerCase()}`)
        .replaceAll(/([a-z]{2})(\d{2,}|\d(?= ))/g, '$1 $2')
        .replaceAll(/\b[a-z]+\b/g, (word) => PROPER[word] ?? word),
    )
    .join(' of ')
const at = (x: unknown, path: string) => path.split('.').reduce<unknown>((inner, name) => (inner as Record<string, unknown>)[name], x)

/** Places of a step with one number each; numbers of lists stand with the step that made them. */
const scalars = (places: readonly Place[]) => places.filter(({ path }) => !/\.\d+(\.|$)/.test(path))

describe.each(legs)('the printed sheet of the %s design', (_, { verdict, numbering, printed }) => {
  const rows = new Map(printed.groups.flatMap((group) => group.rows.map((row) => [row.number, row] as const)))
  const steps: (readonly [NumberedStep, AnyFormula, PrintedGroup])[] = numbering.groups.flatMap((group, i) =>
    group.steps.map((step) => [step, group.formula, printed.groups[i] as PrintedGroup] as const),
  )

  test('every run of a formula stands at its step, with the parts that it is of', () => {
    const places = numbering.groups.flatMap(({ steps: own }) => own.flatMap((step) => step.places))
    expect(places).toHaveLength(numbering.sheet.steps.length)
    expect(places.map((place) => JSON.stringify(place)).sort()).toEqual(
      numbering.sheet.steps.map(({ names }) => JSON.stringify(names)).sort(),
    )
  })

  test('has every distinct step once, in order', () => {
    expect([...rows.keys()]).toEqual(steps.map(([{ number }]) => number))
    const made = steps.map(([{ step }]) => `${step.formula} ${JSON.stringify(step.x)} ${JSON.stringify(step.from)}`)
    expect(new Set(made).size).toBe(made.length)
    expect(numbering.sheet.gaps).toEqual([])
  })

  test('every number on it is the number that was used', () => {
    let compared = 0
    for (const [{ number, step, used }, formula] of steps) {
      const row = rows.get(number)!
      for (const { path, number: si, kind } of scalars(inputPlaces(formula, step.x))) {
        const shown = row.inputs.get(wordOf(path))
        expect(shown, `${number} ${path}`).toBeDefined()
        const { si: back, half } = read(kind as Kind, shown!.value)
        if (!Object.is(back, si))
          expect(Math.abs(back - si), `${number} ${path}: ${shown!.value} for ${si}`).toBeLessThanOrEqual(half * 1.001)
        compared++
      }
      for (const { path, number: si, kind } of scalars(outputPlaces(formula, step.y))) {
        if (path !== '' && !used.has(path)) continue
        const shown = row.results.get(path === '' ? 'result' : wordOf(path))
        expect(shown, `${number} result ${path}`).toBeDefined()
        const { si: back, half } = read(kind as Kind, shown!)
        if (!Object.is(back, si)) expect(Math.abs(back - si), `${number} ${path}: ${shown} for ${si}`).toBeLessThanOrEqual(half * 1.001)
        compared++
      }
    }
    expect(compared).toBeGreaterThan(2000)
  })

  test('every reference leads to a place that has the very number', () => {
    const { broken, followed } = follow(printed)
    expect(broken).toEqual([])
    expect(followed).toBeGreaterThan(1500)
  })

  test('a digit changed in print is found', () => {
    const wrong = markdownReport(verdict, { steps: 'all' }).replace(/(?<=\|F\d+\|pretension\|)\d/, '7')
    expect(follow(readSheet(wrong)).broken.length).toBeGreaterThan(0)
  })

  test('every formula that has equations prints them, with its own names', () => {
    for (const [i, { formula }] of numbering.groups.entries()) {
      const { equation: line } = formula as unknown as { readonly equation?: string }
      const written = (line === undefined ? (formula.def.equation ?? []) : [`result = ${line}`]).map((each) =>
        each
          .replaceAll(/equalText\((\w+), "(\w+)"\)/g, (_, name: string, word: string) => `${name} is ${wordOf(word)}`)
          .replaceAll(' .^ ', '^'),
      )
      const own = [
        ...new Set(
          steps
            .filter(([, one]) => one === formula)
            .flatMap(([{ step }]) => [...inputPlaces(formula, step.x), ...outputPlaces(formula, step.y)])
            .map(({ path }) => path.replace(/\.\d+$/, '')),
        ),
      ]
      const assigned = written.flatMap((each) => /^(\w+) = /.exec(each)?.[1] ?? [])
      const names = [...own, ...assigned, ...Object.keys(formula.def.inputs)].filter((name) => name !== '' && name !== 'result')
      const { title, equations } = printed.groups[i] as PrintedGroup
      expect(equations.map((each) => asWritten(each, names, title))).toEqual(written.map(plainly))
    }
  })

  test('every formula has its equations or says how it finds its results', () => {
    expect(markdownReport(verdict, { steps: 'all' })).not.toContain('Neither an equation')
    for (const { formula } of numbering.groups)
      expect(
        PROCEDURES[formula.id] ?? formula.def.equation ?? (formula as unknown as { equation?: string }).equation,
        formula.id,
      ).toBeDefined()
  })

  test('a formula worked with the printed numbers gives the printed result, to what rounding may move it', () => {
    let worked = 0
    for (const [{ number, step }, formula] of steps) {
      const row = rows.get(number)!
      const places = scalars(inputPlaces(formula, step.x)).filter(({ path }) => row.inputs.has(wordOf(path)))
      const printedAt = (moved?: string, sign = 0) => {
        const x = structuredClone(step.x) as Record<string, unknown>
        for (const { path, kind } of places) {
          const { si, half } = read(kind as Kind, row.inputs.get(wordOf(path))!.value)
          const names = path.split('.')
          const inner = names.slice(0, -1).reduce<Record<string, unknown>>((each, name) => each[name] as Record<string, unknown>, x)
          inner[names.at(-1)!] = si + (path === moved ? sign * half : 0)
        }
        return formula.si(x as never)
      }
      const base = printedAt()
      const shifted = places.flatMap(({ path }) => [printedAt(path, 1), printedAt(path, -1)])
      for (const { path, kind, number: used } of scalars(outputPlaces(formula, base))) {
        const shown = row.results.get(path === '' ? 'result' : wordOf(path))
        if (shown === undefined || !Number.isFinite(used)) continue
        const { si, half } = read(kind as Kind, shown)
        const moves = shifted.map((y) => Math.abs((path === '' ? (y as number) : (at(y, path) as number)) - used))
        const allowed = half + moves.filter(Number.isFinite).reduce((sum, one) => sum + one, 0)
        expect(Math.abs(used - si), `${number} ${formula.id} ${path}: ${used} for ${shown}`).toBeLessThanOrEqual(
          allowed * 1.01 + 1e-12 * Math.abs(si),
        )
        worked++
      }
    }
    expect(worked).toBeGreaterThan(600)
  })

  test('each check has its demand, its capacity and the reserve that they make', () => {
    expect(printed.chains.size).toBe(verdict.checks.length)
    for (const [i, check] of verdict.checks.entries()) {
      const { demand, capacity } = printed.chains.get(`K${i + 1}`)!
      expect([demand.value, capacity.value].map((text) => text.split(' ')[0])).toEqual(
        [check.demand, check.capacity].map(
          (side) => expect.stringMatching(new RegExp(`^${String(side).split(' ')[0]!.replace('.', '\\.')}`)) as string,
        ),
      )
    }
  })
})

/** Follows every reference of a printed sheet to the number that it leads to. */
function follow({ groups, values, chains }: PrintedSheet): { readonly broken: readonly string[]; readonly followed: number } {
  const rows = new Map(groups.flatMap((group) => group.rows.map((row) => [row.number, row] as const)))
  const holds = (ref: string, value: string): boolean => {
    const given = values.get(ref)
    if (given !== undefined) return given === value || given.startsWith(`${value.split(' ')[0]} (`)
    return [...(rows.get(ref)?.results.values() ?? [])].some((result) => result === value || sameBut(result, value))
  }
  const broken: string[] = []
  let followed = 0
  const one = (where: string, { value, ref, negative }: PrintedInput) => {
    if (ref === undefined || /^\d+ numbers$/.test(value) || value.includes(', ')) return
    followed++
    const wanted = negative ? (value.startsWith('-') ? value.slice(1) : `-${value}`) : value
    if (!holds(ref, wanted)) broken.push(`${where}: ${value} [${ref}]`)
  }
  for (const [number, { inputs }] of rows) for (const [name, input] of inputs) one(`${number} ${name}`, input)
  for (const [rank, { demand, capacity }] of chains) for (const side of [demand, capacity]) one(rank, side)
  return { broken, followed }
}

const SIGNS: readonly (readonly [string, string])[] = [
  ['·', '*'],
  ['−', '-'],
  ['²', '^2'],
  ['³', '^3'],
  ['√', 'sqrt'],
  ['π', 'pi'],
  ['ln(', 'log('],
  ['==', '='],
  ['°', 'deg'],
]
const plainly = (equation: string) => SIGNS.reduce((text, [sign, name]) => text.replaceAll(sign, name), equation).replaceAll(/\s+/g, '')

/** A printed equation with the names of its record. */
function asWritten(printed: string, names: readonly string[], title: string): string {
  const words = new Map([
    ...names.map((name) => [wordOf(name), name] as const),
    [title.charAt(0).toLowerCase() + title.slice(1), 'result'] as const,
  ])
  const longest = [...words.keys()].sort((a, b) => b.length - a.length).map((word) => word.replaceAll(/[.*+?^${}()|[\]\\]/g, '\\$&'))
  // A result that has the name of an input is told from it by a word.
  const own = printed.replace(/^new (?=[\w ]+ =)/, '')
  return plainly(own.replaceAll(new RegExp(`(?<![\\w.])(${longest.join('|')})(?!\\w)`, 'g'), (word) => words.get(word) as string))
}

/** Two texts of one number in two kinds, such as a ratio and a strain in per cent: the same digits. */
const sameBut = (a: string, b: string) => digitsOf(a) === digitsOf(b)
const digitsOf = (text: string) =>
  (text.split(' ')[0] as string)
    .replace(/e.*$/, '')
    .replace('.', '')
    .replace(/^(-?)0+/, '$1')
    .replace(/0+$/, '')
