import { fileURLToPath } from 'node:url'
import { describe, expect, test } from 'vitest'
import list from '../../folders.json' with { type: 'json' }
import { catalogue, formulaOf } from '../../src/catalogue/index.js'
import { recordReader, titleInWords } from '../../src/formula/index.js'
import { checksById, committedUnconfirmed, unconfirmedOf } from '../published/evidence.js'
import { writtenRecords } from './records.js'

const folders = list.modules
const written = new Map(folders.flatMap((folder) => writtenRecords(folder).map((record) => [record.id, record] as const)))
const exported = (module: string) => [...catalogue.keys()].filter((id) => id.startsWith(`${module}.`))

test('every record in the source is exported by its module, under the name in its id', () => {
  const misnamed = [...written.values()]
    .filter(({ id, exportName }) => id.slice(id.indexOf('.') + 1) !== exportName)
    .map(({ id, exportName, file, line }) => `${file}:${line}: the export is called ${exportName}, its id '${id}'`)
  expect(misnamed).toEqual([])
  const unlisted = [...written.values()]
    .filter(({ id }) => !catalogue.has(id))
    .map(({ id, file, line }) => `${file}:${line}: ${id} is not exported by src/${id.split('.')[0]}/index.ts`)
  expect(unlisted).toEqual([])
  const unwritten = [...catalogue.keys()]
    .filter((id) => !written.has(id))
    .map((id) => `${id} is exported, but no record with this id is written`)
  expect(unwritten).toEqual([])
})

describe.each([...catalogue])('%s', (id, formula) => {
  const record = written.get(id)
  const place =
    record === undefined ? `${id}: no record with this id is written in src/${id.split('.')[0]}` : `${record.file}:${record.line}: ${id}`

  test('has the id that its export name says', () => {
    expect(formula.id, `${place}: the export is called ${id.split('.')[1]}, its id is '${formula.id}'`).toBe(id)
  })

  test('is documented, input by input and output by output', () => {
    expect(record, place).toBeDefined()
    expect(record?.documented, `${place} has no doc comment`).toBe(true)
    expect(record?.undocumented, `${place}: fields without a doc comment`).toEqual([])
  })

  test('names its sources and can be dropped by a bundler', () => {
    expect(formula.def.source.length, `${place}: 'source' is empty; name where the formula is published`).toBeGreaterThan(0)
    for (const { where } of formula.def.source) expect(where.length, `${place}: the source '${where}' names nothing`).toBeGreaterThan(3)
    for (const { where } of formula.def.source) expect(where, `${place}: a source is no file of this project`).not.toMatch(/tests\/|\.py\b/)
    expect(record?.pure, `${place} lacks the mark /* @__PURE__ */ before formula(`).toBe(true)
  })

  test('has a published check', () => {
    expect(checksById.has(id), `${place} has no check in tests/published`).toBe(true)
  })

  test('has limits and defaults that can be read', () => {
    expect(() => recordReader(formula.def.inputs, true)({}, '', [])).not.toThrow()
  })
})

describe.each(folders)('evidence in %s', (module) => {
  const ids = [...exported(module), ...[...checksById.keys()].filter((id) => id.startsWith(`${module}.`))]
  const today = unconfirmedOf(module, ids)
  const listed = committedUnconfirmed(module)

  test('every formula has a check from outside, or is listed as unconfirmed', () => {
    const fresh = today.filter((id) => !listed.includes(id))
    expect(fresh, 'only arithmetic, unverified values, habit or an assumption stands behind these; add a check from outside').toEqual([])
  })

  test('the list of unconfirmed ids is not longer than it need be', () => {
    const confirmed = listed.filter((id) => !today.includes(id))
    expect(confirmed, 'these are confirmed by now: npm run verify takes them off tests/published/unconfirmed').toEqual([])
  })
})

test('an unknown id names its neighbours', () => {
  expect(formulaOf('capstan.slackTension').id).toBe('capstan.slackTension')
  expect(() => formulaOf('capstan.slackTenson')).toThrow('capstan.slackTension')
  expect(() => formulaOf('constructor')).toThrow(RangeError)
})

describe('records that take named constants', () => {
  const [record, bare] = writtenRecords(fileURLToPath(new URL('fixture', import.meta.url)))

  test('a constant of the same file, of another file and a spread are followed', () => {
    expect(record?.id).toBe('fixture.shared')
    expect(record?.undocumented).toEqual([])
  })

  test('fields without a comment are found inside constants, lists and spreads', () => {
    expect(bare?.undocumented).toEqual(['inputs.drive.slack', 'inputs.layers', 'inputs.layers.modulus', 'inputs.plain', 'output.second'])
  })
})

test('titles are words of their own, each for one formula', () => {
  const titles = [...catalogue.values()].map(titleInWords)
  expect(new Set(titles).size).toBe(titles.length)
  const own = [...catalogue.values()].filter(({ def }) => def.title !== undefined)
  expect(own.length).toBeGreaterThan(70)
  for (const { id, def } of own) expect(def.title, id).toMatch(/^(?:[a-z]|Arrhenius|Findley|Goodman|Norton-Bailey).*[a-z]$/)
  const [plain] = [...catalogue.values()].filter(({ id }) => id === 'capstan.tensionRatio')
  expect(titleInWords(plain!)).toBe('tension ratio')
})
