import { spawn, spawnSync } from 'node:child_process'
import { once } from 'node:events'
import { appendFileSync, mkdtempSync, readFileSync, rmSync, truncateSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { build } from 'esbuild'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { mergeSweep, runSweep, SweepStopped, sweep, sweepJob } from '../../src/study/index.js'
import { InputError } from '../../src/units/index.js'
import { long, plan, slow, wavy } from './sweep-job.js'

const folder = mkdtempSync(join(tmpdir(), 'sweep-'))
const bundled = join(folder, 'job.mjs')
const file = (name: string) => join(folder, name)
const job = sweepJob(wavy, plan)
const whole = sweep(wavy, plan)
// Threads run JavaScript as Node does; the bundle is what a builder's own compiled module would be.
beforeAll(() =>
  build({ entryPoints: ['tests/study/sweep-job.ts'], bundle: true, format: 'esm', platform: 'node', outfile: bundled, logLevel: 'error' }),
)
afterAll(() => rmSync(folder, { recursive: true, force: true }))

/** Same columns to the last bit, NaN and words included. */
const expectSame = (a: { columns: readonly unknown[] }, b: { columns: readonly unknown[] }) => expect(a.columns).toEqual(b.columns)

test('in blocks it is what sweep gives, with progress', async () => {
  const seen: number[] = []
  expectSame(await runSweep(job, { blockRows: 64, onProgress: ({ done }) => seen.push(done) }), whole)
  expect(seen).toEqual([64, 128, 192, 256, 320, 384, 400])
  expect(whole.gaps).toBeGreaterThan(0)
})

describe('a file to go on from', () => {
  test('stopped by a signal, gone on with: nothing is run twice, the file is that of an unbroken run', async () => {
    await runSweep(job, { blockRows: 64, file: file('unbroken') })
    const controller = new AbortController()
    const stopped = runSweep(job, {
      blockRows: 64,
      file: file('broken'),
      signal: controller.signal,
      onProgress: ({ done }) => done >= 192 && controller.abort('enough'),
    })
    await expect(stopped).rejects.toThrow(SweepStopped)
    await expect(stopped).rejects.toThrow('stopped after 192 of 400 rows')
    const progress: { done: number; resumed: number }[] = []
    expectSame(await runSweep(job, { blockRows: 64, file: file('broken'), onProgress: (at) => progress.push(at) }), whole)
    expect(progress[0]).toEqual({ done: 256, of: 400, resumed: 192 })
    expect(readFileSync(file('broken'))).toEqual(readFileSync(file('unbroken')))
  })

  test('cut anywhere, even inside a line or a character, it ends as the unbroken file', async () => {
    const bytes = readFileSync(file('unbroken'))
    for (const size of [0, 1, 40, 700, 5000, 9001, bytes.length - 1]) {
      writeFileSync(file('cut'), bytes)
      truncateSync(file('cut'), Math.min(size, bytes.length))
      expectSame(await runSweep(job, { blockRows: 64, file: file('cut') }), whole)
      expect(readFileSync(file('cut'))).toEqual(bytes)
    }
  })

  test('a process killed without warning loses nothing that was reported', async () => {
    const path = file('killed')
    const script = `import { runSweep, slow } from ${JSON.stringify(bundled)}
await runSweep(slow, { blockRows: 10, file: ${JSON.stringify(path)}, onProgress: ({ done }) => done === 70 && process.kill(process.pid, 'SIGKILL') })`
    writeFileSync(file('run.mjs'), script)
    expect(spawnSync(process.execPath, [file('run.mjs')]).signal).toBe('SIGKILL')
    let resumed = 0
    const table = await runSweep(slow, {
      blockRows: 10,
      file: path,
      onProgress: (at) => {
        resumed = at.resumed
      },
    })
    expect(resumed).toBe(70)
    expectSame(table, await runSweep(slow))
  })

  test('killed from outside at whatever moment, again and again and on threads, it loses nothing and runs nothing twice', {
    timeout: 120_000,
  }, async () => {
    const path = file('killed-often')
    const script = `import { runSweep, long } from ${JSON.stringify(bundled)}
const pool = { count: 2, module: ${JSON.stringify(bundled)}, name: 'long' }
await runSweep(long, { blockRows: 5, file: ${JSON.stringify(path)}, onProgress: ({ done }) => process.stdout.write(done + '\\n'),
  ...(process.argv[2] === 'threads' ? { workers: pool } : {}) })`
    writeFileSync(file('often.mjs'), script)
    let reported = 0
    let kills = 0
    for (let run = 0; run < 4; run++) {
      const child = spawn(process.execPath, [file('often.mjs'), run % 2 === 0 ? 'alone' : 'threads'])
      let first: number | undefined
      const ended = once(child, 'close')
      for await (const text of child.stdout) {
        for (const line of String(text).trim().split('\n')) {
          first ??= Number(line)
          reported = Math.max(reported, Number(line))
        }
        // Not at a block's end but somewhere within the next one.
        if (reported >= 100 * (run + 1)) {
          await new Promise((resolve) => setTimeout(resolve, run))
          child.kill('SIGKILL')
        }
      }
      await ended
      if (child.signalCode === 'SIGKILL') kills++
      // Whatever was told before the kill was on disk: the next run starts behind it.
      if (run > 0) expect(first).toBeGreaterThan(100 * run)
    }
    expect(kills).toBeGreaterThan(0)
    let resumed = 0
    const table = await runSweep(long, {
      blockRows: 5,
      file: path,
      onProgress: (at) => {
        resumed = at.resumed
      },
    })
    if (reported < long.rows) expect(resumed).toBeGreaterThanOrEqual(reported)
    expectSame(table, await runSweep(long))
    await runSweep(long, { blockRows: 5, file: file('never-killed') })
    expect(readFileSync(path)).toEqual(readFileSync(file('never-killed')))
  })

  test('a damaged block is run again', async () => {
    const text = readFileSync(file('unbroken'), 'utf8').split('\n')
    text[3] = text[3]!.replace(/[A-Z]/, (letter) => (letter === 'Q' ? 'R' : 'Q'))
    writeFileSync(file('damaged'), text.join('\n'))
    let ran = 0
    expectSame(await runSweep(job, { blockRows: 64, file: file('damaged'), onProgress: () => ran++ }), whole)
    expect(ran).toBe(1)
  })

  test.each([
    [
      'another plan',
      () => sweepJob(wavy, { ...plan, fixed: { outer: { shift: 0.26 } } }),
      { blockRows: 64 },
      'another sweep (plan differ)',
    ],
    ['other blocks', () => job, { blockRows: 32 }, 'blockRows'],
    ['another part', () => job, { blockRows: 64, shard: [1, 2] }, 'shard'],
  ] as const)('the file of %s is refused and left alone', async (_, make, options, message) => {
    const before = readFileSync(file('unbroken'))
    await expect(runSweep(make(), { ...options, file: file('unbroken') })).rejects.toThrow(message)
    expect(readFileSync(file('unbroken'))).toEqual(before)
  })

  test('a file that is not ours is refused and left alone', async () => {
    writeFileSync(file('letter.txt'), 'Dear reader,\nhow are you?\n')
    await expect(runSweep(job, { file: file('letter.txt') })).rejects.toThrow('an earlier run of this sweep')
    expect(readFileSync(file('letter.txt'), 'utf8')).toContain('Dear reader')
  })
})

describe('parts and their merge', () => {
  const parts = [1, 2, 3].map((k) => ({ k, path: file(`part${k}`) }))
  beforeAll(async () => {
    for (const { k, path } of parts) await runSweep(job, { blockRows: 48, shard: [k, 3], file: path })
  })
  test('three parts in any order are the whole', async () => {
    expectSame(await mergeSweep(job, parts.map(({ path }) => path).reverse()), whole)
    const rows = await Promise.all(
      parts.map(async ({ k, path }) => (await runSweep(job, { blockRows: 48, shard: [k, 3], file: path })).rows),
    )
    expect(rows.reduce((sum, n) => sum + n, 0)).toBe(whole.rows)
  })
  test('part k of n begins with the k-th block', async () => {
    for (const { k, path } of parts) {
      const part = await runSweep(job, { blockRows: 48, shard: [k, 3], file: path })
      expect([part.row(0).a, part.row(0).b]).toEqual([whole.row(48 * (k - 1)).a, whole.row(48 * (k - 1)).b])
    }
  })
  test('a missing part, a cut part and a foreign part are told, each with what to do', async () => {
    await expect(mergeSweep(job, [parts[0]!.path, parts[2]!.path])).rejects.toThrow('3 blocks of part 2 of 3 missing; run part 2 again')
    writeFileSync(file('short'), readFileSync(parts[1]!.path).subarray(0, -200))
    await expect(mergeSweep(job, [parts[0]!.path, file('short'), parts[2]!.path])).rejects.toThrow('1 blocks of part 2')
    await expect(mergeSweep(job, [parts[0]!.path, file('unbroken')])).rejects.toThrow(InputError)
    await expect(mergeSweep(job, [])).rejects.toThrow('every part')
    appendFileSync(file('empty'), '')
    await expect(mergeSweep(job, [file('empty')])).rejects.toThrow('a file that runSweep wrote')
  })
})

describe('worker threads', () => {
  const pool = { count: 2, module: bundled, name: 'job' }
  test('same bits and the same file as on one thread', async () => {
    expectSame(await runSweep(job, { blockRows: 16, workers: pool }), whole)
    await runSweep(job, { blockRows: 64, workers: pool, file: file('threads') })
    expect(readFileSync(file('threads'))).toEqual(readFileSync(file('unbroken')))
  })
  test('a signal stops them', async () => {
    const controller = new AbortController()
    const stopped = runSweep(job, {
      blockRows: 16,
      workers: pool,
      signal: controller.signal,
      onProgress: ({ done }) => done >= 64 && controller.abort(),
    })
    await expect(stopped).rejects.toThrow(SweepStopped)
  })
  test('a module without the job is told by name', async () => {
    await expect(runSweep(job, { blockRows: 16, workers: { ...pool, name: 'jib' } })).rejects.toThrow('exports no sweep job jib')
    await expect(runSweep(job, { blockRows: 16, workers: { ...pool, module: file('nowhere.mjs') } })).rejects.toThrow('nowhere.mjs')
  })
  test('a module whose job is another sweep is refused', async () => {
    await expect(runSweep(job, { blockRows: 16, workers: { ...pool, name: 'long' } })).rejects.toThrow('workers.name')
  })
  test('threads of one sweep serve the next, do not mix jobs, and let the process end', () => {
    const script = `import { runSweep, job, long } from ${JSON.stringify(bundled)}
import { threadsMade } from ${JSON.stringify(file('count.mjs'))}
const workers = (name) => ({ count: 2, module: ${JSON.stringify(bundled)}, name })
const a = await runSweep(job, { blockRows: 16, workers: workers('job') })
const b = await runSweep(job, { blockRows: 32, workers: workers('job') })
const c = await runSweep(long, { blockRows: 100, workers: workers('long') })
const same = (x, y) => JSON.stringify(x.columns) === JSON.stringify(y.columns)
console.log(threadsMade(), same(a, b), same(c, await runSweep(long)))`
    writeFileSync(
      file('count.mjs'),
      `import { syncBuiltinESMExports } from 'node:module'
import threads from 'node:worker_threads'
let made = 0
const { Worker } = threads
threads.Worker = class extends Worker { constructor(...all) { super(...all); made++ } }
syncBuiltinESMExports()
export const threadsMade = () => made`,
    )
    writeFileSync(file('twice.mjs'), script)
    const { stdout, stderr, status } = spawnSync(process.execPath, [file('twice.mjs')], { encoding: 'utf8', timeout: 50_000 })
    expect([stdout.trim(), stderr, status]).toEqual(['4 true true', '', 0])
  })
  test('an error inside a thread reaches the caller', async () => {
    await expect(runSweep(job, { blockRows: 16, workers: { ...pool, name: 'broken' } })).rejects.toThrow('no block today')
  })
})

test.each([
  [{ blockRows: 0 }, 'blockRows'],
  [{ shard: [0, 2] }, 'part k from 1 to n'],
  [{ shard: [3, 2] }, 'part k from 1 to n'],
  [{ workers: { count: 0, module: bundled, name: 'job' } }, 'workers.count'],
] as const)('bad options %#', async (options, message) => {
  await expect(runSweep(job, options)).rejects.toThrow(InputError)
  await expect(runSweep(job, options)).rejects.toThrow(message)
})

test('the study tools bundle for browsers: Node is asked for only by long sweeps, when they run', async () => {
  const { errors, warnings } = await build({
    entryPoints: ['src/study/index.ts'],
    bundle: true,
    platform: 'browser',
    write: false,
    logLevel: 'silent',
  })
  expect([...errors, ...warnings]).toEqual([])
})
