// Decides which mutants of a folder are run: a plug-in of the kind "checker", which sees all of them before the first run.
// Mutants are drawn in the order of a hash of what they change, not of where they stand. The first N of this order are a random sample, and they stay the
// same mutants when lines move. Plain JavaScript, because the test runner's own process loads it too.
import { createHash } from 'node:crypto'
import { readFileSync, writeFileSync } from 'node:fs'
import { relative } from 'node:path'

/** Text of the source between two places; lines and columns count from 0. */
function textAt(lines, { start, end }) {
  if (start.line === end.line) return lines[start.line].slice(start.column, end.column)
  return [lines[start.line].slice(start.column), ...lines.slice(start.line + 1, end.line), lines[end.line].slice(0, end.column)].join('\n')
}

/** Each mutant with its key: file, kind, text before and after, and the how-manieth of that text in its file. */
function withKeys(mutants, root) {
  const read = new Map()
  const count = new Map()
  const linesOf = (file) => {
    if (!read.has(file)) read.set(file, readFileSync(file, 'utf8').split('\n'))
    return read.get(file)
  }
  const inOrder = [...mutants].sort(
    (a, b) =>
      a.fileName.localeCompare(b.fileName, 'en') ||
      a.location.start.line - b.location.start.line ||
      a.location.start.column - b.location.start.column ||
      a.location.end.line - b.location.end.line ||
      a.location.end.column - b.location.end.column,
  )
  return inOrder.map((mutant) => {
    const file = relative(root, mutant.fileName).replaceAll('\\', '/')
    const was = textAt(linesOf(mutant.fileName), mutant.location)
    const same = JSON.stringify([file, mutant.mutatorName, was, mutant.replacement])
    const nth = (count.get(same) ?? 0) + 1
    count.set(same, nth)
    const key = createHash('sha256').update(`${same}#${nth}`).digest('hex').slice(0, 12)
    return { id: mutant.id, key, file, line: mutant.location.start.line + 1, mutator: mutant.mutatorName, was, becomes: mutant.replacement }
  })
}

/** The keys to run: those listed, or those up to a key and a number of further ones. */
export function choose(keys, { only, upTo = '', more = 0 }) {
  if (only !== undefined) return new Set(only)
  const sorted = [...keys].sort()
  const done = sorted.filter((key) => key <= upTo)
  const rest = sorted.filter((key) => key > upTo)
  return new Set([...(more > 0 ? [] : done), ...rest.slice(0, more)])
}

class Drawn {
  #run
  async init() {}
  /** Called once, with every mutant that is not static. */
  async group(mutants) {
    if (this.#run !== undefined) throw new Error('the mutants came in two parts: the sample would be wrong')
    const { root, draw, list } = JSON.parse(process.env.LIMBWRIGHT_MUTANTS)
    const all = withKeys(mutants, root)
    const chosen = choose(
      all.map(({ key }) => key),
      draw,
    )
    const drawn = all.filter(({ key }) => chosen.has(key))
    this.#run = new Set(drawn.map(({ id }) => id))
    writeFileSync(list, JSON.stringify({ mutants: all.length, drawn }))
    return [mutants.map(({ id }) => id)]
  }
  async check(mutants) {
    const verdict = ({ id }) => (this.#run.has(id) ? { status: 'passed' } : { status: 'compileError', reason: 'not drawn' })
    return Object.fromEntries(mutants.map((mutant) => [mutant.id, verdict(mutant)]))
  }
}

export const strykerPlugins = [{ kind: 'Checker', name: 'drawn', factory: () => new Drawn() }]
