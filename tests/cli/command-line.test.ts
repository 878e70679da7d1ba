import { spawnSync } from 'node:child_process'
import { mkdirSync, mkdtempSync, rmSync } from 'node:fs'
import { build } from 'esbuild'
import { expect, test } from 'vitest'
import * as capstan from '../../src/capstan/index.js'
import * as fasteners from '../../src/fasteners/index.js'
import * as formula from '../../src/formula/index.js'
import * as kinematics from '../../src/kinematics/index.js'
import * as leg from '../../src/leg/index.js'
import * as materials from '../../src/materials/index.js'
import * as structures from '../../src/structures/index.js'
import * as study from '../../src/study/index.js'
import * as thermal from '../../src/thermal/index.js'
import * as units from '../../src/units/index.js'
import { example, revised, root, run } from './in-memory.js'

const { assess, describeLeg } = leg

test('check prints the verdict, and its exit code is the verdict', async () => {
  const good = await run(['check', 'leg.yaml', '--rows', '3'])
  expect(good.code).toBe(0)
  expect(good.out).toMatch(/^This leg passes/)
  expect(good.out.match(/^K\d+ +(holds|fails|short) /gm)).toHaveLength(3)
  expect(good.notes).toMatch(/read leg\.yaml.*\n.*assessed \d+ checks/)
  const bad = await run(['check', 'leg.yaml', '-q', '--json', '--set', 'drives.knee.pretension=120 N'])
  expect([bad.code, bad.notes]).toEqual([1, ''])
  const { passes, governing, checks } = JSON.parse(bad.out)
  expect([passes, governing.id, governing.joint]).toEqual([false, 'cord.slack', 'knee'])
  expect(governing.reserve).toBeLessThan(1)
  expect(checks.length).toBeGreaterThan(50)
  const table = await run(['check', 'leg.yaml', '--csv', '-q', '--cases', 'stand'])
  expect(table.out.split('\n')[0]).toMatch(/^check,part,mode,joint,load case,demand,capacity,reserve/)
})

test('a mistake in a document is printed with its line and column', async () => {
  const text = revised.replace('mass: 10.5 kg', 'mass: 10.5 N').replace('hipSpacing', 'hipSpacinq')
  const wrong = await run(['check', 'leg.yaml'], { 'leg.yaml': text })
  expect(wrong.code).toBe(2)
  const line = text.split('\n').findIndex((each) => each.includes('10.5 N')) + 1
  expect(wrong.notes).toContain(`leg.yaml:${line}:3: robot.mass is '10.5 N'; must be a mass`)
  expect(wrong.notes).toMatch(/leg\.yaml:\d+:3: robot\.hipSpacinq .*hipSpacing/)
  const broken = await run(['check', 'leg.yaml', '--json'], { 'leg.yaml': 'robot:\n  mass: [' })
  expect(broken.code).toBe(2)
  expect(JSON.parse(broken.out).mistakes[0]).toMatchObject({ file: 'leg.yaml', path: 'text', line: 2 })
})

test('a mistake on the command line is one plain line', async () => {
  expect(await run(['chek', 'leg.yaml'])).toMatchObject({ code: 2, notes: expect.stringContaining('Did you mean check?') })
  expect(await run(['check', 'leg.yaml', '--row', '3'])).toMatchObject({ code: 2, notes: expect.stringContaining('Did you mean --rows?') })
  expect(await run(['check', 'no.yaml'])).toMatchObject({ code: 2, notes: expect.stringContaining('no such file') })
  expect(await run(['check', 'leg.yaml', '--cases', 'wolk'])).toMatchObject({ code: 2, notes: expect.stringContaining('walk') })
  expect(await run(['check', 'leg.yaml', '--set', 'drives.knee'])).toMatchObject({ code: 2 })
  expect(await run(['check', 'leg.yaml', '--set', 'a=1', '--set', 'a=2'])).toMatchObject({
    code: 2,
    notes: expect.stringContaining('must be given once'),
  })
  expect(await run(['check', 'leg.yaml', '--set', 'a=1', '--remove', 'a'])).toMatchObject({
    code: 2,
    notes: expect.stringContaining('not both'),
  })
  expect(await run([])).toMatchObject({ code: 2, out: expect.stringContaining('learn') })
  expect(await run(['learn', '--help'])).toMatchObject({ code: 0, out: expect.stringContaining('--keep-spikes') })
})

test('compare shows one leg with a changed field, or two documents', async () => {
  const one = await run(['compare', 'leg.yaml', '--set', 'drives.knee.pretension=200 N', '--json', '-q'])
  const { changed, checks } = JSON.parse(one.out)
  expect(changed).toEqual([{ path: 'drives.knee.pretension', before: '280 N', after: '200 N' }])
  expect(checks.some(({ factor }: { factor: number }) => factor < 1)).toBe(true)
  const files = { 'leg.yaml': revised, 'other.yaml': revised.replace('height: 60 mm', 'height: 70 mm') }
  const two = await run(['compare', 'leg.yaml', 'other.yaml', '-q'], files)
  expect(two.out).toMatch(/loadCases\.events\.drop\.height ?\| ?60 mm ?\| ?70 mm/)
  expect(await run(['compare', 'leg.yaml'])).toMatchObject({ code: 2 })
})

test('start writes a leg that passes, with its schema, and never over an old file', async () => {
  const { files, code } = await run(['start', 'new/leg.yaml'], {})
  expect(code).toBe(0)
  expect(Object.keys(files)).toEqual(['new/leg.yaml', 'new/leg.schema.json'])
  expect(JSON.parse(files['new/leg.schema.json'] as string).properties.robot).toBeDefined()
  // The layout that the schema describes.
  expect(files['new/leg.yaml']).toMatch(/^# yaml-language-server.*\n#[\s\S]*schemaVersion: 4\n/)
  expect(await run(['check', 'new/leg.yaml'], files)).toMatchObject({ code: 0 })
  expect(await run(['start', 'new/leg.yaml'], files)).toMatchObject({ code: 2 })
})

test('report writes page, text, table and workshop sheets', async () => {
  const { files, code } = await run(['report', 'leg.yaml', '--to', 'out', '-q', '--cases', 'stand,walk'])
  expect(code).toBe(0)
  expect(Object.keys(files).sort()).toEqual(['leg.yaml', 'out/checks.csv', 'out/report.html', 'out/report.md', 'out/workshop.html'])
  expect(files['out/report.html']).toMatch(/^<!doctype html>/i)
})

test.each(['heath-leg-revised.yaml', 'orchard-leg-revised.yaml', 'desk-leg-revised.yaml', 'shingle-leg-revised.yaml'])(
  'report has the drawings and the workshop sheets of %s',
  async (name) => {
    const { files, code, notes } = await run(['report', 'leg.yaml', '--to', 'out', '-q', '--cases', 'stand,walk'], {
      'leg.yaml': example(name),
    })
    expect(code).toBe(0)
    expect(notes).toBe('')
    expect(Object.keys(files)).toContain('out/workshop.html')
    expect(files['out/report.html']!.match(/<svg/g)!.length).toBeGreaterThan(3)
  },
)

test('learn corrects the document and keeps its comments', async () => {
  const files = { 'leg.yaml': revised, 'pretension-knee.csv': example('stand-logs/pretension-knee.csv') }
  const { out, files: after } = await run(['learn', 'leg.yaml', 'pretension-knee.csv', '--to', 'learnt.yaml', '--json', '-q'], files)
  const moved = JSON.parse(out).moved as { path: string; after: string }[]
  expect(moved.length).toBeGreaterThan(0)
  const learnt = after['learnt.yaml'] as string
  expect(learnt).toContain('# with battery and probe')
  const changedLines = learnt.split('\n').filter((line, i) => line !== revised.split('\n')[i])
  expect(changedLines.length).toBeLessThanOrEqual(moved.length)
  expect(assess(describeLeg(learnt), { cases: ['stand'] }).leg.name).toMatch(/revised/)
})

test('learn takes one file for each log, and writes the fields that were set', async () => {
  const log = example('stand-logs/pretension-knee.csv')
  const files = { 'leg.yaml': revised, 'pretension-knee.csv': log, 'old/pretension-knee.csv': log }
  const twice = await run(['learn', 'leg.yaml', 'pretension-knee.csv', 'old/pretension-knee.csv'], files)
  expect(twice).toMatchObject({ code: 2, notes: expect.stringContaining('old/pretension-knee.csv') })
  const set = ['--set', 'robot.mass=9.9 kg', '--cases', 'stand', '-q', '--to', 'learnt.yaml']
  // A second file of a log, by what its comment states; one that states another log is not applied.
  const second = await run(['learn', 'leg.yaml', 'pretension-knee-2.csv', ...set], { ...files, 'pretension-knee-2.csv': log })
  expect(describeLeg(second.files['learnt.yaml'] as string).robot.mass.si).toBe(9.9)
  const swapped = await run(['learn', 'leg.yaml', 'pretension-hip.csv', ...set], { ...files, 'pretension-hip.csv': log })
  expect(swapped.out).toContain('it is the log pretension knee, but it was given as pretension hip')
  const { files: after } = await run(['learn', 'leg.yaml', 'pretension-knee.csv', ...set], files)
  expect(describeLeg(after['learnt.yaml'] as string).robot.mass.si).toBe(9.9)
})

test('formulas are found by words, and called or solved', async () => {
  expect(await run(['formulas', 'slack', 'wrapAngle'])).toMatchObject({ out: expect.stringContaining('capstan.slackTension(load') })
  expect(await run(['formulas', 'capstan.slackTension'])).toMatchObject({ out: expect.stringContaining('exp(-friction * wrapAngle)') })
  const clamp = await run(['formulas', 'CLAMP', 'load'])
  expect(clamp.out).toMatch(/^fasteners\.clampLoadOverTime\(clampLoad, .*\): .*\.$/m)
  expect(clamp.out).toMatch(
    /\n\nOther functions, which programs import:\n(.*\n)*fasteners\.compareClampRemedies: Clamp load over time of .*\.$/m,
  )
  expect(clamp.out).not.toMatch(/slackTension/)
  const [remedies, ...rest] = JSON.parse((await run(['formulas', 'fasteners.compareClampRemedies', '--json'])).out)
  expect([remedies.id, rest]).toEqual(['fasteners.compareClampRemedies', []])
  expect(await run(['formulas', 'unobtainium'])).toMatchObject({ code: 2, notes: expect.stringContaining('must occur in the id') })
  expect((await run(['formulas', 'fasteners.compareClampRemedies'])).out).toMatch(
    /^fasteners\.compareClampRemedies\nClamp load over time of (?:.*\n)*.*import \{ compareClampRemedies \} from 'limbwright\/fasteners'/,
  )
  expect(await run(['call', 'fasteners.compareClampRemedies'])).toMatchObject({ code: 2, notes: expect.stringContaining('is a function') })
  const inputs = ['load=500 N', 'friction=0.2']
  expect(await run(['call', 'capstan.slackTension', ...inputs, 'wrapAngle=3 turn'])).toMatchObject({ code: 0, out: '11.53 N' })
  const solved = await run(['call', 'capstan.slackTension', ...inputs, '--solve', 'wrapAngle', '--target', '2 N', '--json'])
  expect(JSON.parse(solved.out).wrapAngle[0].value).toBeCloseTo(Math.log(250) / 0.2, 9)
  const noted = await run(['call', 'capstan.slackTension', 'load=500 N', 'friction=20', 'wrapAngle=3 turn', '--json'])
  expect(noted.notes).toContain('outside validity')
  expect(await run(['call', 'capstan.slackTensoin'])).toMatchObject({ code: 2, notes: expect.stringContaining('capstan.slackTension') })
  expect(await run(['call', 'capstan.slackTension', 'load=5 mm'])).toMatchObject({
    code: 2,
    notes: expect.stringContaining('must be a force'),
  })
})

test("questions in a builder's words lead to functions, and a line says that no function holds every word", async () => {
  const asked = {
    'does my capstan slip': 'capstan.slipTorque',
    'press fit steel pin ABS loosens': 'fasteners.pressFitOverTime',
    'torque for hopping': 'kinematics.jumpPush',
    'how thick wall bolt boss': 'fasteners.bossWallStress',
    'motor too hot': 'thermal.hottestPhaseRise',
    'battery runtime': 'thermal.runningTime',
    'size cord drive': 'capstan.proposeDrive',
    'clamp load left in my bolt after a summer': 'fasteners.clampLoadPowerLaw',
    'cord stretch backlash': 'capstan.historyWindup',
  }
  for (const [question, id] of Object.entries(asked)) {
    const { code, out } = await run(['formulas', ...question.split(' ')])
    const [head, blank, ...lines] = out.split('\n')
    expect(code, question).toBe(0)
    expect(head, question).toMatch(/^Nothing holds every one of these words\. Nearest, by /)
    expect(blank).toBe('')
    expect(lines.length, question).toBeLessThanOrEqual(8)
    expect(
      lines.map((line) => /^[\w.]+/.exec(line)?.[0]),
      question,
    ).toContain(id)
  }
  expect(JSON.parse((await run(['formulas', 'battery', 'runtime', '--json'])).out)).toMatchObject([{ id: 'thermal.runningTime' }])
  expect(await run(['formulas', 'how', 'is', 'my'])).toMatchObject({ code: 2 })
})

test('every function that a module exports has its line in the list of formulas', async () => {
  const modules = { units, formula, capstan, kinematics, materials, fasteners, structures, thermal, study, leg }
  const listed = JSON.parse((await run(['formulas', '--json'])).out) as { id: string; summary: string }[]
  const ids = new Set(listed.filter(({ summary }) => summary.endsWith('.')).map(({ id }) => id))
  const isClass = (value: object) => /^class\b/.test(Function.prototype.toString.call(value))
  const exported = Object.entries(modules).flatMap(([module, names]) =>
    Object.entries(names).flatMap(([name, value]) => (typeof value === 'function' && !isClass(value) ? [`${module}.${name}`] : [])),
  )
  expect(exported.length).toBeGreaterThan(700)
  expect(exported.filter((id) => !ids.has(id))).toEqual([])
})

test('the program itself reads a pipe and sets the exit code', async () => {
  // In one file, as it is installed: node starts it in a fraction of the time that compiling every file of the source would take.
  mkdirSync(`${root}out`, { recursive: true })
  const folder = mkdtempSync(`${root}out/program-`)
  try {
    const program = `${folder}/limbwright.mjs`
    await build({
      entryPoints: [`${root}src/cli/limbwright.ts`],
      outfile: program,
      bundle: true,
      format: 'esm',
      platform: 'node',
      packages: 'external',
    })
    const { status, stdout, stderr } = spawnSync(process.execPath, [program, 'check', '-', '--cases', 'stand', '--json'], {
      cwd: root,
      input: revised.replace('pretension: 280 N', 'pretension: 1 N'),
      encoding: 'utf8',
    })
    expect(stderr).toMatch(/assessed \d+ checks/)
    expect(JSON.parse(stdout).passes).toBe(false)
    expect(status).toBe(1)
  } finally {
    rmSync(folder, { recursive: true })
  }
})

test('page writes the page of a leg, of the example without one, and no tags from a document', async () => {
  const made = await run(['page', 'leg.yaml', '--to', 'own.html'], { 'leg.yaml': revised.replace('10.5 kg', '10.6 kg') })
  expect([made.code, made.notes]).toEqual([0, ''])
  expect(made.files['own.html']).toMatch(/^<script>[\s\S]*mass: 10\.6 kg[\s\S]*<\/script>$/)
  const example = await run(['page'], {})
  expect(example.files['leg.html']).toContain('mass: 10.5 kg')
  const tags = await run(['page', 'leg.yaml'], { 'leg.yaml': `${revised}# </script>` })
  expect([tags.code, tags.files['leg.html']]).toEqual([2, undefined])
  expect(tags.notes).toContain('must not hold the tags of a page')
  expect((await run(['page', 'none.yaml'])).code).toBe(2)
})

test('the verdict names a check that fails, not one that is short of a higher required reserve', async () => {
  const { out } = await run(['check', 'leg.yaml', '-q', '--set', 'robot.mass=10.9 kg'])
  expect(out.split('\n')[0]).toMatch(/^This leg fails: 1 of .*First to fail: the can of the motor \(knee\) .*, with a reserve of 0\.9/)
})
