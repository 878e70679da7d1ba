// The calculation of the live page, in a worker: the same library that a script imports.
import {
  assess,
  checksTable,
  describeLeg,
  htmlReport,
  type Leg,
  legJsonSchema,
  passingRange,
  passingRangeText,
  verdictText,
} from 'limbwright/leg'
import { InputError, Quantity } from 'limbwright/units'
import type { Answer, Mistake, Movable, Question, RangeQuestion, Row } from './messages.js'

const reply = (answer: Answer) => self.postMessage(answer)

self.onmessage = ({ data }: MessageEvent<Question | RangeQuestion>) => {
  const { number, text, wanted } = data
  const started = performance.now()
  try {
    const leg = describeLeg(text)
    if (wanted === 'range') return reply({ number, state: 'range', path: data.path, ...rangeOf(leg, data) })
    const verdict = assess(leg)
    if (wanted === 'report') return reply({ number, state: 'report', html: htmlReport(verdict) })
    const table = checksTable(verdict)
    const rows = verdict.checks.slice(0, 12).map(({ reserve, requiredReserve }, i): Row => {
      const row = table.row(i)
      const names = ['part', 'joint', 'mode', 'load case', 'demand', 'capacity', 'reserve', 'required reserve']
      return {
        standing: reserve < 1 ? 'fails' : reserve < requiredReserve ? 'short' : 'holds',
        cells: names.map((name) => String(row[name])),
      }
    })
    const { sentence, remedy } = verdict.governing
    reply({
      number,
      state: 'verdict',
      text: verdictText(verdict),
      sentence,
      remedy,
      rows,
      checks: verdict.checks.length,
      movable: movableFields(leg),
      milliseconds: performance.now() - started,
    })
  } catch (error) {
    if (error instanceof InputError && wanted === 'range')
      reply({ number, state: 'range', path: data.path, passes: [], text: error.issues.map((one) => mistakeOf(one).message).join(' ') })
    else if (error instanceof InputError) reply({ number, state: 'mistakes', mistakes: error.issues.map(mistakeOf) })
    else reply({ number, state: 'fault', message: String(error) })
  }
}

/** Values that are tried along a slider. */
const VALUES = 17

function rangeOf(leg: Leg, { path, from, to }: RangeQuestion) {
  const range = passingRange(leg, path, { from, to, values: VALUES })
  const passes = range.tried.map(({ margin }) => margin !== undefined && margin >= 1)
  // The first line says what was tried, which the slider shows.
  return { passes, text: passingRangeText(range).split('\n').slice(1).join(' ') }
}

function mistakeOf({ path, given, accepts, line }: InputError['issues'][number]): Mistake {
  const place = path.match(/^line (\d+)/)
  return { path, message: `${path} is ${given}; ${accepts}`, line: line ?? (place === null ? undefined : Number(place[1])) }
}

/** Every field of the leg with a unit. */
function movableFields(leg: Leg): Movable[] {
  const found: Movable[] = []
  const visit = (value: unknown, path: string): void => {
    if (value instanceof Quantity) {
      const [, shown, unit] = value.toString().match(/^(\S+) (\S.*)$/) ?? []
      if (shown !== undefined && unit !== undefined && Number.isFinite(Number(shown)) && value.si !== 0)
        found.push({ path, value: Number(shown), unit })
    } else if (typeof value === 'object' && value !== null && !Array.isArray(value))
      for (const [name, inner] of Object.entries(value)) if (name !== 'defaults') visit(inner, path === '' ? name : `${path}.${name}`)
  }
  visit(leg, '')
  return found
}

reply({ number: 0, state: 'ready', schema: legJsonSchema() })
