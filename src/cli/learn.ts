import { basename, extname } from 'node:path'
import type { Leg } from '../leg/index.js'
import { refuse } from '../units/index.js'
import { argumentsOf, rejectWords } from './arguments.js'
import { casesOf, changesOf, LEG_OPTIONS, legFrom } from './leg-file.js'
import { EXIT, type Exit, progress, type Terminal } from './terminal.js'

const verb = 'learn'

/** Corrects a leg from logs of the test stand, prints what changed, and writes the corrected document. */
export async function learnFromLogs(terminal: Terminal, args: readonly string[]): Promise<Exit> {
  const given = argumentsOf(verb, args, {
    ...LEG_OPTIONS,
    to: { type: 'string' },
    'keep-spikes': { type: 'boolean' },
    insist: { type: 'string' },
  })
  const [file, ...logFiles] = given.words
  if (file === undefined || logFiles.length === 0)
    rejectWords(verb, given.words, 'must name the document of a leg and at least one log, such as leg.yaml logs/pretension-knee.csv')
  const tell = progress(terminal, given.flag('quiet'))
  const leg = await legFrom(terminal, verb, file, given)
  const { editLegText, learn, learntText } = await import('../leg/index.js')
  const logs: Record<string, string> = {}
  for (const name of logFiles) {
    const text = terminal.readText(name)
    const log = logIn(name, text)
    if (Object.hasOwn(logs, log)) refuse(verb, name, log, 'must be a log of its own: put the readings of two files into one')
    logs[log] = text
  }
  tell(`read ${file} and ${logFiles.length} ${logFiles.length === 1 ? 'log' : 'logs'}`)
  const learnt = learn(leg, logs, {
    ...casesOf(given),
    spikes: given.flag('keep-spikes') ? 'keep' : 'leaveOut',
    insist: given.text('insist')?.split(',').map(logName) ?? [],
  })
  tell(`estimated ${learnt.moved.length} ${learnt.moved.length === 1 ? 'field' : 'fields'}`)
  const to = given.text('to')
  if (to !== undefined) {
    const corrected = learnt.moved.filter(({ state }) => state === 'corrected' || state === 'confirmed').map(({ path }) => path)
    terminal.writeText(
      to,
      editLegText(terminal.readText(file), {
        ...changesOf(verb, given),
        ...valuesAt(
          learnt.leg,
          // A measured torque makes the speed constant one of a spun motor.
          corrected.flatMap((path) => (path.endsWith('.speedConstant') ? [path, `${path}Basis`] : [path])),
        ),
      }),
    )
    tell(`wrote ${to}`)
  }
  const { moved, remarks, comparison } = learnt
  terminal.out(
    given.flag('json')
      ? JSON.stringify({ moved, remarks, passes: comparison.after.passes, meetsTarget: comparison.after.meetsTarget }, null, 2)
      : learntText(learnt),
  )
  return comparison.after.meetsTarget ? EXIT.holds : EXIT.falls
}

/** The name that the stand plan gives a log: `pretension-knee.csv` holds `pretension knee`. */
const logName = (file: string) => basename(file, extname(file)).replaceAll(/[-_ ]+/g, ' ')

/** The log that a file holds: `windup-knee-2.csv` is the one that its comment states where its name begins with that. */
function logIn(file: string, text: string): string {
  const named = logName(file)
  const stated = /^#\s*log:\s*(.*\S)\s*$/m.exec(text)?.[1]
  return stated !== undefined && named.startsWith(`${stated} `) ? stated : named
}

/** Values of a leg by path. */
const valuesAt = (leg: Leg, paths: readonly string[]): Record<string, unknown> =>
  Object.fromEntries(
    paths.map((path) => [
      path,
      path
        .replaceAll(/\[(\d+)\]/g, '.$1')
        .split('.')
        .reduce<unknown>((at, step) => (at as Record<string, unknown> | undefined)?.[step], leg),
    ]),
  )
