import { InputError, type Issue, issue, refuse, show } from '../units/index.js'
import { decoded, digest, type FileContent, type FileHeader, fits, putInto, readContent } from './block-file.js'
import { node } from './node.js'
import { blocksOf, type SweepJob } from './run-sweep.js'
import { rejectRowCount } from './sweep.js'
import { Table } from './table.js'

/**
 * Puts the files of all parts together (Node only). Every block must be there, whole and of the same plan.
 *
 * Rejects with an `InputError` that lists what is missing and which part to run again.
 */
export async function mergeSweep(job: SweepJob, files: readonly string[]): Promise<Table> {
  rejectRowCount(job.runner, job.rows, 'mergeSweep')
  const plan = await digest(job.plan())
  const issues: Issue[] = []
  const columns = job.runner.columns(job.rows)
  const seen = new Set<number>()
  let damaged = 0
  let shape: FileHeader | undefined
  for (const [i, file] of files.entries()) {
    const content = await contentOf(file, `files[${i}]`)
    const difference = differs(content.header, shape, { plan, rows: job.rows }, String(files[0]))
    if (difference !== undefined) {
      issues.push(issue(`files[${i}]`, file, difference))
      continue
    }
    shape ??= content.header as FileHeader
    damaged += content.damaged
    const { blockRows } = shape
    for (const [block, entry] of content.blocks) {
      if (!fits(entry, columns, Math.min(blockRows, job.rows - block * blockRows))) continue
      putInto(decoded(entry), columns, block * blockRows)
      seen.add(block)
    }
  }
  if (shape === undefined && issues.length === 0) issues.push(issue('files', files, 'must name the file of every part'))
  if (shape !== undefined) issues.push(...missingBlocks(job.rows, shape, seen, damaged))
  if (issues.length > 0) throw new InputError('mergeSweep', issues)
  return new Table(job.id, columns, job.rows)
}

async function contentOf(file: string, path: string): Promise<FileContent> {
  const { open } = await node('node:fs/promises')
  const handle = await open(file, 'r').catch((error) => {
    refuse('mergeSweep', path, file, `must be a file that can be read (${error.message})`)
  })
  try {
    return await readContent(handle)
  } finally {
    await handle.close()
  }
}

/** Why a file cannot be merged; nothing where it can. */
function differs(
  header: FileHeader | undefined,
  shape: FileHeader | undefined,
  own: { plan: string; rows: number },
  first: string,
): string | undefined {
  if (header === undefined) return 'must be a file that runSweep wrote'
  if (header.plan !== own.plan || header.rows !== own.rows) return 'holds another sweep'
  if (shape === undefined || (header.blockRows === shape.blockRows && header.shard[1] === shape.shard[1])) return undefined
  return `holds blocks of ${header.blockRows} rows in ${header.shard[1]} parts; they must be blocks of ${shape.blockRows} rows in ${shape.shard[1]} parts, as in ${show(first)}`
}

function missingBlocks(rows: number, { blockRows, shard }: FileHeader, seen: ReadonlySet<number>, damaged: number): Issue[] {
  const remark = damaged > 0 ? ` (${damaged} damaged lines in the files)` : ''
  return Array.from({ length: shard[1] }, (_, i) => i + 1).flatMap((k) => {
    const missing = blocksOf(rows, blockRows, k, shard[1]).filter((block) => !seen.has(block)).length
    if (missing === 0) return []
    return [
      {
        path: 'files',
        given: `${missing} blocks of part ${k} of ${shard[1]} missing${remark}`,
        accepts: `run part ${k} again with its file: it continues where it stopped`,
      },
    ]
  })
}
