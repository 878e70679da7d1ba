import { argumentsOf, rejectWords } from './arguments.js'
import { LEG_OPTIONS, legFrom } from './leg-file.js'
import { EXIT, type Exit, type Terminal } from './terminal.js'

const verb = 'robot'

/** Assesses a robot of four legs, each built as the document says, and prints its checks, loads and powers. */
export async function robot(terminal: Terminal, args: readonly string[]): Promise<Exit> {
  const given = argumentsOf(verb, args, { set: LEG_OPTIONS.set, remove: LEG_OPTIONS.remove })
  const [file, ...more] = given.words
  if (file === undefined || more.length > 0) rejectWords(verb, given.words, 'must name one document of a leg, such as leg.yaml')
  const leg = await legFrom(terminal, verb, file as string, given)
  const { assessRobot, robotText } = await import('../leg/index.js')
  const found = assessRobot(leg)
  terminal.out(given.flag('json') ? JSON.stringify(found, null, 2) : robotText(found))
  return found.meetsTarget ? EXIT.holds : EXIT.falls
}
