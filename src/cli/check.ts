import type { Assessment } from '../leg/index.js'
import { refuse } from '../units/index.js'
import { type Arguments, argumentsOf, rejectWords } from './arguments.js'
import { casesOf, LEG_OPTIONS, legFrom } from './leg-file.js'
import { EXIT, type Exit, progress, type Terminal } from './terminal.js'

const verb = 'check'

/** Assesses the leg of each document named, and prints the verdict with its weakest checks. */
export async function check(terminal: Terminal, args: readonly string[]): Promise<Exit> {
  const given = argumentsOf(verb, args, {
    ...LEG_OPTIONS,
    rows: { type: 'string', default: '10' },
    csv: { type: 'boolean' },
    'allow-short': { type: 'boolean' },
  })
  if (given.words.length === 0) rejectWords(verb, given.words, 'must name at least one document of a leg, such as leg.yaml')
  const rows = rowsOf(given)
  const tell = progress(terminal, given.flag('quiet'))
  const options = casesOf(given)
  const { assess, checksTable, rankedTable, verdictText } = await import('../leg/index.js')
  const results: object[] = []
  let holds = true
  for (const file of given.words) {
    const leg = await legFrom(terminal, verb, file, given)
    tell(`read ${file}: ${leg.name}; ${leg.defaults.length} values left open and filled in`)
    const verdict = assess(leg, options)
    tell(`assessed ${verdict.checks.length} checks in ${verdict.cases.length} load cases`)
    holds &&= given.flag('allow-short') ? verdict.passes : verdict.meetsTarget
    if (given.flag('json')) results.push(asData(file, verdict))
    else if (given.flag('csv')) terminal.out(checksTable(verdict).toCSV().trimEnd())
    else
      terminal.out(
        [
          verdictText(verdict),
          '',
          rankedTable(verdict, rows),
          '',
          verdict.governing.sentence,
          `Remedy: ${verdict.governing.remedy}.`,
          ...verdict.unusual.map(({ path, given, why }) => `Check ${path}, ${given}: ${why}.`),
          'Estimates for trained judgement: guard tensioned cords, mind pinch points, hot motors, batteries and dropped loads.',
        ].join('\n'),
      )
  }
  if (given.flag('json')) terminal.out(JSON.stringify(results.length === 1 ? results[0] : results, null, 2))
  return holds ? EXIT.holds : EXIT.falls
}

function rowsOf(given: Arguments): number {
  const rows = Number(given.text('rows'))
  return Number.isInteger(rows) && rows >= 1 ? rows : refuse(verb, '--rows', given.text('rows'), 'must be a whole number of checks to list')
}

/** The verdict as plain data: what a program reads, without the calculations. */
export function asData(
  file: string,
  { leg, passes, meetsTarget, requiredReserve, governing, checks, coupling, notEvaluated, unusual }: Assessment,
) {
  return {
    file,
    leg: leg.name,
    passes,
    meetsTarget,
    requiredReserve,
    governing: dataOf(governing),
    coupling,
    checks: checks.map(dataOf),
    notEvaluated,
    unusual,
    filledIn: leg.defaults.map(({ path, value }) => ({ path, value })),
  }
}

/** What the JSON holds of a check. */
const JSON_FIELDS = [
  'id',
  'part',
  'mode',
  'joint',
  'case',
  'demand',
  'capacity',
  'reserve',
  'requiredReserve',
  'range',
  'sentence',
] as const
const dataOf = (check: Assessment['governing']) => Object.fromEntries(JSON_FIELDS.map((name) => [name, check[name]]))
