import { spawnSync } from 'node:child_process'
import { appendFileSync, existsSync, mkdtempSync, readFileSync, rmSync, truncateSync, writeFileSync } from 'node:fs'
import { open } from 'node:fs/promises'
import { hostname, tmpdir } from 'node:os'
import { join } from 'node:path'
import { build } from 'esbuild'
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest'
import { lineOf } from '../../src/study/block-file.js'
import { mergeSweep, runSweep, SweepFileError, SweepStopped, sweep, sweepJob } from '../../src/study/index.js'
import { InputError } from '../../src/units/index.js'
import { plan, slow, wavy } from './sweep-job.js'

const folder = mkdtempSync(join(tmpdir(), 'sweep-'))
const bundled = join(folder, 'job.mjs')
const file = (name: string) => join(folder, name)
const job = sweepJob(wavy, plan)
const whole = sweep(wavy, plan)
const parts = [1, 2, 3].map((k) => ({ k, path: file(`part${k}`) }))
// Every test reads only these files and its own: they may run in any order and each alone.
beforeAll(async () => {
  // Threads run JavaScript as Node does; the bundle is what a builder's own compiled module would be.
  await build({
    entryPoints: ['tests/study/sweep-job.ts'],
    bundle: true,
    format: 'esm',
    platform: 'node',
    outfile: bundled,
    logLevel: 'error',
  })
  await runSweep(job, { blockRows: 64, file: file('unbroken') })
  for (const { k, path } of parts) await runSweep(job, { blockRows: 48, shard: [k, 3], file: path })
})
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
    expect(progress[0]).toEqual({ done: 256, of: 400, resumed: 192, damaged: 0 })
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

  test('killed in the middle of a write, again and again, alone and on threads, it loses nothing and runs nothing twice', {
    timeout: 60_000,
  }, async () => {
    const path = file('killed-often')
    // Writes only a part of the n-th line and dies: no timer decides where.
    const script = `import { open } from 'node:fs/promises'
import { runSweep, slow } from ${JSON.stringify(bundled)}
const [nth, part, threads] = process.argv.slice(2).map(Number)
const handle = await open(${JSON.stringify(file('any'))}, 'a+')
const Handle = Object.getPrototypeOf(handle)
const { appendFile } = Handle
let writes = 0
Handle.appendFile = async function (text) {
  if (++writes < nth) return appendFile.call(this, text)
  await appendFile.call(this, text.slice(0, Math.floor(part * text.length)))
  process.kill(process.pid, 'SIGKILL')
}
const pool = { count: 2, module: ${JSON.stringify(bundled)}, name: 'slow' }
await runSweep(slow, { blockRows: 10, file: ${JSON.stringify(path)}, onProgress: ({ done }) => console.log(done), ...(threads ? { workers: pool } : {}) })`
    writeFileSync(file('often.mjs'), script)
    let reported = 0
    for (const [nth, part, threads] of [
      [1, 0.5, 0],
      [3, 0, 0],
      [4, 0.01, 1],
      [2, 0.99, 0],
      [5, 1, 1],
    ] as const) {
      const { signal, stdout } = spawnSync(process.execPath, [file('often.mjs'), `${nth}`, `${part}`, `${threads}`], { encoding: 'utf8' })
      expect(signal).toBe('SIGKILL')
      const lines = stdout.trim().split('\n').filter(Boolean).map(Number)
      // Whatever was reported before the kill was on disk: the next run starts behind it.
      if (lines.length > 0) expect(lines[0]).toBeGreaterThan(reported)
      reported = lines.at(-1) ?? reported
    }
    expect(reported).toBeGreaterThanOrEqual(80)
    let resumed = 0
    const table = await runSweep(slow, {
      blockRows: 10,
      file: path,
      onProgress: (at) => {
        resumed = at.resumed
      },
    })
    expect(resumed).toBeGreaterThanOrEqual(reported)
    expectSame(table, await runSweep(slow))
    await runSweep(slow, { blockRows: 10, file: file('never-killed') })
    expect(readFileSync(path)).toEqual(readFileSync(file('never-killed')))
  })

  test('a damaged block is run again', async () => {
    const text = readFileSync(file('unbroken'), 'utf8').split('\n')
    text[3] = text[3]!.replace(/[A-Z]/, (letter) => (letter === 'Q' ? 'R' : 'Q'))
    writeFileSync(file('damaged'), text.join('\n'))
    const seen: unknown[] = []
    expectSame(await runSweep(job, { blockRows: 64, file: file('damaged'), onProgress: (at) => seen.push(at) }), whole)
    expect(seen).toEqual([{ done: 400, of: 400, resumed: 336, damaged: 1 }])
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

  test.each([
    ['text', 'Dear reader,\nhow are you?\n'],
    ['text without a line break', '{"precious":"a minified document"}'],
    ['one letter', 'x'],
    ['bytes without a line break', Buffer.alloc(2000, 0xfe)],
    ['a null with a right check', null],
  ])('a file of %s is rejected and stays untouched', async (_, content) => {
    writeFileSync(file('foreign'), content ?? (await lineOf(null as never)))
    const before = readFileSync(file('foreign'))
    await expect(runSweep(job, { file: file('foreign') })).rejects.toThrow('an earlier run of this sweep')
    expect(readFileSync(file('foreign'))).toEqual(before)
    expect(existsSync(file('foreign.lock'))).toBe(false)
  })

  test('the cut header of another sweep is not this sweep’s file', async () => {
    writeFileSync(file('other'), readFileSync(file('part1')).subarray(0, 120))
    await expect(runSweep(job, { blockRows: 64, file: file('other') })).rejects.toThrow('an earlier run of this sweep')
    expect(readFileSync(file('other'))).toHaveLength(120)
  })

  test('what cannot be a file is named', async () => {
    await expect(runSweep(job, { file: folder })).rejects.toThrow(InputError)
    await expect(runSweep(job, { file: join(folder, 'nowhere', 'x') })).rejects.toThrow(/file .*nowhere.*written/)
    await expect(mergeSweep(job, [join(folder, 'nowhere')])).rejects.toThrow(/files\[0\].*nowhere/)
  })

  test('a file in use by another run is rejected; the lock of a process that has ended is not', async () => {
    const path = file('locked')
    const controller = new AbortController()
    let second: Promise<unknown> | undefined
    const first = runSweep(job, {
      blockRows: 64,
      file: path,
      signal: controller.signal,
      onProgress: () => {
        second ??= runSweep(job, { blockRows: 64, file: path }).catch((error) => error)
      },
    })
    expectSame(await first, whole)
    expect(String(await second)).toMatch(`is in use by process ${process.pid}`)
    expect(existsSync(`${path}.lock`)).toBe(false)
    const { pid } = spawnSync(process.execPath, ['-e', ''])
    writeFileSync(`${path}.lock`, JSON.stringify({ pid, host: hostname() }))
    expectSame(await runSweep(job, { blockRows: 64, file: path }), whole)
    expect(existsSync(`${path}.lock`)).toBe(false)
    for (const stranger of ['', 'mine', JSON.stringify({ pid, host: 'another machine' })]) {
      writeFileSync(`${path}.lock`, stranger)
      await expect(runSweep(job, { blockRows: 64, file: path })).rejects.toThrow('locked.lock')
      expect(readFileSync(`${path}.lock`, 'utf8')).toBe(stranger)
    }
  })

  test('a disk that is full is reported with the file, and the finished blocks stay', async () => {
    const path = file('full')
    const any = await open(file('any'), 'a+')
    const handles = Object.getPrototypeOf(any)
    await any.close()
    let writes = 0
    const { appendFile } = handles
    const write = vi.spyOn(handles, 'appendFile').mockImplementation(function (this: unknown, ...all: unknown[]) {
      if (++writes === 4) return Promise.reject(Object.assign(new Error('ENOSPC: no space left on device, write'), { code: 'ENOSPC' }))
      return appendFile.apply(this, all)
    })
    const failed = runSweep(job, { blockRows: 64, file: path })
    await expect(failed).rejects.toThrow(SweepFileError)
    await expect(failed).rejects.toThrow(/full'.*ENOSPC.*finished blocks stay/)
    write.mockRestore()
    const seen: unknown[] = []
    expectSame(await runSweep(job, { blockRows: 64, file: path, onProgress: (at) => seen.push(at.resumed) }), whole)
    expect(seen[0]).toBe(128)
    expect(readFileSync(path)).toEqual(readFileSync(file('unbroken')))
  })
})

describe('parts and their merge', () => {
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
    // As many rows of another sweep, and blocks of another length.
    const other = sweepJob(wavy, { ...plan, fixed: { outer: { shift: 0.5 } } })
    await runSweep(other, { blockRows: 48, shard: [2, 3], file: file('otherPlan') })
    await expect(mergeSweep(job, [parts[0]!.path, file('otherPlan'), parts[2]!.path])).rejects.toThrow(
      /files\[1\] is .*holds another sweep/,
    )
    const shorter = sweepJob(wavy, { ...plan, over: { ...plan.over, b: { from: '0 m', to: '1 m', count: 15 } } })
    await expect(mergeSweep(shorter, [parts[0]!.path])).rejects.toThrow(/files\[0\] is .*holds another sweep/)
    await expect(mergeSweep(job, [parts[0]!.path, file('unbroken')])).rejects.toThrow(
      /holds blocks of 64 rows in 1 parts; they must be blocks of 48 rows in 3 parts, as in .*part1/,
    )
    const damaged = readFileSync(parts[1]!.path, 'utf8').split('\n')
    writeFileSync(file('damaged'), [damaged[0], damaged[1]!.replace(/[0-9]/, 'x'), ...damaged.slice(2)].join('\n'))
    await expect(mergeSweep(job, [parts[0]!.path, file('damaged'), parts[2]!.path])).rejects.toThrow(
      /1 blocks of part 2 of 3 missing.*\(1 damaged lines in the files\)/,
    )
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
const stop = () => { throw new Error('enough') }
await runSweep(job, { blockRows: 16, workers: workers('job'), onProgress: ({ done }) => done > 0 && stop() }).catch(({ message }) => console.log(message))
const d = await runSweep(job, { blockRows: 64, workers: workers('job') })
const c = await runSweep(long, { blockRows: 100, workers: workers('long') })
const same = (x, y) => JSON.stringify(x.columns) === JSON.stringify(y.columns)
console.log(threadsMade(), same(a, b), same(a, d), same(c, await runSweep(long)))`
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
    // The threads of the sweep that was broken off may still send its blocks: they are not used again.
    expect([stdout.trim(), stderr, status]).toEqual(['enough\n6 true true true', '', 0])
  })
  test('an error inside a thread reaches the caller', async () => {
    await expect(runSweep(job, { blockRows: 16, workers: { ...pool, name: 'broken' } })).rejects.toThrow('no block today')
  })
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
