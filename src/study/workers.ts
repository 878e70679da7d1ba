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

/** What a thread runs: the job carries its own code, so that nothing but the caller's module is imported. */
const THREAD = `
const { parentPort, workerData } = require('node:worker_threads')
import(workerData.module).then((module) => {
  const job = module[workerData.name]
  if (typeof job?.block !== 'function') throw new Error(workerData.module + ' exports no sweep job ' + workerData.name)
  parentPort.on('message', (number) => {
    const block = job.block(number, workerData.blockRows)
    parentPort.postMessage(block, block.columns.filter(ArrayBuffer.isView).map((column) => column.buffer))
  })
  parentPort.postMessage('ready')
})
`

/**
 * Runs blocks on threads, each taking the next when it is done with one, and hands the results over in the order of the blocks: what is
 * kept is the same as on one thread, to the byte.
 */
export async function workers(
  { count, module, name }: WorkerPlan,
  blocks: readonly number[],
  blockRows: number,
  keep: (result: Block) => Promise<void>,
  stop: () => void,
): Promise<void> {
  const { Worker } = await node('node:worker_threads')
  const { pathToFileURL } = await node('node:url')
  const url = /^(file|data):/.test(String(module)) ? String(module) : pathToFileURL(String(module)).href
  const pool = Array.from(
    { length: Math.min(count, blocks.length) },
    () => new Worker(THREAD, { eval: true, workerData: { module: url, name, blockRows } }),
  )
  const waiting = new Map<number, Block>()
  let handed = 0
  let kept = 0
  let keeping: Promise<void> = Promise.resolve()
  try {
    await new Promise<void>((resolve, reject) => {
      /** Keeps what has come in, in the order of the blocks. */
      const flush = () => {
        keeping = keeping.then(async () => {
          for (;;) {
            const next = waiting.get(blocks[kept] as number)
            if (next === undefined) return
            waiting.delete(next.block)
            await keep(next)
            kept++
            stop()
            if (kept === blocks.length) resolve()
          }
        })
        keeping.catch(reject)
      }
      for (const worker of pool) {
        worker.on('error', reject)
        worker.on('exit', (code) => reject(new Error(`a worker of the sweep ended early with code ${code}`)))
        worker.on('message', (message: Block | 'ready') => {
          if (message !== 'ready') {
            waiting.set(message.block, message)
            flush()
          }
          if (handed < blocks.length) worker.postMessage(blocks[handed++])
        })
      }
      try {
        stop()
      } catch (error) {
        reject(error)
      }
    })
  } finally {
    for (const worker of pool) worker.removeAllListeners('exit')
    await Promise.all(pool.map((worker) => worker.terminate()))
  }
}
