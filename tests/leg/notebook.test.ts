import { readdirSync, readFileSync } from 'node:fs'
import ts from 'typescript'
import { expect, test, vi } from 'vitest'
import * as capstan from '../../src/capstan/index.js'
import * as leg from '../../src/leg/index.js'
import * as mathjs from '../../src/mathjs/index.js'
import * as study from '../../src/study/index.js'
import * as thermal from '../../src/thermal/index.js'
import * as units from '../../src/units/index.js'

interface Notebook {
  readonly nbformat: number
  readonly cells: readonly {
    readonly cell_type: 'code' | 'markdown'
    readonly source: readonly string[]
    readonly outputs?: readonly unknown[]
  }[]
}

const folder = new URL('../../examples/notebooks/', import.meta.url)
const MODULES: Readonly<Record<string, unknown>> = {
  'limbwright/capstan': capstan,
  'limbwright/leg': leg,
  'limbwright/mathjs': mathjs,
  'limbwright/study': study,
  'limbwright/thermal': thermal,
  'limbwright/units': units,
  'node:assert/strict': await import('node:assert/strict'),
  // A kernel starts in the folder of its notebook.
  'node:fs': { readFileSync: (name: string, encoding: 'utf8') => readFileSync(new URL(name, folder), encoding) },
}

test.each(readdirSync(folder).filter((name) => name.endsWith('.ipynb')))(
  '%s runs from top to bottom, and its assertions hold',
  async (name) => {
    const { cells, nbformat } = JSON.parse(readFileSync(new URL(name, folder), 'utf8')) as Notebook
    expect(nbformat).toBe(4)
    const code = cells.filter((cell) => cell.cell_type === 'code')
    expect(code.every(({ outputs }) => outputs?.length === 0)).toBe(true)
    const script = code.map(({ source }) => source.join('')).join('\n;\n')
    expect(script.match(/assert\./g)?.length).toBeGreaterThanOrEqual(3)
    const { outputText } = ts.transpileModule(script, {
      compilerOptions: { module: ts.ModuleKind.CommonJS, target: ts.ScriptTarget.ES2022, esModuleInterop: true },
    })
    const log = vi.fn()
    const AsyncFunction = (async () => {}).constructor as new (...words: string[]) => (...values: unknown[]) => Promise<void>
    await new AsyncFunction('require', 'exports', 'console', outputText)((module: string) => MODULES[module], {}, { log })
    expect(log.mock.calls.flat().join('\n')).not.toMatch(/NaN|undefined|\[object/)
  },
)
