// Fuzzes every formula of the catalogue.
import type { AnyFormula } from '../../src/formula/index.js'
import { randomStream } from '../../src/numeric/index.js'
import { Quantity } from '../../src/units/index.js'
import { publishedInputs, someRecord, spoilt } from './formula-cases.js'
import { answerFault, type Fault, faultOf } from './judge.js'

/** Longest processor time of one checked call, in milliseconds. */
const LONGEST = 50

/** Formulas whose time is what the caller asks for. */
const ASKED_FOR: Readonly<Record<string, number>> = { 'fasteners.toleranceMonteCarlo': 60_000 }

const shown = (given: unknown) =>
  JSON.stringify(given, (_, value) =>
    value instanceof Quantity ? `${value.si} ${value.kind}` : typeof value === 'bigint' ? 'bigint' : value,
  )

/** Calls a formula `count` times, half of them with one wrong value, and returns the first fault of each sort. */
export function fuzzFormula(formula: AnyFormula, count: number, seed: number): Fault[] {
  const random = randomStream(seed)
  const starts = publishedInputs(formula)
  const found = new Map<string, Fault>()
  for (let i = 0; i < count; i++) {
    const start = starts.length === 0 ? undefined : starts[random.integer(starts.length)]
    const record = someRecord(formula.def.inputs, start, random, random.uniform() < 0.6)
    const { given, place } = i % 2 === 0 ? { given: record, place: '' } : spoilt(record, random)
    const fault = faultOf(
      () => formula(given as never),
      ASKED_FOR[formula.id] ?? LONGEST,
      (answer) => answerFault(formula.def.output, answer),
    )
    const sort = fault?.replace(/[\d.e+-]+/g, '#')
    if (fault === undefined || sort === undefined || found.has(sort)) continue
    found.set(sort, {
      where: formula.id,
      what: fault,
      given: place === '' ? safely(() => shown(given)) : `${place} spoilt, case ${i} of seed ${seed}`,
    })
  }
  return [...found.values()]
}

function safely(text: () => string): string {
  try {
    return text().slice(0, 600)
  } catch {
    return 'cannot be printed'
  }
}
