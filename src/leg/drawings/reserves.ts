import { barBlock, type Drawing, Figure } from '../../drawing/index.js'
import { placeOf, reserveText } from '../report/content.js'
import { capital, type Facts, resultText, sign } from './facts.js'

const MAX_CHECKS = 14
const AXIS_END = 4

/** A check as the subject and verb of a sentence. */
const spoken = (check: Facts['assessment']['checks'][number]) => `${placeOf(check)}${check.joint === undefined ? '' : ','} ${check.mode}`

/** Reserves of the checks nearest to their limit, each with its range. */
export function reservesDrawing(facts: Facts): Drawing {
  const { checks, requiredReserve, passes } = facts.assessment
  const shown = checks.slice(0, MAX_CHECKS)
  const failing = checks.filter(({ reserve }) => reserve < 1).length
  const lower = shown.some((check) => check.requiredReserve !== requiredReserve)
  const required = `required ${requiredReserve}${lower ? ', or lower where its line is' : ''}`
  const figure = new Figure({
    id: 'reserve-bars',
    title: 'Reserves of the checks nearest to their limit, with their range',
    answer: passes ? '✓ Every check holds' : `✕ ${failing} of ${checks.length} checks ${failing === 1 ? 'fails' : 'fail'}`,
    fails: !passes,
  })
  figure.block('Bar: typical values. Line: from the unfavourable to the favourable end', (y) =>
    barBlock(
      {
        to: AXIS_END,
        rules: [
          { at: 1, name: 'fails below 1', line: 'bad' },
          ...(requiredReserve > 1 ? [{ at: requiredReserve, name: required, each: shown.map((check) => check.requiredReserve) }] : []),
        ],
        bars: shown.map((check) => ({
          name: capital(placeOf(check)),
          to: check.reserve,
          range: [check.range.worst, check.range.best],
          text: `${reserveText(check.reserve)} ${sign(check)}`,
          ...(check.reserve < 1 ? { line: 'bad' as const, ink: 'bad' as const } : {}),
        })),
      },
      y,
    ),
  )
  const rows = shown.map((check) => {
    const name = `${placeOf(check)}: ${check.mode}`
    const range = `${reserveText(check.range.worst)} to ${reserveText(check.range.best)}`
    return [name, `${resultText(check)}; range ${range}`, '', 'result'] as const
  })
  return figure
    .say(
      `Shown are the ${shown.length} of ${checks.length} checks nearest to their required reserve.`,
      ...rows.slice(0, 3).map(([, value], i) => `${capital(spoken(shown[i] as (typeof shown)[number]))}: ${value}.`),
    )
    .rows(...rows)
    .done()
}
