import type { FileHandle } from 'node:fs/promises'
import { refuse, show } from '../units/index.js'
import { type EncodedBlock, type FileHeader, lineOf, readContent } from './block-file.js'
import { node } from './node.js'

/** The system could not write a sweep's file, for want of space for example. Finished blocks stay in the file. */
export class SweepFileError extends Error {
  override name = 'SweepFileError'
  constructor(
    /** The file's path as given. */
    readonly file: string,
    cause: unknown,
  ) {
    super(
      `sweep file ${show(file)}: ${(cause as Error).message}; the finished blocks stay in the file: remove the cause and run the same sweep again`,
      { cause },
    )
  }
}

/** A file of results that is open for one run. */
export interface SweepFile {
  /** Finished blocks, by number. */
  readonly blocks: ReadonlyMap<number, EncodedBlock>
  /** Damaged lines, whose blocks are run again. */
  readonly damaged: number
  append(block: EncodedBlock): Promise<void>
  close(): Promise<void>
}

function rejectFile(file: string, accepts: string): never {
  refuse('runSweep', 'file', file, accepts)
}

const codeOf = (error: unknown): unknown => (error as { code?: unknown } | undefined)?.code

/** Opens a sweep's file and locks it (Node only). Rejects with an `InputError`, the file untouched, where it is not this sweep's own. */
export async function openSweepFile(file: string, header: FileHeader): Promise<SweepFile> {
  const unlock = await locked(file)
  const handle = await opened(file).catch(async (error) => {
    await unlock()
    throw error
  })
  const close = async () => {
    await handle.close()
    await unlock()
  }
  try {
    return { ...(await prepared(file, handle, header)), append: (block) => written(file, handle, block), close }
  } catch (error) {
    await close()
    throw error
  }
}

async function opened(file: string): Promise<FileHandle> {
  const { open } = await node('node:fs/promises')
  const handle = await open(file, 'a+').catch((error) => rejectFile(file, `must be a file that can be written (${error.message})`))
  if ((await handle.stat()).isFile()) return handle
  await handle.close()
  return rejectFile(file, 'must be an ordinary file')
}

/** Reads what the file holds and cuts off an unfinished tail; begins an empty file. */
async function prepared(file: string, handle: FileHandle, header: FileHeader): Promise<Pick<SweepFile, 'blocks' | 'damaged'>> {
  const content = await readContent(handle)
  const { size } = await handle.stat()
  if (content.header === undefined) {
    // Only an empty file, or one killed while this very first line was written, may be begun anew: anything else is somebody's file.
    const line = Buffer.from(await lineOf(header))
    const start = Buffer.alloc(Math.min(size, line.length))
    await handle.read(start, 0, start.length, 0)
    if (size >= line.length || !line.subarray(0, size).equals(start))
      rejectFile(file, 'must be new, or a file that an earlier run of this sweep wrote')
    await handle.truncate(0)
    await written(file, handle, header)
    return content
  }
  const differs = (['plan', 'rows', 'blockRows', 'formula', 'shard'] as const).filter(
    (name) => String(content.header?.[name]) !== String(header[name]),
  )
  if (differs.length > 0)
    rejectFile(file, `holds another sweep (${differs.join(', ')} differ): choose a new file, or run the plan it was made with`)
  if (size > content.goodBytes) await handle.truncate(content.goodBytes)
  return content
}

async function written(file: string, handle: FileHandle, data: FileHeader | EncodedBlock): Promise<void> {
  const line = await lineOf(data)
  try {
    await handle.appendFile(line)
    await handle.datasync()
  } catch (error) {
    throw new SweepFileError(file, error)
  }
}

/** Process that holds a lock. */
interface Holder {
  readonly pid: number
  readonly host: string
}

/**
 * Locks a file against a second run by a file of the same name with `.lock` at its end; gives the function that unlocks it. The lock of a
 * process of this machine that has ended is removed.
 */
async function locked(file: string): Promise<() => Promise<void>> {
  const { readFile, rename, unlink, writeFile } = await node('node:fs/promises')
  const { hostname } = await node('node:os')
  const lock = `${file}.lock`
  const own: Holder = { pid: process.pid, host: hostname() }
  for (let attempt = 0; ; attempt++) {
    try {
      await writeFile(lock, JSON.stringify(own), { flag: 'wx' })
      return () => unlink(lock).catch(() => undefined)
    } catch (error) {
      if (codeOf(error) !== 'EEXIST') return rejectFile(file, `must be a file that can be written (${(error as Error).message})`)
    }
    const text = await readFile(lock, 'utf8').catch(() => '')
    const holder = holderOf(text)
    if (attempt >= 3 || holder === undefined || holder.host !== own.host || isAlive(holder.pid))
      rejectFile(
        file,
        `is in use by ${holder === undefined ? 'another run' : `process ${holder.pid} on ${holder.host}`}: wait for it, or delete ${show(lock)} if that run has ended`,
      )
    // Moved away before it is deleted: of two runs that find the old lock, one gets it and the other tries again.
    await rename(lock, `${lock}.${own.pid}`)
      .then(() => unlink(`${lock}.${own.pid}`))
      .catch(() => undefined)
  }
}

function holderOf(text: string): Holder | undefined {
  try {
    const { pid, host } = JSON.parse(text) as Partial<Holder>
    return typeof pid === 'number' && typeof host === 'string' ? { pid, host } : undefined
  } catch {
    return undefined
  }
}

function isAlive(pid: number): boolean {
  try {
    process.kill(pid, 0)
    return true
  } catch (error) {
    return codeOf(error) !== 'ESRCH'
  }
}
