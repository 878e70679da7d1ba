// Writes the names that an editor completes, as types alone, so that they cost nothing in a bundle: the paths of the leg's document, the
// names of its checks, the materials of the table. `npm run meanings` calls it; a test and `npm run meanings -- --check` find a stale file.
import { existsSync, readFileSync, writeFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { CHECKS } from '../../src/leg/parts/index.js'
import { materialNames } from '../../src/materials/index.js'

const root = fileURLToPath(new URL('../../', import.meta.url))
const WIDTH = 138

/** A union of words, as many to a line as fit. */
function union(words: readonly string[]): string {
  const lines: string[] = []
  let line = ' '
  for (const word of words) {
    const next = `${line} | '${word}'`
    if (next.length > WIDTH && line !== ' ') {
      lines.push(line)
      line = `  | '${word}'`
    } else line = line === ' ' ? `  | '${word}'` : next
  }
  return [...lines, line].join('\n')
}

/** The paths that are plain text: without names of the builder's own, and without the sections that only hold other fields. */
function pathsOf(meanings: Readonly<Record<string, string>>): string[] {
  const all = [...new Set(Object.keys(meanings).map((path) => path.replaceAll(/<[^>]*>/g, '')))]
  const holds = (path: string) => all.some((other) => other.startsWith(`${path}.`))
  return all.filter((path) => path !== '$schema' && path !== 'schemaVersion' && !path.includes('*') && !holds(path)).sort()
}

/** The files and what they must hold. */
export function nameFiles(meanings: Readonly<Record<string, string>>): Readonly<Record<string, string>> {
  const joint = CHECKS.filter(({ scope }) => scope === 'joint').map(({ id }) => id)
  const whole = CHECKS.filter(({ scope }) => scope === 'leg').map(({ id }) => id)
  const head =
    '// Written by `npm run meanings` for completion in an editor; types alone.\n// biome-ignore-all format: written by a script\n\n'
  return {
    'src/leg/document/names.ts': `${head}/** A path of the leg's document that is the same for every leg. */
export type LegPath =
${union(pathsOf(meanings))}

type JointCheck =
${union(joint)}
type WholeCheck =
${union(whole)}

/** The name of a check, with its joint where it belongs to one. */
export type CheckName = \`\${JointCheck} \${'hip' | 'knee' | 'sidewaysHip'}\` | WholeCheck
`,
    'src/materials/names.ts': `${head}/** The name of a material of the table. */
export type MaterialName =
${union(materialNames())}
`,
  }
}

/** Writes the files, or returns the stale ones. */
export function editorNames(meanings: Readonly<Record<string, string>>, check: boolean): string[] {
  return Object.entries(nameFiles(meanings)).flatMap(([file, text]) => {
    const path = `${root}${file}`
    if (existsSync(path) && readFileSync(path, 'utf8') === text) return []
    if (!check) writeFileSync(path, text)
    return check ? [file] : []
  })
}
