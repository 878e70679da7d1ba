import { significant } from '../../units/index.js'
import { endless } from '../plans/show.js'
import { type Block, heading, type Page, points, table, text } from '../report/blocks.js'
import { verdictText } from '../report/content.js'
import { markdownPage } from '../report/markdown-blocks.js'
import type { Learnt } from './learnt.js'

const STATES = { corrected: 'corrected', confirmed: 'confirmed', undetermined: 'undetermined', notApplied: 'not applied' } as const

/** Results of learning as Markdown: fields with their confidence, faults of the logs, both verdicts. */
export const learntText = (learnt: Learnt): string => markdownPage(learntPage(learnt))

/** Results of learning as a page. @internal */
export function learntPage({ leg, moved, compared, remarks, next, comparison }: Learnt): Page {
  return {
    title: `${leg.name}: results of the test stand`,
    blocks: [
      moved.length === 0 ? text('No field could be corrected.') : movedTable(moved),
      points([`Before: ${verdictText(comparison.before)}`, `After: ${verdictText(comparison.after)}`]),
      ...(compared.length === 0 ? [] : [comparedTable(compared)]),
      ...(next.length === 0 ? [] : [heading('What to measure next'), nextTable(next)]),
      ...(remarks.length === 0
        ? []
        : [
            heading('Remarks on the logs'),
            points(
              remarks.map(({ log, line, what, message }) => `${log}${line === undefined ? '' : `, line ${line}`} (${what}): ${message}`),
            ),
          ]),
    ],
  }
}

const movedTable = (moved: Learnt['moved']): Block =>
  table(
    'Fields estimated from the logs',
    ['log', 'field', 'before', 'after', '95 % confidence', 'readings', '', 'rests on', 'remark'],
    moved.map((field) => [
      field.log,
      field.path,
      field.before,
      field.after,
      field.interval?.join(' to ') ?? '',
      field.readings,
      STATES[field.state],
      field.restsOn.map(({ what, share }) => `${what} ${Math.round(100 * share)} %`).join(', '),
      [field.why ?? '', ...field.explanations.map((slip) => `explained if ${slip}`)].filter((part) => part !== '').join('; '),
    ]),
  )

const comparedTable = (compared: Learnt['compared']): Block =>
  table(
    'Measurements that correct no field',
    ['log', 'what', 'predicted', 'band', 'measured', '95 % confidence', '', 'meaning'],
    compared.map((comparison) => [
      comparison.log,
      comparison.what,
      endless(comparison.predicted),
      comparison.band.map(endless).join(' to '),
      comparison.measured ?? 'undetermined',
      comparison.interval?.join(' to ') ?? '',
      comparison.state,
      comparison.means,
    ]),
  )

const nextTable = (next: Learnt['next']): Block =>
  table(
    'Measurements by what they would add',
    ['', 'what to do', 'field', '95 % interval now', 'interval after it, over now', 'information of the interval now'],
    next.map((measurement, i) => [
      i + 1,
      measurement.todo,
      measurement.path,
      measurement.now,
      significant(measurement.narrowed, 2),
      significant(measurement.information, 2),
    ]),
  )
