// Bundles every subpath of the packed tarball outside the repository, where none of its own packages can be found, with the common bundlers,
// and runs the result on the common runtimes: each must give the reserves of the plain installation, bundles to the last digit, other engines
// to 1e-12: the language leaves the last digits of exp, sin and pow to the engine.
import { spawnSync } from 'node:child_process'
import { copyFileSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'

const root = fileURLToPath(new URL('../../', import.meta.url))
const pack = join(root, 'out/pack')
const tarball = join(pack, readdirSync(pack).find((file) => file.endsWith('.tgz')) ?? '')
const home = mkdtempSync(join(tmpdir(), 'limbwright bundles '))
const bundlers = ['esbuild', 'rollup', '@rollup/plugin-node-resolve', '@rollup/plugin-commonjs', 'webpack', 'vite']
const runtimes = ['bun', 'deno', 'node22@npm:node@22', 'node24@npm:node@24']
let failures = 0

function run(command: string, args: readonly string[]) {
  const { status, stdout, stderr } = spawnSync(command, args, {
    cwd: home,
    encoding: 'utf8',
    env: { ...process.env, NO_COLOR: '1', FORCE_COLOR: '0' },
  })
  return { ok: status === 0, stdout: stdout ?? '', output: `${stdout}${stderr}` }
}

interface Printed {
  readonly names: readonly number[]
  readonly reserves: readonly number[]
}

function same(one: string, other: string): boolean {
  const [a, b] = [JSON.parse(one) as Printed, JSON.parse(other) as Printed]
  const near = (x: number, i: number) => Math.abs(x - (b.reserves[i] ?? Number.NaN)) <= 1e-12 * Math.abs(x)
  return a.names.join() === b.names.join() && a.reserves.length === b.reserves.length && a.reserves.every(near)
}

function report(what: string, ok: boolean, output: string) {
  console.log(`${ok ? 'ok    ' : 'FAILED'} ${what}`)
  if (ok) return
  failures++
  console.log(output.slice(0, 4000))
}

try {
  writeFileSync(join(home, 'package.json'), '{ "private": true, "type": "module" }')
  const installed = run('npm', ['install', '--prefer-offline', '--no-audit', '--no-fund', tarball, ...bundlers, ...runtimes])
  report('npm install of the tarball, bundlers and runtimes', installed.ok, installed.output)
  copyFileSync(join(root, 'examples/mudflat-leg-revised.yaml'), join(home, 'leg.yaml'))
  const manifest = createRequire(join(home, 'package.json'))('limbwright/package.json') as { exports: Record<string, unknown> }
  const subpaths = Object.keys(manifest.exports).filter((path) => path !== './package.json' && !path.endsWith('.json'))
  writeFileSync(
    join(home, 'main.js'),
    `import { readFileSync } from 'node:fs'
import { assess, describeLeg } from 'limbwright/leg'
${subpaths.map((path, i) => `import * as m${i} from 'limbwright${path.slice(1)}'`).join('\n')}
const names = [${subpaths.map((_, i) => `m${i}`).join(', ')}].map((module) => Object.keys(module).length)
const { governing, checks } = assess(describeLeg(readFileSync('leg.yaml', 'utf8')))
console.log(JSON.stringify({ names, governing: governing.reserve, reserves: checks.map(({ reserve }) => reserve) }))
`,
  )
  const plain = run(process.execPath, ['main.js'])
  report('plain installation', plain.ok, plain.output)

  const bin = (name: string) => join(home, 'node_modules/.bin', name)
  for (const [name, command, args] of [
    ['node 22', join(home, 'node_modules/node22/bin/node'), ['main.js']],
    ['node 24', join(home, 'node_modules/node24/bin/node'), ['main.js']],
    ['bun', bin('bun'), ['main.js']],
    ['deno', bin('deno'), ['run', '--allow-read', '--allow-env', 'main.js']],
  ] as const) {
    const { ok, stdout, output } = run(command, args)
    report(`${name} gives the same reserves`, ok && same(stdout, plain.stdout), output)
  }

  writeFileSync(
    join(home, 'rollup.config.mjs'),
    `import resolve from '@rollup/plugin-node-resolve'
import commonjs from '@rollup/plugin-commonjs'
export default { input: 'main.js', output: { file: 'out/rollup.mjs', format: 'es', inlineDynamicImports: true }, external: [/^node:/, 'vega', 'vega-lite'], plugins: [resolve(), commonjs()] }
`,
  )
  writeFileSync(
    join(home, 'webpack.mjs'),
    `import webpack from 'webpack'
webpack({ entry: './main.js', mode: 'production', target: 'node20', experiments: { outputModule: true }, externals: { vega: 'vega', 'vega-lite': 'vega-lite' }, externalsType: 'import', output: { path: process.cwd() + '/out', filename: 'webpack.mjs', module: true } }, (error, stats) => {
  if (error) throw error
  console.log(stats.toString({ all: false, errors: true, warnings: true }))
  if (stats.hasErrors()) process.exit(1)
})
`,
  )
  writeFileSync(
    join(home, 'vite.config.mjs'),
    `export default { logLevel: 'warn', build: { ssr: 'main.js', outDir: 'out/vite', rollupOptions: { output: { entryFileNames: 'main.mjs' } } }, ssr: { noExternal: true, external: ['vega', 'vega-lite'] } }
`,
  )
  for (const [name, command, args, file] of [
    [
      'esbuild',
      bin('esbuild'),
      ['main.js', '--bundle', '--platform=node', '--format=esm', '--outfile=out/esbuild.mjs', '--log-level=warning'],
      'out/esbuild.mjs',
    ],
    ['rollup', bin('rollup'), ['-c', 'rollup.config.mjs', '--silent'], 'out/rollup.mjs'],
    ['webpack', process.execPath, ['webpack.mjs'], 'out/webpack.mjs'],
    ['vite', bin('vite'), ['build'], 'out/vite/main.mjs'],
    ['bun', bin('bun'), ['build', 'main.js', '--target=node', '--outfile=out/bun.mjs'], 'out/bun.mjs'],
  ] as const) {
    const built = run(command, args)
    report(`${name} bundles every subpath`, built.ok && !/critical dependency|could not resolve/i.test(built.output), built.output)
    const ran = run(process.execPath, [file])
    report(`${name}: the bundle gives the same reserves`, ran.ok && ran.stdout === plain.stdout, ran.output)
  }
} finally {
  rmSync(home, { recursive: true, force: true })
}
process.exit(failures === 0 ? 0 : 1)
