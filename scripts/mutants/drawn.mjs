// Lists the mutants of a folder, or lets only the drawn ones run: a plug-in of the kind "checker", which sees all of them before the first run.
// Plain JavaScript, because the test runner's own process loads it too.
import { createHash } from 'node:crypto'
import { readFileSync, writeFileSync } from 'node:fs'
import { relative } from 'node:path'

/** Text of the source between two places; lines and columns count from 0. */
function textAt(lines, { start, end }) {
  if (start.line === end.line) return lines[start.line].slice(start.column, end.column)
  return [lines[start.line].slice(start.column), ...lines.slice(start.line + 1, end.line), lines[end.line].slice(0, end.column)].join('\n')
}

const rangeOf = ({ start, end }) => `${start.line + 1}:${start.column}-${end.line + 1}:${end.column}`

/** Each mutant with its key: a hash of file, kind, text before and after, and the how-manieth of that text in its file. It stays the same when lines move. */
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
    const range = `${file}:${rangeOf(mutant.location)}`
    return {
      key,
      id: mutant.id,
      range,
      file,
      line: mutant.location.start.line + 1,
      mutator: mutant.mutatorName,
      was,
      becomes: mutant.replacement,
    }
  })
}

const placeOf = ({ range, mutator, becomes }) => `${range} ${mutator} ${becomes}`

class Drawn {
  #run
  async init() {}
  /** Called once, with every mutant that is not static. */
  async group(mutants) {
    if (this.#run !== undefined) throw new Error('the mutants came in two parts: the sample would be wrong')
    const { root, wanted, list } = JSON.parse(readFileSync(process.env.LIMBWRIGHT_MUTANTS, 'utf8'))
    const found = withKeys(mutants, root)
    const places = new Set(wanted)
    this.#run = new Set(found.filter((mutant) => places.has(placeOf(mutant))).map(({ id }) => id))
    writeFileSync(list, JSON.stringify(found.map((mutant) => ({ ...mutant, place: placeOf(mutant) }))))
    return [mutants.map(({ id }) => id)]
  }
  async check(mutants) {
    const verdict = ({ id }) => (this.#run.has(id) ? { status: 'passed' } : { status: 'compileError', reason: 'not drawn' })
    return Object.fromEntries(mutants.map((mutant) => [mutant.id, verdict(mutant)]))
  }
}

export const strykerPlugins = [{ kind: 'Checker', name: 'drawn', factory: () => new Drawn() }]
