// Type-checks every example of README, guide and doc comments against the source, at the line where it stands.
import { spawnSync } from 'node:child_process'
import { mkdirSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { allExamples, root } from '../tests/docs/extract.js'

const folder = join(root, 'out/examples')
rmSync(folder, { recursive: true, force: true })
mkdirSync(folder, { recursive: true })

const examples = allExamples()
for (const { file, line, code } of examples)
  writeFileSync(join(folder, `${file.replaceAll('/', '~')}~${line}.ts`), '\n'.repeat(line - 1) + code)
writeFileSync(
  join(folder, 'tsconfig.json'),
  JSON.stringify({
    extends: '../../tsconfig.json',
    compilerOptions: { moduleDetection: 'force', noUnusedLocals: false, noUnusedParameters: false },
    include: ['*.ts'],
  }),
)
const { status } = spawnSync(process.execPath, [join(root, 'node_modules/typescript-7/bin/tsc'), '-p', folder], { stdio: 'inherit' })
console.log(`${examples.length} examples type-checked`)
process.exit(status ?? 1)
