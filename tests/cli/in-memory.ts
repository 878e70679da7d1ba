import { readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { main, type Terminal } from '../../src/cli/index.js'

export const root = fileURLToPath(new URL('../../', import.meta.url))
export const example = (name: string) => readFileSync(`${root}examples/${name}`, 'utf8')
export const revised = example('mudflat-leg-revised.yaml')

/** Runs one command line on files in memory. */
export async function run(args: readonly string[], files: Record<string, string> = { 'leg.yaml': revised }) {
  const out: string[] = []
  const notes: string[] = []
  const terminal: Terminal = {
    out: (text) => out.push(text),
    note: (text) => notes.push(text),
    readText: (name) => {
      if (files[name] === undefined)
        throw Object.assign(new Error(`ENOENT: no such file or directory, open '${name}'`), { code: 'ENOENT', path: name })
      return files[name]
    },
    writeText: (name, text) => {
      files[name] = text
    },
    exists: (name) => files[name] !== undefined,
    packaged: (name) => (name === 'dist/page.html' ? '<script><!--EXAMPLE--></script>' : readFileSync(`${root}${name}`, 'utf8')),
  }
  const code = await main(terminal, args, '1.2.3')
  return { code, out: out.join('\n'), notes: notes.join('\n'), files }
}
