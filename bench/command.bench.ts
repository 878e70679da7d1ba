import { spawnSync } from 'node:child_process'
import { existsSync, mkdtempSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Row } from './harness.js'

const PROGRAM = 'dist/limbwright.js'
const TOLD = 'processor time '
/** What a process prints as it ends. */
const TELL = `data:text/javascript,process.on('exit',()=>{const{user,system}=process.cpuUsage();console.error('${TOLD}'+(user+system))})`

/** Processor time of a command in a process of its own, s: reading the program, the leg, and all that it prints and writes. */
function seconds(args: readonly string[]): number {
  const { stderr } = spawnSync(process.execPath, ['--import', TELL, PROGRAM, ...args, '--quiet'], { encoding: 'utf8' })
  const told = stderr.split('\n').find((line) => line.startsWith(TOLD))
  if (told === undefined) throw new Error(`${args.join(' ')}: ${stderr}`)
  return Number(told.slice(TOLD.length)) / 1e6
}

function command(work: string, args: readonly string[], atMostSeconds: number): Row {
  if (!existsSync(PROGRAM)) throw new Error(`${PROGRAM} is not built: npm run build`)
  return { work, ours: { name: 'limbwright', measure: () => seconds(args) }, bound: { atMostSeconds } }
}

const folder = mkdtempSync(join(tmpdir(), 'limbwright-'))

/** Cold processes, as a user starts them. A leg that fails is solved for what to change. */
export const rows: Row[] = ['first', 'revised'].flatMap((which) => {
  const file = `examples/mudflat-leg-${which}.yaml`
  return [
    command(`limbwright check, ${which} demo leg, cold process`, ['check', file], 0.5),
    command(`limbwright report, ${which} demo leg, cold process`, ['report', file, '--to', folder], 1.5),
  ]
})
