import { expect, test } from 'vitest'
import { FileError, mistakesOf, mistakeText } from '../../src/cli/file-error.js'
import { InputError } from '../../src/units/index.js'
import { example, revised, run } from './in-memory.js'

const current = example('mudflat-leg-revised.yaml')

test.each([
  [['check', 'leg.yaml', '--rows'], /^check: Option '--rows <value>' argument missing$/],
  [['check', 'leg.yaml', '-x'], /^check: Unknown option '-x'/],
  [['check', 'leg.yaml', '--rows', '0'], /^--rows is '0'; must be a whole number of checks to list$/],
  [['check', 'leg.yaml', '--rows', '1.5'], /^--rows is '1\.5'; must be a whole number/],
  [['check', 'leg.yaml', '--set', 'drives.knee'], /^drives\.knee is without a value; must be a field and its value, such as joints\.knee/],
  [['check', 'leg.yaml', '--set', '=3'], /^=3 is without a value; must be a field and its value/],
  [['check'], /^what follows check is missing; must /],
  [['compare'], /^what follows compare is missing; must name two documents, or one document and what to change in it/],
  [['compare', 'a', 'b', 'c'], /^what follows compare is 'a b c'; must name two documents/],
  [['compare', 'leg.yaml', 'b', '--set', 'a=1'], /^what follows compare is 'leg\.yaml b'; must name two documents/],
  [['range', 'leg.yaml'], /^what follows range is 'leg\.yaml'; must name one document of a leg and one of its fields/],
  [['range', 'leg.yaml', 'robot.mass', 'x'], /^what follows range is 'leg\.yaml robot\.mass x'; must name one/],
  [['range'], /^what follows range is missing; must name one/],
  [['robot'], /^what follows robot is missing; must name one document of a leg, such as leg\.yaml$/],
  [['robot', 'leg.yaml', 'b'], /^what follows robot is 'leg\.yaml b'; must name one document/],
  [['learn', 'leg.yaml'], /^what follows learn is 'leg\.yaml'; must name the document of a leg and at least one log/],
  [['page', 'leg.yaml', 'b'], /^what follows page is 'leg\.yaml b'; must be one document, or none for the example$/],
  [['start'], /^what follows start is missing; must be the file to write, such as leg\.yaml, and nothing else$/],
  [['start', 'leg.yaml'], /^leg\.yaml is there already; must be a new file; --force writes over an old one$/],
  [['page', 'leg.yaml'], /^leg\.yaml: text is not readable; /, { 'leg.yaml': 'robot: [' }],
  [['chek'], /^limbwright: chek is not a verb\. Did you mean check\? Verbs: start, check, compare, /],
  [['zzzzzz'], /^limbwright: zzzzzz is not a verb\. Verbs: start, /],
  [['constructor'], /^limbwright: constructor is not a verb/],
] as const)('%j is refused in one line', async (args, message, files?) => {
  const { code, notes } = await run(args as readonly string[], files as never)
  expect(code).toBe(2)
  expect(notes).toMatch(message)
  expect(notes).not.toContain('\n')
})

test('help and version are printed, and a topic that is no verb has the overview', async () => {
  expect(await run(['--version'])).toMatchObject({ code: 0, out: '1.2.3' })
  const overview = (await run(['--help'])).out
  expect(overview).toContain('1.2.3')
  for (const args of [['help'], ['-h'], ['help', 'constructor'], ['help', 'none']]) expect((await run(args)).out).toBe(overview)
  const check = (await run(['help', 'check'])).out
  for (const args of [
    ['check', '-h'],
    ['check', 'leg.yaml', '--help'],
  ])
    expect(await run(args)).toMatchObject({ code: 0, out: check })
  expect(check).not.toBe(overview)
})

test('a removed field is left to its default', async () => {
  const filled = async (...more: string[]) => {
    const { out } = await run(['check', 'leg.yaml', '--json', '-q', '--cases', 'stand', ...more], { 'leg.yaml': current })
    return (JSON.parse(out).filledIn as { path: string }[]).map(({ path }) => path)
  }
  const [before, removed] = [await filled(), await filled('--remove', 'cords.braid.pretensionLeft')]
  expect(removed.filter((path) => !before.includes(path))).toEqual(['cords.braid.pretensionLeft'])
})

test('two documents are compared with every check that only one of them has', async () => {
  const files = { 'leg.yaml': current, 'other.yaml': example('desk-leg-revised.yaml') }
  const { out, notes } = await run(['compare', 'leg.yaml', 'other.yaml', '--json', '--cases', 'stand'], files)
  const { before, after, checks } = JSON.parse(out) as {
    before: { file: string }
    after: { file: string }
    checks: { before?: number; after?: number }[]
  }
  expect([before.file, after.file]).toEqual(['leg.yaml', 'other.yaml'])
  expect(checks.some((one) => one.before === undefined)).toBe(true)
  expect(checks.some((one) => one.after === undefined)).toBe(true)
  expect(notes.split('\n')).toEqual([
    expect.stringContaining('read leg.yaml: '),
    expect.stringMatching(/assessed both designs: \d+ checks$/),
  ])
})

test('the robot has its text, its JSON and its exit code', async () => {
  const text = await run(['robot', 'leg.yaml'], { 'leg.yaml': current })
  expect(text).toMatchObject({ code: 0, out: expect.stringMatching(/^The robot holds as a whole/) })
  const failing = await run(['robot', 'leg.yaml', '--json', '--set', 'supply.energy=10 W h'], { 'leg.yaml': current })
  expect(failing.code).toBe(1)
  expect(JSON.parse(failing.out)).toMatchObject({ passes: false, checks: expect.any(Array) })
})

test('formulas print what was found, and no heading without functions below it', async () => {
  const one = await run(['formulas', 'verge of slipping', 'slack end'])
  expect(one.out).toMatch(/^capstan\.slackTension\(load, friction, wrapAngle/)
  expect(one.out).not.toContain('Other functions')
  const page = (await run(['formulas', 'capstan.slackTension'])).out.split('\n')
  expect(page.filter((line) => /^[A-Z]\w+( where)?$/.test(line))).toEqual(
    expect.arrayContaining(['Inputs', 'Output', 'Equation', 'Sources']),
  )
  expect(page.slice(0, 1)).toEqual(['capstan.slackTension'])
})

test('a call prints one quantity, or each part of a record by its name, with the notes of all', async () => {
  const record = await run(['call', 'structures.boxSection', 'width=20 mm', 'depth=30 mm', 'wall=2 mm'])
  // 20 × 30 − 16 × 26 = 184 mm².
  expect(record.out.split('\n')[0]).toBe('area: 184 mm^2')
  expect(record.out.split('\n').map((line) => line.split(':')[0])).toEqual([
    ...['area', 'secondMoment', 'sidewaysSecondMoment', 'sectionModulus', 'sidewaysSectionModulus'],
  ])
  expect(record.notes).toBe('')
  const noted = await run([
    'call',
    'structures.boxTorsionalRigidity',
    'width=20 mm',
    'depth=30 mm',
    'wall=6 mm',
    'modulus=2 GPa',
    'poissonRatio=0.3',
  ])
  expect(noted.notes).toContain('outside validity')
})

test('mistakes carry file, line and column; a fault of the program is none', () => {
  const issue = { path: 'a', given: 'x', accepts: 'must be y' }
  const inFile = new FileError('leg.yaml', new InputError('describeLeg', [{ ...issue, line: 3, column: 5 }]))
  expect(mistakesOf(inFile)?.map(mistakeText)).toEqual(['leg.yaml:3:5: a is x; must be y'])
  const parsed = new InputError('f', [{ path: 'line 3, column 15', given: 'not readable', accepts: 'must be text' }])
  expect(mistakesOf(parsed)).toEqual([{ path: 'text', given: 'not readable', accepts: 'must be text', line: 3, column: 15 }])
  const longer = new InputError('f', [
    { ...issue, path: 'line 3, column 15 of b' },
    { ...issue, path: 'in line 3, column 15' },
  ])
  expect(mistakesOf(longer)?.map(({ path }) => path)).toEqual(['line 3, column 15 of b', 'in line 3, column 15'])
  expect(mistakeText({ ...issue, path: '' })).toBe("'' is x; must be y")
  const system = (code: unknown, path?: string) => mistakesOf(Object.assign(new Error('so it is'), { code, path }))?.map(mistakeText)
  expect(system('ENOENT', 'leg.yaml')).toEqual(['leg.yaml: there is no such file'])
  expect(system('EISDIR', 'legs')).toEqual(['legs: is a folder; a file is needed'])
  expect(system('EACCES', 'leg.yaml')).toEqual(['leg.yaml: may not be read or written'])
  expect(system('EBUSY', 'leg.yaml')).toEqual(['so it is'])
  expect(system('ENOENT')).toEqual(['so it is'])
  for (const code of [undefined, 5, 'ERR_INVALID_ARG', 'none']) expect(system(code)).toBeUndefined()
  for (const fault of [new TypeError('x'), undefined, null, new FileError('leg.yaml', new TypeError('x'))])
    expect(mistakesOf(fault)).toBeUndefined()
})

test('a page is not written over where the document is not read', async () => {
  const { files, notes } = await run(['page', 'leg.yaml'], { 'leg.yaml': `${revised}\nrobot: {}\n` })
  expect(notes).toMatch(/^leg\.yaml: /)
  expect(Object.keys(files)).toEqual(['leg.yaml'])
})
