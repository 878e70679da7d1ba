import type { Worker } from 'node:worker_threads'
import { InputError, issue } from '../units/index.js'
import type { Block } from './block-file.js'
import { node } from './node.js'

/** Worker threads for a sweep. A thread cannot be handed a function: it imports the module that exports the job. */
export interface WorkerPlan {
  /** Threads. */
  readonly count: number
  /** The module that exports the `sweepJob`, as a URL (`import.meta.url` of the module itself) or a path. It must be JavaScript as Node runs it. */
  readonly module: string | URL
  /** The name it is exported under. */
  readonly name: string
}

/** Job of a thread: it carries its own code, so that nothing but the caller's module is imported. */
const THREAD = `
const { parentPort, workerData } = require('node:worker_threads')
import(workerData.module).then((module) => {
  const job = module[workerData.name]
  if (typeof job?.block !== 'function') throw new Error(workerData.module + ' exports no sweep job ' + workerData.name)
  parentPort.on('message', (ask) => {
    if (ask === 'which') return parentPort.postMessage({ plan: job.plan() })
    const block = job.block(ask.block, ask.blockRows)
    parentPort.postMessage(block, block.columns.filter(ArrayBuffer.isView).map((column) => column.buffer))
  })
})
`

/** Threads of the last sweep that ended well, with their module loaded and warm. They do not keep the process alive. */
let resting: { readonly key: string; readonly threads: Worker[] } = { key: '', threads: [] }

/** Threads for a job: those that rest, and new ones for the rest. */
async function called(key: string, count: number, workerData: { module: string; name: string }): Promise<Worker[]> {
  const { Worker } = await node('node:worker_threads')
  const threads = resting.key === key ? resting.threads.splice(0, count) : []
  for (const thread of threads) thread.ref()
  while (threads.length < count) threads.push(new Worker(THREAD, { eval: true, workerData }))
  return threads
}

async function letRest(key: string, threads: readonly Worker[]): Promise<void> {
  const before = resting
  resting = { key, threads: [...threads, ...(before.key === key ? before.threads : [])] }
  for (const thread of threads) {
    for (const event of ['message', 'error', 'exit']) thread.removeAllListeners(event)
    thread.on('error', () => undefined)
    thread.unref()
  }
  if (before.key !== key) await Promise.all(before.threads.map((thread) => thread.terminate()))
}

/** Keeps results in the order of their blocks, whatever the order in which they come. `after` learns how many are kept. */
function inOrder(blocks: readonly number[], keep: (result: Block) => Promise<void>, after: (kept: number) => void) {
  const waiting = new Map<number, Block>()
  let kept = 0
  let keeping: Promise<void> = Promise.resolve()
  return (result: Block): Promise<void> => {
    waiting.set(result.block, result)
    keeping = keeping.then(async () => {
      for (let next = waiting.get(blocks[kept] as number); next !== undefined; next = waiting.get(blocks[kept] as number)) {
        waiting.delete(next.block)
        await keep(next)
        after(++kept)
      }
    })
    return keeping
  }
}

/**
 * Runs blocks on threads, each taking the next when it is done with one, and hands the results over in the order of the blocks: what is
 * kept is the same as on one thread, to the byte. `plan` is the text of the caller's job: a module that exports another one is rejected.
 */
export async function workers(
  { count, module, name }: WorkerPlan,
  plan: string,
  blocks: readonly number[],
  blockRows: number,
  keep: (result: Block) => Promise<void>,
  stop: () => void,
): Promise<void> {
  const { pathToFileURL } = await node('node:url')
  const url = /^(file|data):/.test(String(module)) ? String(module) : pathToFileURL(String(module)).href
  const key = `${url} ${name}`
  const threads = await called(key, Math.min(count, blocks.length), { module: url, name })
  let handed = 0
  let well = false
  try {
    await new Promise<void>((resolve, reject) => {
      const take = inOrder(blocks, keep, (kept) => {
        stop()
        if (kept === blocks.length) resolve()
      })
      for (const thread of threads) {
        thread.on('error', reject)
        thread.on('exit', (code) => reject(new Error(`a worker of the sweep ended early with code ${code}`)))
        thread.on('message', (message: Block | { readonly plan: string }) => {
          if ('plan' in message && message.plan !== plan) {
            reject(
              new InputError('runSweep', [issue('workers.name', name, `must be this sweep: ${url} exports another one under that name`)]),
            )
            return
          }
          if ('block' in message) take(message).catch(reject)
          if (handed < blocks.length) thread.postMessage({ block: blocks[handed++], blockRows })
        })
        thread.postMessage('which')
      }
      try {
        stop()
      } catch (error) {
        reject(error)
      }
    })
    well = true
  } finally {
    if (well) await letRest(key, threads)
    else {
      for (const thread of threads) thread.removeAllListeners('exit')
      await Promise.all(threads.map((thread) => thread.terminate()))
    }
  }
}
