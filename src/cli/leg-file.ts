import type { CaseId, Leg } from '../leg/index.js'
import { refuse } from '../units/index.js'
import { type Arguments, assignments, type Options, rejectWords } from './arguments.js'
import { inFile } from './file-error.js'
import type { Terminal } from './terminal.js'

/** Options of every verb that reads a leg. */
export const LEG_OPTIONS = {
  set: { type: 'string', multiple: true },
  remove: { type: 'string', multiple: true },
  cases: { type: 'string' },
} as const satisfies Options

/** The fields that `--set` and `--remove` change. */
export function changesOf(verb: string, given: Arguments): Record<string, unknown> {
  const set = assignments(verb, given.texts('set'))
  const removed = given.texts('remove')
  const both = removed.find((path) => Object.hasOwn(set, path))
  if (both !== undefined) refuse(verb, both, set[both], 'must be set or removed, not both')
  return { ...set, ...Object.fromEntries(removed.map((path) => [path, undefined])) }
}

/** Reads a leg's document and changes the fields that the command line names. Mistakes carry the name of the file. */
export async function legFrom(terminal: Terminal, verb: string, file: string, given: Arguments): Promise<Leg> {
  const { describeLeg, withFields } = await import('../leg/index.js')
  const text = terminal.readText(file)
  const changes = changesOf(verb, given)
  return inFile(file, () => {
    const leg = describeLeg(text)
    return Object.keys(changes).length === 0 ? leg : withFields(leg, changes)
  })
}

/** The load cases that `--cases` names: ids with commas between them; every load case where it is absent. */
export function casesOf(given: Arguments): { cases?: readonly CaseId[] } {
  const text = given.text('cases')
  if (text === undefined) return {}
  return { cases: text.split(',').map((id) => id.trim()) as CaseId[] }
}

/** The only word of a verb that takes one. */
export function onlyWord(verb: string, { words }: Arguments, what: string): string {
  const [word, ...more] = words
  if (word === undefined || more.length > 0) rejectWords(verb, words, `must be ${what}, and nothing else`)
  return word
}
