// Installs the packed tarball as a user would, in folders of their own, and uses it: ES modules, CommonJS, TypeScript under each way of
// resolving modules, and one program that must not compile.
import { spawnSync } from 'node:child_process'
import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { fileURLToPath } from 'node:url'

const root = fileURLToPath(new URL('../../', import.meta.url))
const pack = join(root, 'out/pack')
const projects = join(root, 'tests/consumers/projects')
// The oldest compiler that the declarations are held to comes with the consumer.
const OLDEST = 'typescript-oldest@npm:typescript@5.4'

// `npm run check:package` has packed it.
const tarball = resolve(pack, readdirSync(pack).find((file) => file.endsWith('.tgz')) ?? '')

const home = mkdtempSync(join(tmpdir(), 'limbwright-'))
let failures = 0

function report(what: string, ok: boolean, output: string) {
  console.log(`${ok ? 'ok    ' : 'FAILED'} ${what}`)
  if (!ok) {
    failures++
    console.log(output)
  }
}

function run(command: string, args: readonly string[], cwd: string) {
  const { status, stdout, stderr } = spawnSync(command, args, { cwd, encoding: 'utf8' })
  return { ok: status === 0, output: `${stdout}${stderr}` }
}

/** Compiles with the declarations of everything installed checked too; returns what the compiler said. */
function compile(compiler: string, cwd: string, options: object) {
  const compilerOptions = {
    strict: true,
    exactOptionalPropertyTypes: true,
    skipLibCheck: false,
    noEmit: true,
    target: 'ES2022',
    types: [],
    ...options,
  }
  writeFileSync(join(cwd, 'tsconfig.json'), JSON.stringify({ compilerOptions, include: ['*.ts', '*.cts'] }))
  return run(process.execPath, [compiler, '-p', '.'], cwd)
}

try {
  // One installation that all folders find above them.
  writeFileSync(join(home, 'package.json'), '{ "private": true }')
  const installed = run('npm', ['install', '--prefer-offline', '--no-audit', '--no-fund', tarball, OLDEST], home)
  report('npm install of the packed tarball', installed.ok, installed.output)
  cpSync(projects, home, { recursive: true })

  for (const name of ['esm', 'cjs']) {
    const { ok, output } = run(process.execPath, ['main.js'], join(home, name))
    report(name, ok, output)
  }
  const program = run(process.execPath, ['node_modules/limbwright/dist/limbwright.js', 'start', 'leg.yaml'], home)
  report('the command line writes its example', program.ok, program.output)
  const bin = run(join(home, 'node_modules/.bin/limbwright'), ['check', 'leg.yaml', '--json', '--set', 'drives.knee.pretension=1 N'], home)
  report('the command line fails a leg whose cord is slack', !bin.ok && bin.output.includes('"passes": false'), bin.output)
  // README's plain JavaScript, as a reader pastes it.
  const readme = readFileSync(join(root, 'README.md'), 'utf8')
  const scripts = [...readme.matchAll(/^```js.*\n([\s\S]*?)^```$/gm)].map(([, code]) => code as string)
  report('README holds plain JavaScript', scripts.length > 0, '')
  for (const [i, code] of scripts.entries()) {
    writeFileSync(join(home, `readme-${i}.mjs`), code)
    const { ok, output } = run(process.execPath, [`readme-${i}.mjs`], home)
    report(`README, JavaScript example ${i + 1}, prints something`, ok && output.trim() !== '', output)
  }
  // Node prints the line of the package that throws before the message: a reader must still find the message below it.
  const mistakes = {
    formula: ["import { slackTension } from 'limbwright/capstan'", "slackTension({ load: '500 mm', friction: 0.2, wrapAngle: '3 turn' })"],
    leg: ["import { describeLeg } from 'limbwright/leg'", "describeLeg('robot: { mass: 3 N }')"],
  }
  for (const [name, script] of Object.entries(mistakes)) {
    writeFileSync(join(home, `mistake-${name}.mjs`), script.join('\n'))
    const { ok, output } = run(process.execPath, [`mistake-${name}.mjs`], home)
    const above = output.indexOf('InputError')
    report(`an error that nobody catches (${name}) is not buried below code`, !ok && above > 0 && above < 1000, output.slice(0, 2000))
  }
  const ways = [
    ['node16', { module: 'Node16', moduleResolution: 'Node16' }],
    ['node16', { module: 'NodeNext', moduleResolution: 'NodeNext' }],
    ['bundler', { module: 'ESNext', moduleResolution: 'Bundler' }],
  ] as const
  const compilers = [
    ...['typescript', 'typescript-7'].map((name) => join(root, 'node_modules', name, 'bin/tsc')),
    join(home, 'node_modules/typescript-oldest/bin/tsc'),
  ]
  for (const compiler of compilers) {
    const version = run(process.execPath, [compiler, '--version'], home).output.trim()
    for (const [name, options] of ways) {
      const { ok, output } = compile(compiler, join(home, name), options)
      report(`${version}, ${options.moduleResolution}`, ok, output)
    }
    const refused = compile(compiler, join(home, 'refused'), { module: 'NodeNext', moduleResolution: 'NodeNext' })
    const lines = refused.output.split('\n').filter((line) => line.includes('error TS'))
    const asMeant = lines.length === 1 && lines[0]!.startsWith('main.ts(3,') && lines[0]!.includes('"500 mm"')
    report(`${version} refuses a load in millimetres, and nothing else`, !refused.ok && asMeant, refused.output)
  }
} finally {
  rmSync(home, { recursive: true, force: true })
}
process.exit(failures === 0 ? 0 : 1)
