import { nearName } from '../units/index.js'
import { call } from './call.js'
import { check } from './check.js'
import { compare } from './compare.js'
import { mistakesOf, mistakeText } from './file-error.js'
import { formulas } from './formulas.js'
import { learnFromLogs } from './learn.js'
import { page } from './page.js'
import { range } from './range.js'
import { report } from './report.js'
import { robot } from './robot.js'
import { schema } from './schema.js'
import { start } from './start.js'
import { EXIT, type Exit, type Terminal } from './terminal.js'
import { helpOf, overview, VERBS } from './usage.js'

const VERB_HANDLERS: Readonly<Record<string, (terminal: Terminal, args: readonly string[]) => Promise<Exit>>> = {
  start,
  check,
  compare,
  range,
  report,
  page,
  robot,
  learn: learnFromLogs,
  schema,
  formulas,
  call,
}

const isHelp = (word: string) => word === '--help' || word === '-h'

/** What a command line prints that runs no verb: the overview, the help of a verb, the version. */
function information([verb, ...rest]: readonly string[], version: string): string | undefined {
  if (verb === '--version') return version
  if (verb === undefined || verb === 'help' || isHelp(verb)) {
    const [topic] = rest
    return topic !== undefined && Object.hasOwn(VERBS, topic) ? helpOf(topic) : overview(version)
  }
  return Object.hasOwn(VERB_HANDLERS, verb) && rest.some(isHelp) ? helpOf(verb) : undefined
}

/** Runs one command line and returns its exit code. Mistakes of the user are printed, one a line; a fault of the program is thrown. */
export async function main(terminal: Terminal, args: readonly string[], version: string): Promise<Exit> {
  const [verb, ...rest] = args
  const text = information(args, version)
  if (text !== undefined) terminal.out(text)
  if (verb === undefined) return EXIT.unusable
  if (text !== undefined) return EXIT.holds
  const run = Object.hasOwn(VERB_HANDLERS, verb) ? VERB_HANDLERS[verb] : undefined
  if (run === undefined) {
    const near = nearName(verb, Object.keys(VERB_HANDLERS))
    terminal.note(
      `limbwright: ${verb} is not a verb.${near === undefined ? '' : ` Did you mean ${near}?`} Verbs: ${Object.keys(VERB_HANDLERS).join(', ')}`,
    )
    return EXIT.unusable
  }
  try {
    return await run(terminal, rest)
  } catch (error) {
    const mistakes = mistakesOf(error)
    if (mistakes === undefined) throw error
    if (rest.includes('--json')) terminal.out(JSON.stringify({ mistakes }, null, 2))
    else for (const mistake of mistakes) terminal.note(mistakeText(mistake))
    return EXIT.unusable
  }
}
