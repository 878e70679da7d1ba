// Writes the declarations into dist: one tree for `import` and one for `require`. Each file of the source keeps its own, since rolling
// them up breaks `export * as`.
import { execFileSync } from 'node:child_process'
import { cpSync, rmSync, writeFileSync } from 'node:fs'

const OF_MODULES = 'dist/types'
const OF_COMMONJS = 'dist/types-cjs'

for (const folder of [OF_MODULES, OF_COMMONJS]) rmSync(folder, { recursive: true, force: true })
const compiler = 'node_modules/typescript-7/bin/tsc'
execFileSync(process.execPath, [compiler, '-p', 'tsconfig.api.json', '--removeComments', 'false', '--outDir', OF_MODULES], {
  stdio: 'inherit',
})
cpSync(OF_MODULES, OF_COMMONJS, { recursive: true })
// What is below this file is CommonJS to a compiler, as the .cjs files are to Node.
writeFileSync(`${OF_COMMONJS}/package.json`, '{ "type": "commonjs" }\n')
