import { readdirSync, readFileSync } from 'node:fs'
import { join, relative } from 'node:path'
import { fileURLToPath } from 'node:url'

export const root = fileURLToPath(new URL('../../', import.meta.url))

/** One fenced TypeScript example of the docs. */
export interface Example {
  readonly file: string
  /** Line of its first code line, counted from 1. */
  readonly line: number
  readonly code: string
  /** Marked `no-run`: type-checked, but neither run nor asked to assert. */
  readonly runs: boolean
}

/**
 * Every TypeScript fence of a Markdown text or of a source text's doc comments. A fence marked `continues` goes on from the one
 * before it: its example is both, one after the other.
 */
export function examplesIn(text: string, file: string): Example[] {
  const inSource = file.endsWith('.ts')
  const found: Example[] = []
  let open: { line: number; indent: string; marks: string[]; code: string[] } | undefined
  let inComment = false
  text.split('\n').forEach((raw, index) => {
    let line = raw
    if (inSource) {
      if (/^\s*\/\*\*/.test(raw)) inComment = true
      if (!inComment) return
      if (raw.includes('*/')) inComment = false
      line = raw.replace(/^\s*(\/\*\*|\*(?!\/)) ?/, '')
    }
    const fence = line.match(/^(\s*)```(.*)$/)
    if (open !== undefined && fence !== null) {
      const { marks, code, indent } = open
      const own = code.map((l) => (l.startsWith(indent) ? l.slice(indent.length) : l)).join('\n')
      const before = marks.includes('continues') ? found.at(-1) : undefined
      if (marks.includes('continues') && before === undefined) throw new Error(`${file}:${index + 1}: continues no example`)
      if (marks[0] === 'ts')
        found.push({
          file,
          line: before?.line ?? open.line,
          // Line numbers of a continued example are those of its first fence: blank lines keep the distance.
          code: before === undefined ? own : before.code + '\n'.repeat(open.line - before.line - before.code.split('\n').length + 1) + own,
          runs: !marks.includes('no-run'),
        })
      open = undefined
    } else if (open !== undefined) open.code.push(line)
    else if (fence !== null) open = { line: index + 2, indent: fence[1]!, marks: fence[2]!.trim().split(/\s+/), code: [] }
  })
  if (open !== undefined) throw new Error(`${file}:${open.line - 1}: this fence is not closed`)
  return found
}

const filesUnder = (folder: string, ending: string): string[] => {
  try {
    return readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
      .filter((name) => name.endsWith(ending))
      .sort()
      .map((name) => join(folder, name))
  } catch {
    return []
  }
}

/** Every example of README, guide and doc comments. */
export function allExamples(): Example[] {
  const files = ['README.md', ...filesUnder('docs/guide', '.md'), ...filesUnder('src', '.ts')]
  return files.flatMap((file) => examplesIn(readFileSync(join(root, file), 'utf8'), relative(root, join(root, file))))
}
