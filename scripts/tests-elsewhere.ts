// Runs the tests from a copy of the project, the way another person's machine may: in a folder with blanks and letters outside ASCII, files and tests in a
// random order, in the Turkish locale and a time zone with an odd offset. The seed of the order is printed with a failure and repeats it:
// `npm run check:elsewhere -- 11 tests/units`.
import { spawnSync } from 'node:child_process'
import { copyFileSync, mkdirSync, mkdtempSync, rmSync, symlinkSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'

const [seed = '11', ...tests] = process.argv.slice(2)
const files = spawnSync('git', ['ls-files', '-z'], { encoding: 'utf8', maxBuffer: 1e8 }).stdout.split('\0').filter(Boolean)
if (files.length === 0) {
  console.log('Not run: the files of the project are listed by git, and this is no git checkout')
  process.exit(77)
}

const home = mkdtempSync(join(tmpdir(), 'limb wright é '))
let status: number | null = 1
try {
  for (const file of files) {
    mkdirSync(join(home, dirname(file)), { recursive: true })
    copyFileSync(file, join(home, file))
  }
  symlinkSync(join(process.cwd(), 'node_modules'), join(home, 'node_modules'))
  const order = ['--sequence.shuffle.files', '--sequence.shuffle.tests', `--sequence.seed=${seed}`]
  status = spawnSync(process.execPath, ['node_modules/vitest/vitest.mjs', 'run', ...order, ...tests], {
    cwd: home,
    stdio: ['ignore', 'inherit', 'inherit'],
    env: { ...process.env, LANG: 'tr_TR.UTF-8', LC_ALL: 'tr_TR.UTF-8', TZ: 'Asia/Kathmandu' },
  }).status
} finally {
  rmSync(home, { recursive: true, force: true })
}
console.log(`Order ${seed}, ${home}: ${status === 0 ? 'passed' : 'FAILED'}`)
process.exit(status ?? 1)
