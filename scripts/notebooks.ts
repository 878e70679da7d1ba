// Executes the example notebooks with a real Jupyter kernel, from the packed tarball, in a folder of its own, as a reader would. The notebooks assert
// inside their cells; outputs are not compared, because the kernel loses one now and then. Ends with 77 where Jupyter is not installed.
import { spawnSync } from 'node:child_process'
import { cpSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'

const NOT_RUN = 77
/** Bytes of the outputs of one cell. A verdict is brief; the report holds the rest. */
const LARGEST_CELL = 60_000
/** Characters of a result that is text alone. */
const LONGEST_TEXT = 400

if (spawnSync('jupyter', ['nbconvert', '--version']).status !== 0) {
  console.log('Not run: jupyter nbconvert is not installed (Debian: apt-get install jupyter-nbconvert).')
  process.exit(NOT_RUN)
}

const pack = resolve('out/pack')
const tarball = join(pack, readdirSync(pack).find((name) => name.endsWith('.tgz')) ?? '')
const home = mkdtempSync(join(tmpdir(), 'limbwright-notebooks-'))
const run = (command: string, args: readonly string[], env: NodeJS.ProcessEnv = {}) => {
  const { status, stdout, stderr } = spawnSync(command, args, { cwd: home, encoding: 'utf8', env: { ...process.env, ...env } })
  return { ok: status === 0, output: `${stdout}${stderr}` }
}
let failures = 0
const report = (what: string, ok: boolean, output: string) => {
  console.log(`${ok ? 'ok    ' : 'FAILED'} ${what}`)
  if (ok) return
  failures++
  console.log(output.slice(-4000))
}

interface Cell {
  readonly cell_type: string
  readonly outputs?: readonly { readonly data?: Readonly<Record<string, unknown>> }[]
}

type Output = NonNullable<Cell['outputs']>[number]

/** How often a notebook is executed until all that it shows has arrived. */
const MOST_RUNS = 4
const NOTHING: { cells: readonly Cell[]; outputs: readonly Output[]; kinds: ReadonlySet<string> } = {
  cells: [],
  outputs: [],
  kinds: new Set(),
}

try {
  writeFileSync(join(home, 'package.json'), '{ "private": true, "type": "module" }')
  const installed = run('npm', ['install', '--prefer-offline', '--no-audit', '--no-fund', tarball, 'deno@2', 'vega@6.4', 'vega-lite@6.4.3'])
  report('npm install of the tarball, the kernel and the packages that draw', installed.ok, installed.output)
  cpSync('examples', join(home, 'examples'), { recursive: true })
  // What `deno jupyter --install` writes, in this folder alone.
  const kernel = join(home, 'jupyter/kernels/deno')
  mkdirSync(kernel, { recursive: true })
  const argv = [join(home, 'node_modules/.bin/deno'), 'jupyter', '--kernel', '--conn', '{connection_file}']
  writeFileSync(join(kernel, 'kernel.json'), JSON.stringify({ argv, display_name: 'Deno', language: 'typescript' }))
  const env = { JUPYTER_PATH: join(home, 'jupyter'), DENO_DIR: join(home, 'deno'), DENO_NO_UPDATE_CHECK: '1', NO_COLOR: '1' }
  for (const name of readdirSync(join(home, 'examples/notebooks')).filter((each) => each.endsWith('.ipynb'))) {
    const file = `examples/notebooks/${name}`
    const args = ['nbconvert', '--to', 'notebook', '--execute', '--inplace', '--ExecutePreprocessor.timeout=300', file]
    let { cells, outputs, kinds } = NOTHING
    // On a busy machine the kernel may send a result after it has reported its cell as done, and nbconvert then leaves it out: run it again.
    for (let runs = 0; runs < MOST_RUNS && !kinds.has('image/svg+xml'); runs++) {
      const { ok, output } = run('jupyter', args, env)
      report(`${name} runs from top to bottom`, ok, output)
      if (!ok) break
      cells = (JSON.parse(readFileSync(join(home, file), 'utf8')) as { cells: readonly Cell[] }).cells
      outputs = cells.flatMap((cell) => cell.outputs ?? []).filter(({ data }) => data !== undefined)
      kinds = new Set(outputs.flatMap(({ data }) => Object.keys(data ?? {})))
    }
    if (cells.length === 0) continue
    const largest = Math.max(...cells.map((cell) => JSON.stringify(cell.outputs ?? []).length))
    report(`${name}: ${outputs.length} results, the largest cell ${Math.round(largest / 1000)} kB`, largest < LARGEST_CELL, '')
    report(`${name}: a chart as SVG`, kinds.has('image/svg+xml'), [...kinds].join(', '))
    const raw = outputs.filter(
      ({ data = {} }) => Object.keys(data).join() === 'text/plain' && String(data['text/plain']).length > LONGEST_TEXT,
    )
    report(`${name}: no long result is printed raw`, raw.length === 0, JSON.stringify(raw).slice(0, 500))
    // Without its template, so that nothing but the results is in the page.
    const page = run('jupyter', ['nbconvert', '--to', 'html', '--template', 'basic', '--stdout', file], env).output
    report(`${name}: a page of it shows the chart as a picture`, page.includes('<img src="data:image/svg+xml;base64,'), page.slice(0, 500))
  }
} finally {
  if (process.argv.includes('--keep')) console.log(home)
  else rmSync(home, { recursive: true, force: true })
}
process.exit(failures === 0 ? 0 : 1)
