import { createRequire } from 'node:module'
import { fileURLToPath } from 'node:url'
import { cruise } from 'dependency-cruiser'
import { expect, test } from 'vitest'

const root = fileURLToPath(new URL('../../', import.meta.url))
const { forbidden, options } = createRequire(import.meta.url)('../../.dependency-cruiser.cjs')

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
