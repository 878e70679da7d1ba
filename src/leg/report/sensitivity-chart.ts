import { barChart, type Chart } from '../../chart/index.js'
import { sensitivity } from '../../study/index.js'
import { Quantity } from '../../units/index.js'
import { fieldFormula } from '../as-formula.js'
import { fieldsRead, keyOfResult } from '../assess/recorded.js'
import { unitSigns } from '../assess/sentence.js'
import type { CheckResult } from '../check-result.js'
import type { Assessment } from '../result.js'
import { placeOf, reserveText } from './content.js'
import { fieldName } from './fields-list.js'

const MAX_MOVERS = 10
/** Each value is moved by this part of itself: about what a fit, a wall or a friction is out by. */
const SWING = 0.02
/** A reserve beyond so many times the present one is drawn at this length; the label has the number. */
const MAX_BAR = 3

/** The check whose reserve the chart moves: the governing one. Where nothing is left of its capacity no small change moves it: then the next that has a reserve. */
const movable = ({ governing, checks }: Assessment): CheckResult =>
  governing.reserve > 0 ? governing : (checks.find(({ reserve }) => reserve > 0) ?? governing)

/** Sensitivity of the governing reserve: each quantity of the leg by two per cent, one at a time (temperatures, whose zero is arbitrary, left out). */
export function sensitivityChart(assessment: Assessment): Chart {
  const { leg, governing: first } = assessment
  const governing = movable(assessment)
  const check = keyOfResult(governing)
  const { defaults: _, ...data } = leg
  const found = sensitivity(
    fieldFormula(leg, { check, cases: [governing.case] }),
    quantitiesOf(data, fieldsRead(assessment, check)) as never,
    { swing: SWING } as never,
  )
  const movers = found.inputs.filter(
    ({ value, atFrom, atTo }) =>
      value.kind !== 'temperature' && atFrom !== undefined && atTo !== undefined && Math.abs(atFrom.si - atTo.si) > 1e-9,
  )
  const shown = movers.slice(0, MAX_MOVERS)
  const base = found.value.si
  // A text beside a bar that runs to the left would lie on it.
  const labelled = (reserve: number, input: Quantity) =>
    reserve > base ? `${unitSigns(String(input))}${reserve > MAX_BAR * base ? `: ${reserveText(reserve)}` : ''}` : ''
  const end = (reserve: number) => Number(Math.min(reserve, MAX_BAR * base).toPrecision(6))
  const cut = shown.some(({ atFrom, atTo }) => Math.max(atFrom!.si, atTo!.si) > MAX_BAR * base)
  return barChart({
    title: `Sensitivity of the ${governing === first ? 'governing reserve' : 'least reserve above 0'} (${placeOf(governing)}, ${governing.caseTitle.toLowerCase()})`,
    description:
      shown.length === 0
        ? 'A change of two per cent in any one quantity of the leg leaves this reserve as it is.'
        : `${governing === first ? '' : `The governing check (${placeOf(first)}) has no capacity left, which no small change moves: this is the next. `}Reserve with each value two per cent lower and two per cent higher, those that move it most first: ${shown
            .slice(0, 3)
            .map(({ path, atFrom, atTo }) => `${fieldName(path)} ${reserveText(atFrom!.si)} to ${reserveText(atTo!.si)}`)
            .join(
              '; ',
            )}.${cut ? ` A bar that would be longer than ${MAX_BAR} times the reserve ends there, with its number beside it.` : ''}`,
    value: { title: `reserve (dashed: ${reserveText(base)} as it is)`, unit: '1' },
    bars: shown.flatMap(({ path, from, to, atFrom, atTo }) => [
      { name: fieldName(path), from: base, to: end(atFrom!.si), group: '2 % lower', label: labelled(atFrom!.si, from) },
      { name: fieldName(path), from: base, to: end(atTo!.si), group: '2 % higher', label: labelled(atTo!.si, to) },
    ]),
    rules: [{ name: '', at: base }],
  })
}

/** Quantities of a described leg at their places, of those fields that are read; words, lists and tables left out. */
function quantitiesOf(record: object, read: ReadonlySet<string>, path = ''): Record<string, unknown> {
  return Object.fromEntries(
    Object.entries(record).flatMap(([name, value]): [string, unknown][] => {
      const own = path === '' ? name : `${path}.${name}`
      if (value instanceof Quantity) return value.kind === 'temperature' || !read.has(own) ? [] : [[name, value]]
      if (typeof value !== 'object' || value === null || Array.isArray(value)) return []
      const inner = quantitiesOf(value, read, own)
      return Object.keys(inner).length > 0 ? [[name, inner]] : []
    }),
  )
}
