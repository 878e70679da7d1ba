import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { QuickLeg } from '../../src/leg/assess/quick.js'
import { type CaseId, describeLeg, type LegNumbers, legNumbers } from '../../src/leg/index.js'

const CASES: readonly CaseId[] = ['walk', 'stall', 'season', 'hop']
const read = (name: string) => legNumbers(describeLeg(readFileSync(new URL(`../../examples/${name}.yaml`, import.meta.url), 'utf8')))

type Path = readonly string[]
const isRecord = (x: unknown): x is Readonly<Record<string, unknown>> => typeof x === 'object' && x !== null && !Array.isArray(x)

/** Paths of the numbers of a leg. */
const numbersOf = (x: unknown, path: Path = []): Path[] =>
  isRecord(x)
    ? Object.entries(x).flatMap(([name, inner]) => (typeof inner === 'number' ? [[...path, name]] : numbersOf(inner, [...path, name])))
    : []

function changed<T>(x: T, [name, ...rest]: Path): T {
  if (name === undefined) return ((x as number) === 0 ? 1e-3 : (x as number) * 1.013) as T
  return { ...x, [name]: changed((x as Record<string, unknown>)[name], rest) }
}

const reservesOf = (quick: QuickLeg, x: LegNumbers): unknown => {
  try {
    return [...quick.reserves(x)]
  } catch (error) {
    return String(error)
  }
}

test.each(['mudflat-leg-revised', 'heath-leg-first', 'shingle-leg-revised'])(
  'changed fields of %s give what a new calculation gives, to the last bit',
  (name) => {
    let x = read(name)
    const running = new QuickLeg(CASES)
    let before = JSON.stringify(reservesOf(running, x))
    let moved = 0
    const { materials: _, ...fields } = x
    // Every change stays, so that a value that a change did not reach, though it reads the field, is found at the next comparison.
    for (const [i, path] of numbersOf(fields).entries()) {
      const next = changed(x, path)
      const found = reservesOf(running, next)
      if (i % 15 === 14) expect(found, `up to ${path.join('.')}`).toEqual(reservesOf(new QuickLeg(CASES), next))
      if (typeof found === 'string') continue
      x = next
      const after = JSON.stringify(found)
      if (after !== before) moved++
      before = after
    }
    expect(reservesOf(running, x)).toEqual(reservesOf(new QuickLeg(CASES), x))
    expect(moved).toBeGreaterThan(80)
  },
)
