import { plain, type Row } from '../../drawing/index.js'
import type { CheckResult } from '../check-result.js'
import { jointWords } from '../numbers.js'
import { one } from '../report/amounts.js'
import { placeOf } from '../report/content.js'
import { capital, type Facts, resultText, sign } from './facts.js'

/** Where a value of a table comes from. */
export type Origin = 'document' | 'result' | 'standard' | 'assumed' | 'geometry'

/** A row of a table: a length in millimetres. */
export const length = (name: string, mm: number, source: Origin = 'document'): Row => [name, plain(mm), 'mm', source]
/** A row of a table: an angle in radians, printed in degrees. */
export const angle = (name: string, radians: number, source: Origin = 'document'): Row => [name, plain(degrees(radians)), '°', source]
/** A row of a table with a number and its unit. */
export const amount = (name: string, value: number, unit: string, source: Origin = 'result'): Row => [name, plain(value), unit, source]
/** A row of a table with a word. */
export const word = (name: string, value: string, source: Origin = 'document'): Row => [name, value, '', source]
/** The row of a check. */
export const checked = (check: CheckResult): Row => [`${check.part}: ${check.mode}`, resultText(check), '', 'result']
/** The row of a check of a part that several joints have. */
export const checkedOf = (check: CheckResult): Row => [`${placeOf(check)}: ${check.mode}`, resultText(check), '', 'result']

export const degrees = (radians: number): number => (radians * 180) / Math.PI
export const celsius = (kelvin: number): number => kelvin - 273.15

/** First words of a drawing: the name of the part and the state of its check nearest to the limit. */
export function answerOf(name: string, check: CheckResult | undefined): { readonly answer: string; readonly fails: boolean } {
  if (check === undefined) return { answer: name, fails: false }
  const state = check.reserve < 1 ? 'fails' : check.reserve < check.requiredReserve ? 'holds, below its required reserve' : 'holds'
  return { answer: `${sign(check)} ${name}: ${state}`, fails: check.reserve < 1 }
}

/** Results that stand in a drawing; its table has all of them. */
const MAX_RESULTS = 3

/** Lines of results below a view: the checks of a part, nearest to their limits first. */
export const resultLines = (facts: Facts, ids: readonly string[], joint?: string): readonly string[] =>
  [
    ...new Set(
      facts.checks(ids, joint).map((check) => {
        // Of a part that both joints share, each result says whose it is.
        const whose = joint === undefined && check.joint !== undefined ? ` (${jointWords(check.joint)})` : ''
        return `${capital(check.part)}${whose} ${check.mode}: ${resultText(check)}`
      }),
    ),
  ].slice(0, MAX_RESULTS)

/** Hatch of a printed part whose layers are seen edge on. */
export const layers = (direction: 'upright' | 'flat', spacing: number) => ({ angle: direction === 'upright' ? 90 : 0, spacing })
/** Hatch of a metal part, and of its neighbour. */
export const METAL = { angle: 45, spacing: 6 }
export const OTHER_METAL = { angle: -45, spacing: 6 }
export const WASHER = { angle: -45, spacing: 4 }

/** A group of bolts by its name in the document: `plateBolts` are plate bolts, `stack` are stack bolts. */
export const boltWords = (group: string): string => (/bolts$/i.test(group) ? one(group) : `${one(group)} bolts`)
