import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { PAGE_WIDTH } from '../../src/drawing/index.js'
import { legDrawings } from '../../src/leg/drawings/index.js'
import { type Assessment, assess, describeLeg, type Leg } from '../../src/leg/index.js'
import { outside, overlaps, textBoxes } from '../drawing/boxes.js'

const read = (name: string) => readFileSync(new URL(`../../examples/${name}.yaml`, import.meta.url), 'utf8')
const NAMES = {
  first: 'mudflat-leg-first',
  revised: 'mudflat-leg-revised',
  rod: 'heath-leg-first',
  rodRevised: 'heath-leg-revised',
  direct: 'desk-leg-first',
  directRevised: 'desk-leg-revised',
} as const
type Name = keyof typeof NAMES
const legs = Object.fromEntries(Object.entries(NAMES).map(([name, file]) => [name, describeLeg(read(file))])) as Record<Name, Leg>
const verdicts = Object.fromEntries(Object.entries(legs).map(([name, leg]) => [name, assess(leg)])) as Record<Name, Assessment>

const flaws = (verdict: Assessment, only?: readonly string[]) =>
  legDrawings(verdict, only === undefined ? {} : { only }).flatMap(({ id, svg, height }) => {
    const boxes = textBoxes(svg)
    return [...overlaps(boxes), ...outside(boxes, PAGE_WIDTH, height)].map((flaw) => `${id}: ${flaw}`)
  })

/** Numbers from 0 to 1 by a seed. */
function random(seed: number): () => number {
  let state = seed
  return () => {
    state = (state * 1664525 + 1013904223) % 4294967296
    return state / 4294967296
  }
}

/** The first or the revised leg with every length, force and mass moved by its own factor, where that still makes a leg. */
function randomLeg(seed: number): Leg {
  const next = random(seed)
  for (;;) {
    const size = 0.5 + 2 * next()
    const base = next() < 0.5 ? legs.first : legs.revised
    const moved = (value: unknown): unknown => {
      if (typeof value !== 'object' || value === null) return value
      if (Array.isArray(value)) return value.map(moved)
      if ('kind' in value && 'si' in value) {
        const { kind, si } = value as { kind: string; si: number }
        const spread = 0.85 + 0.3 * next()
        if (kind === 'length') return [si * size * spread, 'm']
        if (kind === 'mass') return [si * size ** 2 * spread, 'kg']
        if (kind === 'force') return [si * size ** 2 * spread, 'N']
        return value
      }
      return Object.fromEntries(
        Object.entries(value).map(([name, inner]) => [name, name === 'bosses' || name === 'pins' ? inner : moved(inner)]),
      )
    }
    const { defaults: _, ...data } = base
    try {
      return describeLeg(moved(data) as never)
    } catch {
      // The factors contradict each other: the next ones are tried.
    }
  }
}

describe('every drawing', () => {
  test.each(Object.keys(NAMES) as Name[])('%s design: no text lies on another or leaves the page', (name) => {
    expect(flaws(verdicts[name])).toEqual([])
  })

  // Strides and assessments take most of the time: every twenty-fifth leg has all of its drawings and its own assessment.
  test.each([0, 50, 100, 150])('the same for fifty random legs from number %i on', (first) => {
    const names = legDrawings(verdicts.revised).map(({ id }) => id)
    const found = Array.from({ length: 50 }, (_, k) => {
      const i = first + k
      const leg = randomLeg(i + 1)
      const whole = k % 25 === 0
      const verdict = whole ? assess(leg, { cases: ['walk', 'drop'] }) : { ...verdicts[i % 2 === 0 ? 'first' : 'revised'], leg }
      const other = i % 4 < 2 ? /-knee$/ : /-hip$/
      const quick = names.filter((name) => !/^(leg|stride|year|torque-speed-.*|reserve-bars)$/.test(name) && !other.test(name))
      return flaws(verdict, whole ? names : quick).map((flaw) => `leg ${i + 1}: ${flaw}`)
    })
    expect(found.flat()).toEqual([])
  })
})
