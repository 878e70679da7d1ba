// The sweep of legs that bench/leg.bench.ts measures. Run as a program with a number of threads and of legs it prints the nanoseconds of one run, and
// on the error stream what memory it took on the way.
import { readFileSync } from 'node:fs'
import { pathToFileURL } from 'node:url'
import { describeLeg, legFormula } from '../src/leg/index.js'
import { runSweep, sweepJob } from '../src/study/index.js'

const [, self, threads, legs = '100000'] = process.argv
const leg = describeLeg(readFileSync('examples/mudflat-leg-revised.yaml', 'utf8'))

/** Legs of every load case over eight fields, spread by Sobol's sequence, so that no two are alike in any of them. */
export const job = sweepJob(legFormula(leg), {
  design: { sobol: Number(legs), seed: 1 },
  over: {
    'robot.mass': { from: '8 kg', to: '13 kg' },
    'links.upper.length': { from: '150 mm', to: '180 mm' },
    'links.lower.length': { from: '165 mm', to: '195 mm' },
    'drives.hip.pretension': { from: '60 N', to: '160 N' },
    'drives.knee.pretension': { from: '60 N', to: '160 N' },
    'motor.terminalResistance': { from: '0.04 ohm', to: '0.15 ohm' },
    'usage.walk.stepLength': { from: '40 mm', to: '90 mm' },
    'environment.hotAir': { from: '30 degC', to: '45 degC' },
  },
})

if (self !== undefined && import.meta.url === pathToFileURL(self).href) {
  const count = Number(threads)
  const resident: number[] = []
  const start = performance.now()
  const table = await runSweep(job, {
    blockRows: 500,
    onProgress: () => resident.push(process.memoryUsage.rss() / 2 ** 20),
    ...(count > 1 ? { workers: { count, module: import.meta.url, name: 'job' } } : {}),
  })
  console.log(1e6 * (performance.now() - start))
  const at = (share: number) => resident[Math.min(resident.length - 1, Math.floor(share * resident.length))]!.toFixed(0)
  const { user, system } = process.cpuUsage()
  console.error(
    `${table.rows} legs, ${table.gaps} without an answer; resident at a tenth, half and the end: ${at(0.1)}, ${at(0.5)}, ${at(1)} MiB; ${((user + system) / 1e6).toFixed(1)} s of processor time`,
  )
}
