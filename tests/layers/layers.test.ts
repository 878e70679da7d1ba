import { readdirSync } from 'node:fs'
import { createRequire } from 'node:module'
import { fileURLToPath } from 'node:url'
import { cruise } from 'dependency-cruiser'
import { expect, test } from 'vitest'

const root = fileURLToPath(new URL('../../', import.meta.url))
const require = createRequire(import.meta.url)
const { forbidden, options } = require('../../.dependency-cruiser.cjs')
const groupsOf: Record<string, Record<string, string | undefined>> = require('../../.dependency-folders.cjs')

/** Broken arrows under `folder`, as `rule: from -> to`. */
async function brokenArrows(baseDir: string) {
  const { tsConfig: _, ...rest } = options
  const { output } = await cruise(['src'], { ...rest, baseDir, ruleSet: { forbidden }, validate: true })
  if (typeof output === 'string') throw new Error(output)
  const plain = (path: string) => path.replace(/^.*node_modules\/([^/]+).*$/, '$1')
  return output.summary.violations.map(({ rule, from, to }) => `${rule.name}: ${from} -> ${plain(to)}`).sort()
}

// The source itself is held by `npm run layers`, a step of CI.
test('the layer rule finds every broken arrow of a fixture, and no other', async () => {
  expect(await brokenArrows(`${root}tests/layers/fixture`)).toEqual([
    'capstan-formulas-below-drive: src/capstan/friction.ts -> src/capstan/drive.ts',
    'capstan-inputs-below-formulas: src/capstan/cord-inputs.ts -> src/capstan/friction.ts',
    'documents-only-in-leg-and-materials: src/kinematics/index.ts -> zod',
    'known-folder: src/index.ts -> src/gears/index.ts',
    'layer-capstan: src/capstan/index.ts -> src/thermal/index.ts',
    'layer-formula: src/formula/index.ts -> src/thermal/index.ts',
    'layer-numeric: src/numeric/index.ts -> src/units/index.ts',
    'layer-study: src/study/index.ts -> src/leg/index.ts',
    'mathjs-only-in-mathjs: src/units/index.ts -> mathjs',
    'no-circle-of-types: src/fasteners/one.ts -> src/fasteners/other.ts',
    'no-circle-of-types: src/kinematics/first.ts -> src/kinematics/second.ts',
    'no-circle: src/kinematics/first.ts -> src/kinematics/second.ts',
    'no-development-package: src/catalogue/index.ts -> fast-check',
    'node-only-in-study: src/thermal/index.ts -> os',
    'through-the-index: src/capstan/index.ts -> src/formula/kernel.ts',
  ])
})

test('every folder with more than twenty files states the order of its files, and each file is in one group', () => {
  const filesOf = (folder: string) => readdirSync(`${root}src/${folder}`).filter((file) => file.endsWith('.ts') && file !== 'index.ts')
  const large = readdirSync(`${root}src`, { withFileTypes: true }).filter((each) => each.isDirectory() && filesOf(each.name).length >= 20)
  // The folders of the leg have rules of their own.
  expect(Object.keys(groupsOf).sort()).toEqual(large.map(({ name }) => name).filter((name) => name !== 'leg'))
  for (const [folder, groups] of Object.entries(groupsOf)) {
    const patterns = Object.values(groups).flatMap((files) => (files === undefined ? [] : [new RegExp(`^(${files})\\.ts$`)]))
    const files = filesOf(folder)
    const several = files.filter((file) => patterns.filter((pattern) => pattern.test(file)).length > 1)
    expect(several, `src/${folder}`).toEqual([])
    const words = Object.values(groups).flatMap((each) => each?.split('|') ?? [])
    const unused = words.filter((word) => !files.some((file) => new RegExp(`^${word}\\.ts$`).test(file)))
    expect(unused, `src/${folder}`).toEqual([])
  }
})
